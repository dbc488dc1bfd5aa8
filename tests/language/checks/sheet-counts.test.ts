import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

const SHEET = 'sheet length=2440 mm; sheet width=1220 mm';

test.each([
  [
    "I've got to get twelve panels 600 by 400 out of two sheets of ply 2440 by 1220.",
    `${SHEET}; piece length=600 mm; piece width=400 mm; pieces=12; sheets=2`,
  ],
  [
    "I need twelve panels at 600 by 400 and I've got two sheets, 2440 by 1220.",
    `${SHEET}; piece length=600 mm; piece width=400 mm; pieces=12; sheets=2`,
  ],
  [
    'Ten lids 450 by 350 out of a sheet, the sheet is 2440 by 1220, saw takes 3 mil.',
    `${SHEET}; piece length=450 mm; piece width=350 mm; pieces=10; kerf=3 mm; sheets=1`,
  ],
  [
    'We should get eight door blanks 900 by 450 out of one sheet.',
    'sheet length=sheet length; sheet width=sheet width; piece length=900 mm; piece width=450 mm; pieces=8; sheets=1',
  ],
])('"%s" asks how many sheets', (said, inputs) => {
  expect(checksIn(said)).toEqual([`sheets for pieces: ${inputs}`]);
});

test.each([
  'I cut twelve panels 600 by 400 out of two sheets of ply 2440 by 1220.',
  'The twelve panels are 600 by 400.',
  "I won't get twelve panels 600 by 400 out of two sheets.",
  'I need two sheets 2440 by 1220.',
  // Of two sizes no count in one direction holds.
  'I should get four shelves 610 wide and 300 deep out of a sheet.',
])('"%s" asks for none', (said) => {
  expect(checksIn(said)).toEqual([]);
});
