/** A check that stands, run for a time: the clock that the talk started, and what that makes of the outcome. */

import { isLater } from '../instants.ts';
import type { Check, CheckInput, Range } from './check.ts';
import type { AskedCheck, CheckState, CheckWindow, InputRead } from './check-rows.ts';
import { productOfCheck } from './products.ts';
import { airUnsaid, noneSaid, notGiven, type Reading, type Trouble } from './read-inputs.ts';
import { type ClockWords, clocksFor, hasClock, type RunningClock, readClock } from './running-clock.ts';
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
  readonly alsoRunning?: readonly CheckWindow[];
}

/** The clocks of a check that stands and was not told how long ago it began. */
export function clocksOf(
  { reader }: Reading,
  check: Check,
  asked: AskedCheck,
  now: string | undefined,
): readonly RunningClock[] {
  if (now === undefined || !hasClock(check.name)) return [];
  if (asked.inputs.some(({ input }) => input === ELAPSED.name)) return [];
  return clocksFor(reader, check.name, productOfCheck(asked), now);
}

/** What each check with a clock gives: from when the work may go on, and until when. */
const TIMES: Readonly<Record<string, { readonly from?: string; readonly until?: string }>> = {
  'pot life': { until: 'usable for' },
  'recoat window': { from: 'recoat from', until: 'recoat until' },
  'cure time': { from: 'cured after' },
  'drying time': { from: 'dry after' },
};

/**
 * The outcome at `now`, by the clocks that the talk started. What broke on any of them is told; else what the one says
 * that was begun last. What was refused or not run has no times to count.
 */
export function clocked(
  check: Check,
  outcome: Outcome,
  clocks: readonly RunningClock[],
  now: string | undefined,
): Outcome {
  const last = clocks.at(-1);
  if (!last || now === undefined || outcome.state !== 'told') return outcome;
  const named = TIMES[check.name];
  const range = (name: string | undefined) => outcome.results.find((one) => one.name === name)?.range;
  const [from, until] = [range(named?.from)?.high, range(named?.until)?.low];
  const times = { ...(from === undefined ? {} : { from }), ...(until === undefined ? {} : { until }) };
  const read = clocks.map((clock) => readClock(check.name, clock, times, now));
  const broken = read.filter(({ state }) => state === 'broken');
  const { state, why, window } = broken.at(-1) ?? (read.at(-1) as ClockWords);
  const others = read.filter((one) => one.window !== window);
  const vague = last.start.isSaid ? [] : ['no time was said: it is counted from the memo that told of it'];
  return {
    ...outcome,
    state,
    why: broken.length > 1 ? broken.map((one) => one.why).join('; ') : why,
    window,
    ...(others.length > 0 ? { alsoRunning: others.map((one) => one.window) } : {}),
    notes: [
      ...outcome.notes,
      ...vague,
      ...others.filter((one) => one.state !== 'broken').map((one) => `besides: ${one.why}`),
    ],
  };
}

/** Keys of a check that time may change: see `watches.ts`. `takesAir`: it goes by the air as it was told last. */
export function watchesOfTime(
  check: Check,
  { window, alsoRunning = [] }: Outcome,
  now: string | undefined,
  takesAir: boolean,
): readonly string[] {
  if (!hasClock(check.name)) return takesAir ? ['@now'] : [];
  const isRunning =
    now !== undefined &&
    [window, ...alsoRunning]
      .flatMap((one) => [one?.opens, one?.closes])
      .some((end) => end !== undefined && isLater(end, now));
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
