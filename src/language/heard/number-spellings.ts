import { SCALE_WORDS, TEEN_WORDS, TENS_WORDS } from '../numbers/number-words.ts';
import { NUMBER_WORDS } from '../statements/vocabulary.ts';
import { isKnownWord } from './known-words.ts';
import type { RepairRule } from './repair.ts';

/** Number words that are long enough to be known with one letter off. */
const LONG = [
  'hundred',
  'seven',
  'eight',
  'three',
  ...TEEN_WORDS.keys(),
  ...TENS_WORDS.keys(),
  ...SCALE_WORDS.keys(),
].filter((word) => word.length >= 5 && word !== 'fourty');

/** Reads a word that is none, one letter off a number word, as that number: "forteen", "ninty". Heard talk only. */
export const numberSpellings: RepairRule = (words, { isHeard }) => {
  if (!isHeard) return [];
  return words.flatMap(({ lower, start, end }) => {
    if (
      lower.length < 4 ||
      lower.length > 10 ||
      TENS_WORDS.has(lower) ||
      NUMBER_WORDS.has(lower) ||
      isKnownWord(lower)
    )
      return [];
    const meant = LONG.filter((word) => isOneOff(lower, word));
    const [means] = meant;
    return means !== undefined && meant.length === 1
      ? [{ start, end, means, why: `"${lower}" is no word; "${means}" is a letter off` }]
      : [];
  });
};

/** Whether one letter put in, left out or changed makes the one word the other. */
function isOneOff(a: string, b: string): boolean {
  if (a === b || Math.abs(a.length - b.length) > 1 || a[0] !== b[0]) return false;
  let at = 0;
  while (at < a.length && a[at] === b[at]) at++;
  const [restA, restB] = [a.slice(at), b.slice(at)];
  return restA.slice(1) === restB.slice(1) || restA.slice(1) === restB || restA === restB.slice(1);
}
