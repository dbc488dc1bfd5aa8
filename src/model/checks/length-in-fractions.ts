import type Fraction from 'fraction.js';
import { fractionText, nearest } from '../lengths.ts';
import type { Check, Given, Result, Worked } from './check.ts';
import { exactSize } from './exact-size.ts';
import { exactRange, one } from './ranges.ts';

/** Metres in an inch, exact. */
const INCH = 0.0254;
/** Marks on a tape: sixteenths on most, thirty-seconds on good ones. */
const MARKS = [16, 32] as const;

/**
 * A length as a tape in inches reads it, with how far the nearest mark is off.
 * Formula: inches = length / 25.4 mm, rounded to the nearest mark; half of 1/16 in is 0.794 mm, half of 1/32 in 0.397 mm.
 * Source: international yard and pound agreement, 1959; from memory.
 */
export const LENGTH_IN_FRACTIONS: Check = {
  name: 'length in fractions',
  says: 'a length to the nearest sixteenth and thirty-second of an inch, and how far each is off',
  formula: 'inches = length / 25.4 mm; nearest 1/16 is off by up to 0.794 mm, nearest 1/32 by up to 0.397 mm',
  source: 'international yard and pound agreement, 1959: one inch is 25.4 mm exactly (from memory)',
  inputs: [{ name: 'length', kind: 'length', says: 'a length in any unit' }],
  gives: 'nearest sixteenth',
  run: inFractions,
};

function inFractions(given: Given): Worked {
  const length = one(given, 'length');
  const inches = exactSize(length.mid).div('0.0254');
  const [low, high] = [length.low, length.high].map((end) => exactSize(end).div('0.0254'));
  const ends = [low ?? inches, high ?? inches] as const;
  const marks = MARKS.map((mark) => ({ mark, at: nearest(inches, mark) }));
  return {
    verdict: 'told',
    why: marks.map(({ mark, at }) => sayMark(mark, at, inches, ends)).join('; '),
    results: marks.flatMap(({ mark, at }) => resultsOf(mark, at, inches, ends)),
    notes: [
      'worked from the exact length; only the print is rounded',
      ...(length.low === length.high
        ? []
        : ['the length is a range: how far off is told of the figure as said']),
    ],
  };
}

type Ends = readonly [low: Fraction, high: Fraction];

/** `nearest 1/16: 48 1/16 in (4 ft 0 1/16 in), 0.79 mm over`; a range has the marks of both its ends. */
function sayMark(mark: number, at: Fraction, inches: Fraction, ends: Ends): string {
  const off = at.sub(inches).mul('25.4').valueOf();
  // In hundredths: half a sixteenth is 0.79 mm, and a tenth says of none that it is over or under.
  const size = Math.abs(off) < 0.005 ? 'less than 0.01' : `${Number(Math.abs(off).toFixed(2))}`;
  const far = off === 0 ? 'exact' : `${size} mm ${off < 0 ? 'under' : 'over'}`;
  const [least, most] = ends.map((end) => nearest(end, mark));
  const between =
    least && most && !least.equals(most) ? `, from ${fractionText(least)} to ${fractionText(most)} in` : '';
  const feet = at.compare(12) < 0 ? '' : ` (${feetAndInches(at)})`;
  return `nearest 1/${mark}: ${fractionText(at)} in${feet}, ${far}${between}`;
}

/** `4 ft 0 1/16 in` of inches that are not negative: the nought keeps a sixteenth of an inch from reading as one of a foot. */
export function feetAndInches(inches: Fraction): string {
  const feet = inches.div(12).floor();
  const rest = fractionText(inches.sub(feet.mul(12)));
  return `${feet.toString()} ft ${/^\d+\//.test(rest) ? `0 ${rest}` : rest} in`;
}

const WORDS = { 16: 'sixteenth', 32: 'thirty-second' } as const;

function resultsOf(
  mark: (typeof MARKS)[number],
  at: Fraction,
  inches: Fraction,
  [low, high]: Ends,
): readonly Result[] {
  const metres = (size: Fraction) => size.mul(INCH).valueOf();
  const range = {
    low: metres(nearest(low, mark)),
    mid: metres(at),
    high: metres(nearest(high, mark)),
  };
  const off = exactRange(at.sub(inches).mul(INCH).valueOf());
  return [
    { name: `nearest ${WORDS[mark]}`, kind: 'length', range, unit: 'in' },
    { name: `off at the ${WORDS[mark]}`, kind: 'length', range: off, unit: 'mm' },
  ];
}
