/**
 * What every trade check is made of: named inputs that are ranges, a formula with its source, and a verdict in words
 * with its numbers. Checks are pure: the same inputs give the same answer. None says that a thing is safe.
 */
import type { Attribute, UnitName } from '../../language/notes.ts';

/**
 * A quantity as it is known, in the base unit of its kind (m, kg, m2, m3, deg, V, A, Ah, W, Wh, s, K, 1: see units.ts).
 * `mid` is the figure as said; hedges and tolerances are the distance to `low` and `high`. low <= mid <= high.
 */
export interface Range {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

export interface CheckInput {
  /** As it is written and shown: "panel length". Unique within the check. */
  readonly name: string;
  /** Kind of quantity: a kind of units.ts ("length", "mass", "temperature", "ratio"...). */
  readonly kind: string;
  /** What to give, in a few words: "the opening's clear width". */
  readonly says: string;
  /** Takes one figure or more: layers, parts, loads. */
  readonly many?: boolean;
  /** Where none is given to a check of a project: every standing figure of this attribute. */
  readonly everyOf?: Attribute;
  /** Where none is given to a check of a project: the air as it was told last. */
  readonly ofAir?: boolean;
  readonly optional?: boolean;
  /** Nought and less make sense (a temperature, an offset). Other inputs are refused at nought and below. */
  readonly anySign?: boolean;
  /** Nought makes sense, less does not: the small end of a taper that runs out to a point. */
  readonly nought?: boolean;
  /** Most that makes sense, in the base unit, where the usual most of the kind (sensible.ts) is not it. */
  readonly most?: number;
  /** Unit to print in, where that is not the person's own for this kind: `1` for a count. */
  readonly unit?: UnitName;
  /** A slope: a plain number above one is the greater term of one in so many, 40 of one in forty. */
  readonly isFall?: boolean;
}

/** A choice between conventions: "there and back" or "one way". The first is taken where none was made. */
export interface CheckOption {
  readonly name: string;
  readonly says: string;
  readonly of: readonly string[];
}

/** One number that came out. */
export interface Result {
  /** "diagonal", "room left". */
  readonly name: string;
  readonly kind: string;
  readonly range: Range;
  /** Unit to print in, where that is not the person's own for this kind. */
  readonly unit?: UnitName;
}

/**
 * What a check came to. `holds` and `broken` are judged at the worst of the ranges; `told` only gives numbers.
 * `refused`: an input makes no sense (nought, negative, absurd), with the sentence that says so and no number.
 * `missing`: an input that only the chosen option or the other inputs ask for was not given; the check has not run.
 */
export type Worked =
  | {
      readonly verdict: 'holds' | 'broken' | 'told';
      /** One sentence with the numbers that decide, and how much is left or short. */
      readonly why: string;
      readonly results: readonly Result[];
      /** Conventions, constants and what was left out: "length is there and back", "fittings not counted". */
      readonly notes: readonly string[];
    }
  | { readonly verdict: 'refused'; readonly why: string }
  | { readonly verdict: 'missing'; readonly why: string };

/** Prints a quantity of a kind, given in its base unit, as the person reads it: `say(0.905, 'length')` is "905 mm". */
export type Say = (base: number, kind: string, unit?: UnitName) => string;

/** Inputs by name, each with one range or more; what was not given is not in it. Complete where `run` is called. */
export interface Given {
  readonly inputs: ReadonlyMap<string, readonly Range[]>;
  /** Choices by name, with the first convention where none was made. */
  readonly options: ReadonlyMap<string, string>;
  /** Names of what stands behind the ranges of an input that takes many, in their order; absent where none are known. */
  readonly labels?: ReadonlyMap<string, readonly string[]>;
  readonly say: Say;
}

export interface Check {
  /** As it is asked for: "panel through opening". Lower case, plain words, unique. */
  readonly name: string;
  /** One line: what it tells. */
  readonly says: string;
  /** The formula in words and signs, and where it comes from. */
  readonly formula: string;
  readonly source: string;
  readonly inputs: readonly CheckInput[];
  readonly options?: readonly CheckOption[];
  /** The result that stands for the whole in a formula: "diagonal". Absent when it only gives a verdict. */
  readonly gives?: string;
  /** Words whose cautions (cautions-data.json triggers) are shown beside it: "mains", "battery". */
  readonly touches?: readonly string[];
  /** Called only with every input that is not optional, each sensible. */
  readonly run: (given: Given) => Worked;
}
