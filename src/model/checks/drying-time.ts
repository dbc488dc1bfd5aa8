import type { Check, Given, Worked } from './check.ts';
import { ELAPSED, THUMB_FORMULA, THUMB_SOURCE, WARMTH_INPUTS } from './time-window.ts';
import { untilReady } from './until-ready.ts';

/**
 * When a coat is dry, from the data sheet's time, and whether that long has gone. Dry is not cured.
 * Formula: time x 2^((data sheet temperature - temperature) / 10 °C). Source: the data sheet's own time, carried by the rule
 * of thumb of time-window.ts, which names where it was read.
 */
export const DRYING_TIME: Check = {
  name: 'drying time',
  says: 'when a coat is dry at the temperature of the work, from the time that its data sheet gives',
  formula: THUMB_FORMULA,
  source: THUMB_SOURCE,
  inputs: [
    { name: 'time', kind: 'time', says: 'drying time from the data sheet' },
    ...WARMTH_INPUTS,
    ELAPSED,
  ],
  gives: 'dry after',
  run: dryingTimeOf,
};

/** Common practice, no source: what is dry to the touch may not be ready for load, water or the next coat. */
const NOT_CURED = 'dry is not cured: its data sheet says when it takes load, water or another coat';

function dryingTimeOf(given: Given): Worked {
  const worked = untilReady(given, 'dry');
  return 'notes' in worked ? { ...worked, notes: [...worked.notes, NOT_CURED] } : worked;
}
