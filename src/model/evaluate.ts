/** Works a formula out: exact nominal value, its kind, and how its inputs' tolerances add up. */
import Fraction from 'fraction.js';
import { callValue, type Worth } from './call-value.ts';
import type { CallPart, Formula } from './formula.ts';
import { type Exact, exactly, unitKind } from './units.ts';

/** An input: value in a unit, with its tolerance in the same unit. */
export interface Input {
  readonly value: number;
  readonly unit: string;
  /** Half-width, at least 0. */
  readonly tolerance?: number;
}

export interface Evaluated {
  readonly exact: Exact;
  /** Unit of the first input of the result's kind, for printing. */
  readonly unit: string;
  /** Sum of the inputs' tolerances, in the kind's base unit. */
  readonly worstCase: number;
  /** Root of the sum of their squares; means something for three independent parts or more. */
  readonly rootSumSquare: number;
  /** Inputs with a tolerance, each counted once. */
  readonly toleranced: number;
}

export type EvaluationProblem =
  | { readonly kind: 'unknown'; readonly what: string }
  | { readonly kind: 'unit-clash'; readonly what: string }
  | { readonly kind: 'by-nought'; readonly what: string }
  /** A check that is called gives no number on these figures. */
  | { readonly kind: 'check'; readonly what: string };
export type Evaluation =
  | { readonly ok: true; readonly value: Evaluated }
  | ({ readonly ok: false } & EvaluationProblem);

class Unworkable extends Error {
  readonly problem: EvaluationProblem;
  constructor(problem: EvaluationProblem) {
    super(problem.kind);
    this.problem = problem;
  }
}

/** Works a formula out; `look` gives the figure of a slot or name. Never throws on the user's data. */
export function evaluate(
  formula: Formula,
  look: (ref: string) => Input | undefined,
  region?: string,
): Evaluation {
  try {
    const term = new Evaluator(look, region).work(formula);
    const spreads = [...term.spread.values()];
    return {
      ok: true,
      value: {
        exact: { kind: kindOf(term), base: term.base.div(scaleOf(kindOf(term))) },
        unit: term.unit ?? '1',
        worstCase: spreads.reduce((sum, spread) => sum + Math.abs(spread), 0),
        toleranced: spreads.length,
        rootSumSquare: Math.sqrt(spreads.reduce((sum, spread) => sum + spread * spread, 0)),
      },
    };
  } catch (error) {
    if (error instanceof Unworkable) return { ok: false, ...error.problem };
    throw error;
  }
}

/** A partial result: powers of base dimensions, or the name of a kind that keeps to itself. */
interface Term {
  readonly base: Fraction;
  readonly powers: string;
  readonly unit?: string;
  /** Bare numbers take the other side's unit in a sum. */
  readonly bare: boolean;
  /** By input: sensitivity times tolerance, so that an input read twice counts twice and not as two. */
  readonly spread: ReadonlyMap<string, number>;
}

/** Kinds as products of base kinds. What is missing keeps to itself: torque is no energy, money no number. */
const POWERS: Readonly<Record<string, string>> = {
  ratio: '',
  area: 'length.length',
  volume: 'length.length.length',
  speed: 'length/time',
  power: 'current.voltage',
  charge: 'current.time',
  energy: 'current.time.voltage',
};
/** Base units that are not the product of base units: watt-hours and ampere-hours count in hours. */
const SCALES: Readonly<Record<string, number>> = { charge: 3600, energy: 3600 };
const scaleOf = (kind: string) => new Fraction(SCALES[kind] ?? 1);
const KIND_OF = new Map(Object.entries(POWERS).map(([kind, powers]) => [powers, kind]));

const powersOf = (kind: string) => POWERS[kind] ?? kind;

function kindOf(term: Term): string {
  const known = KIND_OF.get(term.powers);
  if (known !== undefined) return known;
  if (!/[./]/.test(term.powers)) return term.powers;
  throw new Unworkable({ kind: 'unit-clash', what: `no unit for ${term.powers}` });
}

/** A partial result as a check takes it. */
function worthOf(term: Term): Worth {
  const kind = kindOf(term);
  const scale = scaleOf(kind);
  return {
    base: term.base.div(scale).valueOf(),
    kind,
    ...(term.unit === undefined ? {} : { unit: term.unit }),
    bare: term.bare,
    spread: new Map([...term.spread].map(([ref, spread]) => [ref, spread / scale.valueOf()])),
  };
}

class Evaluator {
  readonly #look: (ref: string) => Input | undefined;
  readonly #region: string | undefined;

  constructor(look: (ref: string) => Input | undefined, region: string | undefined) {
    this.#look = look;
    this.#region = region;
  }

  work(formula: Formula): Term {
    switch (formula.kind) {
      case 'number':
        return this.#number(formula.value, formula.unit);
      case 'name':
        return this.#input(formula.name);
      case 'slot':
        return this.#input(formula.slot);
      case 'minus':
        return scaled(this.work(formula.of), new Fraction(-1));
      case 'sum':
      case 'difference':
        return this.#sum(this.work(formula.left), this.work(formula.right), formula.kind === 'sum' ? 1 : -1);
      case 'product':
        return product(this.work(formula.left), this.work(formula.right), false);
      case 'quotient':
        return product(this.work(formula.left), this.work(formula.right), true);
      case 'call':
        return this.#call(formula.name, formula.given);
    }
  }

