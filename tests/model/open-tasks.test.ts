import fc from 'fast-check';
import { expect, test } from 'vitest';
import { OpenTasks, Vocabulary } from '../../src/model/open-tasks.ts';
import type { TaskRow } from '../../src/model/rows.ts';
import { isCompound } from '../../src/model/telling-words.ts';

const task = (id: string, gist: string, status: TaskRow['status'] = 'open'): TaskRow => ({
  id,
  gist,
  quote: gist,
  around: '',
  waitsFor: [],
  source: { memoId: 'm1', recordedAt: '2026-02-01T17:00:00Z', quote: gist },
  status,
});

test('finds the very stems that are compounds of one another', () => {
  // Few letters, so that endings and beginnings meet often.
  const word = fc.stringMatching(/^[abl]{3,9}$/);
  fc.assert(
    fc.property(fc.array(word, { minLength: 1, maxLength: 30 }), word, (words, stem) => {
      const vocabulary = new Vocabulary();
      for (const one of words) vocabulary.add(one);
      const related = words.filter((one) => one === stem || isCompound(one, stem));
      expect([...vocabulary.related(stem)].sort()).toEqual([...new Set(related)].sort());
    }),
    { numRuns: 2000, seed: 20261125 },
  );
});

test('open tasks are found by their words, in the order of first writing', () => {
  const tasks = new OpenTasks();
  for (const row of [task('a', 'Paint the hatch'), task('b', 'Oil the sawmill'), task('c', 'Sand the hatch')])
    tasks.put(row);
  const ids = (rows: readonly TaskRow[]) => rows.map(({ id }) => id);
  expect(ids(tasks.sharing(['hatch']))).toEqual(['a', 'c']);
  expect(ids(tasks.sharing(['mill']))).toEqual(['b']);
  tasks.put(task('a', 'Paint the hatch', 'done'));
  expect(ids(tasks.sharing(['hatch']))).toEqual(['c']);
  // Open again, it stands where it stood.
  tasks.put(task('a', 'Paint the hatch'), 1);
  expect(ids(tasks.all())).toEqual(['a', 'b', 'c']);
  expect(tasks.gated()).toEqual([]);
});

test('tasks that wait, and those that something waits for, are kept by themselves', () => {
  const tasks = new OpenTasks();
  tasks.put(task('a', 'Paint the hatch'));
  tasks.put({ ...task('b', 'Run the wires'), before: 'the wall is closed' });
  tasks.put({ ...task('c', 'Hang the door'), gates: [{ kind: 'event', words: 'the frame is in' }] });
  expect(tasks.gated().map(({ id }) => id)).toEqual(['b', 'c']);
});

test('tasks of measuring are kept by themselves while they are open', () => {
  const tasks = new OpenTasks();
  for (const row of [task('a', 'Measure the hatch'), task('b', 'Oil the hatch'), task('c', 'Weigh the tank')])
    tasks.put(row);
  expect(tasks.measuring().map(({ id }) => id)).toEqual(['a', 'c']);
  tasks.put(task('a', 'Measure the hatch', 'done'));
  expect(tasks.measuring().map(({ id }) => id)).toEqual(['c']);
});
