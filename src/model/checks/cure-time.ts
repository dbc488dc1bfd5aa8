import type { Check } from './check.ts';
import { ELAPSED, THUMB_FORMULA, THUMB_SOURCE, WARMTH_INPUTS } from './time-window.ts';
import { untilReady } from './until-ready.ts';

/**
 * When something is cured, from the data sheet's time, and whether that long has gone.
 * Formula: time x 2^((data sheet temperature - temperature) / 10 °C). Source: the data sheet's own time, carried by the rule
 * of thumb of time-window.ts, which names where it was read.
 */
export const CURE_TIME: Check = {
  name: 'cure time',
  says: 'when a product is cured at the temperature of the work, from the time that its data sheet gives',
  formula: THUMB_FORMULA,
  source: THUMB_SOURCE,
  inputs: [{ name: 'time', kind: 'time', says: 'cure time from the data sheet' }, ...WARMTH_INPUTS, ELAPSED],
  gives: 'cured after',
  run: (given) => untilReady(given, 'cured'),
};
