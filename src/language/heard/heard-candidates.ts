/** What heard words may be instead: words of the trade and of the project that sound like them. */
import { isTradeNoun, singular } from '../lexicon/trade-nouns.ts';
import { pluralOf, tradeWords } from '../lexicon/trade-words.ts';
import { NUMBER_WORDS } from '../statements/vocabulary.ts';
import { meantBy } from './heard-as-table.ts';
import type { HeardDoubt } from './heard-doubts.ts';
import { timesSaid } from './neighbours.ts';
import type { Heard } from './repair.ts';
import type { SoundIndex, SoundsLike } from './sound-index.ts';
import { soundDistance, soundsOf } from './sounds.ts';
import type { Candidate } from './weigh-candidate.ts';
import { classOf } from './word-classes.ts';

/** A word said as often as this in talk of builds is right where it stands. */
const TOO_COMMON = 150;
/** Two words are run together only when they then sound very like another one. */
const FARTHEST_OF_TWO = 0.2;

const GENITIVE = /'s$/;

/** Numbers, and words that hold sentences together: these are never read as others. */
export const isFixed = ({ lower }: Heard): boolean =>
  /\d/.test(lower) ||
  NUMBER_WORDS.has(lower) ||
  /'(?!s$)/.test(lower) ||
  (classOf(lower) === lower && lower !== 'other') ||
  timesSaid(lower) >= TOO_COMMON;

/**
 * All candidates in a text. `own` holds the project's words that are not of the trade; `doubts` are what the recogniser
 * held likely itself.
 */
export function candidatesIn(
  words: readonly Heard[],
  trade: SoundIndex,
  own: SoundIndex,
  doubts: readonly HeardDoubt[] = [],
): readonly Candidate[] {
  const found: Candidate[] = [];
  const known = new Map<string, readonly SoundsLike[]>();
  const like = (heard: string) => {
    let list = known.get(heard);
    if (!list) {
      const sounds = soundsOf(heard.replace(/[^a-z]/g, ''));
      const seen = meantBy(heard).map((word) => ({
        word,
        distance: soundDistance(sounds, soundsOf(word.replace(/[^a-z]/g, ''))),
      }));
      const both = [...seen, ...own.like(heard), ...trade.like(heard)];
      list = both.filter(({ word }, at) => both.findIndex((one) => one.word === word) === at);
      known.set(heard, list);
    }
    return list;
  };
  words.forEach((word, at) => {
    const fixed = isFixed(word);
    if (!fixed) found.push(...single(word, at, like));
    const next = words[at + 1];
    if (!next || next.opens) return;
    found.push(...double(word, next, at, fixed && isFixed(next), like));
    if (!isFixed(next)) found.push(...joint(word, next, at, like));
    const third = words[at + 2];
    if (third && !third.opens && !(fixed && isFixed(next) && isFixed(third)))
      found.push(...triple([word, next, third], at, like));
  });
  return doubts.length === 0 ? found : [...found, ...doubted(words, doubts, found)];
}

/** What only the recogniser thought of. */
function* doubted(
  words: readonly Heard[],
  doubts: readonly HeardDoubt[],
  found: readonly Candidate[],
): Generator<Candidate> {
  const known = new Set(found.map(({ from, to, means }) => `${from} ${to} ${means}`));
  const starts = new Map(words.map(({ start }, at) => [start, at]));
  const ends = new Map(words.map(({ end }, at) => [end, at + 1]));
  for (const { start, end, others } of doubts) {
    const [from, to] = [starts.get(start), ends.get(end)];
    if (from === undefined || to === undefined) continue;
    const heard = words.slice(from, to).map(({ lower }) => lower);
    for (const { means } of others) {
      if (known.has(`${from} ${to} ${means}`)) continue;
      const distance = soundDistance(soundsOf(heard.join('')), soundsOf(means));
      yield { from, to, means, distance, isNearest: false, isBySound: true };
    }
  }
}

type Like = (heard: string) => readonly SoundsLike[];

function* single({ lower }: Heard, at: number, like: Like): Generator<Candidate> {
  const tail = GENITIVE.exec(lower)?.[0] ?? '';
  const bare = lower.slice(0, lower.length - tail.length);
  if (bare.length < 3) return;
  const likely = like(bare).filter(({ word }) => !isSpelling(bare, word));
  const nearest = Math.min(...likely.map(({ distance }) => distance));
  for (const { word, distance } of likely)
    yield { from: at, to: at + 1, means: word + tail, distance, isNearest: distance === nearest };
  if (tail === '') yield* otherNumber(bare, at);
}

/** One of a thing where many were heard, and the other way round: "two tank". */
function* otherNumber(heard: string, at: number): Generator<Candidate> {
  if (!isTradeNoun(heard)) return;
  const one = singular(heard);
  const means = one === heard ? pluralOf(heard) : one;
  if (means === heard) return;
  const distance = soundDistance(soundsOf(heard), soundsOf(means));
  yield { from: at, to: at + 1, means, distance, isNearest: false };
}

