/**
 * Numbers that a recogniser wrote in pieces: "700 and 42 millimetres", "a 100 and 5 mil", "eight, eight, five",
 * "31 and 1 4th". They are put together only where the pieces cannot be numbers of their own.
 */
import { DIGIT_WORDS } from '../numbers/number-words.ts';
import { digitsOf, isEnd, isNumber, isSize, isUnit, SMALL_DIGITS } from './number-places.ts';
import type { Heard, Repair, RepairRule } from './repair.ts';

type Found = Omit<Repair, 'rule'>;

/** Puts numbers together that were said as one. Heard talk only. */
export const numberForms: RepairRule = (words, { isHeard }) => {
  if (!isHeard) return [];
  const found: Found[] = [];
  for (let at = 0; at < words.length; at++) {
    const one = hundredsAndRest(words, at) ?? digitsWithPauses(words, at) ?? writtenPart(words, at);
    if (!one) continue;
    found.push(one.repair);
    at = one.last;
  }
  return found;
};

interface Joined {
  readonly repair: Found;
  /** Place of the last word of it. */
  readonly last: number;
}

function joined(words: readonly Heard[], from: number, last: number, means: string): Joined {
  const [first, end] = [words[from] as Heard, words[last] as Heard];
  return { last, repair: { start: first.start, end: end.end, means, why: `one number in pieces: ${means}` } };
}

/** Words before two numbers that are two: "between 100 and 20", "by 400 and 60". */
const OF_TWO = /^(?:between|from|both|either|by|and|plus|minus|x)$/;

/** "700 and 42 millimetres", "100 20 deep", "1000 50 long", "2 100 and 50 wide". */
function hundredsAndRest(words: readonly Heard[], at: number): Joined | undefined {
  const start = hundredsAt(words, at);
  if (!start || OF_TWO.test(words[at - 1]?.lower ?? '') || isNumber(words[at - 1])) return undefined;
  let { value, last } = start;
  let room = value % 1000 === 0 ? 1000 : 100;
  let isAnd = false;
  while (room > 1) {
    const step = !isEnd(words, last + 1) && words[last + 1]?.lower === 'and' ? 2 : 1;
    const rest = restAt(words, last + step);
    if (!rest || rest >= room) break;
    isAnd ||= step === 2;
    value += rest;
    last += step;
    room = rest % 100 === 0 ? 100 : 1;
  }
  if (last === start.last) return undefined;
  // "300 5" alone may be two numbers; a unit or a word of size behind makes it one.
  if (isEnd(words, last + 1) ? !isAnd : !isOfOne(words, last + 1)) return undefined;
  return joined(words, at, last, String(value));
}

/** A word of size, or a unit with no pieces behind it: in "600 and 20 mm boards" the boards have a size of their own. */
function isOfOne(words: readonly Heard[], at: number): boolean {
  if (isSize(words[at])) return true;
  const pieces = isEnd(words, at + 1) ? '' : (words[at + 1]?.lower ?? '');
  return isUnit(words[at]) && !/^\p{L}{3,}[^s]s$/u.test(pieces);
}

/** Digits, or the small word that sounds like one, straight before a unit: "600 and to mil". */
function restAt(words: readonly Heard[], at: number): number | undefined {
  if (isEnd(words, at)) return undefined;
  const small =
    isUnit(words[at + 1]) && !isEnd(words, at + 1) ? SMALL_DIGITS.get(words[at]?.lower ?? '') : undefined;
  return digitsOf(words[at]) ?? (words[at - 1]?.lower === 'and' ? small : undefined);
}

/** A number of whole hundreds in digits: "700", "1,000" (two words to the cutter), "2 100". */
function hundredsAt(
  words: readonly Heard[],
  at: number,
): { readonly value: number; readonly last: number } | undefined {
  const [value, next] = [digitsOf(words[at]), digitsOf(words[at + 1])];
  if (value === undefined) return undefined;
  const isGrouped = words[at + 1]?.lower === '000' && words[at + 1]?.start === (words[at]?.end ?? 0) + 1;
  if (isGrouped && value < 100) return { value: value * 1000, last: at + 1 };
  if (value >= 2 && value <= 9 && next === 100 && !isEnd(words, at + 1))
    return { value: value * 100, last: at + 1 };
  const isWhole = value % 100 === 0 && value >= 100 && value < 10_000;
  return isWhole && words[at]?.lower !== '000' ? { value, last: at } : undefined;
}

/** "Eight, eight, five", "seven, three zero", "five, five, one, two across". Digits that only rise or fall are counted or a list. */
function digitsWithPauses(words: readonly Heard[], at: number): Joined | undefined {
  if (isNumber(words[at - 1])) return undefined;
  const digits: number[] = [];
  let pauses = 0;
  for (let k = at; k < at + 5; k++) {
    const digit = DIGIT_WORDS.get(words[k]?.lower ?? '');
    const isBroken = k > at && words[k]?.opens && !words[k]?.pauses;
    if (digit === undefined || isBroken) break;
    if (k > at && words[k]?.pauses) pauses++;
    digits.push(digit);
  }
  const last = at + digits.length - 1;
  if (pauses === 0 || digits.length < 3 || digits.length > 4 || digits[0] === 0 || isOneWay(digits))
    return undefined;
  const next = words[last + 1];
  if (!isEnd(words, last + 1) && !isUnit(next) && !isSize(next)) return undefined;
  if (next?.pauses && isNumber(next)) return undefined;
  const said = words.slice(at, last + 1).map(({ lower }) => lower);
  return joined(words, at, last, said.join(' '));
}

/** Whether digits only rise, only fall or are all the same. */
function isOneWay(digits: readonly number[]): boolean {
  const steps = digits.slice(1).map((digit, k) => Math.sign(digit - (digits[k] as number)));
  return steps.every((step) => step === steps[0]);
}

/** "31 and 1 4th tall", "3 8ths of an inch": parts of an inch in digits. */
function writtenPart(words: readonly Heard[], at: number): Joined | undefined {
  const over = digitsOf(words[at]);
  const under = /^(4|8|16|32|64)ths?$/.exec(words[at + 1]?.lower ?? '')?.[1];
  if (over === undefined || under === undefined || isEnd(words, at + 1)) return undefined;
  if (over % 2 === 0 || over >= Number(under)) return undefined;
  const isBehind = words[at - 1]?.lower === 'and' && isNumber(words[at - 2]);
  const isOfInch = /^(?:inch|inches|of)$/.test(words[at + 2]?.lower ?? '');
  return isBehind || isOfInch ? joined(words, at, at + 1, `${over}/${under}`) : undefined;
}
