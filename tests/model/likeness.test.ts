/** Two figures that are alike in the way of a slip, and those next to them that are not. */
import { describe, expect, test } from 'vitest';
import type { Quantity } from '../../src/language/notes.ts';
import { likenessOf } from '../../src/model/likeness.ts';

const mm = (value: number): Quantity => ({ value, unit: 'mm' });

/** What both orders of two figures tell: a slip has no direction. */
function eitherWay(a: Quantity, b: Quantity) {
  const [one, other] = [likenessOf(a, b), likenessOf(b, a)];
  expect([other?.kind, other?.weight]).toEqual([one?.kind, one?.weight]);
  return one && { kind: one.kind, weight: one.weight };
}

describe('sounds', () => {
  test.each([
    [13, 30, 0.9],
    [19, 90, 0.9],
    [1400, 4000, 0.9],
    [1.5, 5, 0.9],
    [115, 150, 0.9],
    [2113, 2130, 0.9],
    [16.5, 65, 0.9],
    [13.1, 31, 0.9],
    [19.9, 99, 0.9],
    [14000, 4000, 0.6],
    [3, 13, 0.6],
    [9, 19, 0.6],
    [5, 9, 0.35],
    [2, 10, 0.35],
    [7, 11, 0.35],
  ])('%d and %d weigh %d', (a, b, weight) => {
    expect(eitherWay(mm(a), mm(b))).toEqual({ kind: 'sounds', weight });
  });

  test.each([
    [13, 40],
    [10, 21],
    [12, 20],
    [115, 250],
    [112, 120],
    [16.5, 66],
    [16.55, 65],
    [12.5, 25],
    [20.5, 105],
    [11, 21],
    [2, 12],
    [5, 8],
    [4, 9],
    [13, 13],
  ])('%d and %d do not', (a, b) => {
    expect(eitherWay(mm(a), mm(b))).toBeUndefined();
  });

  test.each([
    [15, 50, '"fifteen" and "fifty" sound alike'],
    [1800, 8000, '"eighteen" and "eighty" sound alike'],
    [2115, 2150, '"fifteen" and "fifty" sound alike'],
    [16.5, 65, '"16.5" and "sixty five" sound alike'],
    [4000, 14000, '"four" and "fourteen" sound alike'],
    [5, 9, '"five" and "nine" are easily mixed up'],
  ])('of %d and %d it is said: %s', (a, b, words) => {
    expect(likenessOf(mm(a), mm(b))?.words).toBe(words);
  });
});

describe('digits', () => {
  test.each([
    [1102, 1012, 0.85],
    [384, 348, 0.85],
    [4821, 8421, 0.85],
    [12, 21, 0.55],
  ])('%d and %d weigh %d', (a, b, weight) => {
    expect(eitherWay(mm(a), mm(b))).toEqual({ kind: 'digits', weight });
  });

  test('both are told, the older one first', () => {
    expect(likenessOf(mm(1102), mm(1012))?.words).toBe(
      'two neighbouring digits changed places: 1102 and 1012',
    );
  });

  test.each([
    [123, 321],
    [1234, 2143],
    [384, 347],
    [384, 3480],
    [9, 18],
    [777, 777],
    [1.1, 11.1],
  ])('%d and %d have no two neighbours changed', (a, b) => {
    expect(likenessOf(mm(a), mm(b))?.kind).not.toBe('digits');
  });

  test('in another unit they tell nothing', () => {
    expect(likenessOf(mm(384), { value: 348, unit: 'cm' })?.kind).not.toBe('digits');
  });
});

