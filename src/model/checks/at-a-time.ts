/** A check that stands, run for a time: the clock that the talk started, and what that makes of the outcome. */

import { isLater } from '../instants.ts';
import type { Check, CheckInput, Range } from './check.ts';
import type { AskedCheck, CheckState, CheckWindow, InputRead } from './check-rows.ts';
import { productOfCheck } from './products.ts';
import { airUnsaid, noneSaid, notGiven, type Reading, type Trouble } from './read-inputs.ts';
import { clockFor, hasClock, type RunningClock, readClock } from './running-clock.ts';
import { ELAPSED } from './time-window.ts';

/** What a run came to, in base units. */
export interface Outcome {
  readonly state: CheckState;
  readonly why: string;
  readonly results: readonly {
    readonly name: string;
    readonly kind: string;
    readonly range: Range;
    readonly unit?: string;
  }[];
  readonly notes: readonly string[];
  readonly ask: readonly string[];
  /** The check itself asks for an input that was left out. */
  readonly isWrong?: boolean;
  readonly window?: CheckWindow;
}

/** The clock of a check that stands and was not told how long ago it began. */
export function clockOf(
  { reader }: Reading,
  check: Check,
  asked: AskedCheck,
  now: string | undefined,
): RunningClock | undefined {
  if (now === undefined || !hasClock(check.name)) return undefined;
  if (asked.inputs.some(({ input }) => input === ELAPSED.name)) return undefined;
  return clockFor(reader, check.name, productOfCheck(asked), now);
}

/** What each check with a clock gives: from when the work may go on, and until when. */
const TIMES: Readonly<Record<string, { readonly from?: string; readonly until?: string }>> = {
  'pot life': { until: 'usable for' },
  'recoat window': { from: 'recoat from', until: 'recoat until' },
  'cure time': { from: 'cured after' },
  'drying time': { from: 'dry after' },
};

/** The outcome at `now`, by the clock that the talk started. What was refused or not run has no times to count. */
export function clocked(
  check: Check,
  outcome: Outcome,
  clock: RunningClock | undefined,
  now: string | undefined,
): Outcome {
  if (!clock || now === undefined || outcome.state !== 'told') return outcome;
  const named = TIMES[check.name];
  const range = (name: string | undefined) => outcome.results.find((one) => one.name === name)?.range;
  const [from, until] = [range(named?.from)?.high, range(named?.until)?.low];
  const times = { ...(from === undefined ? {} : { from }), ...(until === undefined ? {} : { until }) };
  const { state, why, window } = readClock(check.name, clock, times, now);
  const vague = clock.start.isSaid ? [] : ['no time was said: it is counted from the memo that told of it'];
  return { ...outcome, state, why, window, notes: [...outcome.notes, ...vague] };
}

/** Keys of a check that time may change: see `watches.ts`. `takesAir`: it goes by the air as it was told last. */
export function watchesOfTime(
  check: Check,
  { window }: Outcome,
  now: string | undefined,
  takesAir: boolean,
): readonly string[] {
  if (!hasClock(check.name)) return takesAir ? ['@now'] : [];
  const isRunning =
    now !== undefined &&
    [window?.opens, window?.closes].some((end) => end !== undefined && isLater(end, now));
  return ['@clock', ...(isRunning ? ['@now'] : [])];
}

/** An input with what is to be said against its figures, where other talk gave it. */
export function doubted(
  input: InputRead,
  doubt: { readonly input: string; readonly why: string } | undefined,
): InputRead {
  if (doubt?.input !== input.name) return input;
  return { ...input, reads: input.reads.map((read) => ({ ...read, doubt: read.doubt ?? doubt.why })) };
}

/** An input that is needed and that neither the asking nor other talk gives. */
export function noneGiven(reading: Reading, check: Check, input: CheckInput): Trouble {
  if (input.everyOf) return noneSaid(reading, input, input.everyOf);
  return input.ofAir ? airUnsaid(reading, input) : notGiven(reading, check, input);
}
