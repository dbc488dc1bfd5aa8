import type { Check, Given, Worked } from './check.ts';
import { AS_GIVEN, densityOf, TANK_CONTENTS } from './materials.ts';
import { maybe, one, rangeOf } from './ranges.ts';
import { saidRange } from './said-range.ts';

/**
 * Mass of what a tank holds. The tank itself is another part.
 * Formula: volume x density. Source: arithmetic; each density by name has its own (materials.ts).
 */
export const TANK_CONTENTS_MASS: Check = {
  name: 'tank contents mass',
  says: 'what a full tank holds in mass',
  formula: 'volume x density; fresh water is 1 kg to the litre',
  source: 'arithmetic; densities by name as each of the contents says',
  inputs: [
    { name: 'volume', kind: 'volume', says: 'what the tank holds when full' },
    { name: 'density', kind: 'density', says: 'of what is in it', optional: true },
  ],
  options: [
    {
      name: 'contents',
      says: 'a published density in place of one of your own',
      of: [AS_GIVEN, ...TANK_CONTENTS.map(({ name }) => name)],
    },
  ],
  gives: 'mass',
  run: contentsMassOf,
};

function contentsMassOf(given: Given): Worked {
  const density = densityOf(maybe(given, 'density'), given.options.get('contents'), TANK_CONTENTS);
  if (!density) return { verdict: 'missing', why: 'no density was given and no contents were chosen' };
  const mass = rangeOf((volume, heavy) => volume * heavy, one(given, 'volume'), density.range);
  return {
    verdict: 'told',
    why: `${saidRange(given.say, mass, 'mass')} when full`,
    results: [{ name: 'mass', kind: 'mass', range: mass }],
    notes: [density.note, 'the empty tank is not counted'],
  };
}
