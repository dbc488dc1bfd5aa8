/** Checks that a project keeps, as rows of the model, and what a run of one came to. */
import type { Bound, ClockAct, FigureState, Quantity, SpokenInput, UnitName } from '../../language/notes.ts';
import type { Source } from '../views.ts';

/** A check as it is asked for: by name, with its inputs as expressions. An input that takes many stands once for each. */
export interface AskedCheck {
  readonly check: string;
  readonly inputs: readonly SpokenInput[];
  readonly options?: Readonly<Record<string, string>>;
}

/**
 * `told`: it only gives numbers. `refused`: an input makes no sense. `not-run`: an input is missing, or open on the
 * side that decides. `stale`: an input was measured before a layer or a change.
 */
export type CheckState = 'holds' | 'broken' | 'told' | 'refused' | 'not-run' | 'stale';

/** A check that runs by itself. Names in its inputs that stand for a figure are slots in brackets. */
export interface CheckRow extends AskedCheck {
  /** The note's id (`m3.r2`), or `s<seq>` for one that a person added. */
  readonly id: string;
  /** Why it matters, in the person's words. */
  readonly note?: string;
  readonly source: Source;
  /** False once it was taken away, or said anew. */
  readonly active: boolean;
  /** What brings it up again: see `watches.ts`. */
  readonly watches: readonly string[];
  readonly last: CheckVerdict;
}

/** Keys by which a check is found while it is active: what brings it up again, and its name after an equals sign. */
export function checkKeys({ active, check, watches }: CheckRow): readonly string[] {
  return active ? [...watches, `=${check}`] : [];
}

export interface CheckVerdict {
  readonly state: CheckState;
  readonly why: string;
  /** When it came to be so: ISO 8601. */
  readonly since: string;
  /** The time that it was run for: ISO 8601. What has a clock is another verdict at another time. */
  readonly asOf?: string;
}

/** When the times of a product begin and end, by a clock that the talk started. Instants are ISO 8601. */
export interface CheckWindow {
  /** In the words of the talk; empty where none was named. */
  readonly product: string;
  /** What it was put on, where that was said. */
  readonly on?: string;
  readonly act: ClockAct;
  readonly startedAt: string;
  /** Where the start was told. */
  readonly source: Source;
  /** Where what came of it was told, where that is later: the mix still in use. */
  readonly usedSource?: Source;
  /** When it may be gone on with, at the latest: the next coat, a cured joint. */
  readonly opens?: string;
  /** When it has to be done by, at the earliest: the last time for a coat, the end of a pot life. */
  readonly closes?: string;
}

/** A standing figure that an input reads. */
export interface FigureRead extends Quantity {
  /** "side hatch width". */
  readonly name: string;
  readonly bound: Bound;
  readonly high?: number;
  /** Half-width of its tolerance, in its unit; absent where none was given. */
  readonly tolerance?: number;
  readonly state?: FigureState;
  /** Absent when it was worked out and never spoken. */
  readonly source?: Source;
  /** Why it may not be so any more. */
  readonly doubt?: string;
}

/** One input as it went into a run. */
export interface InputRead {
  readonly name: string;
  /** In words: "side hatch width - 2 * 4 mm". Empty where nothing was given. */
  readonly expression: string;
  /** What a plain size or time is of, where that was said. */
  readonly of?: string;
  /** Absent where it is missing. */
  readonly range?: {
    readonly low: number;
    readonly mid: number;
    readonly high: number;
    readonly unit: UnitName;
  };
  /** A share that is told as one in so many. */
  readonly isFall?: boolean;
  /** The side that its bound leaves open: "at least" has no upper end. */
  readonly open?: 'above' | 'below';
  readonly reads: readonly FigureRead[];
  /** What is missing, in words. */
  readonly missing?: string;
}

export interface ResultRead {
  readonly name: string;
  readonly low: number;
  readonly mid: number;
  readonly high: number;
  readonly unit: UnitName;
}

/** What a run came to, in units that people read. */
export interface CheckRun {
  readonly check: string;
  readonly state: CheckState;
  /** One sentence with the numbers that decide. */
  readonly why: string;
  readonly results: readonly ResultRead[];
  readonly notes: readonly string[];
  readonly inputs: readonly InputRead[];
  readonly options: Readonly<Record<string, string>>;
  /** What to say or to set, a line each, where it could not be run. */
  readonly ask: readonly string[];
  /** Where the talk started its clock. */
  readonly window?: CheckWindow;
  /** The clocks of the same product on other things, where the talk told of more than one. */
  readonly alsoRunning?: readonly CheckWindow[];
}
