import { isTradeNoun, singular } from '../lexicon/trade-nouns.ts';
import type { ReadContext } from '../notes.ts';
import { NUMBER_WORDS } from '../statements/vocabulary.ts';
import { MISHEARD, type Misheard } from './misheard-words.ts';
import type { Heard, RepairRule } from './repair.ts';

/**
 * Puts the name of a thing right that a recogniser took for another word of the same sound: "pains" where the talk is of
 * panes. A word that is a word elsewhere ("beach") is only read as another one when the project knows that thing, or
 * the memo names it somewhere else.
 */
export const namesBySound: RepairRule = (words, context) => {
  if (!words.some(({ lower }) => MISHEARD.has(lower))) return [];
  const said = namedThings(words, context);
  return words.flatMap((word, at) => {
    const found = MISHEARD.get(word.lower);
    if (!found || !isLikely(found, words.slice(Math.max(0, at - 2), at), said, context.isHeard === true))
      return [];
    const { meant, isWord } = found;
    const why = isWord
      ? `sounds like "${meant}", which the talk is about`
      : `no word; sounds like "${meant}"`;
    return [{ start: word.start, end: word.end, means: meant, why }];
  });
};

const SORT = /^(?:mil|mill|mills|mm|inch|thick|birch|marine|exterior|hardwood|softwood)$/;

/** Straight after "eighteen mil" a recogniser's "play" is ply, also where nothing else speaks of ply. */
const isThickness = (before: readonly Heard[]) =>
  before.length === 2 &&
  /^(?:mil|mill|mills|mm)$/.test(before[1]?.lower ?? '') &&
  (NUMBER_WORDS.has(before[0]?.lower ?? '') || /^\d/.test(before[0]?.lower ?? ''));

function isLikely(
  { meant, isWord, afterSort }: Misheard,
  before: readonly Heard[],
  said: ReadonlySet<string>,
  isHeard: boolean,
) {
  if (afterSort && !SORT.test(before.at(-1)?.lower ?? '')) return false;
  if (afterSort && isHeard && isThickness(before)) return true;
  return !isWord || said.has(singular(meant));
}

/** Things that the project knows or that this memo names. */
function namedThings(words: readonly Heard[], { knownItems = [] }: ReadContext): ReadonlySet<string> {
  const spoken = [...words.map(({ lower }) => lower), ...knownItems.flatMap(wordsOf)];
  return new Set(spoken.filter(isTradeNoun).map(singular));
}

const wordsOf = (name: string) => name.toLowerCase().split(/[^\p{L}]+/u);
