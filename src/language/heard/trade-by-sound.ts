import { singular } from '../lexicon/trade-nouns.ts';
import { tradeWords } from '../lexicon/trade-words.ts';
import type { ReadContext } from '../notes.ts';
import { candidatesIn } from './heard-candidates.ts';
import { isKnownWord } from './known-words.ts';
import type { Heard, RepairRule } from './repair.ts';
import { REPAIR_WEIGHTS } from './repair-weights.ts';
import { SoundIndex, tradeBySound } from './sound-index.ts';
import { SOUND_WEIGHTS } from './sound-weights.ts';
import {
  type Candidate,
  doubtsByPlace,
  FEATURES,
  type HeardScene,
  pairOf,
  SOUND_FEATURES,
  weigh,
  weighWithSound,
} from './weigh-candidate.ts';

/** Set so that a right word is seldom changed: at most once in a thousand words, on talk that was not learned from. */
export const NEEDED: Needed = { least: 0.5, mostHeard: 0.4, mostHeardWord: 0.5 };
/** The same where the recogniser told its doubts: what it was sure of is no candidate. */
export const NEEDED_WITH_SOUND: Needed = { least: 0.3, mostHeard: 0.5, mostHeardWord: 0.4 };

export interface Scored {
  readonly candidate: Candidate;
  /** Logarithm of the odds that the candidate was said and not what was heard. */
  readonly odds: number;
  /** Whether what was heard is words. */
  readonly isWord: boolean;
}

/**
 * Puts right what a recogniser of everyday speech made of the words of a trade, in talk that was heard and not typed.
 * A word is read as another one only where the repaired words are much likelier: by their sound, by their neighbours,
 * by what the recogniser was seen to write for the word, and by what the project and the memo speak of.
 */
export const tradeWordsBySound: RepairRule = (words, context) => {
  if (!context.isHeard) return [];
  const scene = sceneOf(words, context);
  const candidates = candidatesIn(words, tradeBySound(), ownWords(context), context.doubts);
  const taken = new Set<number>();
  const repairs = waysFor(scene, context).flatMap(({ featuresOf, weights, needed, isLikely }) => {
    const scored = candidates.flatMap((candidate) => {
      const features = featuresOf(candidate);
      const isWord = isOfWords(words, candidate);
      if (!isLikely(features, isWord)) return [];
      const odds = features.reduce((sum, value, k) => sum + value * (weights[k] as number), 0);
      return [{ candidate, isWord, odds }];
    });
    const found = chosen(scored, needed)
      .map(({ candidate }) => candidate)
      .filter((one) => placesOf(one).every((place) => !taken.has(place)));
    for (const one of found) for (const place of placesOf(one)) taken.add(place);
    return found;
  });
  return repairs.map(({ from, to, means }) => {
    const [first, last] = [words[from] as Heard, words[to - 1] as Heard];
    const why = `sounds like "${means}", which is likelier here`;
    return { start: first.start, end: last.end, means, why };
  });
};

/** How candidates are weighed: with the recogniser's own doubts first where it told them, then by the words alone. */
function waysFor(scene: HeardScene, { doubts }: ReadContext) {
  const byWords = {
    featuresOf: (candidate: Candidate) => weigh(scene, candidate),
    weights: FEATURES.map((name): number => REPAIR_WEIGHTS[name]),
    needed: NEEDED,
    isLikely: isBorneOut,
  };
  if (!doubts) return [byWords];
  const byPlace = doubtsByPlace(doubts);
  const bySound = {
    featuresOf: (candidate: Candidate) => weighWithSound(scene, candidate, byPlace),
    weights: SOUND_FEATURES.map((name): number => SOUND_WEIGHTS[name]),
    needed: NEEDED_WITH_SOUND,
    isLikely: hasEvidence,
  };
  // What was not weighed by the sound was mostly unlikely by it: a word that is heard there stays.
  const ofNoWords = {
    ...byWords,
    isLikely: (features: readonly number[], isWord: boolean) => !isWord && isBorneOut(features, isWord),
  };
  return [bySound, ofNoWords];
}

