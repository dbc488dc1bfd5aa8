import { againstLimit } from './against-limit.ts';
import type { Check, Given, Worked } from './check.ts';
import { largestOf } from './contributors.ts';
import { all, maybe, sumOf } from './ranges.ts';
import { saidRange } from './said-range.ts';

/**
 * All masses together against the most that the whole may come to, with what weighs most in it.
 * Formula: sum of the parts <= limit, each part at the most of its range and the limit at its least. Source: arithmetic.
 */
export const RUNNING_MASS: Check = {
  name: 'running mass',
  says: 'what everything weighs together, held against the limit, with the heaviest of it',
  formula: 'sum of the parts <= limit, each at the worst of its range',
  source: 'arithmetic',
  inputs: [
    {
      name: 'part',
      kind: 'mass',
      says: 'mass of a part, of tank contents, of a load',
      many: true,
      everyOf: 'weight',
    },
    { name: 'limit', kind: 'mass', says: 'most that all of it may come to', optional: true },
  ],
  gives: 'mass',
  touches: ['payload'],
  run: runningMassOf,
};

function runningMassOf(given: Given): Worked {
  const parts = all(given, 'part');
  const sum = sumOf(parts);
  const judged = againstLimit(given.say, sum, maybe(given, 'limit'), 'mass');
  const heaviest = largestOf(given, 'part');
  const named = heaviest
    .map(({ name, range }) => `${name} ${saidRange(given.say, range, 'mass')}`)
    .join(', ');
  return {
    verdict: judged.verdict,
    why: `${judged.why}; heaviest: ${named}`,
    results: [
      { name: 'mass', kind: 'mass', range: sum },
      ...judged.results,
      ...heaviest.map(({ name, range }) => ({ name: `heaviest: ${name}`, kind: 'mass', range })),
    ],
    notes: [
      `${parts.length} ${parts.length === 1 ? 'part' : 'parts'} counted; what has no figure is not in it`,
      'where the mass sits (axle, side) is not looked at',
    ],
  };
}
