import type { Check, Given, Range, Result, Worked } from './check.ts';
import { less, maybe, one, rangeOf, times } from './ranges.ts';
import { saidRange } from './said-range.ts';
import { DEGREES } from './slope.ts';

/**
 * The angle and rate of a taper, and its size part of the way down.
 * Formula: on one side atan((large - small) / length); on both, atan((large - small) / (2 length)) each; 1 in n with
 * n = length / (large - small); size at a distance = large - (large - small) x distance / length.
 * Source: trigonometry; length is measured along the middle, or along the straight side where only one is tapered.
 */
export const TAPER: Check = {
  name: 'taper',
  says: 'the angle and rate of a taper, and its size part of the way down',
  formula: 'atan((large - small) / (2 length)) each side, or atan((large - small) / length) on one side',
  source: 'trigonometry',
  inputs: [
    { name: 'large end', kind: 'length', says: 'size at the large end' },
    { name: 'small end', kind: 'length', says: 'size at the small end; nought for a point', nought: true },
    { name: 'length', kind: 'length', says: 'distance between the ends' },
    { name: 'at', kind: 'length', says: 'distance from the large end to tell the size at', optional: true },
  ],
  options: [{ name: 'tapered on', says: 'sides that are tapered', of: ['both sides', 'one side'] }],
  gives: 'angle',
  run: taperOf,
};

function taperOf(given: Given): Worked {
  const { say } = given;
  const [large, small, length] = [one(given, 'large end'), one(given, 'small end'), one(given, 'length')];
  if (small.mid > large.mid) {
    return { verdict: 'refused', why: 'the small end is larger than the large end: the other way about?' };
  }
  const sides = given.options.get('tapered on') === 'one side' ? 1 : 2;
  const each = rangeOf((a, b, l) => Math.atan((a - b) / (sides * l)) * DEGREES, large, small, length);
  const off = less(large, small);
  const at = maybe(given, 'at');
  if (at && at.mid > length.mid) return { verdict: 'refused', why: 'that is beyond the small end' };
  const rate = rangeOf((a, b, l) => (a - b) / l, large, small, length);
  const results: readonly Result[] = [
    { name: 'angle', kind: 'angle', range: each },
    { name: 'included angle', kind: 'angle', range: times(each, sides) },
    { name: 'taper', kind: 'ratio', range: rate, unit: '%' },
    ...(off.low > 0 ? [{ name: 'one in n', kind: 'ratio', range: rangeOf((r) => 1 / r, rate) }] : []),
    ...(at ? [{ name: 'size there', kind: 'length', range: sizeAt(large, small, length, at) }] : []),
  ];
  const there = at
    ? `; ${saidRange(say, sizeAt(large, small, length, at), 'length')} at ${say(at.mid, 'length')}`
    : '';
  return {
    verdict: 'told',
    why: `${saidRange(say, each, 'angle')}${sides === 2 ? ' on each side' : ''}${there}`,
    results,
    notes: [sides === 2 ? 'tapered alike on both sides' : 'one side is straight'],
  };
}

/** Linear in every end and monotone in length and distance, so the ends of the ranges bound it. */
const sizeAt = (large: Range, small: Range, length: Range, at: Range): Range =>
  rangeOf((a, b, l, x) => a - ((a - b) * x) / l, large, small, length, at);
