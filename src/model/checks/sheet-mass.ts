import type { Check, Given, Worked } from './check.ts';
import { AS_GIVEN, densityOf, SHEET_MATERIALS } from './materials.ts';
import { exactRange, maybe, one, rangeOf } from './ranges.ts';
import { saidRange } from './said-range.ts';

/**
 * Mass of sheets from their size and density. Density is a range, so the mass is one too.
 * Formula: length x width x thickness x count x density. Source: arithmetic; each density by name has its own (materials.ts).
 */
export const SHEET_MASS: Check = {
  name: 'sheet mass',
  says: 'what sheets weigh, from their size and the range that their density lies in',
  formula: 'length x width x thickness x count x density',
  source: 'arithmetic; densities by name as each material says',
  inputs: [
    { name: 'length', kind: 'length', says: 'length of a sheet' },
    { name: 'width', kind: 'length', says: 'width of a sheet' },
    {
      name: 'thickness',
      kind: 'length',
      says: 'measured thickness: the nominal one is often not it',
      most: 0.3,
    },
    {
      name: 'count',
      kind: 'ratio',
      unit: '1',
      says: 'how many sheets; one where none is given',
      optional: true,
    },
    {
      name: 'density',
      kind: 'density',
      says: 'least to most, from the data sheet or the scales',
      optional: true,
    },
  ],
  options: [
    {
      name: 'material',
      says: 'a published density in place of one of your own',
      of: [AS_GIVEN, ...SHEET_MATERIALS.map(({ name }) => name)],
    },
  ],
  gives: 'mass',
  touches: ['heavy sheet'],
  run: sheetMassOf,
};

function sheetMassOf(given: Given): Worked {
  const density = densityOf(maybe(given, 'density'), given.options.get('material'), SHEET_MATERIALS);
  if (!density) return { verdict: 'missing', why: 'no density was given and no material was chosen' };
  const count = maybe(given, 'count') ?? exactRange(1);
  const mass = rangeOf(
    (...sizes) => sizes.reduce((product, size) => product * size, 1),
    one(given, 'length'),
    one(given, 'width'),
    one(given, 'thickness'),
    count,
    density.range,
  );
  return {
    verdict: 'told',
    why: `${saidRange(given.say, mass, 'mass')} in all`,
    results: [{ name: 'mass', kind: 'mass', range: mass }],
    notes: [density.note, 'edges, glue and finish are not counted'],
  };
}
