import type { Given, Worked } from './check.ts';
import { isAtLeast } from './noise.ts';
import { less, maybe, one } from './ranges.ts';
import { saidRange } from './said-range.ts';
import { ELAPSED, warmthOf } from './time-window.ts';

/**
 * When a state is reached ("cured", "dry"), from the input `time` of the data sheet in seconds, and, where `elapsed` was
 * given, whether that long has gone: `holds` or `broken`, else `told`. Refused below the least the product takes.
 */
export function untilReady(given: Given, state: string): Worked {
  const warmth = warmthOf(given);
  if (warmth.tooCold !== undefined) return { verdict: 'refused', why: warmth.tooCold };
  const { say } = given;
  const time = warmth.carry(one(given, 'time'));
  const ready = { name: `${state} after`, kind: 'time', range: time };
  const told = `${state} after ${saidRange(say, time, 'time')}`;
  const elapsed = maybe(given, ELAPSED.name);
  if (!elapsed) return { verdict: 'told', why: told, results: [ready], notes: warmth.notes };
  const toGo = less(time, elapsed);
  const done = isAtLeast(0, toGo.high);
  return {
    verdict: done ? 'holds' : 'broken',
    why: `${told}; ${saidRange(say, elapsed, 'time')} gone${done ? '' : `, ${say(toGo.high, 'time')} to go at worst`}`,
    results: [ready, { name: 'to go', kind: 'time', range: toGo }],
    notes: warmth.notes,
  };
}
