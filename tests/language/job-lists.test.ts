/** Jobs told one after another in one breath, with asides, times and names between them. */
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const tasksOf = (text: string) =>
  readMemo(text, { units: 'metric', recordedAt: '2026-03-02T17:00:00Z' }).notes.tasks.map(({ gist }) => gist);

test.each([
  [
    'I must order the ash for the felloes, call Wim for the tyre, and take out the old hub.',
    ['Order the ash for the felloes', 'Call Wim for the tyre', 'Take out the old hub'],
  ],
  [
    'Still have to stain the porch before it snows, hang the lamp, and put the barometer by the door.',
    ['Stain the porch', 'Hang the lamp', 'Put the barometer by the door'],
  ],
  [
    'I need to saw the slot for the reed when it is dry, wax it, and make the treadles.',
    ['Saw the slot for the reed', 'Wax the slot', 'Make the treadles'],
  ],
  [
    'I need to dig the trench for the drain, 600 down, and lay the pipe.',
    ['Dig the trench for the drain', 'Lay the pipe'],
  ],
])('"%s" holds %j', (said, gists) => {
  expect(tasksOf(said)).toEqual(gists);
});

test.each([
  ['I need to know the width, point three high, top end of it.', []],
  ["I'll need a door, hinge left, handle right.", ['Get a door']],
  ['I have to sand the top, paint comes later.', ['Sand the top']],
])('"%s" goes no further than %j', (said, gists) => {
  expect(tasksOf(said)).toEqual(gists);
});
