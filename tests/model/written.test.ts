import { expect, test } from 'vitest';
import {
  readWrittenFigure,
  readWrittenLimit,
  readWrittenMeasure,
  readWrittenReading,
} from '../../src/model/written.ts';

test.each([
  ['gap height between 3 mm and 5 mm', { bound: 'between', quantity: { value: 3, unit: 'mm' }, high: 5 }],
  ['gap height between 3 mm and 1 cm', { bound: 'between', quantity: { value: 3, unit: 'mm' }, high: 10 }],
  ['doorway width at most 740 mm', { bound: 'at-most', quantity: { value: 740, unit: 'mm' } }],
  ['step depth ≥ 240 mm', { bound: 'at-least', quantity: { value: 240, unit: 'mm' } }],
])('"%s" is a limit', (line, limit) => {
  expect(readWrittenLimit(line, 'the step')).toMatchObject({
    ok: true,
    value: { ...limit, about: 'the step' },
  });
});

test.each([
  ['gap height between 3 mm and 5 kg', 'mm and kg do not compare'],
  ['gap height between 3 mm and 5 furlongs', '"5 furlongs" is no quantity'],
  ['gap height 3 mm', 'expected "at most", "at least" or "between"'],
  ['gap at most 3 mm', 'gap'],
])('"%s" is none: %s', (line, why) => {
  expect(readWrittenLimit(line, '')).toMatchObject({ ok: false, why: expect.stringContaining(why) });
});

test.each([
  [
    'bench top height = 915 mm',
    { kind: 'figure-set', item: 'bench top', quantity: { value: 915, unit: 'mm' } },
  ],
  ['bench top height = 2 * 18 mm', { kind: 'figure-set', quantity: { value: 36, unit: 'mm' } }],
  ['legs length = bench top height - 38 mm', { kind: 'formula-set', formula: 'bench top height - 38 mm' }],
  ['legs length =', { kind: 'formula-set', formula: '' }],
])('"%s" sets a figure or a formula', (line, value) => {
  expect(readWrittenFigure(line)).toMatchObject({ ok: true, value });
});

test.each([
  ['915 mm', { quantity: { value: 915, unit: 'mm' } }],
  ['915 mm ± 2 mm', { quantity: { value: 915, unit: 'mm' }, plusMinus: { value: 2, unit: 'mm' } }],
  ['915 mm +/- 2', { quantity: { value: 915, unit: 'mm' }, plusMinus: { value: 2, unit: 'mm' } }],
  ['915 mm +- 0.1 in', { quantity: { value: 915, unit: 'mm' }, plusMinus: { value: 0.1, unit: 'in' } }],
  [
    '36 in plus or minus 1/8 in',
    { quantity: { value: 36, unit: 'in' }, plusMinus: { value: 0.125, unit: 'in' } },
  ],
  [
    '36 in give or take 1/8 in',
    { quantity: { value: 36, unit: 'in' }, plusMinus: { value: 0.125, unit: 'in' } },
  ],
])('"%s" is a measure', (text, value) => {
  expect(readWrittenMeasure(text)).toEqual({ ok: true, value });
});

test.each([
  ['915 mm ± 2 mm ± 3 mm', '"915 mm ± 2 mm ± 3 mm" has more than one tolerance'],
  ['915 mm ± 2 kg', 'mm and kg do not compare'],
  ['915 mm ± 0 mm', 'a tolerance has to be more than nothing'],
  ['915 mm ± some', '"some" is no unit that is known'],
  ['tall ± 2 mm', '"tall" is no unit that is known'],
  [`${'9'.repeat(80)} furlongs`, `"${'9'.repeat(60)}…" is no quantity: `],
])('"%s" is none: %s', (text, why) => {
  expect(readWrittenMeasure(text)).toMatchObject({ ok: false, why: expect.stringContaining(why) });
});

test.each([
  ['workshop at least 15 degC', { value: 15, unit: 'degC', bound: 'at-least' }],
  ['workshop >= 15 degC', { value: 15, unit: 'degC', bound: 'at-least' }],
  ['oak moisture no more than 12 %', { value: 12, unit: '%', bound: 'at-most' }],
])('"%s" is what a reading must reach', (text, value) => {
  expect(readWrittenReading(text)).toEqual({ ok: true, value });
});

test.each(['workshop between 10 degC and 15 degC', 'workshop 15 degC', 'at least', 'workshop at least warm'])(
  '"%s" is nothing that a reading must reach',
  (text) => {
    expect(readWrittenReading(text).ok).toBe(false);
  },
);
