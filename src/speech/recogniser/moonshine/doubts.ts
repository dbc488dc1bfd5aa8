/**
 * Which words of the trade the recogniser held to be nearly as likely as those that it wrote. It writes the likeliest
 * words of everyday speech; the sound may be borne out by others as well, and what is built here makes them likelier.
 */
import { candidatesIn } from '../../../language/heard/heard-candidates.ts';
import type { HeardDoubt } from '../../../language/heard/heard-doubts.ts';
import { heardWords } from '../../../language/heard/repair.ts';
import { SoundIndex, tradeBySound } from '../../../language/heard/sound-index.ts';
import type { OtherPieces, Weighing } from './moonshine-model.ts';
import type { WordPieces } from './word-pieces.ts';

/** What is less likely than this, as a logarithm of odds, is not weighed. */
const LEAST_ODDS = -7;
/** So many words are weighed in a second of sound, the likeliest first: each costs about a hundredth of a second. */
const PER_SECOND = 0.7;

interface Heard {
  readonly text: string;
  /** Pieces of the text, in order. */
  readonly ids: readonly number[];
  readonly seconds: number;
}

/** Doubts of a heard piece of sound, in order of speech. `own` holds the project's words for its things. */
export function doubtsIn(
  { text, ids, seconds }: Heard,
  weighing: Weighing,
  pieces: WordPieces,
  own: readonly string[],
): readonly HeardDoubt[] {
  const words = heardWords(text);
  const borders = bordersOf(text, ids, pieces);
  if (!borders) return [];
  const likely = candidatesIn(words, tradeBySound(), new SoundIndex(own)).flatMap((candidate) => {
    const start = words[candidate.from]?.start ?? 0;
    const end = words[candidate.to - 1]?.end ?? 0;
    const [from, to] = [borders.begins.get(start), borders.ends.get(end)];
    const others = pieces.idsOf(asWritten(candidate.means, text, start));
    if (from === undefined || to === undefined || !others) return [];
    const other: OtherPieces = { from, to, ids: others };
    const most = weighing.atMost(other);
    return most < LEAST_ODDS ? [] : [{ start, end, means: candidate.means, other, most }];
  });
  const weighed = likely.sort((a, b) => b.most - a.most).slice(0, Math.ceil(seconds * PER_SECOND));
  const doubts = new Map<string, HeardDoubt & { others: HeardDoubt['others'][number][] }>();
  for (const { start, end, means, other } of weighed) {
    const odds = rounded(weighing.oddsOf(other));
    if (odds < LEAST_ODDS) continue;
    const key = `${start} ${end}`;
    const doubt = doubts.get(key) ?? {
      start,
      end,
      chance: rounded(Math.exp(weighing.chanceOf(other.from, other.to))),
      others: [],
    };
    doubt.others.push({ means, odds });
    doubts.set(key, doubt);
  }
  return [...doubts.values()].sort((a, b) => a.start - b.start || a.end - b.end);
}

/** Makes the tables that the first piece would wait for. */
export function prepareDoubts(): void {
  candidatesIn(
    heardWords('The bench top is nine hundred millimetres high.'),
    tradeBySound(),
    new SoundIndex([]),
  );
}

const rounded = (value: number) => Math.round(value * 100) / 100;

/** Where a piece begins a word, by the place of its first letter, and after which place a piece ends. */
function bordersOf(text: string, ids: readonly number[], pieces: WordPieces) {
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
