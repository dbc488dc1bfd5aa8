import { expect, test } from 'vitest';
import { CAUTIONS, cautionsFor } from '../../src/model/cautions.ts';
import { cautionsOfTasks } from '../../src/model/day-views.ts';
import type { TaskView } from '../../src/model/views.ts';

const EVERY = CAUTIONS.flatMap(({ id, triggers }) => triggers.map((trigger) => [trigger, id] as const));

test.each(EVERY)('"%s" touches %s', (trigger, id) => {
  expect(cautionsFor([`Nothing before ${trigger} and nothing behind`]).map((one) => one.id)).toContain(id);
  expect(cautionsFor([trigger.toUpperCase()]).map((one) => one.id)).toContain(id);
});

test.each(EVERY)('"%s" within another word touches nothing of its own', (trigger, id) => {
  const others = EVERY.filter(([, of]) => of === id).map(([word]) => word);
  const within = `qq${trigger.replaceAll(/[\s-]+/g, '')}qq`;
  expect(
    cautionsFor([within]).map((one) => one.id),
    others.join(', '),
  ).not.toContain(id);
});

test('no words touch nothing, and what two texts touch is told once', () => {
  expect(cautionsFor([])).toEqual([]);
  expect(cautionsFor([''])).toEqual([]);
  const [trigger = ''] = CAUTIONS[0]?.triggers ?? [];
  expect(cautionsFor([trigger, trigger])).toEqual(cautionsFor([trigger]));
});

test('a task that is done touches nothing any more', () => {
  const [{ id, triggers }] = CAUTIONS as [(typeof CAUTIONS)[number]];
  const gist = `See to the ${triggers[0]}`;
  const source = { memoId: 'm1', recordedAt: '2026-06-10T18:00:00Z', quote: gist };
  const task: TaskView = { id: 'm1.t1', gist, status: 'ready', waitsFor: [], source, carriedDays: 0 };
  expect(cautionsOfTasks([task]).map((one) => one.id)).toContain(id);
  expect(cautionsOfTasks([{ ...task, status: 'waiting' }]).map((one) => one.id)).toContain(id);
  expect(cautionsOfTasks([{ ...task, status: 'done' }])).toEqual([]);
});
