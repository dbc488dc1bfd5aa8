import { expect, test } from 'vitest';
import { SHEETS_FOR_PIECES } from '../../../src/model/checks/sheets-for-pieces.ts';
import { holdsWhatLiesWithin, isMonotone } from '../../kit/check-properties.ts';
import { ran, resultOf, type Written } from '../../kit/given.ts';

const SHEET = { 'sheet length': '2440 mm', 'sheet width': '1220 mm' };
const pieces = (length: string, width: string, count: string, more: Readonly<Record<string, Written>> = {}) =>
  ran(SHEETS_FOR_PIECES, { ...SHEET, 'piece length': length, 'piece width': width, pieces: count, ...more });

test.each([
  // Computed by hand. Without a cut eight pieces of 610 x 610 are the whole sheet.
  ['610 mm', '610 mm', '8', undefined, 1, 1],
  ['610 mm', '610 mm', '8', '3 mm', 2, 3],
  ['600 mm', '400 mm', '12', '3 mm', 1, 1],
  ['600 mm', '400 mm', '13', '3 mm', 2, 2],
  // By area four lie on a sheet; in rows three do, turned across it.
  ['900 mm', '700 mm', '9', '3 mm', 2, 3],
])(
  '%s x %s, %s of them, with a cut of %s: at least %d, %d in rows',
  (length, width, count, kerf, least, rows) => {
    const worked = pieces(length, width, count, kerf ? { kerf } : {});
    expect(resultOf(worked, 'sheets at least').mid).toBe(least);
    expect(resultOf(worked, 'sheets in plain rows').mid).toBe(rows);
  },
);

test.each([
  ['1', 'broken', '9 pieces take at least 2 sheets, there is 1'],
  [
    '2',
    'told',
    '9 pieces take at least 2 sheets and 3 sheets do in plain rows: with 2 sheets a cutting plan decides',
  ],
  ['3', 'holds', '3 sheets do in plain rows, there are 3'],
])('with %s sheets it is %s', (sheets, verdict, why) => {
  expect(pieces('900 mm', '700 mm', '9', { kerf: '3 mm', sheets })).toMatchObject({ verdict, why });
});

test('it says that it is a lower bound only', () => {
  const worked = pieces('600 mm', '400 mm', '12');
  expect('notes' in worked && worked.notes).toEqual([
    'a lower bound only: no cutting plan was made, and faults and trim are not counted',
    'no kerf was given: counted as if the saw took nothing',
    'pieces may be turned',
  ]);
});

test('pieces that keep the grain may take more sheets than pieces that may turn', () => {
  const inputs = { ...SHEET, 'piece length': '400 mm', 'piece width': '700 mm', pieces: '6' };
  expect(resultOf(ran(SHEETS_FOR_PIECES, inputs), 'sheets in plain rows').mid).toBe(1);
  const along = ran(SHEETS_FOR_PIECES, inputs, { grain: 'grain along the length' });
  expect(resultOf(along, 'sheets in plain rows').mid).toBe(1);
  const tall = { ...inputs, 'piece length': '600 mm', 'piece width': '1300 mm' };
  expect(resultOf(ran(SHEETS_FOR_PIECES, tall), 'sheets in plain rows').mid).toBe(3);
  expect(ran(SHEETS_FOR_PIECES, tall, { grain: 'grain along the length' })).toMatchObject({
    verdict: 'broken',
    why: 'at worst not one piece comes out of a sheet',
  });
});

test.each([
  [{ pieces: '0' }, 'pieces: '],
  [{ pieces: '2.5' }, 'the count of pieces must be a whole number'],
  [{ 'piece width': '-400 mm' }, 'piece width: '],
  [{ 'sheet length': '0 mm' }, 'sheet length: '],
])('%o is refused', (more, start) => {
  const worked = pieces('600 mm', '400 mm', '12', more);
  expect(worked.verdict).toBe('refused');
  expect(worked.why.startsWith(start)).toBe(true);
});

const DRAWS = {
  'sheet length': { least: 1.2, most: 3 },
  'sheet width': { least: 1.2, most: 2 },
  'piece length': { least: 0.05, most: 1.1 },
  'piece width': { least: 0.05, most: 1.1 },
  pieces: { least: 1, most: 60, whole: true },
  kerf: { least: 0.001, most: 0.006 },
};

test('the ranges hold every count that the sizes allow', () => {
  holdsWhatLiesWithin(SHEETS_FOR_PIECES, DRAWS, ['sheets at least', 'sheets in plain rows']);
});

test('more and larger pieces never take fewer sheets, larger sheets never more', () => {
  const ways = {
    rises: ['piece length', 'piece width', 'pieces', 'kerf'],
    falls: ['sheet length', 'sheet width'],
  };
  isMonotone(SHEETS_FOR_PIECES, DRAWS, 'sheets at least', ways);
  isMonotone(SHEETS_FOR_PIECES, DRAWS, 'sheets in plain rows', ways);
});
