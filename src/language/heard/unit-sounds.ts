import { NUMBER_WORDS } from '../statements/vocabulary.ts';
import type { Heard, RepairRule } from './repair.ts';

/** What recognisers write for a unit that was said after a number, and the unit. Heard from synthetic voices. */
const MEANT: ReadonlyMap<string, string> = new Map(
  Object.entries({
    meal: 'mil',
    male: 'mil',
    mail: 'mil',
    mel: 'mil',
    mills: 'mil',
    matters: 'metres',
    meteors: 'metres',
    metas: 'metres',
    leaders: 'litres',
    litters: 'litres',
    leeters: 'litres',
    lighters: 'litres',
  }),
);
/** Two words for one: "three kilo watt". */
const PAIRS: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    kilo: ['watt', 'watts', 'gram', 'grams', 'pascal', 'pascals', 'hertz'],
    milli: [
      'metre',
      'metres',
      'meter',
      'meters',
      'litre',
      'litres',
      'liter',
      'liters',
      'amp',
      'amps',
      'bar',
      'volts',
    ],
    centi: ['metre', 'metres', 'meter', 'meters'],
  }),
);

const isNumber = (word: Heard | undefined) =>
  word !== undefined && (NUMBER_WORDS.has(word.lower) || /^\d/.test(word.lower));
/** "One meal a day", "two masters": people and food are counted in ones and twos, sizes seldom. */
const isSizeable = (word: Heard | undefined) => isNumber(word) && !/^(?:1|one|a)$/.test(word?.lower ?? '');

/** Reads a unit where a recogniser wrote a word that sounds like one, straight after a number. */
export const unitSounds: RepairRule = (words) =>
  words.flatMap((word, at) => {
    const before = words[at - 1];
    if (word.opens || !isNumber(before)) return [];
    const next = words[at + 1];
    if (next && !next.opens && PAIRS.get(word.lower)?.includes(next.lower)) {
      const means = `${word.lower}${next.lower}`;
      return [{ start: word.start, end: next.end, means, why: `one unit in two words: ${means}` }];
    }
    const means = isSizeable(before) ? MEANT.get(word.lower) : undefined;
    return means === undefined
      ? []
      : [
          {
            start: word.start,
            end: word.end,
            means,
            why: `"${word.lower}" after a number sounds like "${means}"`,
          },
        ];
  });
