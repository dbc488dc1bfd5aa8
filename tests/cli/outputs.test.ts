import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import ICAL from 'ical.js';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

let place: Workplace;
beforeAll(() => {
  place = openWorkplace();
  place.call(['init', '--name', 'Signal box', '--units', 'mixed']);
  place.file(
    'monday.txt',
    'The lever frame bench is 1240 long. I need to paint the stair by Friday. The sash cord should come on Thursday.',
  );
  place.call(['take', 'monday.txt', '--at', '2026-03-02T17:00:00+01:00']);
});
afterAll(() => place.remove());

const page = (name: string) => readFileSync(join(place.folder, name), 'utf8');

test('the calendar is written as a file that another reader takes, the same bytes each time', () => {
  expect(place.call(['calendar', '--on', '2026-03-03', '--out', 'build.ics']).err).toBe(
    'written: DIR/build.ics\n',
  );
  const calendar = new ICAL.Component(ICAL.parse(page('build.ics')));
  const [todo] = calendar.getAllSubcomponents('vtodo');
  expect(String(todo?.getFirstPropertyValue('summary'))).toMatch(/paint the stair/i);
  expect(String(todo?.getFirstPropertyValue('due'))).toBe('2026-03-06');
  expect(place.call(['calendar', '--on', '2026-03-03']).out).toBe(page('build.ics'));
});

test('a tick on the next steps stays when they are written anew, and is told until the task is closed', () => {
  const write = () => place.call(['next', '--on', '2026-03-03', '--out', 'next.md']).err;
  expect(write()).toBe('written: DIR/next.md\n');
  const [, id] = / \\\[(m1\.t\d+)\\\]$/m.exec(page('next.md')) ?? [];
  writeFileSync(join(place.folder, 'next.md'), page('next.md').replace('[ ]', '[x]'));
  place.call(['todo', 'sweep the floor']);
  expect(write()).toBe(
    `written: DIR/next.md\nticked, and still open: ${id}; when it is done: hearwright close ${id}\n`,
  );
  expect(page('next.md')).toContain(`. [x] `);
  expect(page('next.md')).toContain('sweep the floor'.replace('s', 'S'));
  place.call(['close', id ?? '']);
  expect(write()).toBe('written: DIR/next.md\n');
  expect(page('next.md')).not.toContain('[x]');
});
