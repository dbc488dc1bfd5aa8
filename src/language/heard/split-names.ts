import { singular } from '../lexicon/trade-nouns.ts';
import { tradeWords } from '../lexicon/trade-words.ts';
import { isKnownWord } from './known-words.ts';
import type { RepairRule } from './repair.ts';

/** A part of fewer letters is found in too many words. */
const SHORTEST = 3;

/** "Tankless", "fishlike": these are endings. */
const ENDINGS = new Set(['less', 'like', 'wise', 'able', 'ward', 'some', 'ness', 'ship', 'ful', 'ing']);

/**
 * Reads a word that is none as the two words of the trade that it is made of: "ringbolt", "hatchboard". What the
 * lexicon writes as one word stays one, and what can be cut in two ways. Heard talk only.
 */
export const splitNames: RepairRule = (words, { isHeard }) => {
  if (!isHeard) return [];
  return words.flatMap(({ lower, start, end }) => {
    if (lower.length < 2 * SHORTEST || !/^[a-z]+$/.test(lower) || isOneWord(lower)) return [];
    const ways = waysToCut(lower);
    const [means] = ways;
    return means !== undefined && ways.length === 1
      ? [{ start, end, means, why: `two words run together: ${means}` }]
      : [];
  });
};

const isOneWord = (word: string) =>
  isKnownWord(word) ||
  tradeWords().has(word) ||
  isKnownWord(singular(word)) ||
  tradeWords().has(singular(word));

function waysToCut(word: string): readonly string[] {
  const ways: string[] = [];
  for (let cut = SHORTEST; cut <= word.length - SHORTEST; cut++) {
    const [first, second] = [word.slice(0, cut), word.slice(cut)];
    if (ENDINGS.has(second)) continue;
    if (isOfTrade(first) && isOfTrade(second)) ways.push(`${first} ${second}`);
  }
  return ways;
}

const isOfTrade = (word: string) => tradeWords().has(word) || tradeWords().has(singular(word));
