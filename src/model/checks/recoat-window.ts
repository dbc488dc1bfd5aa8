import type { Check, Given, Range, Worked } from './check.ts';
import { isAtLeast } from './noise.ts';
import { less, maybe, one } from './ranges.ts';
import { saidRange } from './said-range.ts';
import { ELAPSED, THUMB_FORMULA, THUMB_SOURCE, WARMTH_INPUTS, warmthOf } from './time-window.ts';

/**
 * From when and until when the next coat may go on, and whether now is between the two.
 * Formula: time x 2^((data sheet temperature - temperature) / 10 °C). Source: the data sheet's own time, carried by the rule
 * of thumb of time-window.ts, which names where it was read.
 */
export const RECOAT_WINDOW: Check = {
  name: 'recoat window',
  says: 'from when and until when the next coat goes on, from the times that the data sheet gives',
  formula: THUMB_FORMULA,
  source: THUMB_SOURCE,
  inputs: [
    { name: 'earliest', kind: 'time', says: 'shortest wait from the data sheet' },
    { name: 'latest', kind: 'time', says: 'longest wait from the data sheet', optional: true },
    ...WARMTH_INPUTS,
    ELAPSED,
  ],
  gives: 'recoat from',
  run: recoatWindowOf,
};

function recoatWindowOf(given: Given): Worked {
  const [earliest, latest] = [one(given, 'earliest'), maybe(given, 'latest')];
  const { say } = given;
  if (latest && latest.mid <= earliest.mid) {
    const why = `the latest (${say(latest.mid, 'time')}) is not after the earliest (${say(earliest.mid, 'time')})`;
    return { verdict: 'refused', why };
  }
  const warmth = warmthOf(given);
  if (warmth.tooCold !== undefined) return { verdict: 'refused', why: warmth.tooCold };
  const from = warmth.carry(earliest);
  const until = latest && warmth.carry(latest);
  const results = [
    { name: 'recoat from', kind: 'time', range: from },
    ...(until ? [{ name: 'recoat until', kind: 'time', range: until }] : []),
  ];
  const open = until ? '' : ['no latest was given: whether it needs sanding first is not known'];
  return { ...judged(given, from, until), results, notes: [...warmth.notes, ...open] };
}

function judged(given: Given, from: Range, until: Range | undefined) {
  const { say } = given;
  const to = until ? ` until ${saidRange(say, until, 'time')}` : '';
  const window = `recoat from ${saidRange(say, from, 'time')}${to} after the last coat`;
  const elapsed = maybe(given, ELAPSED.name);
  if (!elapsed) return { verdict: 'told', why: window } as const;
  const gone = `${window}; ${saidRange(say, elapsed, 'time')} gone`;
  const wait = less(from, elapsed).high;
  if (!isAtLeast(0, wait))
    return { verdict: 'broken', why: `${gone}, ${say(wait, 'time')} to wait at worst` } as const;
  if (!until) return { verdict: 'holds', why: gone } as const;
  const left = less(until, elapsed).low;
  if (!isAtLeast(left, 0))
    return { verdict: 'broken', why: `${gone}, ${say(-left, 'time')} too late at worst` } as const;
  return { verdict: 'holds', why: `${gone}, ${say(Math.max(0, left), 'time')} left at worst` } as const;
}
