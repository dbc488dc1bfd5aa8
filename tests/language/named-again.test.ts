/** What "it" and "a new one" are called where the words before hold a verb that looks like a name, or name many. */
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const tasksOf = (text: string) =>
  readMemo(text, { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' }).notes.tasks;

test.each([
  ['The skylight leaks where the screws sit. I need to seal it.', 'Seal the skylight'],
  ['The hinges broke. I need to order a new one.', 'Order a new hinge'],
  ['The hinge broke. I need to order a new one.', 'Order a new hinge'],
])('%s', (text, gist) => {
  expect(tasksOf(text).map((task) => task.gist)).toEqual([gist]);
});
