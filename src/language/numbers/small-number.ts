/** Small whole numbers in words, where no unit helps to read them: "six of the eight", "the hull was twenty two". */
import { DIGIT_WORDS, TEEN_WORDS, TENS_WORDS } from './number-words.ts';

const SINGLE: ReadonlyMap<string, number> = new Map([
  ...DIGIT_WORDS,
  ...TEEN_WORDS,
  ...TENS_WORDS,
  ['dozen', 12],
]);

/** The number of one word, of digits, or of a ten and a digit in two ("twenty two", "twenty-two"); below a hundred in words. */
export function smallNumber(words: string): number | undefined {
  const said = words.toLowerCase().trim();
  if (/^\d{1,4}(?:\.\d+)?$/.test(said)) return Number(said);
  const [first = '', second, more] = said.split(/[\s-]+/);
  if (more !== undefined) return undefined;
  if (second === undefined) return SINGLE.get(first);
  const [tens, digit] = [TENS_WORDS.get(first), DIGIT_WORDS.get(second)];
  return tens === undefined || digit === undefined || digit === 0 ? undefined : tens + digit;
}
