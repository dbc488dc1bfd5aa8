import { expect, test } from 'vitest';
import { readItems } from '../../src/language/items/assign-items.ts';
import { bracketed } from '../kit/bracketed.ts';

const attributes = (marked: string) => {
  const { text, quantities } = bracketed(marked);
  return readItems(text, quantities, { units: 'metric', recordedAt: '2026-05-01T12:00:00Z' })
    .figures.map(({ attribute }) => attribute)
    .join(', ');
};

test.each([
  ['The joists are heart to heart [450].', 'other'],
  ['The gatepost is out of plumb by [12].', 'offset'],
  ['I want the cill level to [2].', 'offset'],
  ['The keel is plumb within [3].', 'offset'],
  ['I moved the partition forward by [30].', 'offset'],
  ['The flap is [10] smaller.', 'offset'],
  ['The doors have to lose [25].', 'offset'],
  ['The mast goes through with [70] left.', 'clearance'],
  ['The bush is bored [38].', 'diameter'],
  ['The journal mikes at [44].', 'diameter'],
  ['The log is [180] through.', 'diameter'],
  ['The drum is [560] across.', 'diameter'],
  ['The desk is [1200] across.', 'width'],
  ['The loom tops out at [1650].', 'height'],
  ['The cable is [7 m] there and back.', 'length'],
  ['I put the stick across the landing, it is [815].', 'width'],
  ['The door is [760] clear.', 'width'],
  ['The stall is [740] clear.', 'width'],
  ['The table is [18] in ply.', 'thickness'],
  ['The table is [740].', 'height'],
  ['The slats are the width less [20].', 'offset'],
  ['Cowl to water, [3340].', 'height'],
  ['It is [3100] to the roof.', 'height'],
  ['The beam is [2200] to the underside.', 'height'],
  ['The step is [210] up from the ground.', 'height'],
  ['The wheelhouse comes down to [1700].', 'height'],
  ['Keep [450] off the woodwork.', 'clearance'],
  ['The lintel bears [150].', 'length'],
  ['The handles are [96] hole to hole.', 'other'],
  ['There is [40] of a belly in the wall.', 'offset'],
  ['The arch sticks in [230].', 'offset'],
  ['The flagpole has [500] in the ground.', 'depth'],
  ['The rafters run [4200] from plate to ridge.', 'length'],
  ['The planks are [40].', 'thickness'],
  ['The slab is [150].', 'thickness'],
  ['The walkway is [660].', 'width'],
])('"%s" tells of the %s', (said, wanted) => {
  expect(attributes(said)).toBe(wanted);
});

test.each([
  // Words that also stand where nothing is out of true, moved, left or bored.
  ['The left bunk is [1900] long.', 'length'],
  ['The straightedge is [300] long.', 'length'],
  ['It went over the wall, [2 m] high.', 'height'],
  ['The forward locker is [500] deep.', 'depth'],
  ['The lift is [900] wide.', 'width'],
  ['The bore is [300] deep.', 'depth'],
  ['The pipe runs [100] through the deck.', 'diameter'],
  ['The level is [600] long.', 'length'],
  ['The stick is [900] long.', 'length'],
  ['The hinge is [120] down from the top.', 'offset'],
  ['The planks are [4000].', 'length'],
  ['The rail stands [1100] above the deck.', 'height'],
  ['I keep the plank, [3000] long.', 'length'],
])('"%s" still tells of the %s', (said, wanted) => {
  expect(attributes(said)).toBe(wanted);
});
