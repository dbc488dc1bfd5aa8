/** Standing figures as intervals, and expressions over them. */
import { describe, expect, test } from 'vitest';
import { type Known, knownOf, rangeOfExpression } from '../../../src/model/checks/known-range.ts';
import { readFormula } from '../../../src/model/formula.ts';
import type { StandingRow } from '../../../src/model/rows.ts';

const row = (more: Partial<StandingRow>): StandingRow => ({
  slot: 'i1|width|length',
  itemId: 'i1',
  attribute: 'width',
  dimension: 'length',
  value: 100,
  unit: 'mm',
  bound: 'exact',
  status: 'stands',
  rule: 'said',
  ...more,
});

const said = (value: number, unit = 'mm') => ({ value, unit, from: 'said' }) as const;
const fine = (value: number, unit = 'mm') => ({ value, unit, from: 'precision' }) as const;

describe('a figure as it is known', () => {
  test.each([
    ['exact', {}, { low: 100, mid: 100, high: 100 }],
    ['with a tolerance', { tolerance: said(2) }, { low: 98, mid: 100, high: 102, spread: 2 }],
    ['with one in another unit', { tolerance: said(0.2, 'cm') }, { low: 98, mid: 100, high: 102, spread: 2 }],
    ['with one of the project', { tolerance: { ...said(2), from: 'project' } }, { low: 98, spread: 2 }],
    ['as finely as it was said', { tolerance: fine(2) }, { low: 100, mid: 100, high: 100 }],
    ['about', { bound: 'about' }, { low: 95, mid: 100, high: 105, spread: 5 }],
    ['about, below nought', { bound: 'about', value: -100 }, { low: -105, mid: -100, high: -95 }],
    ['about, said coarsely', { bound: 'about', tolerance: fine(8) }, { low: 92, high: 108, spread: 8 }],
    ['about, said finely', { bound: 'about', tolerance: fine(1) }, { low: 95, high: 105, spread: 5 }],
    ['about, with a wide tolerance', { bound: 'about', tolerance: said(7) }, { low: 93, spread: 7 }],
    ['between', { bound: 'between', high: 140 }, { low: 100, mid: 120, high: 140 }],
    ['at least', { bound: 'at-least' }, { low: 100, mid: 100, high: 100, open: 'above' }],
    ['at most', { bound: 'at-most' }, { low: 100, mid: 100, high: 100, open: 'below' }],
  ] as const)('%s', (_what, more, expected) => {
    const known = knownOf(row(more), false);
    expect(known).toMatchObject({ ...expected, unit: 'mm' });
    expect(known.spread).toBe(
      'spread' in expected || ('bound' in more && more.bound === 'about') ? known.mid - known.low : undefined,
    );
    if (!('open' in expected)) expect(known).not.toHaveProperty('open');
  });

  test('held to, is its stated end alone; a range keeps both', () => {
    for (const bound of ['exact', 'about', 'at-least', 'at-most'] as const)
      expect(knownOf(row({ bound, tolerance: said(2) }), true)).toEqual({
        low: 100,
        mid: 100,
        high: 100,
        unit: 'mm',
      });
    expect(knownOf(row({ bound: 'between', high: 140 }), true)).toMatchObject({ low: 100, high: 140 });
  });
});

const wide = (low: number, mid: number, high: number, unit = 'mm'): Known => ({ low, mid, high, unit });
const KNOWN = new Map([
  ['a', wide(9, 10, 12)],
  ['b', wide(1, 2, 4)],
  ['c', wide(-1, 0, 2)],
  ['d', wide(5, 6, 7)],
  ['e', wide(2, 3, 5)],
  ['f', wide(7, 7, 7)],
  ['w', wide(1, 2, 3, 'kg')],
]);

const over = (text: string) => {
  const read = readFormula(text);
  if (!read.ok) throw new Error(read.why);
  return rangeOfExpression(read.formula, KNOWN);
};

/** The range in millimetres or square millimetres. */
const rangeIn = (text: string, scale: number) => {
  const found = over(text);
  if (!found.ok) return found.why;
  const { low, mid, high } = found.range;
  return [low, mid, high].map((one) => Number((one * scale).toFixed(6)));
};

describe('an expression', () => {
  test.each([
    ['f', [7, 7, 7]],
    ['a + f', [16, 17, 19]],
    ['a - b', [5, 8, 11]],
    ['a - a', [0, 0, 0]],
    ['-c', [-2, 0, 1]],
    ['a + b - c - d', [1, 6, 12]],
    ['a + b - c - d + e', [3, 9, 17]],
    ['a - b - c - d - e', [-9, -1, 5]],
    ['b - a + f - f - c - d - e', [-25, -17, -11]],
  ])('%s reaches as far as its figures take it: %j', (text, range) => {
    expect(rangeIn(text, 1000)).toEqual(range);
  });

  test('multiplied, both ends of both are looked at', () => {
    expect(rangeIn('b * c', 1e6)).toEqual([-4, 0, 8]);
    expect(rangeIn('c * c', 1e6)).toEqual([0, 0, 4]);
  });

  test('has the kind and the unit of what comes out', () => {
    expect(over('a * b')).toMatchObject({ ok: true, kind: 'area' });
    expect(over('w + w')).toMatchObject({ ok: true, kind: 'mass', unit: 'kg' });
  });

  test('an end at which it cannot be worked out is left out', () => {
    KNOWN.set('over nought', wide(0, 2, 4));
    expect(rangeIn('a / over nought', 1)).toEqual([2.25, 5, 5]);
  });

  test.each([
    ['a / (f - f)', 'it divides by nothing'],
    ['a + shuttle', '"shuttle" is not known'],
    ['a + w', 'length and mass do not add'],
  ])('%s is none: %s', (text, why) => {
    expect(over(text)).toEqual({ ok: false, why });
  });
});
