/** What heard words may be instead: words of the trade and of the project that sound like them. */
import { singular } from '../lexicon/trade-nouns.ts';
import { tradeWords } from '../lexicon/trade-words.ts';
import { NUMBER_WORDS } from '../statements/vocabulary.ts';
import { meantBy } from './heard-as-table.ts';
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
const isFixed = ({ lower }: Heard) =>
  /\d/.test(lower) ||
  NUMBER_WORDS.has(lower) ||
  /'(?!s$)/.test(lower) ||
  (classOf(lower) === lower && lower !== 'other') ||
  timesSaid(lower) >= TOO_COMMON;

/** All candidates in a text. `own` holds the project's words that are not of the trade. */
export function candidatesIn(
  words: readonly Heard[],
  trade: SoundIndex,
  own: SoundIndex,
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
    if (next && !next.opens) found.push(...double(word, next, at, fixed && isFixed(next), like));
  });
  return found;
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

/** Whether one of the two heard words is the meant one, or sounds as much like it as both together. */
function isOneOfThem(meant: string, distance: number, first: Heard, second: Heard): boolean {
  const sounds = soundsOf(meant);
  return [first, second].some(
    ({ lower }) => isSpelling(lower, meant) || soundDistance(soundsOf(lower), sounds) <= distance + 0.03,
  );
}

/** One word in two spellings, or one and many of it: nothing was misheard. */
function isSpelling(heard: string, meant: string): boolean {
  return oneSpelling(singular(heard)) === oneSpelling(singular(meant)) || heard === meant.replaceAll(' ', '');
}

/** American where the two spellings differ: "fibre", "moulding", "colour". */
const oneSpelling = (word: string) =>
  word
    .replace(/(?<=[bct])re$/, 'er')
    .replace(/ou(?=ld)/, 'o')
    .replace(/(?<=[^f])our/, 'or');
