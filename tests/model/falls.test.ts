import { expect, test } from 'vitest';
import { isFall, proportionOf, shareOfFall } from '../../src/model/falls.ts';

const told = (words: string, item: string, attribute = 'ratio', value = 40) =>
  proportionOf({ value, unit: '1', attribute, item, quote: words });

test.each([
  ['one in forty', 'shower tray', 'one-in'],
  ['1 over 40', 'ramp', 'one-in'],
  // The words go before the name.
  ['one in forty', 'grout mix', 'one-in'],
  ['three to one', 'grout', 'to-one'],
  ['four parts', 'sand', 'to-one'],
  ['4:1', 'lashing', 'to-one'],
  ['three to one', 'drain fall', 'to-one'],
  // Where no word tells, the name does.
  ['a forty', 'drain fall', 'one-in'],
  ['a forty', 'gearbox', 'to-one'],
  ['a forty', 'epoxy', 'to-one'],
])('"%s" of the %s is told as %s', (words, item, proportion) => {
  expect(told(words, item)).toBe(proportion);
});

test.each([
  ['a forty', 'sand'],
  ['the one in the corner', 'shelf'],
  ['one in each', 'shelf'],
])('"%s" of the %s tells no proportion', (words, item) => {
  expect(told(words, item)).toBeUndefined();
});

test('an angle is a fall by its words or its thing, and never a mix', () => {
  expect(told('one in forty', 'roof', 'angle')).toBe('one-in');
  expect(told('forty', 'roof pitch', 'angle')).toBe('one-in');
  expect(told('three to one', 'grout', 'angle')).toBeUndefined();
  expect(told('forty', 'epoxy', 'angle')).toBeUndefined();
});

test('other measures, other units and numbers up to one tell none', () => {
  expect(told('one in forty', 'drain fall', 'width')).toBeUndefined();
  expect(told('one in forty', 'drain fall', 'ratio', 1)).toBeUndefined();
  expect(proportionOf({ value: 40, unit: 'mm', attribute: 'ratio', quote: 'one in forty' })).toBeUndefined();
});

test('a fall is a plain number of something that falls', () => {
  expect(isFall('drain fall', { unit: '1', attribute: 'ratio' })).toBe(true);
  expect(isFall('roof pitch', { unit: '1', attribute: 'angle' })).toBe(true);
  expect(isFall('roof pitch', { unit: 'deg', attribute: 'angle' })).toBe(false);
  expect(isFall('roof pitch', { unit: '1', attribute: 'count' })).toBe(false);
  expect(isFall('shower tray', { unit: '1', attribute: 'ratio' })).toBe(false);
});

test('one in forty is the share 1/40; a number up to one is the share itself', () => {
  expect([shareOfFall(40), shareOfFall(0.025), shareOfFall(1)]).toEqual([1 / 40, 0.025, 1]);
});
