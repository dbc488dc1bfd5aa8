import type { ReadContext } from '../notes.ts';
import { isKnownWord } from './known-words.ts';
import { isEnd, isInHundreds, isNumber, isSize, SMALL_DIGITS } from './number-places.ts';
import type { Heard, Repair, RepairRule } from './repair.ts';
import { tradeBySound } from './sound-index.ts';

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
/** The same in talk that was heard: typed, these are what they say. */
const MEANT_WHEN_HEARD: ReadonlyMap<string, string> = new Map(
  Object.entries({
    nil: 'mil',
    milk: 'mil',
    ampoule: 'amp hours',
    ampoules: 'amp hours',
    metter: 'metre',
    metters: 'metres',
    mattress: 'metres',
    gallant: 'gallon',
    gallants: 'gallons',
    galleon: 'gallon',
    galleons: 'gallons',
    sighs: 'psi',
    sipes: 'psi',
    million: 'millimetres',
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

/** "One meal a day", "two masters": people and food are counted in ones and twos, sizes seldom. */
const isSizeable = (word: Heard | undefined) => isNumber(word) && !/^(?:1|one|a)$/.test(word?.lower ?? '');

type Found = Omit<Repair, 'rule'>;

/** Reads a unit where a recogniser wrote a word that sounds like one, straight after a number. */
export const unitSounds: RepairRule = (words, { isHeard = false, units }) =>
  words.flatMap((word, at) => {
    if (word.opens) return [];
    if (isHeard && SMALL_DIGITS.has(words[at - 1]?.lower ?? '')) return runTogether(word) ?? [];
    if (!isNumber(words[at - 1])) return isHeard ? (soLongAWait(words, at) ?? []) : [];
    const heard = isHeard
      ? (newtonMetres(words, at) ?? onCentre(words, at) ?? runTogether(word) ?? bucks(words, at, units))
      : undefined;
    return heard ?? inTwoWords(words, at) ?? inOneWord(words, at, isHeard) ?? [];
  });

const found = (first: Heard, last: Heard, means: string, why: string): Found => ({
  start: first.start,
  end: last.end,
  means,
  why,
});

/** The next word, where no mark stands between. */
const nextOf = (words: readonly Heard[], at: number) => (isEnd(words, at + 1) ? undefined : words[at + 1]);

/** "Three kilo watt". */
function inTwoWords(words: readonly Heard[], at: number): Found | undefined {
  const [word, next] = [words[at] as Heard, nextOf(words, at)];
  if (!next || !PAIRS.get(word.lower)?.includes(next.lower)) return undefined;
  const means = `${word.lower}${next.lower}`;
  return found(word, next, means, `one unit in two words: ${means}`);
}

/** "Fifteen mail", "twenty gallants". */
function inOneWord(words: readonly Heard[], at: number, isHeard: boolean): Found | undefined {
  const word = words[at] as Heard;
  const means = isSizeable(words[at - 1]) ? meantBy(words, at, isHeard) : undefined;
  if (means === undefined) return undefined;
  return found(word, word, means, `"${word.lower}" after a number sounds like "${means}"`);
}

function meantBy(words: readonly Heard[], at: number, isHeard: boolean): string | undefined {
  const { lower } = words[at] as Heard;
  if (!isHeard) return MEANT.get(lower);
  const next = nextOf(words, at);
  // "15 million" ends there: no build has millions of anything but money, and that is named.
  if (lower === 'million' && next && !isSize(next)) return undefined;
  // "Point one met by three sixty five".
  if (lower === 'met' && words[at - 2]?.lower === 'point' && next?.lower === 'by') return 'metres';
  // "18 ml ply": nothing solid is poured.
  if (lower === 'ml' && (isSize(next) || SOLIDS.has(next?.lower ?? ''))) return 'mm';
  return MEANT.get(lower) ?? MEANT_WHEN_HEARD.get(lower);
}

const SOLIDS = new Set('ply plywood chipboard mdf osb foam board boards steel plate top oak gap'.split(' '));

/** "Fifty Newton-members". */
function newtonMetres(words: readonly Heard[], at: number): Found | undefined {
  const [word, next] = [words[at] as Heard, nextOf(words, at)];
  if (!next || !/^newtons?$/.test(word.lower) || !/^m\p{L}+s$/u.test(next.lower)) return undefined;
  return found(word, next, 'newton metres', `"${next.lower}" behind "${word.lower}"`);
}

/** "Sixteen non-center". */
function onCentre(words: readonly Heard[], at: number): Found | undefined {
  const [word, next] = [words[at] as Heard, nextOf(words, at)];
  if (word.lower !== 'non' || !/^cent(?:er|re)s?$/.test(next?.lower ?? '')) return undefined;
  return found(word, word, 'on', `"${word.lower}" before "${next?.lower}" sounds like "on"`);
}

/** "Six hundred forty books" in a country of dollars: so many books are on no shelf of a build. */
function bucks(words: readonly Heard[], at: number, units: ReadContext['units']): Found | undefined {
  const word = words[at] as Heard;
  if (word.lower !== 'books' || units === 'metric' || !isInHundreds(words, at - 1)) return undefined;
  return found(word, word, 'bucks', '"books" after so many hundreds sounds like "bucks"');
}

/** "A two hour weight between coats". */
function soLongAWait(words: readonly Heard[], at: number): Found | undefined {
  const word = words[at] as Heard;
  const isTime = /^(?:minute|hour|day|week|month)$/.test(words[at - 1]?.lower ?? '');
  if (word.lower !== 'weight' || !isTime || !isNumber(words[at - 2])) return undefined;
  return found(word, word, 'wait', `"weight" after "${words[at - 1]?.lower}" sounds like "wait"`);
}

/** "22 milfoam", "eighteen milpligh": the unit and what it is of, run together. */
function runTogether({ start, end, lower }: Heard): Found | undefined {
  const rest = /^mill?(?=[^aeioul])(\p{L}{3,})$/u.exec(lower)?.[1];
  if (rest === undefined || isKnownWord(lower) || isKnownWord(lower.replace(/s$/, ''))) return undefined;
  const [nearest] = tradeBySound().like(rest);
  const thing = !isKnownWord(rest) && nearest && nearest.distance <= FARTHEST_THING ? nearest.word : rest;
  const means = `mil ${thing}`;
  return { start, end, means, why: `a unit and its thing run together: ${means}` };
}
const FARTHEST_THING = 0.2;
