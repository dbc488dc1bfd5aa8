/**
 * Small words that a recogniser wrote where a number was said: "nine foot to", "fifty to and a quarter", "ate hundred".
 * Each is read as the number only where the small word cannot stand: straight before a unit, a word of size or the end,
 * behind a number that it goes on. "Fifty to sixty", "cut it to mil by mil" and "nine foot to the plate" keep their words.
 */
import { DIGIT_WORDS } from '../numbers/number-words.ts';
import { isKnownWord } from './known-words.ts';
import {
  digitsOf,
  isEnd,
  isNumber,
  isPart,
  isSize,
  isUnit,
  SMALL_DIGITS,
  takesDigit,
} from './number-places.ts';
import type { Heard, Repair, RepairRule } from './repair.ts';

const WORDS: Readonly<Record<number, string>> = { 2: 'two', 4: 'four' };

/** Other words that sound like a number; before a hundred or a unit nothing else can stand. */
const BEFORE_UNIT: ReadonlyMap<string, string> = new Map(
  Object.entries({ ate: 'eight', won: 'one', free: 'three', tree: 'three', fore: 'four' }),
);

type Found = Omit<Repair, 'rule'>;
type Part = (words: readonly Heard[], at: number) => Found | undefined;

/** Reads a small word as the number that sounds like it, where only the number makes sense. Heard talk only. */
export const numberSounds: RepairRule = (words, { isHeard }) =>
  isHeard ? words.flatMap((_, at) => first(words, at) ?? []) : [];

const PARTS: readonly Part[] = [
  goesOn,
  afterFeet,
  afterPoint,
  least,
  isSoMany,
  andAPart,
  beforeUnit,
  smallBeforeUnit,
  sixteenths,
  forSoLong,
];

function first(words: readonly Heard[], at: number): Found | undefined {
  for (const part of PARTS) {
    const found = part(words, at);
    if (found) return found;
  }
  return undefined;
}

const read = ({ start, end, lower }: Heard, means: string, where: string): Found => ({
  start,
  end,
  means,
  why: `"${lower}" ${where} sounds like "${means}"`,
});

const digitAt = (words: readonly Heard[], at: number): number | undefined =>
  words[at]?.opens ? undefined : SMALL_DIGITS.get(words[at]?.lower ?? '');
const wordOf = (digit: number): string => WORDS[digit] ?? String(digit);

/** Words that neither "to" nor "for" can stand before. */
const NO_COMPLEMENT = new Set('is are was were and or but by which'.split(' '));

/** Whether a number, and no "to" or "for", ends before this place. */
function closes(words: readonly Heard[], at: number): boolean {
  const word = words[at];
  if (isEnd(words, at) || isUnit(word) || isSize(word)) return true;
  if (/^(?:and|end)$/.test(word?.lower ?? '') && isPart(words, at + 1)) return true;
  if (word?.lower === 'end' && words[at + 1]?.lower === 'of' && words[at + 2]?.lower === 'half') return true;
  return NO_COMPLEMENT.has(word?.lower ?? '') && !isNumber(words[at + 1]);
}

