/** Said and heard words set side by side, and what a repair did to them. */

import { timesSaid } from '../../src/language/heard/neighbours.ts';
import { heardWords } from '../../src/language/heard/repair.ts';
import { soundDistance, soundsOf } from '../../src/language/heard/sounds.ts';
import { classOf } from '../../src/language/heard/word-classes.ts';
import { thingWords, tradeWords } from '../../src/language/lexicon/trade-words.ts';
import { NUMBER_WORDS } from '../../src/language/statements/vocabulary.ts';

/**
 * Words as said and as heard are compared: one spelling, no apostrophes (no voice speaks them), and names that are written
 * as one word or as two written as one.
 */
export function plainWords(text: string): readonly string[] {
  const words = heardWords(text).map(({ lower }) => plainWord(lower));
  const joined: string[] = [];
  for (let at = 0; at < words.length; at++) {
    const both = `${words[at]}${words[at + 1] ?? ''}`;
    if (words[at + 1] !== undefined && COMPOUNDS.has(both)) {
      joined.push(both);
      at++;
    } else joined.push(words[at] as string);
  }
  return joined;
}

export const plainWord = (word: string): string =>
  word
    .replaceAll("'", '')
    .replace(/(met|lit|cent|fib)re(s?)$/, '$1er$2')
    .replace(/^grey$/, 'gray')
    .replace(/(col|harb|lab|fav|arm)our/, '$1or')
    .replace(/aluminium/, 'aluminum')
    .replace(/(?<=\w{3})is(?=e$|es$|ed$|ing$)/, 'iz')
    .replace(/^(t)y(re)(s?)$/, '$1i$2$3')
    .replace(/^mould/, 'mold')
    .replace(/^plough/, 'plow');

/** For each said word the place of the heard word beside it, or -1. */
export type Pairing = Int32Array;

const GAP = 3;
const distances = new Map<string, number>();
function unlike(a: string, b: string): number {
  if (a === b) return 0;
  const key = `${a} ${b}`;
  let found = distances.get(key);
  if (found === undefined) {
    found = 1 + 4 * Math.min(1, 1.6 * soundDistance(soundsOf(a), soundsOf(b)));
    distances.set(key, found);
  }
  return found;
}

/** Sets the words side by side at least cost; words that sound alike stand together. */
export function align(said: readonly string[], heard: readonly string[]): Pairing {
  const width = heard.length + 1;
  const costs = new Float32Array((said.length + 1) * width);
  for (let s = 0; s <= said.length; s++)
    for (let h = 0; h <= heard.length; h++) {
      if (s === 0 || h === 0) {
        costs[s * width + h] = GAP * (s + h);
        continue;
      }
      costs[s * width + h] = Math.min(
        (costs[(s - 1) * width + h - 1] as number) + unlike(said[s - 1] as string, heard[h - 1] as string),
        (costs[(s - 1) * width + h] as number) + GAP,
        (costs[s * width + h - 1] as number) + GAP,
      );
    }
  const pairing = new Int32Array(said.length).fill(-1);
  let [s, h] = [said.length, heard.length];
  while (s > 0 && h > 0) {
    const cost = costs[s * width + h] as number;
    const paired =
      (costs[(s - 1) * width + h - 1] as number) + unlike(said[s - 1] as string, heard[h - 1] as string);
    if (Math.abs(cost - paired) < 1e-3) {
      pairing[s - 1] = h - 1;
      s--;
      h--;
    } else if (Math.abs(cost - ((costs[(s - 1) * width + h] as number) + GAP)) < 1e-3) s--;
    else h--;
  }
  return pairing;
}

/** Least number of words to be changed, put in or left out. */
export function wordsApart(a: readonly string[], b: readonly string[]): number {
  let last = b.map((_, j) => j + 1);
  last.unshift(0);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++)
      row[j] = Math.min(
        (last[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1),
        (last[j] as number) + 1,
        (row[j - 1] as number) + 1,
      );
    last = row;
  }
  return last[b.length] as number;
}

/** Whether each said word was heard as it was said. */
export function heardRight(said: readonly string[], heard: readonly string[]): readonly boolean[] {
  const pairing = align(said, heard);
  return said.map((word, at) => (pairing[at] as number) >= 0 && heard[pairing[at] as number] === word);
}

/** Words that name things of the trade: numbers, verbs and everyday words are not meant. */
const things = new Set(
  thingWords()
    .flatMap((word) => word.split(' '))
    .filter((word) => isThing(word)),
);
export const isOfTrade = (word: string): boolean => things.has(word) || things.has(word.replace(/s$/, ''));

function isThing(word: string): boolean {
  return word.length > 2 && !NUMBER_WORDS.has(word) && classOf(word) !== word && timesSaid(word) < 2000;
}
/** Names that are written as one word: said as two by some recognisers. */
const COMPOUNDS = new Set([...tradeWords()].filter((word) => /^[a-z]{6,}$/.test(word)));

export interface RepairTally {
  words: number;
  tradeWords: number;
  tradeWrongBefore: number;
  tradeWrongAfter: number;
  /** Said words that were right before and wrong after, and words put in. */
  newErrors: number;
  repairs: number;
}

export const emptyTally = (): RepairTally => ({
  words: 0,
  tradeWords: 0,
  tradeWrongBefore: 0,
  tradeWrongAfter: 0,
  newErrors: 0,
  repairs: 0,
});

/** Adds one memo: what was said, what was heard, and that with its repairs. */
export function addToTally(
  tally: RepairTally,
  said: string,
  heard: string,
  mended: string,
  repairs: number,
): void {
  const words = plainWords(said);
  const [heardWordsPlain, mendedWords] = [plainWords(heard), plainWords(mended)];
  const before = heardRight(words, heardWordsPlain);
  const after = heardRight(words, mendedWords);
  words.forEach((word, at) => {
    tally.words++;
    if (before[at] && !after[at]) tally.newErrors++;
    if (!isOfTrade(word)) return;
    tally.tradeWords++;
    if (!before[at]) tally.tradeWrongBefore++;
    if (!after[at]) tally.tradeWrongAfter++;
  });
  tally.repairs += repairs;
}
