/** What speaks for and against reading heard words as others that sound like them. */
import { singular } from '../lexicon/trade-nouns.ts';
import { tradeWords } from '../lexicon/trade-words.ts';
import { NUMBER_WORDS } from '../statements/vocabulary.ts';
import { timesHeardAs } from './heard-as-table.ts';
import type { HeardDoubt } from './heard-doubts.ts';
import { isKnownWord } from './known-words.ts';
import { logChanceAfter, timesSaid } from './neighbours.ts';
import type { Heard } from './repair.ts';
import { soundsOf } from './sounds.ts';
import { countedAs, STOP } from './word-classes.ts';

/** What the words of a memo are weighed in. */
export interface HeardScene {
  readonly words: readonly Heard[];
  /** How often each word stands in the memo, by its singular. */
  readonly times: ReadonlyMap<string, number>;
  /** How often two words stand side by side in the memo, "bunk top", by their singulars. */
  readonly pairs: ReadonlyMap<string, number>;
  /** Words of the project's own things. */
  readonly known: ReadonlySet<string>;
}

/** Heard words `from` to `to` (end exclusive), and what they may be instead. */
export interface Candidate {
  readonly from: number;
  readonly to: number;
  readonly means: string;
  readonly distance: number;
  /** Whether nothing else that the heard words may be sounds more like them. */
  readonly isNearest: boolean;
  /** Whether only the recogniser thought of it. */
  readonly isBySound?: boolean;
}

/**
 * What is weighed by the words alone, for the candidate ("meant") against what was heard. Most are 1 or 0. Of the others
 * "distance" is ten times that of `soundDistance`; "neighbours" and "heard unlikely" are natural logarithms of chances beside
 * the neighbours; "seen", "said" and "common" are logarithms, base 2, of one more than how often.
 */
export const FEATURES = [
  'bias',
  'distance',
  'same sound',
  'neighbours',
  'heard unlikely',
  'seen',
  'seen always',
  'project knows it',
  'project knows the heard',
  'said elsewhere',
  'heard elsewhere',
  'makes a phrase',
  'heard makes a phrase',
  'heard is of the trade',
  'heard is no word',
  'heard is common',
  'meant is common',
  'meant never said',
  'two for one',
  'one for two',
  'short',
  'only the ending',
  'distance of a word',
  'begins alike',
  'ends alike',
  'nearest',
  'pair said elsewhere',
  'unit behind a number',
] as const;
export type Feature = (typeof FEATURES)[number];

/** What is weighed besides where the recogniser told its doubts. */
export const SOUND_FEATURES = [
  ...FEATURES,
  'not in the sound',
  'sound',
  'sound of a word',
  'likelier than heard',
  'likeliest in the sound',
  'heard unsure',
  'unsure of a word',
  'far from what was heard',
  'only by the sound',
  'habit',
  'habit of a word',
  'likelier than by habit',
] as const;
export type SoundFeature = (typeof SOUND_FEATURES)[number];

