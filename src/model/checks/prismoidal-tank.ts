import type { Check, Given, Worked } from './check.ts';
import { one, rangeOf } from './ranges.ts';
import { tankVolume, USABLE_SHARE, WANTED_VOLUME } from './tank-results.ts';

/**
 * Volume of a tank that tapers along its length, by the prismoidal formula.
 * Formula: (first end + 4 x middle + other end) x length / 6. Source: the prismoidal formula, as on
 * https://ja.scribd.com/document/385620738/Prismoidal-Formula-2
 */
export const PRISMOIDAL_TANK: Check = {
  name: 'prismoidal tank',
  says: 'what a tank holds that tapers along its length, from three areas across it',
  formula: '(first end + 4 x middle + other end) x length / 6, all inside',
  source: 'prismoidal formula, as on https://ja.scribd.com/document/385620738/Prismoidal-Formula-2',
  inputs: [
    { name: 'first end', kind: 'area', says: 'inside area of one end' },
    { name: 'middle', kind: 'area', says: 'inside area half way along, measured: not the mean of the ends' },
    { name: 'other end', kind: 'area', says: 'inside area of the other end' },
    { name: 'length', kind: 'length', says: 'inside length between the ends' },
    USABLE_SHARE,
    WANTED_VOLUME,
  ],
  gives: 'volume',
  run: prismoidalOf,
};

function prismoidalOf(given: Given): Worked {
  const [first, other, length] = [one(given, 'first end'), one(given, 'other end'), one(given, 'length')];
  const volume = rangeOf(
    (a, m, b, along) => ((a + 4 * m + b) * along) / 6,
    first,
    one(given, 'middle'),
    other,
    length,
  );
  const byEnds = (((first.mid + other.mid) / 2) * length.mid) / volume.mid - 1;
  const told = tankVolume(given, volume);
  const off = given.say(Math.abs(byEnds), 'ratio', '%');
  return {
    ...told,
    notes: [...told.notes, `the mean of the two ends alone would be ${off} ${byEnds < 0 ? 'less' : 'more'}`],
  };
}
