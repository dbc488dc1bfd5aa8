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
  [
    'The floor frame is 3600 by 1800, and corner to corner I get 4025 and 4031.',
    'length=3600 mm; width=1800 mm; first diagonal=4025 mm; second diagonal=4031 mm',
  ],
  [
    "I measured the diagonals of the chassis frame at 4025 and 4031, it's 3600 by 1800.",
    'length=3600 mm; width=1800 mm; first diagonal=4025 mm; second diagonal=4031 mm',
  ],
  [
    "The frame has to be within 3 mil of square, it's 2400 by 1200 and it measures 2683 and 2687 across the corners.",
    'length=2400 mm; width=1200 mm; first diagonal=2683 mm; second diagonal=2687 mm; allowed=3 mm',
  ],
])('"%s" asks for the check', (said, inputs) => {
  expect(checksIn(said)).toEqual([`diagonal for square: ${inputs}`]);
});

test.each([
  'The diagonals are the same.',
  'Measured the diagonals, 1842 and 1845.',
  'The brace is 900 corner to corner.',
  'The top is 1500 by 1070 and the brace goes across the corners, 600 long.',
  'Are the diagonals the same, 2683 and 2687?',
])('"%s" asks for none', (said) => {
  expect(checksIn(said)).toEqual([]);
});
