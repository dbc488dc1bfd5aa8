/** Where in the talk a figure stands: its sentence, its clause, and what was said around it. */
import type { Span } from '../language/notes.ts';

export interface Piece extends Span {
  readonly text: string;
}

export interface Place {
  /** Words of the same clause, up to the nearest commas. */
  readonly clause: string;
  readonly sentence: string;
  /** The sentence up to the end of the quote. */
  readonly until: string;
  readonly before: string;
  readonly after: string;
  /** Index of the sentence in the memo. */
  readonly index: number;
}

/** A full stop, question or exclamation mark that ends a sentence, and not one inside a number or a name. */
const SENTENCE = /[^.!?]*(?:[.!?](?!\s|$)[^.!?]*)*[.!?]*(?:\s+|$)/gu;

/** Cuts a memo's text into sentences; every character is in one. */
export function sentencesOf(text: string): readonly Piece[] {
  const pieces: Piece[] = [];
  for (const match of text.matchAll(SENTENCE)) {
    if (match[0].trim() === '') continue;
    const start = match.index;
    pieces.push({ start, end: start + match[0].length, text: match[0].trim() });
  }
  return pieces;
}

/** The place of a span in its memo. */
export function placeOf(text: string, sentences: readonly Piece[], span: Span): Place {
  const index = sentenceAt(sentences, span.start);
  const sentence = sentences[index];
  const start = sentence?.start ?? 0;
  const end = Math.max(sentence?.end ?? text.length, span.end);
  const left = Math.max(start, lastBreak(text.slice(start, span.start)) + start);
  const right = span.end + nextBreak(text.slice(span.end, end));
  return {
    clause: text.slice(left, right).trim(),
    // The sentence itself, not a copy: what is remembered of its text is found the quicker.
    sentence: sentence?.end === end ? sentence.text : text.slice(start, end).trim(),
    until: text.slice(start, span.end).trim(),
    before: sentences[index - 1]?.text ?? '',
    after: sentences[index + 1]?.text ?? '',
    index,
  };
}

/** The number of the sentence that holds this character; 0 where none does. */
export function sentenceAt(sentences: readonly Piece[], at: number): number {
  let [low, high] = [0, sentences.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((sentences[middle] as Piece).start <= at) low = middle;
    else high = middle - 1;
  }
  const piece = sentences[low];
  return piece && at >= piece.start && at < piece.end ? low : 0;
}

function lastBreak(text: string): number {
  const at = Math.max(text.lastIndexOf(', '), text.lastIndexOf('; '), text.lastIndexOf(': '));
  return at < 0 ? 0 : at + 2;
}

function nextBreak(text: string): number {
  const at = text.search(/[,;:.!?](?:\s|$)/);
  return at < 0 ? text.length : at;
}

/** Characters of a sentence of any length; talk without full stops runs on and on. */
export const LONGEST = 240;

/** The words of a sentence, or only those near the figure where it runs on. */
export function nearWords({ sentence, until }: Pick<Place, 'sentence' | 'until'>): string {
  if (sentence.length <= LONGEST) return sentence;
  return sentence.slice(Math.max(0, until.length - LONGEST / 2), until.length + LONGEST / 3);
}
