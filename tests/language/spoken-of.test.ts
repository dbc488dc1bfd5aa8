import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const notesOf = (said: string) =>
  readMemo(said, { units: 'metric', region: 'GB', recordedAt: '2026-06-10T12:00:00+01:00' }).notes;

test.each([
  // The tool is not what is spoken of, nor is somebody or a deed.
  ["The step's rusted out, I put a screwdriver through it. I'll have to cut it out.", 'Cut the step out'],
  ['Somebody offered me a siding deal. I shall have to set it straight.', 'Set the siding deal straight'],
  ['As for the rods, there is a shop in town. I must buy them on Friday.', 'Buy the rods on Friday'],
])('"%s" is a task about that thing', (said, gist) => {
  expect(notesOf(said).tasks.map((each) => each.gist)).toContain(gist);
});
