import {
  EVERYDAY_ADJECTIVES,
  EVERYDAY_ADVERBS,
  NOUN_OR_VERB,
  VERB_BASES,
} from '../lexicon/everyday-words.ts';
import { singular } from '../lexicon/trade-nouns.ts';
import { tradeWords } from '../lexicon/trade-words.ts';
import { ENGLISH_WORDS } from './english-words.ts';
import { timesSaid } from './neighbours.ts';
import { packedWords } from './word-filter.ts';

let english: ((word: string) => boolean) | undefined;

/** Whether a word in lower case, in any form, is a word of English or of the trade. One stranger in thirty passes too. */
export function isKnownWord(word: string): boolean {
  english ??= packedWords(ENGLISH_WORDS);
  const isListed = (form: string) =>
    tradeWords().has(form) ||
    timesSaid(form) > 0 ||
    EVERYDAY_ADJECTIVES.has(form) ||
    EVERYDAY_ADVERBS.has(form) ||
    NOUN_OR_VERB.has(form) ||
    VERB_BASES.has(form) ||
    (english as (word: string) => boolean)(form);
  return isListed(word) || isListed(singular(word));
}
