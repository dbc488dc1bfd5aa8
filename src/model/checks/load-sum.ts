import { againstLimit } from './against-limit.ts';
import type { Check, Given, Worked } from './check.ts';
import { largestOf } from './contributors.ts';
import { ARITHMETIC_ONLY } from './deferral.ts';
import { all, maybe, rangeOf, sumOf } from './ranges.ts';
import { saidRange } from './said-range.ts';

const HOUR = 3600;

/**
 * Energy of all loads over the time that each runs, against the supply, with what takes most of it.
 * Formula: sum of power x time on. Source: arithmetic.
 */
export const LOAD_SUM: Check = {
  name: 'load sum',
  says: 'energy that all loads take over the time that each runs, with the largest of them',
  formula: 'sum of power x time on',
  source: 'arithmetic',
  inputs: [
    { name: 'load', kind: 'power', says: 'power of a load', many: true },
    {
      name: 'time on',
      kind: 'time',
      says: 'time that it runs between charges, in the order of the loads',
      many: true,
    },
    { name: 'supply', kind: 'energy', says: 'energy there is between charges', optional: true },
  ],
  gives: 'energy',
  run: loadSumOf,
};

function loadSumOf(given: Given): Worked {
  const [loads, times] = [all(given, 'load'), all(given, 'time on')];
  if (loads.length !== times.length) {
    const why = `each load takes a time on: ${loads.length} loads, ${times.length} of time on`;
    return { verdict: 'refused', why };
  }
  const { say } = given;
  const energies = loads.map((load, place) => {
    return rangeOf((watts, seconds) => (watts * seconds) / HOUR, load, times[place] ?? load);
  });
  const energy = sumOf(energies);
  const judged = againstLimit(say, energy, maybe(given, 'supply'), 'energy');
  const largest = largestOf(given, 'load', energies);
  const named = largest.map(({ name, range }) => `${name} ${saidRange(say, range, 'energy')}`).join(', ');
  return {
    verdict: judged.verdict,
    why: `${judged.why}; most: ${named}`,
    results: [
      { name: 'energy', kind: 'energy', range: energy },
      ...judged.results,
      ...largest.map(({ name, range }) => ({ name: `most: ${name}`, kind: 'energy', range })),
    ],
    notes: ['starting currents, standby and inverter losses are not counted', ARITHMETIC_ONLY],
  };
}
