/** Jobs told behind the time that they belong to: "before this wall is closed in, photograph the wiring". */
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const tasks = (text: string) =>
  readMemo(text, {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-03-07T18:40:00+00:00',
  }).notes.tasks.map(({ gist, waitsFor }) => [gist, ...waitsFor].join(' < '));

test.each([
  ['Before this panel is closed in I have to photograph the wiring.', 'Photograph the wiring'],
  ['Before this wall is closed in, photograph the wiring.', 'Photograph the wiring'],
  ['Before we board it up, test the pump.', 'Test the pump'],
  ['Once the sole is dry, screw down the hatches.', 'Screw down the hatches < sole is dry'],
  ['When the glue has gone off, plane the edges flush.', 'Plane the edges flush < glue has gone off'],
  ["Don't board the wall until the pipes are tested.", 'Board the wall < pipes are tested'],
  ['Never close the deck till the tanks are pressure tested.', 'Close the deck < tanks are pressure tested'],
  ["Don't glue the keel before the wood is dry.", 'Glue the keel < wood is dry'],
])('"%s"', (text, task) => {
  expect(tasks(text)).toEqual([task]);
});

test.each([
  'After lunch, cut the legs.',
  'Once the lid was on, cut the hinges in.',
  'Before the deck was laid, sanded the beams.',
  'When I got there, cut the board to 900.',
])('"%s" orders nothing', (text) => {
  expect(tasks(text)).toEqual([]);
});
