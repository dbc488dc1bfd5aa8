import { singular } from '../lexicon/trade-nouns.ts';
import { tradeWords } from '../lexicon/trade-words.ts';
import type { ReadContext } from '../notes.ts';
import { candidatesIn } from './heard-candidates.ts';
import type { Heard, RepairRule } from './repair.ts';
import { REPAIR_WEIGHTS } from './repair-weights.ts';
import { SoundIndex, tradeBySound } from './sound-index.ts';
import { type Candidate, FEATURES, type HeardScene, weigh } from './weigh-candidate.ts';

/** Chance from which on a repair is made: set so that a right word is seldom changed. */
const ENOUGH = 0.55;

export interface Scored {
  readonly candidate: Candidate;
  /** Logarithm of the odds that the candidate was said and not what was heard. */
  readonly odds: number;
}

/**
 * Puts right what a recogniser of everyday speech made of the words of a trade, in talk that was heard and not typed.
 * A word is read as another one only where the repaired words are much likelier: by their sound, by their neighbours,
 * by what the recogniser was seen to write for the word, and by what the project and the memo speak of.
 */
export const tradeWordsBySound: RepairRule = (words, context) => {
  if (!context.isHeard) return [];
  const scene = sceneOf(words, context);
  const weights = FEATURES.map((name) => REPAIR_WEIGHTS[name] ?? 0);
  const scored = candidatesIn(words, tradeBySound(), ownWords(context)).map((candidate) => ({
    candidate,
    odds: weigh(scene, candidate).reduce((sum, value, k) => sum + value * (weights[k] as number), 0),
  }));
  return chosen(scored, ENOUGH).map(({ candidate: { from, to, means } }) => {
    const [first, last] = [words[from] as Heard, words[to - 1] as Heard];
    return {
      start: first.start,
      end: last.end,
      means,
      why: `sounds like "${means}", which is likelier here`,
    };
  });
};

/**
 * The likeliest candidates whose chance reaches the threshold, no two on one word. The chance is that of the candidate
 * among all that the same words may be, what was heard included.
 */
export function chosen<S extends Scored>(scored: readonly S[], threshold: number): readonly S[] {
  const all = new Map<number, number>();
  const placeOf = ({ candidate: { from, to } }: S) => from * 4 + (to - from);
  for (const one of scored) all.set(placeOf(one), (all.get(placeOf(one)) ?? 1) + Math.exp(one.odds));
  const likely = scored
    .map((one) => ({ one, chance: Math.exp(one.odds) / (all.get(placeOf(one)) as number) }))
    .filter(({ chance }) => chance >= threshold)
    .sort((a, b) => b.chance - a.chance);
  const taken = new Set<number>();
  const picked: S[] = [];
  for (const { one } of likely) {
    const { from, to } = one.candidate;
    if (taken.has(from) || taken.has(to - 1)) continue;
    taken.add(from);
    taken.add(to - 1);
    picked.push(one);
  }
  return picked.sort((a, b) => a.candidate.from - b.candidate.from);
}

/** What the words of a memo are weighed in. */
export function sceneOf(
  words: readonly Heard[],
  { knownItems = [] }: Pick<ReadContext, 'knownItems'>,
): HeardScene {
  const times = new Map<string, number>();
  for (const { lower } of words) {
    const word = singular(lower.replace(/'s$/, ''));
    times.set(word, (times.get(word) ?? 0) + 1);
  }
  return { words, times, known: new Set(knownItems.flatMap(namesIn).map(singular)) };
}

const namesIn = (name: string) => name.toLowerCase().split(/[^\p{L}']+/u);

/** The project's words that are in no list of the trade. */
function ownWords({ knownItems = [] }: ReadContext): SoundIndex {
  return new SoundIndex(
    knownItems.flatMap(namesIn).filter((word) => word.length > 3 && !tradeWords().has(word)),
  );
}
