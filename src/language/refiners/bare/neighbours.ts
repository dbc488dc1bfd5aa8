import { each, PhraseTable } from '../../phrases.ts';
import type { Amount, Room } from '../../rules/rule.ts';
import { wordAt } from '../../rules/rule.ts';
import type { Meaning } from './lengths.ts';

/** How many figures back are looked at: further off nothing is leaned on, and a long memo stays quick. */
export const REMEMBERED = 200;

/** The amount with a spoken or settled unit that stands last before this one, in the same or the sentence before. */
export function lastWithUnit(
  room: Room,
  out: readonly Amount[],
  amount: Amount,
  sentences: number,
): Amount | undefined {
  for (let index = out.length - 1; index >= 0; index--) {
    const candidate = out[index];
    if (!candidate?.unit || candidate.role === 'count') continue;
    const apart = (room.tokens[amount.from]?.sentence ?? 0) - (room.tokens[candidate.from]?.sentence ?? 0);
    return apart <= sentences ? candidate : undefined;
  }
  return undefined;
}

const PRONOUN = /^(?:it|that|they|this|these|those|she)$/;
export const close = (a: number, b: number, factor: number) => a / b <= factor && b / a <= factor;

/** "76 wide" after "114 centimetre long": a unit that was said carries on through the sizes of one thing. */
export function carriedOn(amount: Amount, last: Amount): Meaning | undefined {
  if (!last.unit || last.unitAssumed || !/^(?:cm|m|ft|yd)$/.test(last.unit)) return undefined;
  if (!close(amount.value, last.value, 5) || (last.unit !== 'cm' && amount.value >= 30)) return undefined;
  return { value: amount.value, unit: last.unit, dimension: 'length', why: 'the unit of the size before it' };
}

/** "at 21 per cent and I want under 18", "six thou at the front, two at the back", "in at 30 psi, out at 50". */
export function parallelTo(room: Room, amount: Amount, last: Amount | undefined): Meaning | undefined {
  if (!last?.unit || !last.dimension || last.dimension === 'money' || last.unitAssumed) return undefined;
  if (!close(amount.value, last.value, 5)) return undefined;
  const same = (a: number, b: number, words: RegExp) =>
    wordAt(room, a) === wordAt(room, b) && words.test(wordAt(room, a));
  const sameAfter = same(amount.to, last.to, /^(?:at|on|in|for|off|from|a|each)$/);
  const sameBefore = same(
    amount.from - 1,
    last.from - 1,
    /^(?:at|to|on|in|below|above|under|over|draws|holds)$/,
  );
  const bounded = amount.boundSaid && amount.bound !== 'about';
  // "the fresh tank's 180 litres, the grey's a ninety".
  const another = /^an?$/.test(wordAt(room, amount.from - 1));
  const sameThing = subjectIsPronoun(room, amount) || bounded || sameAfter || sameBefore || another;
  if (last.dimension === 'length' ? !sameAfter : !sameThing) return undefined;
  if (last.dimension === 'length' && /^(?:m|ft|yd|km)$/.test(last.unit)) return undefined;
  const why = 'the unit of the figure before it';
  return { value: amount.value, unit: last.unit, dimension: last.dimension, why };
}

export function subjectIsPronoun(room: Room, amount: Amount): boolean {
  for (let index = amount.from - 1; index > amount.from - 7; index--) {
    const word = wordAt(room, index);
    if (PRONOUN.test(word)) return true;
    if (/^[.;:!?]$/.test(word)) return false;
  }
  return false;
}

/** "330 all told" after three of 110 amp hours: a total is in the unit of its parts. */
export function asTotal(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (!TOTAL_AFTER.startingAt(room.tokens, amount.to)) return undefined;
  const part = lastWithUnit(room, out, amount, 1);
  if (!part?.unit || !part.dimension || part.dimension === 'time' || part.value > amount.value)
    return undefined;
  const dimension = part.dimension;
  return { value: amount.value, unit: part.unit, dimension, why: 'a total in the unit of its parts' };
}
const TOTAL_AFTER = new PhraseTable<true>(
  each(true, 'all told, altogether, in total, in all, all in, total'),
);

/** "bottom plate's 10 mil, the sides are 6": like the length that was said before it in the sentence. */
export function likeTheLast(room: Room, amount: Amount, out: readonly Amount[]): boolean {
  const last = lastWithUnit(room, out, amount, 0);
  const be = /^(?:'s|is|are|was|be|at|to)$/.test(wordAt(room, amount.from - 1));
  return be && last?.unit === 'mm' && !last.unitAssumed && close(last.value, amount.value, 3);
}
