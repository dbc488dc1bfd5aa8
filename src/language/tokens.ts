/** Text cut into words, numbers and marks, each with its place in the text. */
import { remembered } from '../remembered.ts';

export type TokenKind = 'word' | 'number' | 'mark';

export interface Token {
  /** As written. */
  readonly text: string;
  /** Lower-cased, typographic apostrophes and primes made plain. Clitics stand alone: "deck's" is "deck", "'s". */
  readonly word: string;
  readonly kind: TokenKind;
  /** Character offsets into the text, end exclusive. */
  readonly start: number;
  readonly end: number;
  /** False when it touches the token before: "12mm", "3/8", "deck's". */
  readonly spaced: boolean;
  /** Number of the sentence, counted from 0. */
  readonly sentence: number;
  /** Place in the list of tokens. */
  readonly index: number;
}

// One alternative per kind, in the order number, word, space, mark: named groups would cost an object for each piece.
// None can match what another starts with, so the scan is linear.
const PIECE =
  /((?<![\p{L}\d.,])\.\d+|\d+(?:[.,]\d+)*)|(\p{L}[\p{L}\p{M}\d²³]*(?:['’][\p{L}]+)*)|(\s+)|(\.{2,}(?!\d)|[^\p{L}\d\s])/gu;
const CLITIC = /^(.+?)(['’](?:s|ll|re|ve|d|m))$/iu;
const AREA_WORD = /^(?:mm|cm|m|km|in|ft|yd)[23]$/i;
const LETTERS = /^\p{L}+/u;
const DOT_ABBREVIATION = /^(?:mr|mrs|ms|dr|st|no|approx|vs|etc|e\.g|i\.e)$/;

/** More than any memo has that are not the same. */
const MOST_WORDS = 20_000;

/** Lower-cases a word and makes its apostrophes, primes and fancy dashes plain. */
export const plainWord = remembered(MOST_WORDS, (text) =>
  text
    .toLowerCase()
    .replace(/[’‘′]/g, "'")
    .replace(/[“”″]/g, '"')
    .replace(/[‐‑–—−]/g, '-'),
);

interface Piece {
  readonly text: string;
  readonly kind: TokenKind;
  readonly start: number;
}

function* piecesOf(text: string): Generator<Piece | undefined> {
  PIECE.lastIndex = 0;
  const pattern = new RegExp(PIECE.source, PIECE.flags);
  let numberEnd = -1;
  for (let match = pattern.exec(text); match; match = pattern.exec(text)) {
    const [, number, word, space, mark] = match;
    const start = match.index;
    if (space !== undefined) {
      // A blank line ends a sentence even without a full stop.
      if (/\n\s*\n/.test(space)) yield undefined;
      continue;
    }
    if (number !== undefined) {
      numberEnd = start + number.length;
      yield { text: number, kind: 'number', start };
    } else if (word !== undefined) {
      // After a number only the letters belong together ("2x4" is three pieces), save for "m2" and its like.
      const letters = LETTERS.exec(word)?.[0] ?? word;
      if (start === numberEnd && letters.length < word.length && /\d/.test(word) && !AREA_WORD.test(word)) {
        pattern.lastIndex = start + letters.length;
        yield { text: letters, kind: 'word', start };
        continue;
      }
      const clitic = CLITIC.exec(word);
      if (clitic?.[1] && clitic[2]) {
        yield { text: clitic[1], kind: 'word', start };
        yield { text: clitic[2], kind: 'word', start: start + clitic[1].length };
      } else yield { text: word, kind: 'word', start };
    } else if (mark !== undefined) yield { text: mark, kind: 'mark', start };
  }
}

/** Cuts text into tokens. Time and memory are linear in its length; any string is taken. */
export function tokenise(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let sentence = 0;
  let fresh = true;
  let lastEnd = -1;
  for (const piece of piecesOf(text)) {
    if (!piece) {
      if (!fresh) sentence++;
      fresh = true;
      continue;
    }
    const end = piece.start + piece.text.length;
    const word = plainWord(piece.text);
    tokens.push({
      text: piece.text,
      word,
      kind: piece.kind,
      start: piece.start,
      end,
      spaced: piece.start !== lastEnd,
      sentence,
      index: tokens.length,
    });
    lastEnd = end;
    fresh = false;
    if (endsSentence(tokens, text)) {
      sentence++;
      fresh = true;
    }
  }
  return tokens;
}

function endsSentence(tokens: readonly Token[], text: string): boolean {
  const last = tokens[tokens.length - 1];
  if (last?.kind !== 'mark') return false;
  if (!/^(?:\.+|[!?…])$/.test(last.word)) return false;
  const next = text[last.end];
  if (next !== undefined && !/[\s"'”’)\]]/.test(next)) return false;
  const before = tokens[tokens.length - 2];
  return !(last.word === '.' && before && DOT_ABBREVIATION.test(before.word));
}
