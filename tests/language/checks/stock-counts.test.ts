import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  ['Four shelves at 610 out of a 2440 sheet.', 'stock=2440 mm; piece=610 mm; wanted=4'],
  [
    'I want to get four shelves at 610 out of a 2440 sheet, with a 3 mil kerf.',
    'stock=2440 mm; piece=610 mm; kerf=3 mm; wanted=4',
  ],
  ['I need six slats, 380 long, out of one 2.4 metre length.', 'stock=2.4 m; piece=380 mm; wanted=6'],
  ["You'd get three lids at 780 out of a 2440 board.", 'stock=2440 mm; piece=780 mm; wanted=3'],
  ['I can get six at 400 out of an eight foot sheet.', 'stock=8 ft; piece=400 mm; wanted=6'],
  ['Twelve battens from a 2.4 metre length at 195 each.', 'stock=2.4 m; piece=195 mm; wanted=12'],
  ['I should get four out of a sheet.', 'stock=sheet length; wanted=4'],
  ['We want eight drawer fronts from one sheet.', 'stock=sheet length; wanted=8'],
  ['Should be able to get two doors out of that sheet.', 'stock=sheet length; wanted=2'],
  ['I reckon on five legs out of each length.', 'wanted=5'],
  [
    'The shelves are 610 wide. I should get four out of a sheet.',
    'stock=sheet length; piece=shelves width; wanted=4',
  ],
  ['Four at 610 from a 2440.', 'stock=2440 mm; piece=610 mm; wanted=4'],
  ['That sheet will do four shelves at 600.', 'stock=sheet length; piece=600 mm; wanted=4'],
  ['One sheet gives me six panels at 400.', 'stock=sheet length; piece=400 mm; wanted=6'],
  ["There's enough in that sheet for four doors at 595.", 'stock=sheet length; piece=595 mm; wanted=4'],
])('"%s" counts on it', (said, inputs) => {
  expect(checksIn(said)).toEqual([`pieces from stock: ${inputs}`]);
});

test('a kerf that was measured before is named', () => {
  const known = [{ item: 'saw kerf', attribute: 'gap', value: 2.8, unit: 'mm' } as const];
  expect(checksIn('I should get four at 600 out of a 2440 sheet.', known)).toEqual([
    'pieces from stock: stock=2440 mm; piece=600 mm; kerf=saw kerf gap; wanted=4',
  ]);
});

test.each([
  "I won't get four out of a sheet.",
  'I got four out of a sheet.',
  'I only got three shelves out of a sheet.',
  'Cut two out of a sheet yesterday.',
  'Three out of the four sheets are bent.',
  'Four out of ten boards are split.',
  'The board gives two grades of finish.',
  'The sheet will do for the roof.',
  'Four holes at 610 from the end.',
  'Six screws from the box.',
  'Two coats out of one tin.',
  'I took four screws out of the board.',
  'We could have had five out of a sheet.',
  'How many can I get out of a sheet?',
  'Could I get four out of a sheet?',
  'I need to get out of the van by six.',
  'It sticks 40 out of the sheet.',
  'I need twelve slats at 400 mil out of 2.4 metre boards.',
])('"%s" counts on nothing', (said) => {
  expect(checksIn(said)).toEqual([]);
});

test('so many out of so many boards is so many from each', () => {
  expect(checksIn("I need twelve slats at 390 mil out of 2.4 metre boards, two boards'll do it.")).toEqual([
    'pieces from stock: stock=2.4 m; piece=390 mm; wanted=6',
  ]);
});
