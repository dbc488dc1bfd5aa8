/** What heard words may be instead, each with its features and whether it was said: what the weights are fitted on. */
import { candidatesIn } from '../../src/language/heard/heard-candidates.ts';
import type { HeardDoubt } from '../../src/language/heard/heard-doubts.ts';
import { heardWords } from '../../src/language/heard/repair.ts';
import { SoundIndex, tradeBySound } from '../../src/language/heard/sound-index.ts';
import { isOfWords, sceneOf } from '../../src/language/heard/trade-by-sound.ts';
import { type Candidate, doubtsByPlace, weighWithSound } from '../../src/language/heard/weigh-candidate.ts';
import { singular } from '../../src/language/lexicon/trade-nouns.ts';
import { align, isOfTrade, plainWord, wordsApart } from './aligned.ts';

export interface Case {
  /** In the order of `SOUND_FEATURES`, which begin with `FEATURES`. */
  readonly features: readonly number[];
  /** Whether it brings the heard words nearer to the said ones, and all of its own words were said there. */
  readonly isRight: boolean;
  /** Whether what was heard is words. */
  readonly isWord: boolean;
  /** The heard words are wrong as they stand: to read them otherwise makes no right word wrong. */
  readonly isWrongAnyway: boolean;
  readonly told: string;
}

export interface HeardMemo {
  readonly story: string;
  readonly voice: string;
  readonly said: string;
  readonly heard: string;
  readonly knownItems: readonly string[];
  readonly doubts: readonly HeardDoubt[];
}

export interface MemoCases extends HeardMemo {
  readonly candidates: readonly { readonly candidate: Candidate; readonly case: Case }[];
}

const NONE = new SoundIndex([]);
/** One and many of a thing name the same thing. */
const stems = (list: readonly string[]) => list.map(singular);

/** The candidates in one heard memo, by the tables that count at the time. */
export function casesOf(memo: HeardMemo): MemoCases {
  const { said, heard, knownItems, doubts } = memo;
  const byPlace = doubtsByPlace(doubts);
  const words = heardWords(heard);
  const scene = sceneOf(words, { knownItems });
  const reference = heardWords(said).map(({ lower }) => plainWord(lower));
  const spoken = words.map(({ lower }) => plainWord(lower));
  const saidBeside = besideHeard(reference, spoken);
  const candidates = candidatesIn(words, tradeBySound(), NONE, doubts).map((candidate) => {
    const { from, to, means } = candidate;
    const meant = means.split(' ').map(plainWord);
    let first = from - 1;
    while (first >= 0 && saidBeside[first] === -1) first--;
    let last = to;
    while (last < spoken.length && saidBeside[last] === -1) last++;
    const start = first < 0 ? 0 : (saidBeside[first] as number) + 1;
    const end = last >= spoken.length ? reference.length : (saidBeside[last] as number);
    const region = reference.slice(start, end);
    const window = spoken.slice(first + 1, last);
    const mended = [...spoken.slice(first + 1, from), ...meant, ...spoken.slice(to, last)];
    const isNumberAlone = to - from === 1 && singular(meant.join(' ')) === singular(spoken[from] as string);
    const named = isNumberAlone ? (list: readonly string[]) => list : stems;
    const gain = wordsApart(named(region), named(window)) - wordsApart(named(region), named(mended));
    const isSaid = named(meant).every((word) => named(region).includes(word));
    const texts = words.map(({ lower }) => lower);
    return {
      candidate,
      case: {
        features: weighWithSound(scene, candidate, byPlace),
        isWord: isOfWords(words, candidate),
        isRight: gain > 0 && isSaid,
        isWrongAnyway: spoken
          .slice(from, to)
          .some((word, at) => reference[saidBeside[from + at] as number] !== word),
        told: `${texts.slice(Math.max(0, from - 3), from).join(' ')} [${texts.slice(from, to).join(' ')} > ${means}] ${texts.slice(to, to + 3).join(' ')} | said: ${region.join(' ')}`,
      },
    };
  });
  return { ...memo, candidates };
}

/** For each heard word the said word beside it, or -1. */
function besideHeard(reference: readonly string[], spoken: readonly string[]): Int32Array {
  const beside = new Int32Array(spoken.length).fill(-1);
  align(reference, spoken).forEach((h, s) => {
    if (h >= 0) beside[h] = s;
  });
  return beside;
}

/** Said words of the trade that were heard wrong and that no candidate holds: for looking at what is not found. */
export function notFound({ said, heard, candidates }: MemoCases): readonly string[] {
  const reference = heardWords(said).map(({ lower }) => plainWord(lower));
  const spoken = heardWords(heard).map(({ lower }) => plainWord(lower));
  const pairing = align(reference, spoken);
  return reference.flatMap((word, at) => {
    const place = pairing[at] as number;
    if (!isOfTrade(word) || spoken[place] === word) return [];
    const isFound = candidates.some(
      ({ candidate: { from, to, means }, case: { isRight } }) =>
        isRight && from <= place + 1 && to >= place && stems(means.split(' ')).includes(singular(word)),
    );
    if (isFound) return [];
    const around = (list: readonly string[], centre: number) =>
      list.slice(Math.max(0, centre - 3), centre + 4).join(' ');
    const near = place >= 0 ? place : (pairing[at - 1] ?? -1);
    return [`${word}: said "${around(reference, at)}", heard "${around(spoken, near)}"`];
  });
}
