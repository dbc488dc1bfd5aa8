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
const AREA_WORD = /(?:mm|cm|m|km|in|ft|yd)[23](?![\p{L}\p{M}\d²³]|['’]\p{L})/iuy;
const LETTERS_THEN_DIGIT = /\p{L}+(?=[\p{L}\p{M}²³]*\d)/uy;
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
  for (let match = pattern.exec(text); match; match = pattern.exec(text)) {
    const [, number, word, space, mark] = match;
    const start = match.index;
    if (space !== undefined) {
      // A blank line ends a sentence even without a full stop.
      if (/\n\s*\n/.test(space)) yield undefined;
      continue;
    }
    if (number !== undefined) {
      yield { text: number, kind: 'number', start };
      const end = start + number.length;
      const letters = lettersBetweenDigits(text, end);
      if (letters === '') continue;
      pattern.lastIndex = end + letters.length;
      yield { text: letters, kind: 'word', start: end };
    } else if (word !== undefined) {
      const clitic = CLITIC.exec(word);
      if (clitic?.[1] && clitic[2]) {
        yield { text: clitic[1], kind: 'word', start };
        yield { text: clitic[2], kind: 'word', start: start + clitic[1].length };
      } else yield { text: word, kind: 'word', start };
    } else if (mark !== undefined) yield { text: mark, kind: 'mark', start };
  }
}

/**
 * The letters right behind a number that more digits follow: they stand for themselves ("2x4" is three pieces), save in "m2" and
 * its like. Asked before the word is read, for that may go on to the end of the text.
 */
function lettersBetweenDigits(text: string, at: number): string {
  AREA_WORD.lastIndex = at;
  if (AREA_WORD.test(text)) return '';
  LETTERS_THEN_DIGIT.lastIndex = at;
  return LETTERS_THEN_DIGIT.exec(text)?.[0] ?? '';
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
