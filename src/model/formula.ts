/**
 * Reads a formula: numbers with units, compound lengths ("4 ft 2 3/8 in"), names of items with spaces, slots in
 * brackets, + - * / and round brackets, and checks that give a number ("diagonal(rise; run)"). A small Pratt parser;
 * length and depth are bounded, so that no text can keep it busy.
 */
import type Fraction from 'fraction.js';
import type { CheckInput, CheckOption } from './checks/check.ts';
import { faultOfCall, inputsByPart, optionOf } from './formula-calls.ts';
import { type Token, tokenize, Unreadable } from './formula-tokens.ts';
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
    }
  | { readonly kind: 'call'; readonly name: string; readonly given: readonly CallPart[] };

/** What a check is given in a call: a figure, in order or by the name of its input, or a choice. */
export type CallPart =
  | { readonly kind: 'figure'; readonly input?: string; readonly of: Formula }
  | { readonly kind: 'choice'; readonly option: string; readonly choice: string };

export type FormulaReading =
  | { readonly ok: true; readonly formula: Formula }
  | { readonly ok: false; readonly why: string };

const MAX_LENGTH = 400;
const MAX_DEPTH = 24;

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
    if (token.kind === 'name') return this.#isNext('(') ? this.#call(token.text, depth) : nameOf(token.text);
    if (token.kind === 'slot') return { kind: 'slot', slot: token.text };
    if (token.text === '-') return this.#coldness() ?? { kind: 'minus', of: this.#expression(2, depth + 1) };
    if (token.text === '(') {
      const inner = this.#expression(0, depth + 1);
      this.#close();
      return inner;
    }
    throw new Unreadable(`"${token.text}" stands where a figure should`);
  }

  /** "-5 degC" is a temperature below nought, and not what lies as far below absolute nought as five degrees above it. */
  #coldness(): Formula | undefined {
    const token = this.#tokens[this.#at];
    if (token?.kind !== 'number' || token.unit === undefined) return undefined;
    if (unitKind(token.unit)?.kind !== 'temperature') return undefined;
    this.#at++;
    return { kind: 'number', value: token.value.neg(), unit: token.unit };
  }

  /** The figures of a check, from its opening bracket on: "(bay width; gap: 2 mm; gap on: one side)". */
  #call(name: string, depth: number): Formula {
    const given: CallPart[] = [];
    do {
      this.#at++;
      given.push(this.#callPart(name, depth));
    } while (this.#isNext(';'));
    this.#close();
    const fault = faultOfCall(name, given);
    if (fault !== undefined) throw new Unreadable(fault);
    return { kind: 'call', name, given };
  }

  #callPart(name: string, depth: number): CallPart {
    const label = this.#tokens[this.#at];
    if (label?.kind !== 'name' || !this.#isNext(':', 1)) {
      return { kind: 'figure', of: this.#expression(0, depth + 1) };
    }
    this.#at += 2;
    const option = optionOf(name, label.text);
    if (option) return this.#choice(option);
    return { kind: 'figure', input: label.text.toLowerCase(), of: this.#expression(0, depth + 1) };
  }

  #choice({ name, of }: CheckOption): CallPart {
    const said = this.#tokens[this.#at++];
    const choice = said && wordsOfToken(said).toLowerCase();
    const found = of.find((one) => one.toLowerCase() === choice);
    if (found === undefined) throw new Unreadable(`${name} is one of ${of.map(quoted).join(', ')}`);
    return { kind: 'choice', option: name, choice: found };
  }

  #isNext(mark: string, ahead = 0): boolean {
    const token = this.#tokens[this.#at + ahead];
    return token?.kind === 'mark' && token.text === mark;
  }

  #close(): void {
    if (!this.#isNext(')')) throw new Unreadable('a bracket is not closed');
    this.#at++;
  }
}

const nameOf = (name: string): Formula => ({ kind: 'name', name });

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
    else if (node.kind === 'call')
      for (const part of node.given) {
        if (part.kind === 'figure') visit(part.of);
      }
    else if (node.kind !== 'number') {
      visit(node.left);
      visit(node.right);
    }
  };
  visit(formula);
  return [...found.values()];
}

/**
 * The same formula with its names turned into slots; names that stand for nothing stay names. Within a call, `of` is
 * the input of the check that a name goes into: it says what kind of quantity is meant.
 */
export function withSlots(
  formula: Formula,
  slotFor: (name: string, of?: CheckInput) => string | undefined,
  of?: CheckInput,
): Formula {
  const inside = (part: Formula, input = of) => withSlots(part, slotFor, input);
  switch (formula.kind) {
    case 'number':
    case 'slot':
      return formula;
    case 'name': {
      const slot = slotFor(formula.name, of);
      return slot === undefined ? formula : { kind: 'slot', slot };
    }
    case 'minus':
      return { kind: 'minus', of: inside(formula.of) };
    case 'call': {
      const inputOf = inputsByPart(formula.name, formula.given);
      const given = formula.given.map((part) =>
        part.kind === 'figure' ? { ...part, of: inside(part.of, inputOf.get(part)) } : part,
      );
      return { ...formula, given };
    }
    default:
      return { ...formula, left: inside(formula.left), right: inside(formula.right) };
  }
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
  if (formula.kind === 'call') {
    const given = formula.given.map((part) => writePart(part, nameOf)).join('; ');
    return `${formula.name}(${given})`;
  }
  const sign = SIGNS[formula.kind];
  const own = POWER[sign] as number;
  const text = `${writeFormula(formula.left, nameOf, own - 1)} ${sign} ${writeFormula(formula.right, nameOf, own)}`;
  return own <= power ? `(${text})` : text;
}

function writePart(part: CallPart, nameOf?: (slot: string) => string): string {
  if (part.kind === 'choice') return `${part.option}: ${quoted(part.choice)}`;
  const figure = writeFormula(part.of, nameOf);
  return part.input === undefined ? figure : `${part.input}: ${figure}`;
}

/** A choice that is no plain name stands in quotes. */
const quoted = (choice: string): string => (/^\p{L}[\p{L} -]*$/u.test(choice) ? choice : `"${choice}"`);

function decimalOr(value: Fraction): string {
  const decimal = value.toString(6);
  return decimal.includes('(') ? value.toFraction(true) : decimal;
}
