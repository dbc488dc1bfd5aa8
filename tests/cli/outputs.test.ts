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

test('chapters come of a cut list alone; clips that are none of the project are told', () => {
  place.file(
    'cut.csv',
    'clip,in,out,title\na.mp4,0:05,0:25,Stair\na.mp4,1:00,1:30,Sash\nb.mp4,3,15.5,Lever frame\n',
  );
  const told = "not among the project's recordings: a.mp4, b.mp4\n";
  expect(place.call(['episode', 'chapters', '--cut', 'cut.csv'])).toEqual({
    out: '0:00 Stair\n0:20 Sash\n0:50 Lever frame\n',
    err: told,
    code: 0,
  });
  expect(place.call(['episode', 'chapters', '--cut', 'cut.csv', '--as', 'vtt', '--out', 'cut.vtt']).err).toBe(
    `${told}written: DIR/cut.vtt\n`,
  );
  expect(page('cut.vtt')).toMatch(/^WEBVTT\n\n00:00:00\.000 --> 00:00:20\.000\nStair\n/);
  expect(place.call(['episode', 'corrections', '--cut', 'cut.csv']).out).toContain('still holds');
});

test('chapters-refused: a list that a platform would ignore is not written', () => {
  place.file('short.csv', 'clip,in,out,title\na.mp4,0,20,Stair\na.mp4,30,36,Sash\n');
  expect(place.call(['episode', 'chapters', '--cut', 'short.csv', '--out', 'none.txt'])).toEqual({
    out: '',
    err: [
      "not among the project's recordings: a.mp4",
      'hearwright: no chapters can be made of this cut:',
      '  2 of at least 3 chapters come of it: name more in a column title',
      '  “Sash” at 0:20 lasts 6 s, less than 10 s',
      '  next   name chapters in the title column of the cut list, or leave names out',
      '',
    ].join('\n'),
    code: 2,
  });
});

test('the sheet and the tables are written as files', () => {
  expect(place.call(['sheet', '--on', '2026-03-05', '--out', 'wall.md']).err).toBe('written: DIR/wall.md\n');
  expect(page('wall.md')).toMatch(/length \*\*1240 mm\*\* = 48 13\/16 in .*; measured, 3 days old, memo 1/);
  expect(place.call(['sheet', 'bench', '--on', '2026-03-05']).out).toContain('1240 mm');
  expect(place.call(['table', 'figures', '--out', 'figures.csv']).err).toBe('written: DIR/figures.csv\n');
  expect(page('figures.csv')).toMatch(/^item,attribute,.*\r\n.*,1240,/);
  expect(JSON.parse(place.call(['table', 'tasks', '--json']).out)).toHaveLength(2);
  expect(place.call(['table', 'memos'])).toMatchObject({
    err: 'hearwright: what: expected figures, claims, tasks, findings, got "memos"\n',
    code: 2,
  });
});
