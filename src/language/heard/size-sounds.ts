import type { ReadContext } from '../notes.ts';
import { isEnd, isInHundreds, isNumber } from './number-places.ts';
import type { Heard, RepairRule } from './repair.ts';

/** What recognisers write for a word of size, and the word. Only ever read so beside a length. */
const AFTER_LENGTH: ReadonlyMap<string, string> = new Map(
  Object.entries({
    white: 'wide',
    wired: 'wide',
    hi: 'high',
    tick: 'thick',
    sick: 'thick',
    deaf: 'deep',
    lawn: 'long',
  }),
);

/** The same behind a bare number of hundreds, in talk that was heard. */
const AFTER_BARE: ReadonlyMap<string, string> = new Map(
  Object.entries({ height: 'high', sheep: 'deep', cheap: 'deep' }),
);

/** "No whiter than 740". */
const COMPARED: ReadonlyMap<string, string> = new Map(
  Object.entries({ whiter: 'wider', ticker: 'thicker', sicker: 'thicker', hire: 'higher' }),
);

/** "The with is 900 mil": a word of size where a thing stands that is so many units. */
const NAMED: ReadonlyMap<string, string> = new Map(
  Object.entries({ with: 'width', hide: 'height', death: 'depth' }),
);

const LENGTH = new Set(
  `mil mils mm millimetre millimetres millimeter millimeters cm centimetre centimetres centimeter centimeters metre metres
  meter meters inch inches foot feet ft thou meal mail mills`.split(/\s+/),
);
const isLength = (word: Heard | undefined, before: Heard | undefined) =>
  word !== undefined &&
  !word.opens &&
  ((LENGTH.has(word.lower) && isNumber(before)) || /^\d+(?:mm|cm|m|ft|in)$/.test(word.lower));

/** Words that go on after a size; a thing that is called white, or hi as a greeting, has its noun or a pause about it. */
const GOES_ON = new Set(
  'by and at in on the with so or but to over inside outside which when because'.split(' '),
);

/**
 * Reads a word of size where a recogniser wrote a word that sounds like it, where a length stands beside it: "900 mil
 * white" is wide, "no whiter than 740" wider, "the with is 900 mil" the width. "Two metres of white rope", "a 50 mil
 * white pipe", "600 mil with the lid" keep their words.
 */
export const sizeSounds: RepairRule = (words, { isHeard, units }) =>
  words.flatMap((word, at) => {
    const bare = isHeard ? (afterBareNumber(words, at) ?? deepBy(words, at, units)) : undefined;
    const means = afterLength(words, at) ?? compared(words, at) ?? named(words, at) ?? bare;
    if (means === undefined) return [];
    const why = `"${word.lower}" beside a length sounds like "${means}"`;
    return [{ start: word.start, end: word.end, means, why }];
  });

function afterLength(words: readonly Heard[], at: number): string | undefined {
  const word = words[at] as Heard;
  const means = AFTER_LENGTH.get(word.lower);
  if (!means || word.opens) return undefined;
  const next = words[at + 1];
  if (!isLength(words[at - 1], words[at - 2])) return isOfTwo(words, at) ? means : undefined;
  return !next || next.opens || GOES_ON.has(next.lower) ? means : undefined;
}

/** "920 white by 2040 hi": of two sizes in a row the house unit may stay unsaid. */
const isOfTwo = (words: readonly Heard[], at: number) =>
  isNumber(words[at - 1]) &&
  ((words[at + 1]?.lower === 'by' && isNumber(words[at + 2])) ||
    (words[at - 2]?.lower === 'by' && (words[at + 1]?.opens ?? true)));

/** "595 white on the list", "220 hi": so many hundreds are no count of anything that ends there. Heard talk only. */
function afterBareNumber(words: readonly Heard[], at: number): string | undefined {
  const word = words[at] as Heard;
  const means = AFTER_BARE.get(word.lower) ?? AFTER_LENGTH.get(word.lower);
  const next = words[at + 1];
  if (!means || word.opens || !isInHundreds(words, at - 1)) return undefined;
  // Two hundred sheep are a flock.
  if (means === 'deep' && /(?:hundred|00)$/.test(words[at - 1]?.lower ?? '')) return undefined;
  return !next || next.opens || GOES_ON.has(next.lower) ? means : undefined;
}

/** "Three hundred feet by one fifty" where the house is metric: no part of a build is as long as that. */
function deepBy(words: readonly Heard[], at: number, units: ReadContext['units']): string | undefined {
  const word = words[at] as Heard;
  if (word.lower !== 'feet' || word.opens || units !== 'metric' || !isInHundreds(words, at - 1))
    return undefined;
  return words[at + 1]?.lower === 'by' && !isEnd(words, at + 1) && isNumber(words[at + 2])
    ? 'deep'
    : undefined;
}

function compared(words: readonly Heard[], at: number): string | undefined {
  const means = COMPARED.get((words[at] as Heard).lower);
  if (!means || words[at + 1]?.lower !== 'than') return undefined;
  return isNumber(words[at + 2]) ? means : undefined;
}

function named(words: readonly Heard[], at: number): string | undefined {
  const means = NAMED.get((words[at] as Heard).lower);
  if (!means || !/^(?:the|its|overall|total|inside|outside)$/.test(words[at - 1]?.lower ?? ''))
    return undefined;
  if (!/^(?:is|was|comes|at|of)$/.test(words[at + 1]?.lower ?? '')) return undefined;
  return lengthSoon(words, at + 2) ? means : undefined;
}

/** "the width is about nine hundred mil": a number within a few words, and its unit behind it. */
function lengthSoon(words: readonly Heard[], from: number): boolean {
  for (let k = from; k < from + 7; k++) if (isLength(words[k], words[k - 1])) return true;
  return false;
}
