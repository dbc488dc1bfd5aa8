import { expect, test } from 'vitest';
import { bigRows } from '../../src/tui/state/big-digits.ts';

test('a number in large signs, as wide as the screen lets them be', () => {
  expect(bigRows('7/16', 29)).toEqual([
    '███   █  █  ███',
    '  █   █ ██  █  ',
    '  █  █   █  ███',
    ' █  █    █  █ █',
    ' █  █   ███ ███',
  ]);
  expect(bigRows('7/16', 30)[0]).toBe('██████      ██    ██    ██████');
});

test('every row is as long as the others, for every sign', () => {
  for (const text of ['0123456789', '1,250.5', '-3', '24 7/16']) {
    const rows = bigRows(text, 200);
    expect(new Set(rows.map((row) => row.length)).size).toBe(1);
    expect(rows).toHaveLength(5);
  }
});

test.each([
  ['1234567890', 20],
  ['', 80],
  ['about 5', 80],
  ['\u001b[2J', 80],
])('"%s" in %i columns: no large signs', (text, columns) => {
  expect(bigRows(text, columns)).toEqual([]);
});
