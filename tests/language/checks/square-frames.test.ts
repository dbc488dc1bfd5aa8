import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  [
    "The frame's 2400 by 1200 and the diagonals are 2683 and 2687.",
    'length=2400 mm; width=1200 mm; first diagonal=2683 mm; second diagonal=2687 mm',
  ],
  [
    "The base is 1500 by 1070. One diagonal's 1842 and the other diagonal's 1845, has to be within two mil of each other.",
    'length=1500 mm; width=1070 mm; first diagonal=1842 mm; second diagonal=1845 mm; allowed=2 mm',
  ],
])('"%s" asks for the check', (said, inputs) => {
  expect(checksIn(said)).toEqual([`diagonal for square: ${inputs}`]);
});

test.each([
  'The diagonals are the same.',
  'Measured the diagonals, 1842 and 1845.',
  'The brace is 900 corner to corner.',
  'Are the diagonals the same, 2683 and 2687?',
])('"%s" asks for none', (said) => {
  expect(checksIn(said)).toEqual([]);
});
