/** Work that is still to do on something that was made before, work that waits, and numbers that sound like work. */
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T12:00:00+01:00' } as const;
const tasksOf = (said: string) =>
  readMemo(said, CONTEXT).notes.tasks.map(({ gist, due, waitsFor }) =>
    [gist, ...(due ? [`due ${due}`] : []), ...waitsFor.map((wait) => `waits for ${wait}`)].join('; '),
  );

test.each([
  [
    'The bearers I screwed down on Sunday have to move out.',
    ['The bearers I screwed down on Sunday have to move out'],
  ],
  ['The cleats have to move out by Friday.', ['The cleats have to move out by Friday; due 2026-06-12']],
  ['The shelf I put up has to come down.', ['The shelf I put up has to come down']],
  ["Vapour barrier next, once I've got the tape.", ["Vapour barrier next; waits for I've got the tape"]],
  ['Point the gable on Friday.', ['Point the gable on Friday; due 2026-06-12']],
  ['Point six of a cube, bit over.', []],
])('"%s": %j', (said, tasks) => {
  expect(tasksOf(said)).toEqual(tasks);
});

test.each([
  ["Tongue and groove's on the port side, all of it.", ["Tongue and groove's on the port side"]],
  ['The tongue is cut and the groove is cut.', ['The tongue is cut', 'The groove is cut']],
])('"%s": one stuff is no two things: %j', (said, done) => {
  expect(readMemo(said, CONTEXT).notes.done.map(({ gist }) => gist)).toEqual(done);
});

test('a stuff with "and" in its name is one thing with one size', () => {
  const [figure] = readMemo('The tongue and groove is nine mil.', CONTEXT).notes.figures;
  expect(figure).toMatchObject({ item: 'tongue-and-groove', attribute: 'thickness', value: 9 });
});

test('what viewers were told is mended by the sentence behind it', () => {
  const { corrections } = readMemo(
    "In last week's video I said the boards were twelve mil. They're nine.",
    CONTEXT,
  ).notes;
  expect(corrections).toHaveLength(1);
});
