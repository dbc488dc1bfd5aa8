/**
 * Which words of the trade the recogniser held to be nearly as likely as those that it wrote. It writes the likeliest
 * words of everyday speech; the sound may be borne out by others as well, and what is built here makes them likelier.
 */
import { candidatesIn, isFixed, isSpelling } from '../../../language/heard/heard-candidates.ts';
import { type HeardDoubt, LEAST_ODDS } from '../../../language/heard/heard-doubts.ts';
import { type Heard as HeardWord, heardWords } from '../../../language/heard/repair.ts';
import { SoundIndex, tradeBySound } from '../../../language/heard/sound-index.ts';
import { soundDistance, soundsOf } from '../../../language/heard/sounds.ts';
import type { Candidate } from '../../../language/heard/weigh-candidate.ts';
import { thingWords } from '../../../language/lexicon/trade-words.ts';
import type { OtherPieces, Weighing } from './moonshine-model.ts';
import type { WordPieces } from './word-pieces.ts';

/** So many words are weighed in a second of sound, the likeliest first: each costs about a hundredth of a second. */
const PER_SECOND = 2;
/** What a distance of 1 takes from the odds when the likeliest are picked. */
const DISTANCE_COSTS = 8;

interface Heard {
  readonly text: string;
  /** Pieces of the text, in order. */
  readonly ids: readonly number[];
  readonly seconds: number;
}

interface Weighed {
  readonly start: number;
  readonly end: number;
  readonly means: string;
  readonly other: OtherPieces;
  /** What its odds are at most. */
  readonly most: number;
  readonly distance: number;
}

/**
 * Doubts of a heard piece of sound, in order of speech. `own` holds the project's words for its things; `perSecond` is how
 * many words are weighed in a second of sound.
 */
export async function doubtsIn(
  { text, ids, seconds }: Heard,
  weighing: Weighing,
  pieces: WordPieces,
  own: readonly string[],
  perSecond = PER_SECOND,
): Promise<readonly HeardDoubt[]> {
  const words = heardWords(text);
  const borders = bordersOf(text, ids, pieces);
  if (!borders) return [];
  const bySpelling = candidatesIn(words, tradeBySound(), new SoundIndex(own));
  const known = new Set(bySpelling.map(keyOf));
  const bySound = likelyBegun(words, weighing, borders, pieces).filter((one) => !known.has(keyOf(one)));
  const likely = [...bySpelling, ...bySound].flatMap((candidate): Weighed[] => {
    const start = words[candidate.from]?.start ?? 0;
    const end = words[candidate.to - 1]?.end ?? 0;
    const [from, to] = [borders.begins.get(start), borders.ends.get(end)];
    const others = pieces.idsOf(asWritten(candidate.means, text, start));
    if (from === undefined || to === undefined || !others) return [];
    const other: OtherPieces = { from, to, ids: others };
    const most = weighing.atMost(other);
    const { means, distance } = candidate;
    return most < LEAST_ODDS ? [] : [{ start, end, means, other, most, distance }];
  });
  const rank = ({ most, distance }: Weighed) => Math.min(most, 0) - DISTANCE_COSTS * distance;
  const weighed = likely.sort((a, b) => rank(b) - rank(a)).slice(0, Math.ceil(seconds * perSecond));
  const doubts = new Map<string, HeardDoubt & { others: HeardDoubt['others'][number][] }>();
  for (const { start, end, means, other } of weighed) {
    const odds = rounded(await weighing.oddsOf(other));
    if (odds < LEAST_ODDS) continue;
    const key = `${start} ${end}`;
    const doubt = doubts.get(key) ?? {
      start,
      end,
      chance: rounded(Math.exp(weighing.chanceOf(other.from, other.to))),
      others: [],
    };
    doubt.others.push({ means, odds, habit: rounded(await weighing.habitOf(other)) });
    doubts.set(key, doubt);
  }
  return [...doubts.values()].sort((a, b) => a.start - b.start || a.end - b.end);
}

const keyOf = ({ from, to, means }: Candidate) => `${from} ${to} ${means}`;

interface Spelt {
  readonly word: string;
  readonly ids: readonly number[];
  readonly sounds: string;
}
let speltByFirst: ReadonlyMap<number, readonly Spelt[]> | undefined;

