import { afterEach, beforeEach, expect, test } from 'vitest';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

let place: Workplace;
beforeEach(() => {
  place = openWorkplace();
  place.call(['init', '--name', 'Barn']);
  place.file('one.txt', 'I need to oil the gate. I need to sand the trough. The roof leaks at the chimney.');
  place.call(['take', 'one.txt', '--at', '2026-02-02T17:00+01:00']);
});
afterEach(() => place.remove());

const tasks = (...words: string[]) => place.call(['tasks', '--on', '2026-02-04', ...words]).out;
const hand = (...words: string[]) => place.call(words).out;

test('tasks with their age, and the snags that are open', () => {
  expect(tasks()).toBe(`Ready
  Oil the gate; carried over 2 days  (memo 1) [m1.t1]
  Sand the trough; carried over 2 days  (memo 1) [m1.t2]

Problems still open
  The roof leaks at the chimney  (memo 1) [m1.p1]
`);
  expect(place.call(['next', '--on', '2026-02-04']).out).toContain(
    '## Problems still open\n\n- The roof leaks at the chimney (memo 1), said on 2026-02-02\n',
  );
});

test('a task waits for what a person says, and for nothing again', () => {
  expect(hand('wait', 'm1.t2', '--task', 'm1.t1')).toBe('Sand the trough: waits for Oil the gate.\n');
  expect(tasks('--why')).toContain(`Ready
  Oil the gate; carried over 2 days  (memo 1) [m1.t1]
      unblocks 1: Sand the trough

Waiting
  Sand the trough; waits for Oil the gate (open: Oil the gate [m1.t1]); carried over 2 days  (memo 1) [m1.t2]
      after what is ready: it waits
`);
  expect(hand('close', 'm1.t1')).toBe('Closed: Oil the gate.\n');
  expect(place.call(['tasks']).out).toContain(
    'Ready\n  Sand the trough; ready: Oil the gate (done: Oil the gate',
  );
  expect(hand('undo')).toBe('Undone: closing task m1.t1.\n');
  expect(tasks()).toContain('Waiting\n  Sand the trough');
  expect(hand('wait', 'm1.t2', '--nothing')).toBe('Sand the trough: waits for nothing.\n');
  expect(tasks()).not.toContain('Waiting');
  expect(place.call(['verify']).code).toBe(0);
});

test.each([
  [['the', 'lath', 'arrives'], 'waits for the lath arrives'],
  [['--until', '2026-02-09'], 'waits until Monday 2026-02-09'],
  [
    ['--reading', 'workshop at least 15 degC'],
    'waits for workshop at least 15 degC (at least 15 °C; nothing read yet)',
  ],
])('wait %j: "%s"', (words, told) => {
  place.call(['wait', 'm1.t1', ...words]);
  expect(tasks()).toContain(`Waiting\n  Oil the gate; ${told}; carried over 2 days`);
});

test('hours count from now', () => {
  hand('wait', 'm1.t1', 'glue dries', '--hours', '36');
  expect(place.call(['tasks']).out).toMatch(
    /Oil the gate; waits for glue dries \(36 hours from by hand: until \d{4}-\d\d-\d\d \d\d:\d\d(?: UTC)?\)/,
  );
});

test('tasks that wait for each other are told at once, and by findings', () => {
  hand('wait', 'm1.t2', '--task', 'm1.t1');
  const told = hand('wait', 'm1.t1', '--task', 'm1.t2');
  expect(told).toContain('Oil the gate: tasks wait for each other   [s');
  expect(told).toContain(
    'why      each waits for the next: "Oil the gate", "Sand the trough", "Oil the gate"',
  );
  expect(JSON.parse(hand('findings', '--open', '--json'))[0]).toMatchObject({
    kind: 'task-cycle',
    path: ['m1.t1', 'm1.t2'],
  });
  hand('wait', 'm1.t1', '--nothing');
  expect(JSON.parse(hand('findings', '--open', '--json'))).toEqual([]);
});

test('dates and order by hand', () => {
  expect(hand('before', 'm1.t2', 'm1.t1')).toBe('Sand the trough: before Oil the gate.\n');
  expect(JSON.parse(tasks('--json')).map(({ id }: { id: string }) => id)).toEqual(['m1.t2', 'm1.t1']);
  expect(hand('due', 'm1.t1', '2026-02-05')).toBe('Due 2026-02-05: Oil the gate.\n');
  expect(JSON.parse(tasks('--json'))[1]).toMatchObject({ due: '2026-02-05', why: ['due 2026-02-05'] });
  expect(hand('due', 'm1.t1', 'none')).toBe('No date: Oil the gate.\n');
  expect(hand('undo')).toBe('Undone: the date of task m1.t1.\n');
  expect(hand('todo', 'Hang', 'the', 'door', '--waits-for', 'hinges arrive')).toBe('Noted: Hang the door.\n');
  expect(tasks()).toContain('Waiting\n  Hang the door; waits for hinges arrive');
});

test('a snag is put right and opened again by hand', () => {
  expect(hand('close', 'm1.p1')).toBe('Put right: The roof leaks at the chimney.\n');
  expect(hand('close', 'm1.p1')).toBe('It was put right already: The roof leaks at the chimney.\n');
  expect(tasks()).not.toContain('Problems');
  expect(hand('reopen', 'm1.p1')).toBe('Opened again: The roof leaks at the chimney.\n');
  expect(hand('reopen', 'm1.p1')).toBe('It is open: The roof leaks at the chimney.\n');
});

test.each([
  [['wait', 'm1.t1'], 'wait: say what the task waits for, or --nothing'],
  [['wait', 'm1.t1', 'x', '--nothing'], 'wait: say what the task waits for, or --nothing'],
  [['wait', 'm9.t1', 'x'], 'no task has the id "m9.t1"'],
  [['wait', 'm1.t1', '--reading', 'warm'], '--reading: expected "at least" or "at most" before the amount'],
  [['wait', 'm1.t1', '--hours', 'many'], '--hours: expected a number of hours such as 24, got "many"'],
  [['due', 'm1.t1', 'soon'], 'date: expected a day such as 2026-05-03, got "soon"'],
  [['before', 'm1.t1', 'm1.t1'], 'task m1.t1 cannot come before itself'],
])('%j is refused', (words, why) => {
  const { code, err } = place.call(words);
  expect(code).toBe(2);
  expect(err).toContain(why);
});

test('memos are listed by the clock on the wall, and as ISO for scripts', () => {
  expect(hand('memos')).toContain('memo 1  2026-02-02 17:00  one.txt');
  expect(JSON.parse(hand('memos', '--json'))[0].recordedAt).toBe('2026-02-02T17:00:00+01:00');
});
