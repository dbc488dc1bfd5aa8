/** "862, that's the bench less the top, 38": the figure behind a sum that is the size of its last part. */
import type { Phrase } from './noun-phrases.ts';
import { type Parse, phraseAt, tagAt, wordAt } from './parse.ts';

const BETWEEN = /^(?:at|which|that|being)$/;
/** Words between the part and its size: "the top, 38", "the top, which is 38", "the top at 38". */
const MOST_BETWEEN = 3;

export interface PartInSum {
  readonly whole: Phrase;
  readonly part: Phrase;
}

/**
 * The part of a sum that a quantity is the size of, where the sum's result stands before it: what comes behind a sum
 * is its result otherwise ("the bench less the top, 862").
 */
export function partInSum(parse: Parse, quantity: number): PartInSum | undefined {
  let at = quantity - 1;
  for (let steps = 0; steps < MOST_BETWEEN && isBetween(parse, at); steps++) at--;
  if (at === quantity - 1) return undefined;
  const part = phraseAt(parse, at);
  if (!part || part.last !== at || part.pronoun) return undefined;
  const sum = part.first - 1;
  if (!/^(?:less|minus|plus)$/.test(wordAt(parse, sum))) return undefined;
  const whole = wholeBefore(parse, sum);
  return whole && { whole, part };
}

const isBetween = (parse: Parse, at: number): boolean =>
  tagAt(parse, at) === 'comma' || tagAt(parse, at) === 'be' || BETWEEN.test(wordAt(parse, at));

/** The bench, where a quantity stands right before "that's the bench", "which is the bench", "being the bench". */
function wholeBefore(parse: Parse, sum: number): Phrase | undefined {
  const whole = phraseAt(parse, sum - 1);
  if (!whole || whole.last !== sum - 1) return undefined;
  let at = whole.first - 1;
  if (tagAt(parse, at) !== 'be' && wordAt(parse, at) !== 'being') return undefined;
  at--;
  if (/^(?:that|which|so)$/.test(wordAt(parse, at))) at--;
  if (tagAt(parse, at) === 'comma') at--;
  if (tagAt(parse, at) === 'dimension') at--;
  return tagAt(parse, at) === 'quantity' ? whole : undefined;
}
