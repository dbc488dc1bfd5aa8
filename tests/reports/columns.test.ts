import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  closed,
  cutLine,
  cutStart,
  padded,
  shortLine,
  widthOf,
  wrapped,
  wrappedUnder,
} from '../../src/reports/columns.ts';
import { textTable } from '../../src/reports/text-table.ts';

test.each([
  ['beam', 4],
  ['栈板', 4],
  ['👩‍🔧', 2],
  ['🇬🇧', 2],
  ['e\u0301tage', 5],
  ['לוח', 3],
  ['', 0],
])('%j is %i columns wide', (text, columns) => {
  expect(widthOf(text)).toBe(columns);
});

test('columns behind words of any script begin at the same place', () => {
  const table = textTable([
    ['beam', '1'],
    ['栈板栈板', '2'],
    ['👩‍🔧', '3'],
    ['e\u0301', '4'],
  ]);
  const starts = table
    .trimEnd()
    .split('\n')
    .map((line) => widthOf(line.slice(0, line.search(/\d$/))));
  expect(starts).toEqual([10, 10, 10, 10]);
});

test('what runs from right to left is closed by a mark without width; other words are left alone', () => {
  expect(closed('לוח')).toBe('לוח\u200e');
  expect(closed('beam')).toBe('beam');
  expect(padded('לוח', 5)).toBe('לוח\u200e  ');
  expect(padded('beam', 2)).toBe('beam');
});

test.each([
  ['the long hoist beam', 10, 'the long…'],
  ['hoistbeamhoistbeam', 10, 'hoistbeam…'],
  ['栈板栈板栈板', 7, '栈板栈…'],
  ['beam', 4, 'beam'],
])('"%s" in %i columns is "%s"', (text, columns, short) => {
  expect(shortLine(text, columns)).toBe(short);
});

test('a cut never parts a character, and says that something is left out', () => {
  expect(cutLine('a👷🏽b', 3)).toBe('a…');
  expect(cutLine('e\u0301e\u0301e\u0301', 2)).toBe('e\u0301…');
  expect(cutStart('a👷🏽b', 3)).toBe('…b');
  expect(cutStart('abc', 3)).toBe('abc');
});

test.each([
  ['one two three', 7, ['one two', 'three']],
  ['  set in and long', 9, ['  set in', 'and long']],
  ['abcdefghij', 4, ['abcd', 'efgh', 'ij']],
  ['go abcdefghij', 4, ['go', 'abcd', 'efgh', 'ij']],
  ['漢漢漢', 4, ['漢漢', '漢']],
  ['', 4, ['']],
])('%j in %i columns runs over %j', (text, columns, lines) => {
  expect(wrapped(text, columns).map((line) => line.text)).toEqual(lines);
});

test('wrapped lines hold every word at its place and keep to the columns', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'grapheme', maxLength: 80 }),
      fc.integer({ min: 12, max: 40 }),
      (text, columns) => {
        const lines = wrapped(text, columns);
        for (const { text: line, start } of lines) {
          expect(text.startsWith(line, start)).toBe(true);
          expect(widthOf(line)).toBeLessThanOrEqual(columns);
        }
        expect(
          lines
            .map((line) => line.text)
            .join('')
            .replace(/\s/g, ''),
        ).toBe(text.replace(/\s/g, ''));
      },
    ),
    { numRuns: 500, seed: 11 },
  );
});

test.each([
  ['- one two three', 9, ['- one two', '  three']],
  ['  - one two three', 12, ['  - one two', '    three']],
  ['12. one two three', 12, ['12. one two', '    three']],
  ['  why      one two three', 33, ['  why      one two three']],
  ['  why      one two three four five six', 36, ['  why      one two three four five', '           six']],
  ['- one two three', 5, ['- one', 'two', 'three']],
])('%j in %i columns hangs as %j', (text, columns, lines) => {
  expect(wrappedUnder(text, columns)).toEqual(lines);
});

test('of a long text no more lines are made than are asked for, and they are the first ones', () => {
  const text = 'ordered: glass lens → 12 mm (memo 3, 00:41); 栈板 '.repeat(300);
  const all = wrapped(text, 40);
  expect(wrapped(text, 40, 20)).toEqual(all.slice(0, 20));
  expect(wrappedUnder(text, 40, 20)).toEqual(wrappedUnder(text, 40).slice(0, 20));
  expect(all.map((line) => line.text.trim()).join(' ') === text.trimEnd()).toBe(true);
});
