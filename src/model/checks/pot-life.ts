import type { Check, Given, Worked } from './check.ts';
import { isAtLeast } from './noise.ts';
import { less, maybe, one } from './ranges.ts';
import { saidRange } from './said-range.ts';
import { ELAPSED, THUMB_FORMULA, THUMB_SOURCE, WARMTH_INPUTS, warmthOf } from './time-window.ts';

/**
 * How long a mix can be used at the temperature of the work, and whether that is gone.
 * Formula: time x 2^((data sheet temperature - temperature) / 10 °C). Source: the data sheet's own time, carried by the rule
 * of thumb of time-window.ts, which names where it was read.
 */
export const POT_LIFE: Check = {
  name: 'pot life',
  says: 'how long a mix can be used at the temperature of the work, from the time that its data sheet gives',
  formula: THUMB_FORMULA,
  source: THUMB_SOURCE,
  inputs: [{ name: 'time', kind: 'time', says: 'pot life from the data sheet' }, ...WARMTH_INPUTS, ELAPSED],
  gives: 'usable for',
  touches: ['mixing pot'],
  run: potLifeOf,
};

function potLifeOf(given: Given): Worked {
  const warmth = warmthOf(given);
  if (warmth.tooCold !== undefined) return { verdict: 'refused', why: warmth.tooCold };
  const { say } = given;
  const time = warmth.carry(one(given, 'time'));
  const usable = { name: 'usable for', kind: 'time', range: time };
  const told = `usable for ${saidRange(say, time, 'time')}`;
  const notes = [...warmth.notes, 'a larger or deeper pot goes off sooner than the data sheet says'];
  const elapsed = maybe(given, ELAPSED.name);
  if (!elapsed) return { verdict: 'told', why: told, results: [usable], notes };
  const left = less(time, elapsed);
  const holds = isAtLeast(left.low, 0);
  const rest = `${say(Math.abs(left.low), 'time')} ${holds ? 'left' : 'over'} at worst`;
  return {
    verdict: holds ? 'holds' : 'broken',
    why: `${told}; ${saidRange(say, elapsed, 'time')} gone, ${rest}`,
    results: [usable, { name: 'left', kind: 'time', range: left }],
    notes,
  };
}