/** One of a thing, its genitive taken off: "hull's" is "hull". */
const stemOf = (word: string) => singular(word.replace(/'s$/, ''));
/** What is left without the ending of a verb: "sanded" and "sanding" are the same. */
const baseOf = (word: string) => stemOf(word).replace(/(?:ing|ed|er|e|s)$/, '');

/** Features of one candidate, in the order of `FEATURES`. */
export function weigh(
  scene: HeardScene,
  { from, to, means, distance, isNearest }: Candidate,
): readonly number[] {
  const { words, times, known } = scene;
  const heard = words.slice(from, to).map(({ lower }) => lower);
  const meant = means.split(' ');
  const left = words[from]?.opens ? STOP : countedAs(words[from - 1]?.lower ?? STOP);
  const next = words[to];
  const right = next === undefined || next.opens ? undefined : countedAs(next.lower);
  const heardChance = chanceOf(left, heard.map(countedAs), right);
  const meantChance = chanceOf(left, meant.map(countedAs), right);
  const heardSaid = Math.min(...heard.map((word) => timesSaid(countedAs(word))));
  const meantSaid = Math.min(...meant.map((word) => timesSaid(countedAs(word))));
  const isTrade = heard.length === 1 ? tradeWords().has(heard[0] as string) : false;
  const noWord = heard.length === 1 && !isKnownWord((heard[0] as string).replace(/'s$/, ''));
  // "Beech" was heard for "beach" too: of two words of the trade what was seen tells nothing.
  const seen = isTrade ? { times: 0, share: 0 } : timesHeardAs(heard.join(' '), means);
  const elsewhere = (list: readonly string[], own: number) =>
    Math.max(0, Math.min(...list.map((word) => times.get(stemOf(word)) ?? 0)) - own);
  const last = meant.at(-1) as string;
  const [heardSounds, meantSounds] = [soundsOf(heard.join('')), soundsOf(means)];
  const pairs = pairsBeside(words[from - 1], meant, next);
  const pairTimes = Math.max(0, ...pairs.map((pair) => scene.pairs.get(pair) ?? 0));
  return [
    1,
    distance * 10,
    distance < 0.02 ? 1 : 0,
    Math.max(-8, Math.min(14, meantChance - heardChance)),
    Math.max(0, -heardChance / (heard.length + (right === undefined ? 0 : 1)) - 8),
    Math.log2(1 + seen.times),
    seen.share,
    meant.every((word) => known.has(stemOf(word))) ? 1 : 0,
    heard.every((word) => known.has(stemOf(word))) ? 1 : 0,
    Math.log2(1 + elsewhere(meant, 0)),
    Math.log2(1 + elsewhere(heard, 1)),
    makesPhrase(left, meant[0] as string) || makesPhrase(last, right) ? 1 : 0,
    makesPhrase(left, heard[0] as string) || makesPhrase(heard.at(-1) as string, right) ? 1 : 0,
    isTrade ? 1 : 0,
    noWord ? 1 : 0,
    Math.log2(1 + heardSaid),
    Math.log2(1 + meantSaid),
    meantSaid === 0 ? 1 : 0,
    heard.length > meant.length ? 1 : 0,
    heard.length < meant.length ? 1 : 0,
    means.length <= 4 ? 1 : 0,
    heard.length === 1 && baseOf(heard[0] as string) === baseOf(means) ? 1 : 0,
    noWord ? 0 : distance * 10,
    heardSounds[0] === meantSounds[0] ? 1 : 0,
    heardSounds.at(-1) === meantSounds.at(-1) ? 1 : 0,
    isNearest ? 1 : 0,
    Math.log2(1 + pairTimes),
    UNIT.test(means) && isNumber(words[from - 1]) ? 1 : 0,
  ];
}

/** Units that are heard as words of no unit: "three matters". "Mil" is not among them, for "one meal" is none. */
const UNIT =
  /^(?:(?:milli|centi)?met(?:re|er)s?|inch(?:es)?|foot|feet|kilos?|lit(?:re|er)s?|pounds?|tons?|tonnes?|gallons?)\b/;
const isNumber = (word: Heard | undefined) =>
  word !== undefined && (/\d/.test(word.lower) || NUMBER_WORDS.has(word.lower));

/** The pairs that words make with what stands before and behind them, but for numbers and marks. */
function pairsBeside(
  before: Heard | undefined,
  list: readonly string[],
  after: Heard | undefined,
): readonly string[] {
  const pairs: string[] = [];
  if (before && /^\p{L}{3}/u.test(before.lower)) pairs.push(pairOf(before.lower, list[0] as string));
  if (after && !after.opens && /^\p{L}{3}/u.test(after.lower))
    pairs.push(pairOf(list.at(-1) as string, after.lower));
  return pairs;
}

/** Two words side by side, whether one or many. */
export const pairOf = (first: string, second: string): string => `${stemOf(first)} ${stemOf(second)}`;

/** Greater odds by the habit of talk tell no more. */
const MOST_HABIT = 10;
/** A recogniser that writes what it holds for less likely than one in fifty is at a loss. */
const MOST_UNSURE = 4;

/** Features of one candidate with its odds by the sound, in the order of `SOUND_FEATURES`. */
export function weighWithSound(
  scene: HeardScene,
  candidate: Candidate,
  doubts: ReadonlyMap<number, readonly HeardDoubt[]>,
): readonly number[] {
  const features = weigh(scene, candidate);
  const [first, last] = [scene.words[candidate.from], scene.words[candidate.to - 1]];
  const doubt = doubts.get(first?.start ?? -1)?.find(({ end }) => end === last?.end);
  const other = doubt?.others.find(({ means }) => means === candidate.means);
  const odds = other?.odds;
  const unsure = doubt ? Math.min(MOST_UNSURE, -Math.log(Math.max(doubt.chance, 0.01))) : 0;
  const isWord = (features[NO_WORD] as number) === 0;
  const ofWord = isWord ? unsure : 0;
  if (doubt === undefined || odds === undefined)
    return [...features, 1, 0, 0, 0, 0, unsure, ofWord, 0, 0, 0, 0, 0];
  // Transcripts of before do not tell it.
  const habit = Math.max(-MOST_HABIT, Math.min(MOST_HABIT, other?.habit ?? 0));
  const isLikeliest = doubt.others.every((each) => each.odds <= odds);
  return [
    ...features,
    0,
    odds,
    isWord ? odds : 0,
    Math.max(0, odds),
    isLikeliest ? 1 : 0,
    unsure,
    ofWord,
    Math.max(0, candidate.distance - FAR),
    candidate.isBySound ? 1 : 0,
    habit,
    isWord ? habit : 0,
    Math.max(0, odds - habit),
  ];
}
const NO_WORD = FEATURES.indexOf('heard is no word');
/** Words farther apart are none that one looks for by their spelling. */
const FAR = 0.2;

/** Doubts by the place where their words begin. */
export function doubtsByPlace(doubts: readonly HeardDoubt[]): ReadonlyMap<number, readonly HeardDoubt[]> {
  const byPlace = new Map<number, HeardDoubt[]>();
  for (const doubt of doubts) byPlace.set(doubt.start, [...(byPlace.get(doubt.start) ?? []), doubt]);
  return byPlace;
}

/** Whether the two words side by side are a name of the trade: "bunk top". */
function makesPhrase(first: string, second: string | undefined): boolean {
  return second !== undefined && first.length > 2 && tradeWords().has(`${first} ${second}`);
}

/** Logarithm of the chance of these words between their neighbours. */
function chanceOf(left: string, words: readonly string[], right: string | undefined): number {
  let sum = 0;
  let last = left;
  for (const word of words) {
    sum += logChanceAfter(last, word);
    last = word;
  }
  return right === undefined ? sum : sum + logChanceAfter(last, right);
}
