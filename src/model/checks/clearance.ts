import type { Check, Given, Worked } from './check.ts';
import { less, maybe, one, times } from './ranges.ts';

/** Room left for a part between two sides, with the gap that it needs at each. */
export const CLEARANCE: Check = {
  name: 'clearance',
  says: 'whether a part goes into an opening with the gap it needs on each side',
  formula: 'opening - part - 2 x gap, each tolerance taken off in the bad direction',
  source: 'arithmetic; worst case as in tolerance stacks',
  inputs: [
    { name: 'opening', kind: 'length', says: 'clear size of the opening' },
    { name: 'part', kind: 'length', says: 'size of the part in that direction' },
    { name: 'gap', kind: 'length', says: 'gap wanted on each side', optional: true },
  ],
  gives: 'room left',
  run: clearanceOf,
};

function clearanceOf(given: Given): Worked {
  const gap = maybe(given, 'gap');
  const bare = less(one(given, 'opening'), one(given, 'part'));
  const left = gap ? less(bare, times(gap, 2)) : bare;
  const { say } = given;
  const [worst, said] = [say(Math.abs(left.low), 'length'), say(Math.abs(left.mid), 'length')];
  const holds = left.low >= 0;
  const atWorst = left.low === left.mid ? '' : ` (${said} ${left.mid < 0 ? 'short' : 'left'} as said)`;
  return {
    verdict: holds ? 'holds' : 'broken',
    why: `${worst} ${holds ? 'left' : 'short'} at worst${atWorst}`,
    results: [{ name: 'room left', kind: 'length', range: left }],
    notes: gap ? ['the gap is kept on both sides'] : ['no gap was asked for'],
  };
}
