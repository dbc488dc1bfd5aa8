import type { Attribute, Bound, Dimension, Quantity } from '../notes.ts';
import type { Discourse, Name } from './discourse.ts';
import type { Parse } from './parse.ts';

/** A quantity in its place, as the frames and attribute rules see it. */
export interface Site {
  readonly parse: Parse;
  readonly discourse: Discourse;
  /** The word that stands for the quantity. */
  readonly at: number;
  readonly dimension: Dimension;
  readonly quantity: Quantity & { readonly bound: Bound; readonly replaces?: Quantity };
  /** What the words next to it say was measured; the usual size of the thing fills in later. */
  readonly said?: Attribute;
}

/** What a frame answers: the thing, and what is measured of it when the frame knows. */
export interface Claim {
  readonly name: Name;
  readonly attribute?: Attribute;
  /** Where it is measured from, or between what. */
  readonly datum?: string;
  /** The clause itself names the thing as subject or head: taken though it is an unlikely carrier. */
  readonly isNamed?: boolean;
  /** The way of speaking leaves no doubt: other things are not weighed against this one. */
  readonly isSettled?: boolean;
  /** Words for everything that a limit binds, when it binds more than the thing itself. */
  readonly binds?: string;
}

/** One way of saying what a quantity belongs to. */
export interface Frame {
  readonly name: string;
  /** Sentences it reads, with the item that it gives. */
  readonly examples: readonly (readonly [string, string])[];
  /** Sentences that it must leave to other frames. */
  readonly leaves: readonly string[];
  /** True for a guess from the talk around: the note says that its item was filled in. */
  readonly isGuess?: true;
  readonly read: (site: Site) => Claim | undefined;
}
