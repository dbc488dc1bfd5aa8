import type { Check, Given, Range, Result, Worked } from './check.ts';
import { less, maybe, one } from './ranges.ts';
import { isRoom, leastOf, roomWords } from './room.ts';

/**
 * What a box sweeps as it turns about a pivot, seen from the side, and whether it keeps clear of the floor, the walls
 * and what is above it: at the worst angle within the swing, not only at its ends.
 * Formula: a corner at distance r from the pivot, in direction c, reaches r cos(c + angle - way) towards a way (ahead
 * 0, up 90, behind 180, down 270 degrees): most at an end of the swing, or r itself where c + angle passes that way.
 * Source: rotation in the plane; a box reaches furthest at a corner because it is convex.
 */
export const SWING_CLEARANCE: Check = {
  name: 'swing clearance',
  says: 'what a box sweeps as it turns about a pivot, and its gap to floor, walls and ceiling at the worst angle',
  formula:
    'most over corners and angles of r cos(corner direction + angle - way), against the distance that way',
  source:
    'rotation in the plane, worked out exactly: the extremes are at the ends or where a corner passes the way',
  inputs: [
    { name: 'box length', kind: 'length', says: 'size of the box from back to front, when level' },
    { name: 'box depth', kind: 'length', says: 'size from bottom to top, when level' },
    {
      name: 'pivot from back',
      kind: 'length',
      says: 'how far the pivot is ahead of the back end; a minus when behind it',
      anySign: true,
    },
    {
      name: 'pivot from bottom',
      kind: 'length',
      says: 'how far the pivot is above the bottom; a minus when below it',
      anySign: true,
    },
    {
      name: 'from angle',
      kind: 'angle',
      says: 'where the swing begins: nought is level, front end up is more',
      anySign: true,
    },
    { name: 'to angle', kind: 'angle', says: 'where the swing ends', anySign: true },
    { name: 'floor', kind: 'length', says: 'how far the floor is below the pivot', optional: true },
    { name: 'ceiling', kind: 'length', says: 'how far what is above is from the pivot', optional: true },
    { name: 'wall ahead', kind: 'length', says: 'how far a wall ahead is from the pivot', optional: true },
    { name: 'wall behind', kind: 'length', says: 'how far a wall behind is from the pivot', optional: true },
    { name: 'gap', kind: 'length', says: 'least gap wanted', optional: true, nought: true },
  ],
  gives: 'room left',
  run: swingOf,
};

/** Ways to look from the pivot, in degrees anticlockwise with the front to the right, and what may stand there. */
const WAYS = [
  { way: 270, side: 'floor', reach: 'reach below' },
  { way: 90, side: 'ceiling', reach: 'reach above' },
  { way: 0, side: 'wall ahead', reach: 'reach ahead' },
  { way: 180, side: 'wall behind', reach: 'reach behind' },
] as const;

interface Box {
  readonly length: number;
  readonly depth: number;
  readonly fromBack: number;
  readonly fromBottom: number;
}

function swingOf(given: Given): Worked {
  const { say } = given;
  const reaches = WAYS.map((look) => ({ ...look, ...reachRange(given, look.way) }));
  const gap = maybe(given, 'gap');
  const rooms = reaches.flatMap(({ side, range, angle }) => {
    const distance = maybe(given, side);
    if (!distance) return [];
    const bare = less(distance, range);
    return [{ side, left: gap ? less(bare, gap) : bare, angle }];
  });
  const tight = rooms.filter(({ left }) => !isRoom(left));
  const shown = tight.length > 0 ? tight : rooms;
  const lengths: readonly Result[] = [
    ...(rooms.length > 0
      ? [{ name: 'room left', kind: 'length', range: leastOf(rooms.map(({ left }) => left)) }]
      : []),
    ...reaches.map(({ reach, range }) => ({ name: reach, kind: 'length', range })),
  ];
  const told = reaches.map(({ reach, range }) => `${reach} ${say(range.high, 'length')}`).join(', ');
  const words = shown.map(
    ({ side, left, angle }) =>
      `${roomWords(left, say)} to the ${side}, with the box at ${say(angle, 'angle')}`,
  );
  return {
    verdict: rooms.length === 0 ? 'told' : tight.length > 0 ? 'broken' : 'holds',
    why: rooms.length === 0 ? told : words.join('; '),
    results: lengths,
    notes: [
      'seen from the side; reaches are measured from the pivot',
      ...(gap ? [] : ['no gap was asked for']),
    ],
  };
}

