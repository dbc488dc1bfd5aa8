import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { writeSite } from '../../src/cli/site-files.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'hearwright-site-'));
  mkdirSync(join(folder, 'own'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const out = (name = '') => join(folder, 'out', name);
const pages = (texts: Readonly<Record<string, string>>) =>
  Object.entries(texts).map(([path, text]) => ({ path, text }));
const write = (texts: Readonly<Record<string, string>>) =>
  writeSite(out(), pages(texts), join(folder, 'own'));
const read = (name: string) => readFileSync(out(name), 'utf8');
const there = () =>
  readdirSync(out(), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.includes('.'))
    .sort();

test('pages are written once, and then only what changed', () => {
  expect(write({ 'index.html': 'one', 'days/a.html': 'a' })).toMatchObject({
    pages: 2,
    written: 2,
    removed: 0,
  });
  expect(write({ 'index.html': 'two', 'days/a.html': 'a' })).toMatchObject({
    pages: 2,
    written: 1,
    removed: 0,
  });
  expect([there(), read('index.html')]).toEqual([['days/a.html', 'index.html'], 'two']);
  expect(readdirSync(join(folder, 'own'))).toEqual(['sites.json']);
});

test('a page that is past goes; one that the person changed stays', () => {
  write({ 'index.html': 'one', 'a.html': 'a', 'b.html': 'b' });
  writeFileSync(out('b.html'), 'b, and my own words');
  expect(write({ 'index.html': 'one' })).toMatchObject({ removed: 1, left: ['b.html'] });
  expect(there()).toEqual(['b.html', 'index.html']);
  // From now on it is the person's own.
  expect(write({ 'index.html': 'one' })).toMatchObject({ removed: 0, left: [] });
});

test('a page that the person changed is left, and the new one stands beside it, also the next time', () => {
  write({ 'a.html': 'a' });
  writeFileSync(out('a.html'), 'mine');
  expect(write({ 'a.html': 'b' }).beside).toEqual([['a.html', 'a.1.html']]);
  expect(write({ 'a.html': 'c' }).beside).toEqual([['a.html', 'a.1.html']]);
  expect([read('a.html'), read('a.1.html'), there()]).toEqual(['mine', 'c', ['a.1.html', 'a.html']]);
  // The person takes the own one away: the page is back in its place, and the other one is past.
  rmSync(out('a.html'));
  expect(write({ 'a.html': 'c' })).toMatchObject({ beside: [], removed: 1 });
  expect(there()).toEqual(['a.html']);
});

test("files that were there before are the person's own, and a folder in the way stays", () => {
  mkdirSync(out('b.html'), { recursive: true });
  writeFileSync(out('a.html'), 'mine');
  writeFileSync(out('notes.txt'), 'mine too');
  expect(write({ 'a.html': 'a', 'b.html': 'b' }).beside).toEqual([
    ['a.html', 'a.1.html'],
    ['b.html', 'b.1.html'],
  ]);
  write({ 'index.html': 'one' });
  expect([read('a.html'), read('notes.txt'), existsSync(out('b.html'))]).toEqual(['mine', 'mine too', true]);
});

test('pages of a run that was cut off are known to be ours', () => {
  const cutOff = function* () {
    yield { path: 'a.html', text: 'a' };
    throw new Error('the power went');
  };
  expect(() => writeSite(out(), cutOff(), join(folder, 'own'))).toThrow('cannot write');
  expect(write({ 'a.html': 'b', 'c.html': 'c' })).toMatchObject({ beside: [], written: 2 });
  expect([read('a.html'), there()]).toEqual(['b', ['a.html', 'c.html']]);
});

test('two folders are remembered apart', () => {
  write({ 'a.html': 'a' });
  writeSite(join(folder, 'other'), pages({ 'b.html': 'b' }), join(folder, 'own'));
  expect(write({ 'a.html': 'c' })).toMatchObject({ beside: [], written: 1 });
});

// The record is a file in the project's folder: anything may have happened to it.
test.each(['null', '[]', '7', '{', '', '{"x": 7}', '{"x": {"a.html": 7}}'])(
  "with the record %j every page there counts as the person's own",
  (kept) => {
    write({ 'a.html': 'a' });
    writeFileSync(join(folder, 'own', 'sites.json'), kept);
    expect(write({ 'a.html': 'b' }).beside).toHaveLength(1);
    expect(read('a.html')).toBe('a');
  },
);

test('a record that names files elsewhere removes nothing there', () => {
  write({ 'index.html': 'one' });
  const hash = '7692c3ad3540bb803c020b3aee66cd8887123234ea0c6e7143c0add73ff431ed';
  writeFileSync(join(folder, 'precious.html'), 'one');
  writeFileSync(
    join(folder, 'own', 'sites.json'),
    JSON.stringify({ [out()]: { '../precious.html': [hash], 'days/../../precious.html': [hash] } }),
  );
  write({ 'index.html': 'one' });
  expect(readFileSync(join(folder, 'precious.html'), 'utf8')).toBe('one');
});

test("the project's own folder is refused", () => {
  expect(() => writeSite(join(folder, 'own', 'pages'), [], join(folder, 'own'))).toThrow(
    "that folder is the project's own",
  );
});

test('a file where the folder should be is told', () => {
  writeFileSync(out().replace(/\/$/, ''), 'a file');
  expect(() => write({ 'a.html': 'a' })).toThrow('a file is in the way');
});
