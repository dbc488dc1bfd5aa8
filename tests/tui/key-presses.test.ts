import type { Key } from 'ink';
import { expect, test } from 'vitest';
import { droppedFile, droppedFiles, pressesOf } from '../../src/tui/key-presses.ts';

const NO_KEY = {} as Key;
const shown = (input: string, isTyping = false) =>
  pressesOf(input, NO_KEY, isTyping).map(({ text, name }) => name ?? text);

test.each([
  ['w', ['w']],
  ['wd', ['w', 'd']],
  ['ab\r', ['a', 'b', 'enter']],
  ['a\u007f', ['a', 'erase']],
  ['a\u0007b', ['a', 'b']],
  ['e\u0301x', ['e\u0301', 'x']],
  ['\u0003', ['interrupt']],
])('%j is %j', (input, keys) => {
  expect(shown(input)).toEqual(keys);
});

test('a path pasted where nothing is asked is a file to take in; where something is typed it is typed', () => {
  expect(shown('/barn/a b.m4a')).toEqual(['t', '/barn/a b.m4a']);
  expect(shown('/b', true)).toEqual(['/', 'b']);
  expect(shown('/')).toEqual(['/']);
});

test.each([
  ["'/barn/a b.m4a' ", '/barn/a b.m4a'],
  ['/barn/a\\ b\\(1\\).m4a', '/barn/a b(1).m4a'],
  ['file:///barn/a%20b.m4a', '/barn/a b.m4a'],
  ['file:///barn/50%.m4a', 'file:///barn/50%.m4a'],
  ['C:\\talk\\a.m4a', 'C:\\talk\\a.m4a'],
  ['./a.txt', './a.txt'],
  ['hello there', undefined],
  ['/a\r/b', undefined],
])('%j dropped is the file %j', (pasted, file) => {
  expect(droppedFile(pasted)).toBe(file);
});

test.each([
  ["'/barn/a b.m4a' '/barn/c.txt' ", ['/barn/a b.m4a', '/barn/c.txt']],
  ['/barn/a\\ b.m4a /barn/c.txt', ['/barn/a b.m4a', '/barn/c.txt']],
  ['/barn/a.m4a\r/barn/b.m4a', ['/barn/a.m4a', '/barn/b.m4a']],
  ['/barn/a b.m4a', ['/barn/a b.m4a']],
  ['/barn/a.m4a and more', ['/barn/a.m4a and more']],
  ['words alone', []],
])('%j dropped are the files %j', (pasted, files) => {
  expect(droppedFiles(pasted)).toEqual(files);
});

test('the cursor of a typed line is moved by keys of its own', () => {
  expect(shown('\u0001\u0005\u0015', true)).toEqual(['home', 'end', 'clear']);
});