/** The things of the trade in pieces, by the first of them. */
function tradeInPieces(pieces: WordPieces): ReadonlyMap<number, readonly Spelt[]> {
  if (speltByFirst) return speltByFirst;
  const byFirst = new Map<number, Spelt[]>();
  for (const word of thingWords()) {
    if (!/^[a-z]{3,}(?: [a-z]+)?$/.test(word)) continue;
    const ids = pieces.idsOf(word);
    const first = ids?.[0];
    if (ids === undefined || first === undefined) continue;
    byFirst.set(first, [...(byFirst.get(first) ?? []), { word, ids, sounds: soundsOf(word) }]);
  }
  speltByFirst = byFirst;
  return byFirst;
}

/** A thing whose beginning is less likely in the sound, as a logarithm of odds, is not looked at. */
const LEAST_BEGIN = -4.5;
/** Farther from the written sounds nothing is looked at: the sound must speak for the rest. */
const FARTHEST_BY_SOUND = 0.46;
const FARTHEST_OF_TWO = 0.28;
/** A place has so many of them, the nearest. */
const MOST_OF_A_PLACE = 5;

/** Things of the trade that the recogniser itself held likely to begin where one or two words were written. */
function likelyBegun(
  words: readonly HeardWord[],
  weighing: Weighing,
  { begins, ends }: Borders,
  pieces: WordPieces,
): readonly Candidate[] {
  return words.flatMap((word, at) => {
    const from = begins.get(word.start);
    if (from === undefined || isFixed(word) || word.lower.length < 3) return [];
    const next = words[at + 1];
    const spans = next && !next.opens && !isFixed(next) ? [1, 2] : [1];
    return spans.flatMap((size) => {
      const heard = words.slice(at, at + size);
      const to = ends.get(heard.at(-1)?.end ?? -1);
      if (to === undefined) return [];
      const written = heard.map(({ lower }) => lower).join(' ');
      const least = LEAST_BEGIN + weighing.chanceOf(from, to);
      const found: Candidate[] = [];
      for (const [first, list] of tradeInPieces(pieces)) {
        if (weighing.chanceAt(from, first) < least) continue;
        for (const { word: means, ids, sounds } of list) {
          if (isSpelling(written, means) || weighing.atMost({ from, to, ids }) < LEAST_BEGIN) continue;
          const distance = soundDistance(soundsOf(written), sounds);
          if (distance > (size === 1 ? FARTHEST_BY_SOUND : FARTHEST_OF_TWO)) continue;
          found.push({ from: at, to: at + size, means, distance, isNearest: false });
        }
      }
      return found.sort((a, b) => a.distance - b.distance).slice(0, MOST_OF_A_PLACE);
    });
  });
}

/** Makes the tables that the first piece would wait for. */
export function prepareDoubts(pieces: WordPieces): void {
  tradeInPieces(pieces);
  candidatesIn(
    heardWords('The bench top is nine hundred millimetres high.'),
    tradeBySound(),
    new SoundIndex([]),
  );
}

const rounded = (value: number) => Math.round(value * 100) / 100;

interface Borders {
  readonly begins: ReadonlyMap<number, number>;
  readonly ends: ReadonlyMap<number, number>;
}

/** Where a piece begins a word, by the place of its first letter, and after which place a piece ends. */
function bordersOf(text: string, ids: readonly number[], pieces: WordPieces): Borders | undefined {
  const begins = new Map<number, number>();
  const ends = new Map<number, number>();
  let written = '';
  ids.forEach((id, k) => {
    const part = pieces.textOf(id);
    // The first blank of the text is not written.
    if (part.startsWith(' ')) begins.set(written === '' ? 0 : written.length + 1, k);
    written = written === '' ? part.trimStart() : written + part;
    ends.set(written.length, k + 1);
  });
  return written.trimEnd() === text ? { begins, ends } : undefined;
}

/** With a capital where a sentence begins, as the model writes. */
function asWritten(means: string, text: string, start: number): string {
  const opens = start === 0 || /[.?!]["')]*\s+$/.test(text.slice(Math.max(0, start - 4), start));
  const isCapital = /\p{Lu}/u.test(text[start] ?? '');
  return opens && isCapital ? means.charAt(0).toUpperCase() + means.slice(1) : means;
}
