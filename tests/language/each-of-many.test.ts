import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const each = (said: string) =>
  readMemo(said, { units: 'metric', recordedAt: '2026-03-03T14:20:00+01:00' })
    .notes.figures.filter(({ dimension }) => dimension === 'mass')
    .map((figure) => [figure.value, figure.each]);

test.each<[string, number, number | undefined]>([
  ['Four batteries at twenty six kilos each.', 26, 4],
  ['Six sheets of ply at eighteen kilos a sheet.', 18, 6],
  ['Each of the two seats weighs fourteen kilos.', 14, 2],
  ['There are three gas bottles, and every bottle weighs 11 kilos.', 11, 3],
  ['The ballast blocks are 20 kilos apiece.', 20, undefined],
  ['The ballast blocks are 20 kilos apiece and I have got six of them.', 20, 6],
  ['We fitted five lockers, 9 kilos per locker.', 9, 5],
  ['The two doors are forty pounds each.', 40, 2],
  ['The seats are three at fourteen kilos each.', 14, 3],
  ['The anchors are 8 kilos each, three of them.', 8, 3],
  ['8 kilos each for the crates, three of them, and that is all.', 8, 3],
  ['The crates are 8 kilos each, and that makes no odds.', 8, undefined],
  ['The crates weigh 8 kilos each, times three.', 8, 3],
  ['The crates weigh 8 kilos each, three in all.', 8, 3],
  ['Three of the crates at 8 kilos each.', 8, 3],
  ['The paving slabs, 12 of them, 16 kilos each.', 16, 12],
  ['The crates are 8 kilos each, two of them are in the locker.', 8, undefined],
])('"%s" tells the weight of one of several', (said, value, count) => {
  expect(each(said)).toEqual([[value, count === undefined ? {} : { count }]]);
});

test.each([
  'The four batteries weigh 104 kilos together.',
  'Between them the doors are 40 kilos.',
  '104 kilos in total for the batteries.',
])('"%s" tells the weight of them all', (said) => {
  expect(each(said).map(([, of]) => of)).toEqual([{ count: 1 }]);
});

test.each([
  'Four batteries weigh 104 kilos.',
  'The stove is 60 kilos, 30 each side.',
  'Each door is 700 wide, and the stove is 60 kilos.',
  'The water tank is 140 kilos full.',
])('"%s" tells a whole weight', (said) => {
  expect(each(said).map(([, of]) => of)).not.toContainEqual(expect.anything());
});

test.each([
  ['The chain is two kilos per metre.', 'metre'],
  ['Ply is ten kilos a square metre.', 'square metre'],
])('"%s" is of no whole thing', (said, per) => {
  expect(each(said).map(([, of]) => of)).toEqual([{ per }]);
});

test('the next weight is no more of each', () => {
  expect(each('The batteries are four at 27 kilos each and the stove is 62 kilos.')).toEqual([
    [27, { count: 4 }],
    [62, undefined],
  ]);
});
