import type { Check, Given, Range, Result, Worked } from './check.ts';
import { less, maybe, one, rangeOf } from './ranges.ts';
import { saidRange } from './said-range.ts';
import { DEGREES } from './slope.ts';

/**
 * The diagonal that two sides have when they are square, and how far out of square measured diagonals say it is.
 * Formulas: diagonal = sqrt(length^2 + width^2). Two diagonals of a frame with equal opposite sides differ by
 * d1^2 - d2^2 = 4 x length x width x sin(out of square); one diagonal d alone gives
 * d^2 = length^2 + width^2 + 2 x length x width x sin(out of square). Source: Pythagoras and the law of cosines.
 */
export const DIAGONAL_FOR_SQUARE: Check = {
  name: 'diagonal for square',
  says: 'the diagonal of a square frame, and how far out of square measured diagonals say that it is',
  formula: 'sqrt(length^2 + width^2); sin(out of square) = (d1^2 - d2^2) / (4 x length x width)',
  source: 'Pythagoras; law of cosines for both diagonals',
  inputs: [
    { name: 'length', kind: 'length', says: 'one side' },
    { name: 'width', kind: 'length', says: 'the side next to it' },
    { name: 'first diagonal', kind: 'length', says: 'a diagonal as measured', optional: true, most: 80 },
    { name: 'second diagonal', kind: 'length', says: 'the other diagonal', optional: true, most: 80 },
    {
      name: 'allowed',
      kind: 'length',
      says: 'most that it may be out over the width',
      optional: true,
      nought: true,
    },
  ],
  gives: 'diagonal',
  run: diagonalOf,
};

function diagonalOf(given: Given): Worked {
  const { say } = given;
  const [length, width] = [one(given, 'length'), one(given, 'width')];
  const diagonal = rangeOf(Math.hypot, length, width);
  const square = `square at ${saidRange(say, diagonal, 'length')}`;
  const results: readonly Result[] = [{ name: 'diagonal', kind: 'length', range: diagonal }];
  const sine = sineOf(given, length, width);
  if (!sine) {
    const why = given.inputs.has('allowed') ? 'missing: first diagonal (a diagonal as measured)' : undefined;
    return why === undefined
      ? { verdict: 'told', why: square, results, notes: [] }
      : { verdict: 'missing', why };
  }
  if (Math.abs(sine.mid) >= 1)
    return { verdict: 'refused', why: `these sides have no such diagonal: ${square}` };
  const angle = rangeOf((s) => Math.asin(Math.min(1, Math.max(-1, s))) * DEGREES, sine);
  const off = sizeOf(rangeOf((s, w) => s * w, sine, width));
  const allowed = maybe(given, 'allowed');
  const left = allowed ? less(allowed, off) : undefined;
  return {
    verdict: left === undefined ? 'told' : left.low >= -1e-9 ? 'holds' : 'broken',
    why: `${saidRange(say, off, 'length')} out over the width, ${saidRange(say, sizeOf(angle), 'angle')}; ${square}`,
    results: [
      ...results,
      { name: 'out of square', kind: 'length', range: off },
      { name: 'out of square angle', kind: 'angle', range: sizeOf(angle) },
    ],
    notes: notesOn(given, diagonal),
  };
}

/** The sine of the angle out of square, its sign that of the first diagonal; undefined without a measured one. */
function sineOf(given: Given, length: Range, width: Range): Range | undefined {
  const [first, second] = [maybe(given, 'first diagonal'), maybe(given, 'second diagonal')];
  if (first && second)
    return rangeOf((a, b, d, e) => (d * d - e * e) / (4 * a * b), length, width, first, second);
  const only = first ?? second;
  return only ? lone(length, width, only) : undefined;
}

/**
 * The sine that one diagonal gives: (d^2 - a^2 - b^2) / 2ab. In a side it may turn round within the range, at
 * a^2 = b^2 - d^2, so that turning point is tried beside the ends.
 */
function lone(length: Range, width: Range, diagonal: Range): Range {
  const sine = (a: number, b: number, d: number) => (d * d - a * a - b * b) / (2 * a * b);
  const values = [sine(length.mid, width.mid, diagonal.mid)];
  for (const d of [diagonal.low, diagonal.high]) {
    for (const a of [length.low, length.high]) {
      for (const b of withTurn(width, a, d)) values.push(sine(a, b, d));
    }
    for (const b of [width.low, width.high]) {
      for (const a of withTurn(length, b, d)) values.push(sine(a, b, d));
    }
  }
  return { low: Math.min(...values), mid: values[0] as number, high: Math.max(...values) };
}

const withTurn = ({ low, high }: Range, other: number, diagonal: number): readonly number[] => {
  const turn = Math.sqrt(Math.max(0, other * other - diagonal * diagonal));
  return turn > low && turn < high ? [low, high, turn] : [low, high];
};

/** A range without its sign; it begins at nought where it goes through it. */
function sizeOf({ low, mid, high }: Range): Range {
  const ends = [Math.abs(low), Math.abs(high)];
  return { low: low < 0 && high > 0 ? 0 : Math.min(...ends), mid: Math.abs(mid), high: Math.max(...ends) };
}

/** Two diagonals of a frame with equal opposite sides: d1^2 + d2^2 = 2 (a^2 + b^2). */
function notesOn(given: Given, square: Range): readonly string[] {
  const [first, second] = [maybe(given, 'first diagonal'), maybe(given, 'second diagonal')];
  if (!first || !second) return ['from one diagonal: it is only as good as the sides'];
  const mean = rangeOf((d, e) => Math.sqrt((d * d + e * e) / 2), first, second);
  const apart = less(mean, square);
  // Within a five-hundredth, or within the tolerances: a tape is read to a millimetre in half a metre.
  const agrees = apart.low <= square.mid / 500 && apart.high >= -square.mid / 500;
  return agrees
    ? ['opposite sides are taken to be equal']
    : [
        `the diagonals do not belong to these sides: those would have ${given.say(square.mid, 'length')} between them`,
      ];
}
