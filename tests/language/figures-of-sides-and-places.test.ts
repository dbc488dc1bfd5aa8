/** Whose figure it is, and of which of its sizes, by the words of place and side about it. */
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;

test.each([
  ['The runners want 12.7 mil a side.', ['runners each side: clearance']],
  ['The cabinet is 850 wide, 5 mil a side.', ['cabinet: width', 'cabinet each side: gap']],
  ['The bench is 40 mil from the side.', ['bench from side: offset']],
  ['Leave 3 mil all round the hatch.', ['hatch: gap']],
  ['Leave 3 mil clear all round the hatch.', ['hatch: clearance']],
  ['The shelf has 40 mil bearing each end.', ['shelf bearing each end: length']],
  ['The shelf has 40 mil each end.', ['shelf each end: gap']],
  ['That makes 192 mil a riser.', ['riser: height']],
  ['They want 31 pounds a board.', ['board: money']],
  ['A fall of 18 mil a metre.', ['fall: offset']],
  ['The socket is 450 mil above the floor.', ['socket above floor: height']],
  ['The socket is 450 mil up from the floor.', ['socket above floor: height']],
  ['The joists are at 400 mil centres.', ['joists: other']],
  ['Nothing over 40 kilos on the rack.', ['anything on rack: weight']],
  ['Anything over 40 kilos on the rack is out.', ['anything on rack: weight']],
  ['Everything has to stay under 900 kilos.', ['everything: weight']],
  ['The bed has to stay under 900 kilos.', ['bed: weight']],
  ['It was 14 degrees in here.', ['inside: temperature']],
  ['It was 14 degrees out here.', ['outside: temperature']],
  ['It was 14 degrees inside the boat.', ['inside boat: temperature']],
  ['The oven was 14 degrees.', ['oven: temperature']],
  ["On the starboard side it's 44 mil.", ['starboard side: width']],
  ["The shelf is 400 mil. On the starboard side it's 440 mil.", ['shelf: depth', 'starboard shelf: depth']],
  [
    "The locker is 400 mil deep, on the starboard side it's 440 mil deep.",
    ['locker: depth', 'starboard locker: depth'],
  ],
  [
    "The starboard locker is 400 mil deep, on the starboard side it's 440 mil deep.",
    ['starboard locker: depth', 'starboard locker: depth'],
  ],
  ['The old tap is 15 mil, the new one is 22 mil.', ['old tap: diameter', 'new tap: diameter']],
  ['The old tap is 15 mil. The new tap is 22 mil.', ['old tap: diameter', 'new tap: diameter']],
])('"%s"', (text, read) =>
  expect(readMemo(text, CONTEXT).notes.figures.map(({ item, attribute }) => `${item}: ${attribute}`)).toEqual(
    read,
  ),
);