/** Whether the heard words that a candidate stands for are words, two always. */
export const isOfWords = (words: readonly Heard[], { from, to }: Candidate): boolean =>
  to - from > 1 || isKnownWord((words[from] as Heard).lower.replace(/'s$/, ''));

const EVIDENCE = (['project knows it', 'said elsewhere', 'makes a phrase'] as const).map((name) =>
  FEATURES.indexOf(name),
);
const NEIGHBOURS = FEATURES.indexOf('neighbours');
/** So much likelier must the neighbours make a word, as a logarithm, that nothing else in the talk speaks for. */
const MUCH_LIKELIER = 5;

/**
 * Whether something else than the sound speaks for a word in place of another: "a pain in the back" is no pane because
 * the two sound alike.
 */
export function isBorneOut(features: readonly number[], isWord: boolean): boolean {
  return (
    !isWord || EVIDENCE.some((k) => (features[k] ?? 0) > 0) || (features[NEIGHBOURS] ?? 0) >= MUCH_LIKELIER
  );
}

const NOT_IN_SOUND = SOUND_FEATURES.indexOf('not in the sound');

/** Whether the sound speaks for a word in place of another, by the features that are weighed with the sound. */
export const hasEvidence = (features: readonly number[], isWord: boolean): boolean =>
  !isWord || features[NOT_IN_SOUND] === 0;

/** The heard words that a candidate stands for. */
const placesOf = ({ from, to }: Candidate): readonly number[] =>
  Array.from({ length: to - from }, (_, k) => from + k);

/** What must hold of a repair. */
export interface Needed {
  /** Least chance of what is read instead, one and many of a thing taken together. */
  readonly least: number;
  /** Greatest chance of what was heard, where that is no word. */
  readonly mostHeard: number;
  /** The same where it is one: a word is only replaced when the other is much likelier in its place. */
  readonly mostHeardWord: number;
}

/**
 * The likeliest candidates that reach what is needed, no two on one word. The chance is that of the candidate among all
 * that the same words may be, what was heard included.
 */
export function chosen<S extends Scored>(
  scored: readonly S[],
  { least, mostHeard, mostHeardWord }: Needed,
): readonly S[] {
  const all = new Map<number, number>();
  const byStem = new Map<string, number>();
  const placeOf = ({ candidate: { from, to } }: S) => from * 4 + (to - from);
  const stemOf = (one: S) => `${placeOf(one)} ${singular(one.candidate.means.replace(/'s$/, ''))}`;
  for (const one of scored) {
    const odds = Math.exp(one.odds);
    all.set(placeOf(one), (all.get(placeOf(one)) ?? 1) + odds);
    byStem.set(stemOf(one), (byStem.get(stemOf(one)) ?? 0) + odds);
  }
  const likely = scored
    .map((one) => {
      const sum = all.get(placeOf(one)) as number;
      return { one, chance: (byStem.get(stemOf(one)) as number) / sum, ofHeard: 1 / sum };
    })
    .filter(
      ({ one, chance, ofHeard }) => chance >= least && ofHeard <= (one.isWord ? mostHeardWord : mostHeard),
    )
    .sort((a, b) => b.chance - a.chance || b.one.odds - a.one.odds);
  const taken = new Set<number>();
  const picked: S[] = [];
  for (const { one } of likely) {
    const places = placesOf(one.candidate);
    if (places.some((place) => taken.has(place))) continue;
    for (const place of places) taken.add(place);
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
  const pairs = new Map<string, number>();
  words.forEach(({ lower, opens }, at) => {
    const word = singular(lower.replace(/'s$/, ''));
    times.set(word, (times.get(word) ?? 0) + 1);
    const before = words[at - 1];
    if (!before || opens) return;
    const pair = pairOf(before.lower, lower);
    pairs.set(pair, (pairs.get(pair) ?? 0) + 1);
  });
  return { words, times, pairs, known: new Set(knownItems.flatMap(namesIn).map(singular)) };
}

const namesIn = (name: string) => name.toLowerCase().split(/[^\p{L}']+/u);

/** The project's words that are in no list of the trade. */
function ownWords({ knownItems = [] }: ReadContext): SoundIndex {
  return new SoundIndex(
    knownItems.flatMap(namesIn).filter((word) => word.length > 3 && !tradeWords().has(word)),
  );
}
