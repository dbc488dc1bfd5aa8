/**
 * Reads a formula: numbers with units, compound lengths ("4 ft 2 3/8 in"), names of items with spaces, slots in
 * brackets, + - * / and round brackets. A small Pratt parser; length and depth are bounded, so that no text can
 * keep it busy.
 */
import Fraction from 'fraction.js';
import { unitKind } from './units.ts';

export type Formula =
  | { readonly kind: 'number'; readonly value: Fraction; readonly unit?: string }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'slot'; readonly slot: string }
  | { readonly kind: 'minus'; readonly of: Formula }
  | {
      readonly kind: 'sum' | 'difference' | 'product' | 'quotient';
      readonly left: Formula;
      readonly right: Formula;
    };

export type FormulaReading =
  | { readonly ok: true; readonly formula: Formula }
  | { readonly ok: false; readonly why: string };

const MAX_LENGTH = 400;
const MAX_DEPTH = 24;
const MAX_TOKENS = 120;

type Token =
  | { readonly kind: 'number'; readonly value: Fraction; readonly unit?: string }
  | { readonly kind: 'name'; readonly text: string }
  | { readonly kind: 'slot'; readonly text: string }
  | { readonly kind: 'mark'; readonly text: string };

class Unreadable extends Error {}

/** Reads the text of a formula; never throws. */
export function readFormula(text: string): FormulaReading {
  if (text.length > MAX_LENGTH) return { ok: false, why: `longer than ${MAX_LENGTH} characters` };
  try {
    const reader = new FormulaReader(tokenize(text));
    return { ok: true, formula: reader.read() };
  } catch (error) {
    if (error instanceof Unreadable) return { ok: false, why: error.message };
    throw error;
  }
}

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

function tokenize(text: string): readonly Token[] {
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
  const number = NUMBER.exec(rest);
  if (number) return numberAt(rest, number[0]);
  const word = WORD.exec(rest);
  if (word) return [{ kind: 'name', text: word[0] }, word[0].length];
  const first = [...rest][0] as string;
  const mark = MARKS.get(first) ?? first;
  if (!'+-*/()'.includes(mark)) throw new Unreadable(`"${first}" is no part of a formula`);
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

const POWER: Readonly<Record<string, number>> = { '+': 1, '-': 1, '*': 2, '/': 2 };
const KINDS = { '+': 'sum', '-': 'difference', '*': 'product', '/': 'quotient' } as const;

class FormulaReader {
  readonly #tokens: readonly Token[];
  #at = 0;

  constructor(tokens: readonly Token[]) {
    this.#tokens = tokens;
  }

  read(): Formula {
    const formula = this.#expression(0, 0);
    const left = this.#tokens[this.#at];
    if (left) throw new Unreadable(`"${wordsOfToken(left)}" is left over`);
    return formula;
  }

  #expression(power: number, depth: number): Formula {
    if (depth > MAX_DEPTH) throw new Unreadable(`nested deeper than ${MAX_DEPTH}`);
    let left = this.#operand(depth);
    for (;;) {
      const mark = this.#tokens[this.#at];
      const own = mark?.kind === 'mark' ? POWER[mark.text] : undefined;
      if (mark?.kind !== 'mark' || own === undefined || own <= power) return left;
      this.#at++;
      left = {
        kind: KINDS[mark.text as keyof typeof KINDS],
        left,
        right: this.#expression(own, depth + 1),
      };
    }
  }

  #operand(depth: number): Formula {
    const token = this.#tokens[this.#at++];
    if (!token) throw new Unreadable('it ends too early');
    if (token.kind === 'number') {
      return token.unit === undefined
        ? { kind: 'number', value: token.value }
        : { kind: 'number', value: token.value, unit: token.unit };
    }
    if (token.kind === 'name') return { kind: 'name', name: token.text };
    if (token.kind === 'slot') return { kind: 'slot', slot: token.text };
    if (token.text === '-') return { kind: 'minus', of: this.#expression(2, depth + 1) };
    if (token.text === '(') {
      const inner = this.#expression(0, depth + 1);
      const close = this.#tokens[this.#at++];
      if (close?.kind !== 'mark' || close.text !== ')') throw new Unreadable('a bracket is not closed');
      return inner;
    }
    throw new Unreadable(`"${token.text}" stands where a figure should`);
  }
}

const wordsOfToken = (token: Token) => (token.kind === 'number' ? token.value.toFraction() : token.text);

/** Every name and slot that a formula reads, each once. */
export function readsOf(
  formula: Formula,
): readonly { readonly kind: 'name' | 'slot'; readonly text: string }[] {
  const found = new Map<string, { readonly kind: 'name' | 'slot'; readonly text: string }>();
  const visit = (node: Formula): void => {
    if (node.kind === 'name') found.set(`n ${node.name}`, { kind: 'name', text: node.name });
    else if (node.kind === 'slot') found.set(`s ${node.slot}`, { kind: 'slot', text: node.slot });
    else if (node.kind === 'minus') visit(node.of);
    else if (node.kind !== 'number') {
      visit(node.left);
      visit(node.right);
    }
  };
  visit(formula);
  return [...found.values()];
}

/** The same formula with its names turned into slots; names that stand for nothing stay names. */
export function withSlots(formula: Formula, slotFor: (name: string) => string | undefined): Formula {
  if (formula.kind === 'name') {
    const slot = slotFor(formula.name);
    return slot === undefined ? formula : { kind: 'slot', slot };
  }
  if (formula.kind === 'minus') return { kind: 'minus', of: withSlots(formula.of, slotFor) };
  if (formula.kind === 'number' || formula.kind === 'slot') return formula;
  return { ...formula, left: withSlots(formula.left, slotFor), right: withSlots(formula.right, slotFor) };
}

const SIGNS = { sum: '+', difference: '-', product: '*', quotient: '/' } as const;

/** Writes a formula out so that it reads back the same. `nameOf` says a slot in words; without it slots stay slots. */
export function writeFormula(formula: Formula, nameOf?: (slot: string) => string, power = 0): string {
  if (formula.kind === 'number') {
    const value = formula.value.toFraction();
    const number = formula.unit === undefined ? value : `${decimalOr(formula.value)} ${formula.unit}`;
    return value.includes('/') && formula.unit === undefined ? `(${number})` : number;
  }
  if (formula.kind === 'name') return formula.name;
  if (formula.kind === 'slot') return nameOf ? nameOf(formula.slot) : `[${formula.slot}]`;
  if (formula.kind === 'minus') return `-${writeFormula(formula.of, nameOf, 3)}`;
  const sign = SIGNS[formula.kind];
  const own = POWER[sign] as number;
  const text = `${writeFormula(formula.left, nameOf, own - 1)} ${sign} ${writeFormula(formula.right, nameOf, own)}`;
  return own <= power ? `(${text})` : text;
}

function decimalOr(value: Fraction): string {
  const decimal = value.toString(6);
  return decimal.includes('(') ? value.toFraction(true) : decimal;
}
