/** What a task makes and the sizes that such a thing needs; tasks that need none. */
import { expect, test } from 'vitest';
import { makingOf } from '../../../src/language/kept/making.ts';

const shown = (gist: string) => {
  const making = makingOf(gist);
  return (
    making &&
    `${making.thing}: ${making.sides} sides${making.others.map(({ words }) => `, ${words}`).join('')}`
  );
};

test.each([
  ['Cut the locker lid tomorrow', 'locker lid: 2 sides, thickness'],
  ["Tomorrow I'll make the drawer box", 'drawer box: 3 sides'],
  ['Turn the dowels', 'dowels: 0 sides, diameter'],
  ['Cut the port rail', 'port rail: 0 sides, length'],
  ['Cut a hole in the bulkhead for the duct', 'hole: 2 sides'],
  ['The hatch needs cutting', 'hatch: 2 sides, thickness'],
  ['The shelf has to be cut', 'shelf: 2 sides, thickness'],
])('"%s" makes a thing that needs sizes', (gist, expected) => {
  expect(shown(gist)).toBe(expected);
});

test.each([
  'Cut the grass',
  'Cut the power before touching the board',
  'Make tea',
  'Drill the holes for the hooks',
  'Drill the galley panel for the hooks',
  'Cut the lid to the template',
  'Cut the legs down',
  'Cut out the rot',
  'Trim the door',
  'Finish cutting the panels',
  'Make a start on the shelf',
  'Build up the fillet on the shelf',
  'Make the panel fit',
  'Order the glass',
  'Paint the lid',
  'Make a decision about the door',
  'Cut a rotten board out',
  'Another board wants cutting',
  'Cut the legs for that height',
  'Take the lid off and cut the panel back',
])('"%s" needs no size', (gist) => {
  expect(shown(gist)).toBeUndefined();
});
