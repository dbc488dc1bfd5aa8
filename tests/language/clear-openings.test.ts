/** Clear sizes of openings, amounts without a unit, and so many bags of so much. */
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const figures = (text: string, units: 'metric' | 'us' = 'metric') =>
  readMemo(text, { units, recordedAt: '2026-02-03T17:00:00+01:00' }).notes.figures;
const sides = (text: string, units?: 'us') =>
  figures(text, units).map(({ attribute, value }) => `${attribute} ${value}`);

test.each([
  ['The opening is 610 clear by 480.', ['width 610', 'height 480']],
  ['The hatch opening is 610 clear by 480 high.', ['width 610', 'height 480']],
  ['The doorway is 742 by 1980 clear.', ['width 742', 'height 1980']],
  ['The hatch is 480 high by 610 clear.', ['height 480', 'width 610']],
  ['The clear opening of the hatch is 622.', ['width 622']],
  ["The doorway's only 738 clear.", ['width 738']],
])('%s', (text, said) => expect(sides(text)).toEqual(said));
test('in inches as well', () => {
  expect(sides('The opening is 23 and a half clear by 48.', 'us')).toEqual(['width 23.5', 'height 48']);
});

test.each([
  ['The window opening is 900 by 600.', ['size 900', 'size 600']],
  ['The shelf is 610 clear of the wall.', ['clearance 610']],
  ['The clear height of the doorway is 1980.', ['height 1980']],
  ['The panel is 610 by 480.', ['size 610', 'size 480']],
])('left alone: %s', (text, said) => expect(sides(text)).toEqual(said));

test.each([
  ['I bought three twenty kilo bags of plaster.', [20, 'kg', 3]],
  ['We need four twenty five kilo bags of cement.', [25, 'kg', 4]],
  ['3 20 kilo bags of lime came.', [20, 'kg', 3]],
  ['There are two ten litre tins of paint.', [10, 'L', undefined]],
  ['The stove is three twenty kilos.', [320, 'kg', undefined]],
  ['The water tank is three twenty litres.', [320, 'L', undefined]],
  ['The safe weighs two hundred kilos.', [200, 'kg', undefined]],
] as const)('so many of so much: %s', (text, said) => {
  expect(figures(text).map(({ value, unit, each }) => [value, unit, each?.count])).toEqual([said]);
});

test.each([
  ['The water is 250.', ['1 250']],
  ["The diesel's eighty.", ['1 80']],
  ['The water is 250 litres.', ['L 250']],
  ['The water is 250 below the deck.', ['mm 250']],
  ['The water pipe is 15.', ['mm 15']],
  ['The shelf is 250.', ['mm 250']],
])('an amount without its unit: %s', (text, said) =>
  expect(figures(text).map(({ unit, value }) => `${unit} ${value}`)).toEqual(said),
);
