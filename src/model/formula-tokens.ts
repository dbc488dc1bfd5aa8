/** Cuts a formula into numbers with units, names, slots and marks. Length is bounded by the reader. */
import Fraction from 'fraction.js';
import { unitKind } from './units.ts';

const MAX_TOKENS = 120;

export type Token =
  | { readonly kind: 'number'; readonly value: Fraction; readonly unit?: string }
  | { readonly kind: 'name'; readonly text: string }
  | { readonly kind: 'slot'; readonly text: string }
  /** Words in quotes: a choice that is no plain name. */
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'mark'; readonly text: string };

/** A text that is no formula, with the reason. It never leaves the reader. */
export class Unreadable extends Error {}

// A fraction has no spaces ("3/8"): "a / 3 / 8" divides twice.
const NUMBER = /^(?:\d+\s+)?\d+\/\d+(?![\d/])|^\d+(?:\.\d+)?/;
const WORD = /^[\p{L}_'’%°][\p{L}\p{N}_'’.%°-]*/u;
const MARKS = new Map([
  ['×', '*'],
  ['·', '*'],
  ['÷', '/'],
  ['−', '-'],
  ['–', '-'],
]);

/** The parts of a formula. Throws Unreadable. */
export function tokenize(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let rest = text.trim();
  while (rest !== '') {
    if (tokens.length > MAX_TOKENS) throw new Unreadable(`more than ${MAX_TOKENS} parts`);
    const [token, length] = tokenAt(rest);
    tokens.push(token);
    rest = rest.slice(length).trimStart();
  }
  return joinNames(joinLengths(tokens));
}

function tokenAt(rest: string): readonly [Token, number] {
  const slot = /^\[([^[\]]+)\]/.exec(rest);
  if (slot) return [{ kind: 'slot', text: slot[1] as string }, slot[0].length];
  const words = /^"([^"]*)"/.exec(rest);
  if (words) return [{ kind: 'words', text: words[1] as string }, words[0].length];
  const number = NUMBER.exec(rest);
  if (number) return numberAt(rest, number[0]);
  const word = WORD.exec(rest);
  if (word) return [{ kind: 'name', text: word[0] }, word[0].length];
  const first = [...rest][0] as string;
  const mark = MARKS.get(first) ?? first;
  if (mark === ',') throw new Unreadable('"," is no part of a formula: ";" stands between figures');
  if (!'+-*/();:'.includes(mark)) throw new Unreadable(`"${first}" is no part of a formula`);
  return [{ kind: 'mark', text: mark }, first.length];
}

function numberAt(rest: string, said: string): readonly [Token, number] {
  const value = fractionOf(said);
  const after = rest.slice(said.length);
  const unit = /^\s*([\p{L}%]+(?:[.·/][\p{L}]+)?\d?)(?![\p{L}\p{N}])/u.exec(after);
  const name = unit?.[1]?.replace('·', '.');
  if (unit && name !== undefined && unitKind(name)) {
    return [{ kind: 'number', value, unit: name }, said.length + unit[0].length];
  }
  return [{ kind: 'number', value }, said.length];
}

function fractionOf(said: string): Fraction {
  const parts = /^(?:(\d+)\s+)?(\d+)\/(\d+)$/.exec(said);
  if (!parts) return new Fraction(said);
  const denominator = Number(parts[3]);
  if (denominator === 0) throw new Unreadable('a fraction over nought');
  return new Fraction(Number(parts[1] ?? 0)).add(new Fraction(Number(parts[2]), denominator));
}

/** Units that follow each other in one spoken quantity. */
const SMALLER: Readonly<Record<string, string>> = { ft: 'in', m: 'cm', lb: 'oz', h: 'min', yd: 'ft' };

function joinLengths(tokens: readonly Token[]): readonly Token[] {
  const joined: Token[] = [];
  for (const token of tokens) {
    const last = joined[joined.length - 1];
    const continues =
      last?.kind === 'number' &&
      token.kind === 'number' &&
      last.unit !== undefined &&
      token.unit !== undefined &&
      SMALLER[last.unit] === token.unit;
    if (!continues) joined.push(token);
    else joined[joined.length - 1] = sumOf(last as NumberToken, token as NumberToken);
  }
  return joined;
}

type NumberToken = Extract<Token, { kind: 'number' }>;

function sumOf(large: NumberToken, small: NumberToken): NumberToken {
  const [from, to] = [unitKind(large.unit as string), unitKind(small.unit as string)];
  const scale = from && to ? from.factor.div(to.factor) : new Fraction(1);
  return { kind: 'number', value: large.value.mul(scale).add(small.value), unit: small.unit as string };
}

/** Words and numbers inside a name belong together: "bench top height", "number 2 bulkhead". */
function joinNames(tokens: readonly Token[]): readonly Token[] {
  const joined: Token[] = [];
  for (const token of tokens) {
    const last = joined[joined.length - 1];
    if (last?.kind === 'name' && token.kind === 'name') {
      joined[joined.length - 1] = { kind: 'name', text: `${last.text} ${token.text}` };
    } else if (last?.kind === 'name' && token.kind === 'number' && token.unit === undefined) {
      joined[joined.length - 1] = { kind: 'name', text: `${last.text} ${token.value.toFraction()}` };
    } else joined.push(token);
  }
  return joined;
}
