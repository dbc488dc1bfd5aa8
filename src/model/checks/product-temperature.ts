import type { Check, Given, Worked } from './check.ts';
import { isAtLeast } from './noise.ts';
import { less, maybe, one } from './ranges.ts';
import { saidRange } from './said-range.ts';

/**
 * Whether the work is as warm as a product must have it.
 * Formula: least <= temperature <= most, each at its worst. Source: arithmetic; both bounds are the data sheet's own.
 */
export const PRODUCT_TEMPERATURE: Check = {
  name: 'product temperature',
  says: 'whether the work is within the temperatures that the product takes',
  formula: 'least <= temperature <= most, each at its worst',
  source: "arithmetic; the temperatures are the product data sheet's",
  inputs: [
    { name: 'temperature', kind: 'temperature', says: 'temperature of the work', ofAir: true },
    { name: 'least', kind: 'temperature', says: 'least that the product takes', optional: true },
    { name: 'most', kind: 'temperature', says: 'most that the product takes', optional: true },
  ],
  run: productTemperatureOf,
};

const KIND = 'temperature difference';

function productTemperatureOf(given: Given): Worked {
  const [least, most] = [maybe(given, 'least'), maybe(given, 'most')];
  if (!least && !most)
    return { verdict: 'missing', why: 'neither the least nor the most that the product takes was given' };
  const { say } = given;
  const temperature = one(given, 'temperature');
  const above = least && less(temperature, least);
  const below = most && less(most, temperature);
  const said = saidRange(say, temperature, 'temperature');
  const faults = [
    ...(least && above && !isAtLeast(above.low, 0)
      ? [`${say(-above.low, KIND)} under the least of ${say(least.mid, 'temperature')} at worst`]
      : []),
    ...(most && below && !isAtLeast(below.low, 0)
      ? [`${say(-below.low, KIND)} over the most of ${say(most.mid, 'temperature')} at worst`]
      : []),
  ];
  const within = [
    least && `least ${say(least.mid, 'temperature')}`,
    most && `most ${say(most.mid, 'temperature')}`,
  ];
  return {
    verdict: faults.length > 0 ? 'broken' : 'holds',
    why: `${said}: ${(faults.length > 0 ? faults : within.filter((one) => one)).join(', ')}`,
    results: [
      ...(above ? [{ name: 'above the least', kind: KIND, range: above }] : []),
      ...(below ? [{ name: 'below the most', kind: KIND, range: below }] : []),
    ],
    notes: ['the surface may be colder than the air, and stays cold longer'],
  };
}
