/**
 * Subtitles of one recording, in the time of its own clip and in whole milliseconds.
 *
 * A cue stands for 1 to 7 seconds: Ivarsson and Carroll, Code of Good Subtitling Practice (1998), from memory. It is
 * read at no more than 20 characters a second, which is 200 words a minute at six characters a word with its blank:
 * above 200 many viewers cannot follow, as Ofcom says (told in BBC Research & Development, "How fast should subtitles
 * be?", 2015). It hangs on for at most 1.5 s after its words: BBC Subtitle Guidelines, section 5.2.
 */
import type { Utterance } from '../../model/views.ts';
import { LINE_LENGTH, lengthOf, linesOf, wordsOf } from './lines.ts';

export const LEAST_MS = 1000;
export const MOST_MS = 7000;
export const MOST_HANG_MS = 1500;
export const CHARACTERS_PER_SECOND = 20;

export interface Cue {
  readonly startMs: number;
  readonly endMs: number;
  /** One or two lines. */
  readonly lines: readonly string[];
}

/** Words with the time in which they are spoken. */
interface Piece {
  readonly startMs: number;
  readonly endMs: number;
  readonly words: readonly string[];
}

const textOf = ({ words }: Piece) => words.join(' ');
const sizeOf = (words: readonly string[]) => words.reduce((sum, word) => sum + lengthOf(word) + 1, 0);

/** Words up to an end of a sentence; one too short to stand for a second goes with the next. */
function sentencesIn(
  words: readonly string[],
  msOf: (some: readonly string[]) => number,
): readonly string[][] {
  const sentences: string[][] = [];
  let isOpen = false;
  for (const word of words) {
    const last = sentences.at(-1);
    if (last && isOpen) last.push(word);
    else sentences.push([word]);
    isOpen = !/[.?!]["”’)]?$/.test(word) || msOf(sentences.at(-1) ?? []) < LEAST_MS;
  }
  return sentences;
}

/** Words in `count` parts of like size; a cut goes behind a comma where one is near. */
function evenParts(words: readonly string[], count: number): readonly string[][] {
  const share = sizeOf(words) / count;
  const ends: number[] = [];
  for (const word of words) ends.push((ends.at(-1) ?? 0) + lengthOf(word) + 1);
  const cost = (index: number, wanted: number) =>
    Math.abs((ends[index] as number) - wanted) - (/[,;:]$/.test(words[index] as string) ? share / 3 : 0);
  const cuts = [0];
  for (let part = 1; part < count; part++) {
    let best = cuts.at(-1) as number;
    for (let index = best; index < words.length - (count - part); index++)
      if (cost(index, share * part) <= cost(best, share * part)) best = index;
    cuts.push(best + 1);
  }
  return cuts.map((from, index) => words.slice(from, cuts[index + 1] ?? words.length));
}

/** The fewest even parts that all fit; word by word where even those do not. */
function fittingParts(
  words: readonly string[],
  ms: number,
  fits: (some: readonly string[]) => boolean,
): readonly string[][] {
  const least = Math.max(1, Math.ceil(sizeOf(words) / (2 * LINE_LENGTH + 2)), Math.ceil(ms / MOST_MS));
  for (let count = least; count < words.length; count++) {
    const parts = evenParts(words, count);
    if (parts.every(fits)) return parts;
  }
  return words.map((word) => [word]);
}

/**
 * Cuts an utterance so that every piece fits on two lines and into seven seconds, at ends of sentences where it can.
 * The recogniser gives times for whole utterances only: within one, time is shared out by the number of characters.
 */
function piecesOf({ startSeconds, endSeconds, text }: Utterance): readonly Piece[] {
  const words = wordsOf(text);
  const start = Math.max(0, Math.round(startSeconds * 1000));
  const length = Math.max(0, Math.round(endSeconds * 1000) - start);
  const total = sizeOf(words);
  const msOf = (some: readonly string[]) => (length * sizeOf(some)) / total;
  const fits = (some: readonly string[]) => linesOf(some) !== undefined && msOf(some) <= MOST_MS;
  let done = 0;
  return sentencesIn(words, msOf)
    .flatMap((sentence) => fittingParts(sentence, msOf(sentence), fits))
    .map((part) => {
      const from = done;
      done += sizeOf(part);
      const at = (size: number) => start + Math.round((length * size) / total);
      return { startMs: at(from), endMs: at(done), words: part };
    });
}

/** Joins a piece that cannot stand for a second to the one after it, or before it, where both fit together. */
function joined(pieces: readonly Piece[]): readonly Piece[] {
  const out: Piece[] = [];
  for (const piece of pieces) {
    const last = out.at(-1);
    const isShort = (one: Piece, end: number) => end - one.startMs < LEAST_MS;
    const isNear = last !== undefined && piece.startMs - last.endMs < LEAST_MS;
    const wants =
      last !== undefined && (isShort(last, piece.startMs) || isShort(piece, piece.endMs)) && isNear;
    const both = last && {
      startMs: last.startMs,
      endMs: piece.endMs,
      words: [...last.words, ...piece.words],
    };
    if (both && wants && linesOf(both.words) && both.endMs - both.startMs <= MOST_MS)
      out[out.length - 1] = both;
    else out.push(piece);
  }
  return out;
}

/** Long enough to be read, as far as the speech leaves time. */
function readingMs(piece: Piece): number {
  const needed = Math.ceil((lengthOf(textOf(piece)) * 1000) / CHARACTERS_PER_SECOND);
  return Math.min(MOST_MS, Math.max(LEAST_MS, needed));
}

/** Returns cues in order, none over another, each of one or two lines and 1 to 7 seconds; no word is left out. */
export function cuesOf(utterances: readonly Utterance[]): readonly Cue[] {
  const inOrder = [...utterances].sort((a, b) => a.startSeconds - b.startSeconds);
  let free = 0;
  return joined(inOrder.flatMap(piecesOf)).map((piece) => {
    const startMs = Math.max(piece.startMs, free);
    const spoken = Math.max(piece.endMs, Math.min(startMs + readingMs(piece), piece.endMs + MOST_HANG_MS));
    const endMs = Math.min(startMs + MOST_MS, Math.max(startMs + LEAST_MS, spoken));
    free = endMs;
    return { startMs, endMs, lines: linesOf(piece.words) ?? [] };
  });
}

/** Characters a second that a cue asks of its reader. */
export function readingSpeed({ startMs, endMs, lines }: Cue): number {
  return (lengthOf(lines.join(' ')) * 1000) / (endMs - startMs);
}

/** Cues that are faster than viewers can read, because the words were spoken so fast: nothing is cut from them. */
export function tooFast(cues: readonly Cue[]): readonly Cue[] {
  return cues.filter((cue) => readingSpeed(cue) > CHARACTERS_PER_SECOND);
}
