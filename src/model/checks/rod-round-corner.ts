import type { Check, Given, Worked } from './check.ts';
import { maybe, one, rangeOf } from './ranges.ts';
import { saidRange } from './said-range.ts';

/**
 * The longest rod that goes round a right-angled corner of two passages, held level. A bound only: a rod of no
 * thickness, no hands, no door in the way, and the ceiling might let a longer one tip.
 * Formula: (a^(2/3) + b^(2/3))^(3/2). Source: the classic result for a ladder carried round
 * a corner, by calculus; from memory.
 */
export const ROD_ROUND_CORNER: Check = {
  name: 'rod round corner',
  says: 'the longest thin thing that goes level round a right-angled corner: a bound, not a promise',
  formula: '(first^(2/3) + second^(2/3))^(3/2)',
  source: 'the classic result for a ladder carried round a corner, by calculus',
  inputs: [
    { name: 'first passage', kind: 'length', says: 'clear width of one passage' },
    { name: 'second passage', kind: 'length', says: 'clear width of the other' },
    { name: 'length', kind: 'length', says: 'length of what is carried', optional: true },
  ],
  gives: 'longest rod',
  run: rodOf,
};

function rodOf(given: Given): Worked {
  const { say } = given;
  const longest = rangeOf(
    (a, b) => (a ** (2 / 3) + b ** (2 / 3)) ** 1.5,
    one(given, 'first passage'),
    one(given, 'second passage'),
  );
  const length = maybe(given, 'length');
  const bound = `a rod of no thickness goes round up to ${saidRange(say, longest, 'length')}`;
  const isTooLong = length !== undefined && length.low > longest.high;
  const more = isTooLong
    ? ': this is longer, and does not go round level'
    : length
      ? ': this may go, its own thickness decides'
      : '';
  return {
    verdict: isTooLong ? 'broken' : 'told',
    why: `${bound}${more}`,
    results: [{ name: 'longest rod', kind: 'length', range: longest }],
    notes: [
      'a bound only: held level, thickness and hands not counted; a high ceiling lets a longer one tip',
    ],
  };
}
