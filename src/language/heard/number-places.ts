/** What stands beside a number in talk as a recogniser wrote it. */
import { DENOMINATORS, DIGIT_WORDS, TENS_WORDS } from '../numbers/number-words.ts';
import { NUMBER_WORDS } from '../statements/vocabulary.ts';
import { UNIT_TABLE } from '../units/unit-table.ts';
import type { Heard } from './repair.ts';

/** A number in words or digits, or a part of one. */
export const isNumber = (word: Heard | undefined): boolean =>
  word !== undefined && (NUMBER_WORDS.has(word.lower) || /^\d/.test(word.lower));

/** Words that units begin with and that say something else alone. */
const NO_UNITS = new Set([
  'square',
  'cubic',
  'linear',
  'lineal',
  'running',
  'lin',
  'sq',
  'cu',
  'point',
  'points',
]);
const UNITS: ReadonlySet<string> = new Set(
  UNIT_TABLE.flatMap(({ spoken, short = [] }) => [
    ...spoken.map((text) => text.split(' ')[0] as string),
    ...short,
  ]).filter((word) => /^(?:\p{L}{3,}|mm|cm|kg|kw|ml)$/u.test(word) && !NO_UNITS.has(word)),
);

/** A unit written out: "mil", "inches". */
export const isUnit = (word: Heard | undefined): boolean => word !== undefined && UNITS.has(word.lower);

const SIZES = new Set('wide high long deep thick tall across overall apart'.split(' '));

/** A word of size: "wide", "across". */
export const isSize = (word: Heard | undefined): boolean => word !== undefined && SIZES.has(word.lower);

/** Whether nothing, or a mark, stands at this place. */
export const isEnd = (words: readonly Heard[], at: number): boolean => words[at]?.opens ?? true;

/** Digits without their commas; undefined for words and for what is no whole number. */
export const digitsOf = (word: Heard | undefined): number | undefined =>
  word && /^\d{1,7}$/.test(word.lower) ? Number(word.lower) : undefined;

/** Whether the number that ends at this place is of hundreds: "one hundred ninety five", "595". */
export function isInHundreds(words: readonly Heard[], at: number): boolean {
  for (let k = at; k > at - 6 && isNumber(words[k]); k--) {
    if (words[k]?.lower === 'hundred' || /^[1-9]\d{2,3}$/.test(words[k]?.lower ?? '')) return true;
    if (words[k]?.opens) return false;
  }
  return false;
}

/** Whether a number may go on with one digit behind this word: "twenty", "20", "hundred", "900". */
export function takesDigit(word: Heard | undefined): boolean {
  if (!word) return false;
  const digits = digitsOf(word);
  if (digits !== undefined) return digits >= 20 && digits % 10 === 0;
  return TENS_WORDS.has(word.lower) || word.lower === 'hundred' || word.lower === 'thousand';
}

/** "A half", "three fourths", "half": the part of a whole that begins here. */
export function isPart(words: readonly Heard[], at: number): boolean {
  const [first, second] = [words[at]?.lower ?? '', words[at + 1]?.lower ?? ''];
  if (first === 'half') return true;
  return (/^an?$/.test(first) || DIGIT_WORDS.has(first)) && DENOMINATORS.has(second);
}

/** The digit that a small word sounds like; which of the two was said is for its place to tell. */
export const SMALL_DIGITS: ReadonlyMap<string, number> = new Map([
  ['to', 2],
  ['too', 2],
  ['for', 4],
  ['fore', 4],
]);