  #call(name: string, given: readonly CallPart[]): Term {
    const worths: Worth[] = [];
    const called = callValue(
      name,
      given,
      (part) => {
        const worth = worthOf(this.work(part.of));
        worths.push(worth);
        return worth;
      },
      this.#region,
    );
    if (!called.ok) throw new Unworkable({ kind: called.kind, what: called.what });
    const { kind, range, unit = worths.find((worth) => worth.kind === kind)?.unit } = called.result;
    const scale = scaleOf(kind);
    return {
      base: exactly(range.mid).mul(scale),
      powers: powersOf(kind),
      ...(unit === undefined ? {} : { unit }),
      bare: false,
      spread: new Map([...called.spread].map(([ref, spread]) => [ref, spread * scale.valueOf()])),
    };
  }

  #number(value: Fraction, unit: string | undefined): Term {
    if (unit === undefined) return { base: value, powers: '', bare: true, spread: new Map() };
    const kind = unitKind(unit, this.#region);
    if (!kind) throw new Unworkable({ kind: 'unknown', what: unit });
    const base = value.mul(kind.factor).add(kind.offset ?? 0);
    return {
      base: base.mul(scaleOf(kind.kind)),
      powers: powersOf(kind.kind),
      unit,
      bare: false,
      spread: new Map(),
    };
  }

  #input(ref: string): Term {
    const found = this.#look(ref);
    if (!found) throw new Unworkable({ kind: 'unknown', what: ref });
    const term = this.#number(exactly(found.value), found.unit);
    const factor = unitKind(found.unit, this.#region)?.factor.valueOf() ?? 1;
    const spread = (found.tolerance ?? 0) * factor;
    return { ...term, spread: spread === 0 ? new Map() : new Map([[ref, spread]]) };
  }

  #sum(left: Term, right: Term, sign: 1 | -1): Term {
    const [a, b] = [this.#withUnit(left, right), this.#withUnit(right, left)];
    const base = sign === 1 ? a.base.add(b.base) : a.base.sub(b.base);
    const unit = a.unit ?? b.unit;
    return {
      base,
      powers: sumOfPowers(a.powers, b.powers, sign),
      ...(unit === undefined ? {} : { unit }),
      bare: a.bare && b.bare,
      spread: joined(a.spread, 1, b.spread, sign),
    };
  }

  /** "bench height - 18": the 18 is in the unit that the bench height was said in. */
  #withUnit(term: Term, other: Term): Term {
    if (!term.bare || other.bare || other.unit === undefined || other.powers === '') return term;
    const kind = unitKind(other.unit, this.#region);
    const sameKind = kind && powersOf(kind.kind) === other.powers && !kind.offset;
    return sameKind ? { ...this.#number(term.base, other.unit), bare: false } : term;
  }
}

const TEMPERATURE = powersOf('temperature');
const TEMPERATURE_DIFFERENCE = powersOf('temperature difference');

function sumOfPowers(a: string, b: string, sign: 1 | -1): string {
  // Two temperatures have a difference and no sum; a temperature moves by a difference.
  if (a === TEMPERATURE && b === TEMPERATURE && sign === -1) return TEMPERATURE_DIFFERENCE;
  if (a === TEMPERATURE && b === TEMPERATURE_DIFFERENCE) return TEMPERATURE;
  if (a !== b || a === TEMPERATURE) {
    const say = (powers: string) => KIND_OF.get(powers) ?? powers;
    const what = a === b ? 'two temperatures have no sum' : `${say(a)} and ${say(b)} do not add`;
    throw new Unworkable({ kind: 'unit-clash', what });
  }
  return a;
}

function product(left: Term, right: Term, inverse: boolean): Term {
  if (left.powers === TEMPERATURE || right.powers === TEMPERATURE) {
    throw new Unworkable({ kind: 'unit-clash', what: 'a temperature cannot be multiplied' });
  }
  if (inverse && right.base.compare(0) === 0) throw new Unworkable({ kind: 'by-nought', what: 'division' });
  const base = inverse ? left.base.div(right.base) : left.base.mul(right.base);
  const powers = productOfPowers(left.powers, right.powers, inverse);
  const [a, b] = [left.base.valueOf(), right.base.valueOf()];
  const unit = right.powers === '' ? left.unit : left.powers === '' && !inverse ? right.unit : undefined;
  return {
    base,
    powers,
    ...(unit === undefined ? {} : { unit }),
    bare: left.bare && right.bare,
    spread: inverse
      ? joined(left.spread, 1 / b, right.spread, -a / (b * b))
      : joined(left.spread, b, right.spread, a),
  };
}

/** Base kinds in order, over those that divide: `current.time`, `length/time`. */
function productOfPowers(a: string, b: string, inverse: boolean): string {
  const [aTop, aUnder] = splitPowers(a);
  const [bTop, bUnder] = splitPowers(b);
  const top = [...aTop, ...(inverse ? bUnder : bTop)];
  const under: string[] = [];
  for (const kind of [...aUnder, ...(inverse ? bTop : bUnder)]) {
    const at = top.indexOf(kind);
    if (at >= 0) top.splice(at, 1);
    else under.push(kind);
  }
  const over = top.sort().join('.');
  return under.length > 0 ? `${over}/${under.sort().join('.')}` : over;
}

function splitPowers(powers: string): readonly [readonly string[], readonly string[]] {
  const [top = '', under = ''] = powers.split('/');
  const list = (text: string) => text.split('.').filter((kind) => kind !== '');
  return [list(top), list(under)];
}

function scaled(term: Term, by: Fraction): Term {
  return { ...term, base: term.base.mul(by), spread: joined(term.spread, by.valueOf(), new Map(), 1) };
}

function joined(
  left: ReadonlyMap<string, number>,
  leftScale: number,
  right: ReadonlyMap<string, number>,
  rightScale: number,
): ReadonlyMap<string, number> {
  const spread = new Map([...left].map(([ref, value]) => [ref, value * leftScale]));
  for (const [ref, value] of right) spread.set(ref, (spread.get(ref) ?? 0) + value * rightScale);
  return spread;
}