/** "Convert 40 to inches", "twenty to" of a clock: here it is the small word. */
const TURNS = /^(?:convert\w*|switch\w*|chang\w*|turn\w*|round\w*|from|at|by|till|until|it's)$/;

/** "Fifty to and three fourths", "forty for mil", "900 to wide", "nine hundred to to get it level". */
function goesOn(words: readonly Heard[], at: number): Found | undefined {
  const [before, word] = [words[at - 1], words[at]];
  const digit = digitAt(words, at);
  if (!digit || !before || !word || !takesDigit(before)) return undefined;
  const isTwice = word.lower === 'to' && words[at + 1]?.lower === 'to' && !isEnd(words, at + 1);
  if (!isTwice && !closes(words, at + 1)) return undefined;
  // "What was the fifty for?" and "at twenty to." end so; "one twenty to." does not.
  if (
    isEnd(words, at + 1) &&
    (digit === 4 || /^(?:twenty|20)$/.test(before.lower)) &&
    !isNumber(words[at - 2])
  )
    return undefined;
  if ([2, 3].some((back) => TURNS.test(words[at - back]?.lower ?? ''))) return undefined;
  const digits = digitsOf(before);
  if (digits === undefined) return read(word, wordOf(digit), 'behind a number');
  return { ...read(word, String(digits + digit), `behind ${digits}`), start: before.start };
}

/** "Nine foot to on the tall side", "seventeen foot for and a half": inches behind feet. */
function afterFeet(words: readonly Heard[], at: number): Found | undefined {
  const digit = digitAt(words, at);
  if (!digit || !/^(?:foot|feet)$/.test(words[at - 1]?.lower ?? '') || !isNumber(words[at - 2]))
    return undefined;
  const isOn = words[at + 1]?.lower === 'on' && !isEnd(words, at + 1);
  if (!isOn && !closes(words, at + 1)) return undefined;
  return read(words[at] as Heard, wordOf(digit), 'behind feet');
}

/** "Five point for eight", "two point seven for metres". */
function afterPoint(words: readonly Heard[], at: number): Found | undefined {
  const digit = digitAt(words, at);
  if (!digit) return undefined;
  const direct = words[at - 1]?.lower === 'point' && isNumber(words[at - 2]);
  const later =
    DIGIT_WORDS.has(words[at - 1]?.lower ?? '') &&
    words[at - 2]?.lower === 'point' &&
    isNumber(words[at - 3]);
  if (!direct && !later) return undefined;
  const goes = direct && !isEnd(words, at + 1) && DIGIT_WORDS.has(words[at + 1]?.lower ?? '');
  if (!goes && (!closes(words, at + 1) || (later && isEnd(words, at + 1)))) return undefined;
  return read(words[at] as Heard, wordOf(digit), 'behind a point');
}

const COMPARED = /^(?:less|more|fewer|\p{L}{3,}er)$/u;

/** "No less than for each side", "at least to mil". */
function least(words: readonly Heard[], at: number): Found | undefined {
  const digit = digitAt(words, at);
  const before = words[at - 1]?.lower ?? '';
  const isLeast =
    (before === 'than' && COMPARED.test(words[at - 2]?.lower ?? '') && words[at - 2]?.lower !== 'rather') ||
    (/^(?:least|most)$/.test(before) && words[at - 2]?.lower === 'at');
  if (!digit || !isLeast) return undefined;
  const next = words[at + 1];
  if (isEnd(words, at + 1) || !(isUnit(next) || isSize(next) || /^(?:each|either)$/.test(next?.lower ?? '')))
    return undefined;
  return read(words[at] as Heard, wordOf(digit), `behind "${before}"`);
}

/** "The shelf is to forty deep": nothing is "to" a number. "Is for 50 mil board" may be meant: see number-doubts.ts. */
function isSoMany(words: readonly Heard[], at: number): Found | undefined {
  const [be, word, next] = [words[at - 1], words[at], words[at + 1]];
  if (
    !word ||
    word.opens ||
    !/^(?:to|too)$/.test(word.lower) ||
    !/^(?:is|was|are|were)$/.test(be?.lower ?? '')
  )
    return undefined;
  if (!next || next.opens || !(takesDigit(next) || /^[1-9]\d$/.test(next.lower))) return undefined;
  if (/^(?:hundred|thousand)$/.test(next.lower)) return undefined;
  const last = isNumber(words[at + 2]) && !isEnd(words, at + 2) ? at + 2 : at + 1;
  if (!isUnit(words[last + 1]) && !isSize(words[last + 1])) return undefined;
  const digits = digitsOf(next);
  if (digits === undefined) return read(word, 'two', 'before a number');
  return digits < 100
    ? { ...read(word, String(200 + digits), `before ${digits}`), end: next.end }
    : undefined;
}

/** "Fifty two end a quarter", "eight four end of half". */
function andAPart(words: readonly Heard[], at: number): Found | undefined {
  const [before, word] = [words[at - 1], words[at]];
  if (!word || word.opens || word.lower !== 'end' || isEnd(words, at + 1)) return undefined;
  const isBehind = isNumber(before) || isUnit(before) || SMALL_DIGITS.has(before?.lower ?? '');
  if (!isBehind) return undefined;
  if (isPart(words, at + 1)) return read(word, 'and', 'before a part');
  const [of, half] = [words[at + 1], words[at + 2]];
  if (of?.lower !== 'of' || half?.lower !== 'half' || isEnd(words, at + 2)) return undefined;
  return { ...read(word, 'and a', 'before a part'), end: of.end };
}

/** "For hundred litres": whoever says one hundred says "a" or "one" with it. See number-doubts.ts for the other way. */
const beforeNumber = (word: string | undefined, next: string | undefined): string | undefined =>
  word === 'for' && /^(?:hundred|thousand)$/.test(next ?? '') ? 'four' : undefined;

/** Before "to mil" these want a number. */
const WANTS_NUMBER = /^(?:a|the|another|within|about|only|just|nearly|over|under|is|was|by)$/;

/** "Sit too foot off the floor", "the lining for mil ply", "within to mil": the unit has no other number. */
function smallBeforeUnit(words: readonly Heard[], at: number): Found | undefined {
  const [before, word, next] = [words[at - 1], words[at], words[at + 1]];
  const digit = digitAt(words, at);
  if (!digit || !word || !next || isEnd(words, at + 1) || isNumber(before)) return undefined;
  const isThin = /^(?:mil|mm|millimet(?:re|er)s)$/.test(next.lower) || isThinStuff(next.lower);
  const isSure =
    word.lower === 'too' || (isThin && (word.lower === 'for' || WANTS_NUMBER.test(before?.lower ?? '')));
  return isSure && (isThin || isUnit(next)) ? read(word, wordOf(digit), `before "${next.lower}"`) : undefined;
}

/** "Milply": a unit and what it is of, run together. See unit-sounds.ts. */
const isThinStuff = (word: string) => /^mill?(?=[^aeioul])\p{L}{3,}$/u.test(word) && !isKnownWord(word);

/** "Eleven sixties" of an inch: nobody counts in sixties. */
function sixteenths(words: readonly Heard[], at: number): Found | undefined {
  const [before, word] = [words[at - 1], words[at]];
  if (word?.lower !== 'sixties' || word.opens) return undefined;
  const isOdd = /^(?:one|three|five|seven|nine|eleven|thirteen|fifteen|1|3|5|7|9|11|13|15)$/;
  return isOdd.test(before?.lower ?? '') ? read(word, 'sixteenths', `behind "${before?.lower}"`) : undefined;
}

/** "Ate hundred", "free foot", "won metre twenty". */
function beforeUnit(words: readonly Heard[], at: number): Found | undefined {
  const [word, next] = [words[at], words[at + 1]];
  const means = beforeNumber(word?.lower, next?.lower) ?? BEFORE_UNIT.get(word?.lower ?? '');
  if (!word || !means || isEnd(words, at + 1) || isNumber(words[at - 1])) return undefined;
  const isScale = /^(?:hundred|thousand|point)$/.test(next?.lower ?? '');
  return isScale || isUnit(next) ? read(word, means, `before "${next?.lower}"`) : undefined;
}

/** "Held at three bar four an hour": nothing is counted there. */
function forSoLong(words: readonly Heard[], at: number): Found | undefined {
  const [before, word] = [words[at - 1], words[at]];
  if (!word || word.opens || word.lower !== 'four' || !isUnit(before) || !isNumber(words[at - 2]))
    return undefined;
  const [article, time] = [words[at + 1]?.lower ?? '', words[at + 2]?.lower ?? ''];
  const isTime = /^an?$/.test(article) && /^(?:minute|hour|day|week|month|year|while|bit)$/.test(time);
  return isTime ? read(word, 'for', 'before a time') : undefined;
}
