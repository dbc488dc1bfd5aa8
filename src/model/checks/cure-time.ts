import type { Check, Given, Worked } from './check.ts';
import { isAtLeast } from './noise.ts';
import { less, maybe, one } from './ranges.ts';
import { saidRange } from './said-range.ts';
import { ELAPSED, THUMB_FORMULA, THUMB_SOURCE, WARMTH_INPUTS, warmthOf } from './time-window.ts';

/** When something is cured, from the data sheet's time, and whether that long has gone. */
export const CURE_TIME: Check = {
  name: 'cure time',
  says: 'when a product is cured at the temperature of the work, from the time that its data sheet gives',
  formula: THUMB_FORMULA,
  source: THUMB_SOURCE,
  inputs: [{ name: 'time', kind: 'time', says: 'cure time from the data sheet' }, ...WARMTH_INPUTS, ELAPSED],
  gives: 'cured after',
  run: cureTimeOf,
};

function cureTimeOf(given: Given): Worked {
  const warmth = warmthOf(given);
  if (warmth.tooCold !== undefined) return { verdict: 'refused', why: warmth.tooCold };
  const { say } = given;
  const time = warmth.carry(one(given, 'time'));
  const cured = { name: 'cured after', kind: 'time', range: time };
  const told = `cured after ${saidRange(say, time, 'time')}`;
  const elapsed = maybe(given, ELAPSED.name);
  if (!elapsed) return { verdict: 'told', why: told, results: [cured], notes: warmth.notes };
  const toGo = less(time, elapsed);
  const done = isAtLeast(0, toGo.high);
  return {
    verdict: done ? 'holds' : 'broken',
    why: `${told}; ${saidRange(say, elapsed, 'time')} gone${done ? '' : `, ${say(toGo.high, 'time')} to go at worst`}`,
    results: [cured, { name: 'to go', kind: 'time', range: toGo }],
    notes: warmth.notes,
  };
}
