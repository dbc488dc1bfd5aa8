import type { Check, Given, Range, Result, Worked } from './check.ts';
import { all, less, maybe, rangeAbout, sumOf } from './ranges.ts';
import { isRoom, leastOf, roomWords } from './room.ts';
import { saidRange } from './said-range.ts';

/** Fewer parts have no statistics: one that is off is a third of the stack. Common practice, no source. */
const INDEPENDENT_PARTS = 3;

/**
 * Layers, parts and offsets added up, with what their tolerances come to; held against a limit or an opening.
 * Formulas: total = sum of layers (one that is taken off has a minus); worst case = sum of |t|; root-sum-square =
 * sqrt(sum of t^2), shown beside it and never held against anything.
 * Source: Tolerance Stack Analysis Methods, December 1995, https://wixlib.com/document/6dda5_tolerance-stack-analysis-methods-university-of-washington.html
 */
export const STACK_UP: Check = {
  name: 'stack-up',
  says: 'what layers, parts and offsets come to, and how far off their tolerances may take it',
  formula: 'sum of layers; worst case: sum of tolerances; root-sum-square: sqrt(sum of tolerances squared)',
  source:
    'arithmetic; Tolerance Stack Analysis Methods, December 1995 (wixlib.com/document/6dda5, read on the web)',
  inputs: [
    {
      name: 'layers',
      kind: 'length',
      says: 'the parts one on another; a minus takes one off',
      many: true,
      anySign: true,
    },
    { name: 'limit', kind: 'length', says: 'most that they may come to', optional: true },
    { name: 'opening', kind: 'length', says: 'clear size that they have to go into', optional: true },
  ],
  gives: 'total',
  run: stackUpOf,
};

function stackUpOf(given: Given): Worked {
  const { say } = given;
  const layers = all(given, 'layers');
  const total = sumOf(layers);
  // A sum of offsets may be less than nothing; what goes into an opening may not.
  if (total.mid <= 0 && ['limit', 'opening'].some((name) => given.inputs.has(name))) {
    const why = `the layers come to ${say(total.mid, 'length')} in all: more is taken off than there is`;
    return { verdict: 'refused', why };
  }
  const rooms = ['limit', 'opening'].flatMap((name) => {
    const most = maybe(given, name);
    return most ? [{ name, left: less(most, total) }] : [];
  });
  const broken = rooms.filter(({ left }) => !isRoom(left));
  const shown = broken.length > 0 ? broken : rooms;
  const told = `${saidRange(say, total, 'length')} in all`;
  const against = shown.map(({ name, left }) => `${roomWords(left, say)} to the ${name}`);
  const likely = rootSumSquare(layers);
  return {
    verdict: rooms.length === 0 ? 'told' : broken.length > 0 ? 'broken' : 'holds',
    why: [told, ...against].join('; '),
    results: [
      { name: 'total', kind: 'length', range: total },
      ...(rooms.length > 0
        ? [{ name: 'room left', kind: 'length', range: leastOf(rooms.map(({ left }) => left)) }]
        : []),
      ...(likely ? [likely] : []),
    ],
    notes: likely
      ? [
          `root-sum-square, if the parts are independent of each other: ${saidRange(say, likely.range, 'length')}`,
        ]
      : [],
  };
}

/** The likely range of the total; undefined with too few parts that have a tolerance. */
function rootSumSquare(layers: readonly Range[]): Result | undefined {
  const spreads = layers.map(({ low, high }) => (high - low) / 2).filter((spread) => spread > 0);
  if (spreads.length < INDEPENDENT_PARTS) return undefined;
  // A hedge that leans to one side has its middle beside the figure as said.
  const middle = layers.reduce((sum, { low, high }) => sum + (low + high) / 2, 0);
  const spread = Math.sqrt(spreads.reduce((sum, one) => sum + one * one, 0));
  return { name: 'total by root-sum-square', kind: 'length', range: rangeAbout(middle, spread) };
}