/**
 * How far the box reaches one way, with the angle where it does at the worst. The far end is exact: a reach is linear
 * in each size and grows with the swing, so it is largest at ends of the ranges. The near end is a bound: the reach as
 * said less the most that any corner can be nearer.
 */
function reachRange(given: Given, way: number): { readonly range: Range; readonly angle: number } {
  const sizes = ['box length', 'box depth', 'pivot from back', 'pivot from bottom'].map((name) =>
    one(given, name),
  );
  const [from, to] = [one(given, 'from angle'), one(given, 'to angle')];
  const widest = [Math.min(from.low, to.low), Math.max(from.high, to.high)] as const;
  const said = [Math.min(from.mid, to.mid), Math.max(from.mid, to.mid)] as const;
  const worst = cornersOfRanges(sizes)
    .map((box) => furthest(box, widest, way))
    .reduce((most, next) => (next.reach > most.reach ? next : most));
  const mid = furthest(boxOf(sizes.map((size) => size.mid)), said, way).reach;
  return { range: { low: mid - slackOf(sizes, from, to), mid, high: worst.reach }, angle: worst.angle };
}

function boxOf(values: readonly number[]): Box {
  const [length = 0, depth = 0, fromBack = 0, fromBottom = 0] = values;
  return { length, depth, fromBack, fromBottom };
}

function cornersOfRanges(sizes: readonly Range[]): readonly Box[] {
  let corners: number[][] = [[]];
  for (const { low, high } of sizes) {
    corners = corners.flatMap((corner) =>
      (low === high ? [low] : [low, high]).map((end) => [...corner, end]),
    );
  }
  return corners.map(boxOf);
}

/** The most that a corner may lie elsewhere than said: by the sizes, and along its arc by the ends of the swing. */
function slackOf(sizes: readonly Range[], from: Range, to: Range): number {
  const off = ({ low, mid, high }: Range) => Math.max(mid - low, high - mid);
  const [length = 0, depth = 0, back = 0, bottom = 0] = sizes.map(off);
  const turned = (Math.max(off(from), off(to)) * Math.PI) / 180;
  const radius = Math.max(
    ...cornersOfRanges(sizes)
      .flatMap(cornersOf)
      .map(({ r }) => r),
  );
  return Math.hypot(length + back, depth + bottom) + radius * turned;
}

/** Corners of the level box about its pivot: distance, and direction in degrees. */
function cornersOf({ length, depth, fromBack, fromBottom }: Box) {
  return [-fromBack, length - fromBack].flatMap((x) =>
    [-fromBottom, depth - fromBottom].map((y) => ({
      r: Math.hypot(x, y),
      direction: (Math.atan2(y, x) * 180) / Math.PI,
    })),
  );
}

/** The furthest that a corner gets one way within a swing, in degrees from the lesser to the greater. */
function furthest(box: Box, [from, to]: readonly [number, number], way: number) {
  const reached = cornersOf(box).flatMap(({ r, direction }) => {
    const passing = passes(way - direction, from, to);
    const ends = [from, to].map((angle) => ({
      reach: r * Math.cos(((direction + angle - way) * Math.PI) / 180),
      angle,
    }));
    return passing === undefined ? ends : [{ reach: r, angle: passing }];
  });
  return reached.reduce((most, next) => (next.reach > most.reach ? next : most));
}

/** The first angle from `from` up to `to` that is `angle`, give or take whole turns; undefined when there is none. */
function passes(angle: number, from: number, to: number): number | undefined {
  const first = angle + 360 * Math.ceil((from - angle) / 360);
  return first <= to ? first : undefined;
}