describe('the tape', () => {
  test.each([
    [26.25, 29.25, 0.6],
    [16, 19, 0.6],
    [1662, 1962, 0.6],
    [96, 66, 0.6],
  ])('%d and %d in are 6 for 9', (a, b, weight) => {
    expect(eitherWay({ value: a, unit: 'in' }, { value: b, unit: 'in' })).toEqual({ kind: 'tape', weight });
  });

  test.each([
    [6, 9],
    [25, 28],
    [662, 992],
    [166, 1966],
    [26, 39],
  ])('%d and %d kg are not', (a, b) => {
    expect(likenessOf({ value: a, unit: 'kg' }, { value: b, unit: 'kg' })?.kind).not.toBe('tape');
  });

  test.each([
    [1000, 1025.4, 'exactly an inch apart: a tape read at the wrong mark'],
    [102, 127.4, 'exactly an inch apart: a tape read at the wrong mark'],
    [842, 852, 'exactly 10 mm apart: a tape read at the wrong mark'],
    [842, 942, 'exactly 100 mm apart: a tape read at the wrong mark'],
  ])('%d and %d mm are a mark apart', (a, b, words) => {
    expect(eitherWay(mm(a), mm(b))).toEqual({ kind: 'tape', weight: 0.25 });
    expect(likenessOf(mm(a), mm(b))?.words).toBe(words);
  });

  test.each([
    ['no mark', 842, 853],
    ['nearly a mark', 842, 852.02],
    ['on so small a size', 30, 40],
    ['on a size of four hundred', 300, 400],
  ])('%s: %s', (_what, a, b) => {
    expect(eitherWay(mm(a as number), mm(b as number))).toBeUndefined();
  });

  test('a weight has no tape', () => {
    expect(likenessOf({ value: 842, unit: 'kg' }, { value: 942, unit: 'kg' })).toBeUndefined();
  });
});

describe('units and points', () => {
  test.each([
    ['mm', 10, 'decimal', 0.9],
    ['kg', 100, 'decimal', 0.9],
    ['kg', 1000, 'decimal', 0.9],
    ['mm', 25.4, 'unit', 0.9],
    ['mm', 2.54, 'unit', 0.85],
    ['mm', 12, 'unit', 0.6],
    ['mm', 304.8, 'unit', 0.9],
    ['kg', 2.20462, 'unit', 0.7],
    ['N.m', 1.35582, 'unit', 0.7],
    ['L', 3.78541, 'unit', 0.6],
    ['L', 4.54609, 'unit', 0.6],
    ['psi', 6.89476, 'unit', 0.6],
    ['psi', 14.5038, 'unit', 0.6],
  ] as const)('in %s, %d times is one of %s, %d', (unit, times, kind, weight) => {
    const [one, other] = [
      { value: 7.3, unit },
      { value: 7.3 * times, unit },
    ];
    expect(eitherWay(one, other)).toEqual({ kind, weight });
    expect(likenessOf(one, { value: 7.3 * times * 1.0025, unit })?.weight).toBe(weight);
    expect(likenessOf(one, { value: 7.3 * times * 1.004, unit })).toBeUndefined();
  });

  test.each([
    ['kg', 25.4],
    ['mm', 2.20462],
    ['kg', 3.78541],
    ['L', 6.89476],
    ['mm', 1.36],
    ['kg', 1.2],
    ['kg', 10000],
  ] as const)('in %s, %d times tells nothing', (unit, times) => {
    expect(eitherWay({ value: 7.3, unit }, { value: 7.3 * times, unit })).toBeUndefined();
  });

  test('one number in two units says more than their ratio', () => {
    expect(likenessOf({ value: 4, unit: 'ft' }, { value: 4, unit: 'in' })).toEqual({
      kind: 'unit',
      words: 'the same number in in and in ft',
      weight: 0.95,
    });
  });

  test.each([
    ['another kind of quantity', mm(4), { value: 4, unit: 'kg' }],
    ['nothing at all', mm(0), mm(733)],
    ['the other sign', mm(-73), mm(730)],
  ])('%s is not alike', (_what, a, b) => {
    expect(eitherWay(a, b)).toBeUndefined();
  });

  test('of several likenesses the strongest is told', () => {
    expect(likenessOf(mm(5), mm(50))?.kind).toBe('decimal');
    expect(likenessOf(mm(15), mm(51))?.kind).toBe('digits');
  });
});
