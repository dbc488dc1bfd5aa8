import { describe, expect, test } from 'vitest';
import { closedBy, isPartly } from '../../src/model/closing.ts';
import type { TaskRow } from '../../src/model/rows.ts';

const task = (gist: string, waitsFor: readonly string[] = [], quote = gist): TaskRow => ({
  id: gist,
  gist,
  quote,
  around: quote,
  waitsFor,
  source: { memoId: 'm1', recordedAt: '2026-06-10T18:00:00Z', quote },
  status: 'open',
});
const deed = (quote: string) => ({ gist: quote, quote, around: quote });
const closes = (deeds: readonly string[], tasks: readonly TaskRow[]) =>
  closedBy(deeds.map(deed), tasks).map((closed) => closed?.id);

test.each([
  ['The sash weights are cast', ['Cast the sash weights', 'Hang the sashes'], 'Cast the sash weights'],
  [
    'Called the mill at dinnertime',
    ['Call the sawmill about planks', 'Plane the door'],
    'Call the sawmill about planks',
  ],
  ['The hoist got traded in', ['Swap the hoist', 'Oil the gate'], 'Swap the hoist'],
  ['The door has been shaved', ['Plane the door', 'Order hinges'], 'Plane the door'],
  [
    'The second coat is on the hatch',
    ['Do the second coat on the hatch', 'Sand the hatch'],
    'Do the second coat on the hatch',
  ],
  ['Second coat of varnish is on the mast', ['Do the second', 'Do the rudder'], undefined],
  ['The second coat is on', ['Do the second coat', 'Oil the gate'], 'Do the second coat'],
  ['We sat by the river', ['Plane the door'], undefined],
  // The same way of doing on another thing is other work.
  ['I cut the treads on Thursday', ['Cut the gallery joists'], undefined],
  ['The inspector rang', ['Ring the sawmill'], undefined],
  ['I glued up the trough with resin', ['Sand the trough'], undefined],
  // A word for doing may stand for a thing.
  [
    'The second coat went on the frames',
    ['Frames are due their second tonight'],
    'Frames are due their second tonight',
  ],
  ['The gravel got the compactor today', ['Get the gravel compacted'], 'Get the gravel compacted'],
  ['I picked up a lens for the lamp', ['Buy a new lens'], 'Buy a new lens'],
  ['The tiles are relaid', ['Relay the tiles'], 'Relay the tiles'],
  ['All four legs are stuck together', ['Weld up the four legs'], 'Weld up the four legs'],
  // An amount that both have is no tie.
  ['It held two point eight bar', ['Set the sill two high'], undefined],
  ['The left hinge is on', ['Fit the right hinge'], undefined],
  // Who measures or tries a thing has done nothing else to it.
  ['I measured the side hatch again', ['Order the glass for the side hatch'], undefined],
  ['I measured the side hatch again', ['Fit the side hatch'], undefined],
  ['I measured the side hatch again', ['Measure the side hatch coaming'], undefined],
  ['I measured the side hatch again', ['Measure the side hatch'], 'Measure the side hatch'],
  ['I measured the pintle', ['Measure the pintle for a bush'], 'Measure the pintle for a bush'],
  ['Measured the sill for width', ['Measure the width of the sill'], 'Measure the width of the sill'],
  ['Checked the bilge pump', ['Wire the bilge pump'], undefined],
  ['Checked the bilge pump', ['Look at the bilge pump'], 'Look at the bilge pump'],
  ['Tested the shower pump', ['Check the shower pump'], 'Check the shower pump'],
  ['Two of the five sash weights are cast', ['Cast the sash weights'], undefined],
])('"%s" among %j closes %s', (said, gists, closed) => {
  expect(
    closes(
      [said],
      gists.map((gist) => task(gist)),
    ),
  ).toEqual([closed]);
});

test('each deed has its own task, and the best answer is given first', () => {
  const tasks = [task('Weld the bracket'), task('Weld the bracket for the lamp')];
  expect(closes(['The bracket is welded', 'The lamp bracket is welded'], tasks)).toEqual([
    'Weld the bracket',
    'Weld the bracket for the lamp',
  ]);
});

test('words of a gate inside the gist say nothing of the task', () => {
  const landing = task('The landing has to wait for the stair trimmer', ['the stair trimmer']);
  expect(closes(['The stair trimmer is in'], [landing])).toEqual([undefined]);
});

test('what a task waits for does not close it', () => {
  const tasks = [
    task('Hang the gutters', ['the fascia is painted'], "Can't hang the gutters till the fascia's painted"),
  ];
  expect(closes(["The fascia's painted"], tasks)).toEqual([undefined]);
  expect(closes(['The gutters are hung'], tasks)).toEqual(['Hang the gutters']);
});

test('a snag told just before a task does not make a deed on the snag that task', () => {
  const window = { ...task('Fit the window'), around: 'The roof leaks at the chimney. Fit the window.' };
  expect(closes(['I fixed the leak at the chimney'], [window])).toEqual([undefined]);
});

test('what a deed leaves over is still to do', () => {
  const tasks = [task('Lay the deck')];
  const said = (around: string) => [{ gist: 'The deck is down', quote: 'the deck is down', around }];
  expect(closedBy(said('So the deck is down, bar two boards.'), tasks)).toEqual([undefined]);
  expect(closedBy(said('So the deck is down.'), tasks)[0]?.id).toBe('Lay the deck');
});

test('goods close the task of getting them and nothing else', () => {
  const tasks = [
    task('Order the roof glass'),
    task('Fit the roof glass'),
    task('Fetch the hinges'),
    task('Hang the hinges'),
  ];
  const goods = (item: string, goods: 'received' | 'expected') => [
    { gist: item, quote: item, around: '', goods },
  ];
  const closed = (item: string, how: 'received' | 'expected') => closedBy(goods(item, how), tasks)[0]?.id;
  expect(closed('roof glass', 'received')).toBe('Order the roof glass');
  expect(closed('roof glass', 'expected')).toBe('Order the roof glass');
  expect(closed('hinges', 'received')).toBe('Fetch the hinges');
  expect(closed('hinges', 'expected')).toBeUndefined();
});

describe('a part is not the whole', () => {
  test.each([
    'three of the four posts are hewn',
    'half of the sheets are nailed',
    'the first dozen panes are cut',
    "I've cut half the boards",
  ])('"%s" is a part', (quote) => expect(isPartly(quote)).toBe(true));
  test.each([
    'all of the posts are hewn',
    'the other four went in',
    'the posts are hewn, all six',
    'every last one of the nails is out',
  ])('"%s" is the whole', (quote) => expect(isPartly(quote)).toBe(false));
});

test.each([
  [
    'Crack in the sill is ground out and filled',
    ['Grind the crack out', 'Oil the gate'],
    'Grind the crack out',
  ],
  ["The cradle's through-bolted", ['Bolt the cradle', 'Paint the trailer'], 'Bolt the cradle'],
  ['Telephoned the foundry', ['Ring the foundry', 'Ring the sawmill'], 'Ring the foundry'],
  ['The beam has been hoisted', ['Raise the beam', 'Oil the gate'], 'Raise the beam'],
  // A deed of another kind on the same thing.
  ['The ground is dug over', ['Grind the crack out'], undefined],
])('in other words: "%s" among %j closes %s', (said, open, closed) => {
  expect(
    closes(
      [said],
      open.map((gist) => task(gist)),
    ),
  ).toEqual([closed]);
});
