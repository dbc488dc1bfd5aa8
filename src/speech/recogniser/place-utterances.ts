/** Gives each sentence of a heard text its time. */
import type { Utterance } from '../../model/views.ts';
import type { Recognised, TimedWord } from './recognised.ts';
import { SAMPLE_RATE } from './sample-rate.ts';
import { type Piece, spoken } from './stretches.ts';

/** A sentence end this near to a pause is put there. */
const SNAP_SECONDS = 0.8;

/**
 * Splits a text at its sentence ends. Where the recogniser gave the time of each word, `words` in seconds of the
 * recording, a sentence has the times of its own; else the sentences are spread over the speech that they were heard
 * from, in proportion to their length. Times rise and do not overlap.
 */
export function placeUtterances(text: string, piece: Piece, words?: readonly TimedWord[]): Utterance[] {
  const sentences = splitSentences(text);
  if (words) return placeByWords(sentences, words);
  const total = sentences.reduce((sum, sentence) => sum + sentence.length, 0);
  const length = spoken(piece);
  let done = 0;
  let from = piece[0]?.start ?? 0;
  return sentences.map((sentence, place) => {
    done += sentence.length;
    const last = place === sentences.length - 1;
    const border = last ? end(piece) : borderAt((done / total) * length, piece, from);
    const utterance = { startSeconds: seconds(from), endSeconds: seconds(border.end), text: sentence };
    from = border.next;
    return utterance;
  });
}

/** The same sentences, each with the doubts of its own words, by their place in it. */
export function withDoubts(
  sentences: readonly Utterance[],
  { text, doubts }: Pick<Recognised, 'text' | 'doubts'>,
): readonly Utterance[] {
  if (!doubts) return sentences;
  let from = 0;
  return sentences.map((sentence) => {
    const start = text.indexOf(sentence.text, from);
    const end = start + sentence.text.length;
    from = Math.max(from, end);
    const mine = doubts.filter((doubt) => start >= 0 && doubt.start >= start && doubt.end <= end);
    return {
      ...sentence,
      doubts: mine.map((doubt) => ({ ...doubt, start: doubt.start - start, end: doubt.end - start })),
    };
  });
}

function placeByWords(sentences: readonly string[], words: readonly TimedWord[]): Utterance[] {
  let place = 0;
  let from = 0;
  const hundredths = (value: number) => Math.round(value * 100) / 100;
  return sentences.map((text) => {
    const mine = words.slice(place, place + text.split(' ').length);
    place += mine.length;
    const timed = mine.map((word) => {
      const startSeconds = Math.max(from, hundredths(word.startSeconds));
      from = Math.max(startSeconds, hundredths(word.endSeconds));
      return { text: word.text, startSeconds, endSeconds: from };
    });
    const startSeconds = timed[0]?.startSeconds ?? from;
    return { startSeconds, endSeconds: from, text, words: timed };
  });
}

const SENTENCE_END = /(?<=[\p{L}\p{N}%"')][.?!]+["')]?)\s+(?=["'(]?[\p{Lu}\p{N}$£€])/u;
/** At full stops, question and exclamation marks before white space, so that "2.4" and "a.m." hold together. */
export function splitSentences(text: string): string[] {
  const sentences: string[] = [];
  for (const part of text.split(SENTENCE_END).filter((found) => found.trim() !== '')) {
    const last = sentences.at(-1);
    if (last !== undefined && endsInAbbreviation(last, part))
      sentences[sentences.length - 1] = `${last} ${part}`;
    else sentences.push(part);
  }
  return sentences.map((sentence) => sentence.trim());
}

/** "No. 8 screws" goes on; "No. The other one." does not. */
function endsInAbbreviation(sentence: string, next: string): boolean {
  return (
    /\b(?:mr|mrs|ms|dr|st|vs|approx|dia)\.$/i.test(sentence) ||
    (/\bno\.$/i.test(sentence) && /^\d/.test(next))
  );
}

interface Border {
  readonly end: number;
  /** Where the next sentence begins: after the pause. */
  readonly next: number;
}

function end(piece: Piece): Border {
  const at = piece.at(-1)?.end ?? 0;
  return { end: at, next: at };
}

function borderAt(spokenSamples: number, piece: Piece, from: number): Border {
  let left = spokenSamples;
  let at = piece[0]?.start ?? 0;
  for (const stretch of piece) {
    const length = stretch.end - stretch.start;
    at = stretch.start + Math.min(left, length);
    if (left <= length) break;
    left -= length;
  }
  return nearestPause(at, piece, from) ?? { end: Math.max(at, from), next: Math.max(at, from) };
}

function nearestPause(at: number, piece: Piece, from: number): Border | undefined {
  let best: Border | undefined;
  let nearest = SNAP_SECONDS * SAMPLE_RATE;
  for (let place = 1; place < piece.length; place++) {
    const before = piece[place - 1];
    const after = piece[place];
    if (!before || !after || before.end <= from) continue;
    const distance = Math.min(Math.abs(at - before.end), Math.abs(at - after.start));
    if (distance < nearest) {
      nearest = distance;
      best = { end: before.end, next: after.start };
    }
  }
  return best;
}

function seconds(sample: number): number {
  return Math.round((sample / SAMPLE_RATE) * 100) / 100;
}
