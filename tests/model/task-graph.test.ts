/** Which open task waits for which, by the words of gates, by "before" and by hand. */
import { describe, expect, test } from 'vitest';
import type { Gate, TaskRow } from '../../src/model/rows.ts';
import { graphOf, isOpenGate, TaskLinks } from '../../src/model/task-graph.ts';

const NOW = '2026-02-10';
const task = (id: string, gist: string, more: Partial<TaskRow> = {}): TaskRow => ({
  id,
  gist,
  quote: gist,
  around: '',
  waitsFor: [],
  source: { memoId: 'm1', recordedAt: '2026-02-01T17:00:00+01:00', quote: gist },
  status: 'open',
  ...more,
});
const event = (words: string, more: Partial<Gate> = {}): Gate => ({ kind: 'event', words, ...more });
const met = (recordedAt: string, taskId?: string) => ({
  memoId: 'm2',
  recordedAt,
  quote: 'it is',
  ...(taskId === undefined ? {} : { taskId }),
});

describe('a gate is open', () => {
  test.each([
    ['while nothing met it', undefined, [], true],
    ['not when it was met before', met('2026-02-09T10:00:00+01:00'), [], false],
    ['not when it was met that day', met('2026-02-10T23:00:00+01:00'), [], false],
    ['as of a day before it was met', met('2026-02-11T01:00:00+01:00'), [], true],
    ['not when the task that met it is closed', met('2026-02-09', 't2'), ['t3'], false],
    ['when the task that met it is open again', met('2026-02-09', 't2'), ['t2'], true],
  ] as const)('%s', (_what, how, open, answer) => {
    const gate = event('the top is glued', how ? { met: how } : {});
    expect(isOpenGate(gate, NOW, (id) => (open as readonly string[]).includes(id))).toBe(answer);
  });
});

describe('the task that a gate means', () => {
  const glue = task('t1', 'Glue the top');
  const again = task('t2', 'Glue the top');
  const sand = task('t3', 'Sand the rail');
  const links = new TaskLinks([glue, again, sand]);

  test.each([
    ['is that of its words, of several the last', event('the top is glued'), sand, 't2'],
    ['is never its own', event('the top is glued'), again, 't1'],
    ['is that of its id', event('the mill', { taskId: 't3' }), glue, 't3'],
    ['is none where that id is not open', event('the top is glued', { taskId: 't9' }), sand, undefined],
    ['is none of other words', event('the wall is painted'), glue, undefined],
    ['is none for goods', { kind: 'arrival', words: 'the top is glued' }, sand, undefined],
    ['is that of the thing that has to dry', { kind: 'hours', words: 'the glued top has dried' }, sand, 't2'],
  ] as const)('%s', (_what, gate, own, id) => {
    expect(links.meantBy(gate, own)?.id).toBe(id);
  });

  test('is known to be open by its id', () => {
    expect([links.isOpen('t1'), links.isOpen('t9')]).toEqual([true, false]);
  });
});

test('a task holds back what must not be done before it, and never itself', () => {
  const board = task('t1', 'Board the wall');
  const photo = task('t2', 'Photograph the pipes', { before: 'this wall is boarded' });
  const odd = task('t3', 'Board the wall', { before: 'the wall is boarded' });
  const links = new TaskLinks([board, photo, odd]);
  expect(links.heldBackBy(photo).map(({ id }) => id)).toEqual(['t1', 't3']);
  expect(links.heldBackBy(odd).map(({ id }) => id)).toEqual(['t1']);
  expect(links.heldBackBy(board)).toEqual([]);
});

describe('the steps', () => {
  const glue = task('t1', 'Glue the top');
  const fit = task('t2', 'Fit the shelf', { gates: [event('the top is glued')] });

  test('carry what they need, whether they wait, their date and the order by hand', () => {
    expect(
      graphOf([glue, { ...fit, due: '2026-02-20', ahead: ['t3'] }, task('t3', 'Sand the rail')], NOW),
    ).toEqual([
      { id: 't1', needs: [], waits: false },
      { id: 't2', needs: ['t1'], waits: true, due: '2026-02-20', ahead: ['t3'] },
      { id: 't3', needs: [], waits: false },
    ]);
  });

  test.each([
    ['a gate that no task answers makes it wait', event('the tide is out'), [], true],
    ['one that was met does not', event('the top is glued', { met: met('2026-02-09') }), [], false],
    [
      'one that is met later does, and needs its task',
      event('the top is glued', { met: met('2026-02-11') }),
      ['t1'],
      true,
    ],
    [
      'one met by a task that is open again does too',
      event('the top is glued', { met: met('2026-02-09', 't1') }),
      ['t1'],
      true,
    ],
  ] as const)('%s', (_what, gate, needs, waits) => {
    expect(graphOf([glue, { ...fit, gates: [gate] }], NOW)[1]).toEqual({ id: 't2', needs, waits });
  });

  test('what must not be done before another needs that one, and waits', () => {
    const board = task('t1', 'Board the wall');
    const photo = task('t2', 'Photograph the pipes', { before: 'this wall is boarded' });
    expect(graphOf([board, photo], NOW)).toEqual([
      { id: 't1', needs: ['t2'], waits: true },
      { id: 't2', needs: [], waits: false },
    ]);
  });

  test('wait as they are told to, where that is known better', () => {
    expect(graphOf([glue, fit], NOW, new TaskLinks([glue, fit]), new Set(['t1']))).toEqual([
      { id: 't1', needs: [], waits: true },
      { id: 't2', needs: ['t1'], waits: false },
    ]);
  });
});
