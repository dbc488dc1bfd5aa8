/** What is measured where a relative clause says which one: the thing before the clause, not the last thing in it. */
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const read = (text: string) =>
  readMemo(text, { units: 'metric', region: 'GB', recordedAt: '2026-03-07T18:40:00+00:00' }).notes;
const figures = (text: string) => read(text).figures.map(({ item, value }) => `${item} ${value}`);

test.each([
  ['The wardrobe panel that has to come in through the door is 760 wide.', 'wardrobe panel 760'],
  ['The fridge which must go in through the doorway is 755 wide.', 'fridge 755'],
  ['The shelf that sits over the bed is 300 deep.', 'shelf 300'],
  ["The boiler that's got to come through the hatch is 610 across.", 'boiler 610'],
  ['The beam that carries the ridge is 200 deep.', 'beam 200'],
  ['The pipe that feeds the heater is 22 across.', 'pipe 22'],
  ['So the board we put behind the stove is 18 thick.', 'board 18'],
  ['The bracket that holds the tiller up at the stern is 6 mil thick.', 'bracket 6'],
  ['The glass that fits in the front door is 4 mil.', 'glass 4'],
  ['And the rail that runs past the winch is 40 across.', 'rail 40'],
])('"%s"', (text, figure) => {
  expect(figures(text)).toEqual([figure]);
});

test.each([
  ['I know that the door is 760 wide.', 'door 760'],
  ['The plan that I drew says the door is 760 wide.', 'door 760'],
  ['The man who fitted the window says the sill is 150 deep.', 'sill 150'],
  ['The legs I cut on Sunday have to be 902.', 'legs 902'],
  ['We found that in the corner the floor is 22 thick.', 'floor 22'],
])('"%s": as it was', (text, figure) => {
  expect(figures(text)).toEqual([figure]);
});

test.each([
  'The wardrobe panel that has to come in through the door is 760 wide.',
  'The tank which must go through the hatch is 540 across.',
])('"%s" is no job', (text) => {
  expect(read(text).tasks).toEqual([]);
});
