import type { Check, Given, Worked } from './check.ts';
import { less, maybe, one, rangeOf } from './ranges.ts';
import { isRoom, roomWords } from './room.ts';
import { saidRange } from './said-range.ts';

/**
 * The drop that a fall comes to over a run, and whether what is there is enough of it.
 * Formula: drop = run x fall. Source: arithmetic; the fall itself is whatever rule or maker asks for it.
 */
export const FALL_OVER_RUN: Check = {
  name: 'fall over a run',
  says: 'the drop that a fall comes to over a run: a drain, a shower tray, a roof',
  formula: 'drop = run x fall',
  source: 'arithmetic; which fall is wanted is for the rule or the maker to say',
  inputs: [
    { name: 'run', kind: 'length', says: 'level distance' },
    { name: 'fall', kind: 'ratio', says: 'fall wanted: 1/40, 2.5 %, 40', most: 1, isFall: true },
    { name: 'drop', kind: 'length', says: 'drop that is there', optional: true },
  ],
  gives: 'drop',
  run: fallOf,
};

function fallOf(given: Given): Worked {
  const { say } = given;
  const [run, fall] = [one(given, 'run'), one(given, 'fall')];
  const wanted = rangeOf((length, share) => length * share, run, fall);
  const there = maybe(given, 'drop');
  const left = there ? less(there, wanted) : undefined;
  const told = `1 in ${say(1 / fall.mid, 'ratio')} comes to ${saidRange(say, wanted, 'length')}`;
  return {
    verdict: left === undefined ? 'told' : isRoom(left) ? 'holds' : 'broken',
    why: left ? `${told}; ${roomWords(left, say)}` : told,
    results: [
      { name: 'drop', kind: 'length', range: wanted },
      ...(left ? [{ name: 'room left', kind: 'length', range: left }] : []),
    ],
    notes: ['the run is measured level, not along the fall'],
  };
}
