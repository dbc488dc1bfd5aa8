import type { Check, Given, Range, Worked } from './check.ts';
import { all, less, times } from './ranges.ts';
import { isRoom, labelOf, leastOf, roomWords, unpaired } from './room.ts';

/**
 * Room left for a part between two sides, with the gap that it needs: in one direction, or in several given in the
 * same order ("opening width, opening height; part width, part height").
 * Formula: opening - part - gap on the sides that need one, with the opening at its least and the rest at their most.
 * Source: arithmetic, with each tolerance in the bad direction; common practice, no source.
 */
export const CLEARANCE: Check = {
  name: 'clearance',
  says: 'whether a part goes into an opening with the gap it needs on each side',
  formula:
    'opening - part - 2 x gap, each tolerance taken off in the bad direction, each direction by itself',
  source: 'arithmetic; worst case as in tolerance stacks',
  inputs: [
    {
      name: 'opening',
      kind: 'length',
      says: 'clear size of the opening, one for each direction',
      many: true,
    },
    { name: 'part', kind: 'length', says: 'size of the part in the same directions', many: true },
    {
      name: 'gap',
      kind: 'length',
      says: 'gap wanted on each side: one for all directions, or one for each',
      many: true,
      optional: true,
      nought: true,
    },
  ],
  options: [{ name: 'gap on', says: 'where the gap is wanted', of: ['both sides', 'one side'] }],
  gives: 'room left',
  run: clearanceOf,
};

function clearanceOf(given: Given): Worked {
  const [openings, parts, gaps] = [all(given, 'opening'), all(given, 'part'), all(given, 'gap')];
  const apart = unpaired(given, 'opening', 'part');
  if (apart !== undefined) return { verdict: 'missing', why: apart };
  if (gaps.length > 1 && gaps.length !== openings.length) {
    return {
      verdict: 'missing',
      why: `${gaps.length} gaps for ${openings.length} directions: one, or one for each`,
    };
  }
  const sides = given.options.get('gap on') === 'one side' ? 1 : 2;
  const rooms = openings.map((opening, index) => {
    const bare = less(opening, parts[index] as Range);
    const gap = gaps[index] ?? gaps[0];
    return gap ? less(bare, times(gap, sides)) : bare;
  });
  return verdictOn(rooms, given, sides);
}

function verdictOn(rooms: readonly Range[], given: Given, sides: number): Worked {
  const tightest = rooms.reduce((least, room) => (room.low < least.low ? room : least));
  const named = (room: Range) =>
    `${roomWords(room, given.say)}${rooms.length > 1 ? ` at ${labelOf(given, 'opening', rooms.indexOf(room))}` : ''}`;
  const tight = rooms.filter((room) => !isRoom(room));
  const each = rooms.map((room, index) => ({ name: `room left ${index + 1}`, kind: 'length', range: room }));
  return {
    verdict: tight.length === 0 ? 'holds' : 'broken',
    why: tight.length > 0 ? tight.map(named).join('; ') : named(tightest),
    results: [
      { name: 'room left', kind: 'length', range: leastOf(rooms) },
      ...(rooms.length > 1 ? each : []),
    ],
    notes: [
      given.inputs.has('gap')
        ? `the gap is kept on ${sides === 1 ? 'one side' : 'both sides'}`
        : 'no gap was asked for',
    ],
  };
}
