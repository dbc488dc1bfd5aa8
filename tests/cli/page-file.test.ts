import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { pageRecordOf, writePage } from '../../src/cli/page-file.ts';
import { openWorkplace } from '../kit/command-line.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'hearwright-page-'));
  mkdirSync(join(folder, 'own'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const pages = () => readdirSync(join(folder, 'out')).sort();
const write = (text: string) =>
  writePage(join(folder, 'out', 'day.md'), text, join(folder, 'own', 'record.json'));
const read = (name: string) => readFileSync(join(folder, 'out', name), 'utf8');

test('a page that nobody touched is written anew, without leftovers', () => {
  expect(write('one').beside).toBe(false);
  expect(write('two').beside).toBe(false);
  expect([pages(), read('day.md')]).toEqual([['day.md'], 'two']);
});

test('a page that the person changed is left, and the new one stands beside it, also the next time', () => {
  write('one');
  writeFileSync(join(folder, 'out', 'day.md'), 'one, and my own words');
  expect(write('two')).toEqual({ file: join(folder, 'out', 'day.1.md'), beside: true, ticked: [] });
  expect(write('three')).toMatchObject({ file: join(folder, 'out', 'day.1.md'), beside: true });
  expect([pages(), read('day.md'), read('day.1.md')]).toEqual([
    ['day.1.md', 'day.md'],
    'one, and my own words',
    'three',
  ]);
});

const box = (mark: string, id: string) => `- [${mark}] words \\[${id}\\]\n`;

test('a ticked box is no change: the page is written anew, and the tick stays with its task', () => {
  write(box(' ', 'm1.t1') + box(' ', 'm1.t2') + box(' ', 'm1.t3'));
  writeFileSync(join(folder, 'out', 'day.md'), box(' ', 'm1.t1') + box('x', 'm1.t2') + box('X', 'm1.t3'));
  expect(write(box(' ', 'm1.t2') + box(' ', 'm1.t1'))).toMatchObject({ beside: false, ticked: ['m1.t2'] });
  expect([pages(), read('day.md')]).toEqual([['day.md'], box('x', 'm1.t2') + box(' ', 'm1.t1')]);
  expect(write(box(' ', 'm1.t2'))).toMatchObject({ beside: false, ticked: ['m1.t2'] });
});

test('beside a page that was changed, its ticks are taken over at first, and then those of the page beside', () => {
  write(box(' ', 'm1.t1'));
  writeFileSync(join(folder, 'out', 'day.md'), `${box('x', 'm1.t1')}mine`);
  expect(write(box(' ', 'm1.t1'))).toMatchObject({ beside: true, ticked: ['m1.t1'] });
  writeFileSync(join(folder, 'out', 'day.1.md'), box(' ', 'm1.t1'));
  expect(write(box(' ', 'm1.t1'))).toMatchObject({ beside: true, ticked: [] });
  expect([pages(), read('day.md')]).toEqual([['day.1.md', 'day.md'], `${box('x', 'm1.t1')}mine`]);
});

test("a file that was there before is the person's own", () => {
  write('one');
  writeFileSync(join(folder, 'out', 'day.md'), 'mine');
  writeFileSync(join(folder, 'out', 'day.1.md'), 'mine too');
  expect(write('two').file).toBe(join(folder, 'out', 'day.2.md'));
});

test('the record of a project lies in its own folder', () => {
  expect(pageRecordOf('/x')).toBe(join('/x', '.hearwright', 'pages.json'));
});

test('--out says where the page went, and that a changed one was left', () => {
  const place = openWorkplace();
  try {
    place.call(['init', '--name', 'Wagon']);
    place.file('a.txt', 'Nothing today.');
    place.call(['take', 'a.txt', '--at', '2026-02-02T08:00Z']);
    expect(place.call(['journal', '--out', 'pages/day.md'])).toEqual({
      out: '',
      err: 'written: DIR/pages/day.md\n',
      code: 0,
    });
    expect(place.call(['journal', '--out', 'pages/day.md']).err).toBe('written: DIR/pages/day.md\n');
    place.file('pages/day.md', 'mine');
    expect(place.call(['journal', '--out', 'pages/day.md']).err).toBe(
      'pages/day.md was changed since it was written and was left as it is; the new page is DIR/pages/day.1.md\n',
    );
    expect(readFileSync(join(place.folder, 'pages', 'day.md'), 'utf8')).toBe('mine');
    expect(readFileSync(join(place.folder, 'pages', 'day.1.md'), 'utf8')).toBe(place.call(['journal']).out);
  } finally {
    place.remove();
  }
});

// The record is a file in the project's folder: anything may have happened to it.
test.each(['null', '[]', '7', '"x"', '{"day.md": 7}', '{"day.md": null}', '{', ''])(
  "with the record %j every page there counts as the person's own",
  (kept) => {
    write('one');
    writeFileSync(join(folder, 'own', 'record.json'), kept);
    expect(write('two').beside).toBe(true);
    expect([read('day.md'), read('day.1.md')]).toEqual(['one', 'two']);
  },
);