function* double(
  first: Heard,
  second: Heard,
  at: number,
  bothFixed: boolean,
  like: Like,
): Generator<Candidate> {
  const pair = `${first.lower} ${second.lower}`;
  const isSeen = meantBy(pair).length > 0;
  if (
    !isSeen &&
    (bothFixed || /\d/.test(pair) || NUMBER_WORDS.has(first.lower) || NUMBER_WORDS.has(second.lower))
  )
    return;
  if (tradeWords().has(pair)) return;
  const tail = GENITIVE.exec(pair)?.[0] ?? '';
  const likely = like(pair.slice(0, pair.length - tail.length));
  const nearest = Math.min(...likely.map(({ distance }) => distance));
  for (const { word, distance } of likely) {
    if (!isSeen && (distance > FARTHEST_OF_TWO || isOneOfThem(word, distance, first, second))) continue;
    const parts = word.split(' ');
    // Only one of the two is another: that is what the one word alone is weighed for.
    if (parts.length === 2 && (parts[0] === first.lower || parts[1] === second.lower)) continue;
    if (word.replace(/[^a-z]/g, '') === pair.replace(/[^a-z]/g, '')) continue;
    yield { from: at, to: at + 2, means: word + tail, distance, isNearest: distance === nearest };
  }
}

/** Words of the sentence that took the first sound of the thing behind them: "than itch" is "the niche". */
const TOOK_A_SOUND: ReadonlyMap<string, { readonly word: string; readonly sound: string }> = new Map(
  `than the n|then the n|them the m|that the t|this the s|these the s|thus the s|an a n|am a m|at a t|as a s|all a l|mine my n|
    its it s|ours our s`
    .split('|')
    .map((line) => line.trim().split(' '))
    .map(([heard = '', word = '', sound = '']) => [heard, { word, sound }] as const),
);

/** Two heard words between which a sound went over: the small word, and a thing that begins with that sound. */
function* joint(first: Heard, second: Heard, at: number, like: Like): Generator<Candidate> {
  const took = TOOK_A_SOUND.get(first.lower);
  if (!took) return;
  for (const { word: thing, distance } of like(`${took.sound}${second.lower}`)) {
    if (distance > FARTHEST_OF_TWO || thing === second.lower) continue;
    yield { from: at, to: at + 2, means: `${took.word} ${thing}`, distance, isNearest: false };
  }
}

/** A shorter name is found in too many words. */
const SHORTEST_OF_THREE = 8;
/** All three must sound so much more like it than two of them. */
const NEARER = 0.03;

/** Three heard words that are one name: "skirt in bored" is "skirting board". */
function* triple(heard: readonly [Heard, Heard, Heard], at: number, like: Like): Generator<Candidate> {
  const all = heard.map(({ lower }) => lower);
  if (all.some((word) => /\d/.test(word) || NUMBER_WORDS.has(word))) return;
  const letters = all.join('').replace(/[^a-z]/g, '');
  if (letters.length < SHORTEST_OF_THREE) return;
  for (const { word, distance } of like(all.join(' '))) {
    const parts = word.split(' ');
    if (distance > FARTHEST_OF_TWO || word.length < SHORTEST_OF_THREE) continue;
    // What a part of them says already is weighed for that part.
    if (parts[0] === all[0] || parts.at(-1) === all[2] || word.replace(/[^a-z]/g, '') === letters) continue;
    if (soundDistance(soundsOf(all.slice(0, 2).join('')), soundsOf(word)) <= distance + NEARER) continue;
    if (soundDistance(soundsOf(all.slice(1).join('')), soundsOf(word)) <= distance + NEARER) continue;
    yield { from: at, to: at + 3, means: word, distance, isNearest: false };
  }
}

/** Whether one of the two heard words is the meant one, or sounds as much like it as both together. */
function isOneOfThem(meant: string, distance: number, first: Heard, second: Heard): boolean {
  const sounds = soundsOf(meant);
  return [first, second].some(
    ({ lower }) => isSpelling(lower, meant) || soundDistance(soundsOf(lower), sounds) <= distance + NEARER,
  );
}

/** One word in two spellings, or one and many of it: nothing was misheard. */
export function isSpelling(heard: string, meant: string): boolean {
  return oneSpelling(singular(heard)) === oneSpelling(singular(meant)) || heard === meant.replaceAll(' ', '');
}

/** American where the two spellings differ: "fibre", "moulding", "colour". */
const oneSpelling = (word: string) =>
  word
    .replace(/(?<=[bct])re$/, 'er')
    .replace(/ou(?=ld)/, 'o')
    .replace(/(?<=[^f])our/, 'or');
