import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { countPieces, PIECES_FROM_STOCK } from '../../../src/model/checks/pieces-from-stock.ts';
import { rangeAbout } from '../../../src/model/checks/ranges.ts';
import { holdsWhatLiesWithin, isMonotone } from '../../kit/check-properties.ts';
import { ran, resultOf } from '../../kit/given.ts';

const cut = (stock: string, piece: string, kerf?: string, wanted?: string) =>
  ran(PIECES_FROM_STOCK, { stock, piece, ...(kerf ? { kerf } : {}), ...(wanted ? { wanted } : {}) });

test.each([
  // Source: http://www.woodworkersjournal.com/using-cutting-diagrams/ says "not 48"; the count is computed.
  ['48 in', '1 in', '0.125 in', 42],
  // Computed from n = floor((L + k)/(l + k)).
  ['96 in', '8 in', '0.125 in', 11],
  ['2440 mm', '610 mm', '3 mm', 3],
  ['2440 mm', '607.75 mm', '3 mm', 4],
  ['2440 mm', '607.76 mm', '3 mm', 3],
  ['8 ft', '1 ft', '0.125 in', 7],
  ['600 mm', '700 mm', '3 mm', 0],
])('%s into %s with a cut of %s gives %d', (stock, piece, kerf, pieces) => {
  expect(resultOf(cut(stock, piece, kerf), 'pieces')).toEqual({ low: pieces, mid: pieces, high: pieces });
});

test('whole pieces and whole cuts come out exactly where floats would lose one', () => {
  // In floats (0.3 + 0.003) / (0.098 + 0.003) comes to 2.9999999999999996: the case that exact arithmetic is for.
  expect(Math.floor((0.3 + 0.003) / (0.098 + 0.003))).toBe(2);
  expect(countPieces(0.3, 0.098, 0.003)).toBe(3);
});

test.each([
  ['2440 mm', '610 mm', '3 mm', '4', 'broken', '2440 mm gives 3 x 610 mm, not 4, with a 3 mm kerf'],
  ['2440 mm', '600 mm', '3 mm', '4', 'holds', '2440 mm gives 4 x 600 mm, with a 3 mm kerf'],
  [
    '2440 mm',
    '610 mm',
    undefined,
    '4',
    'broken',
    '4 x 610 mm is all of 2440 mm: nothing is left for the cuts',
  ],
  ['2440 mm', '605 mm', undefined, '4', 'told', '2440 mm gives 4 x 605 mm with a kerf of up to 6.7 mm'],
  ['2440 mm', '700 mm', undefined, '4', 'broken', '2440 mm gives 3 x 700 mm, not 4'],
  ['2440 mm', '2440 mm', undefined, '1', 'holds', '2440 mm gives 1 x 2440 mm'],
  ['2440 mm', '610 mm', undefined, undefined, 'told', '2440 mm gives 4 x 610 mm'],
])('%s into %s (%s) with %s wanted is %s', (stock, piece, kerf, wanted, verdict, why) => {
  expect(cut(stock, piece, kerf, wanted)).toMatchObject({ verdict, why });
});

test('sizes that may be off count at their worst', () => {
  const worked = ran(PIECES_FROM_STOCK, {
    stock: '2440 mm',
    piece: rangeAbout(0.6075, 0.001),
    kerf: '3 mm',
    wanted: '4',
  });
  expect(worked).toMatchObject({
    verdict: 'broken',
    why: '2440 mm gives 3 to 4 x 607.5 mm, not 4, with a 3 mm kerf',
  });
});

test('what is left of the stock is told', () => {
  // Computed: 2440 - 3 x 613 and nothing once the last cut runs off the end.
  expect(resultOf(cut('2440 mm', '610 mm', '3 mm'), 'left of the stock').mid).toBeCloseTo(0.601, 12);
  expect(resultOf(cut('2440 mm', '607.75 mm', '3 mm'), 'left of the stock').mid).toBe(0);
});

test('inches give the count that their millimetres give', () => {
  fc.assert(
    fc.property(fc.integer({ min: 16, max: 1600 }), fc.integer({ min: 4, max: 400 }), (stock, piece) => {
      const inches = cut(`${stock / 16} in`, `${piece / 16} in`, '0.125 in');
      const millimetres = cut(`${(stock / 16) * 25.4} mm`, `${(piece / 16) * 25.4} mm`, '3.175 mm');
      expect(resultOf(inches, 'pieces')).toEqual(resultOf(millimetres, 'pieces'));
    }),
  );
});

test('the pieces and the cuts between them always fit, and one more never does', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 400_000 }),
      fc.integer({ min: 10, max: 40_000 }),
      fc.integer({ min: 0, max: 60 }),
      (stock, piece, kerf) => {
        // Tenths of a millimetre, so that the sums are whole numbers and exact.
        const count = countPieces(stock / 10_000, piece / 10_000, kerf / 10_000);
        const needs = (pieces: number) => pieces * piece + Math.max(0, pieces - 1) * kerf;
        expect(needs(count)).toBeLessThanOrEqual(stock);
        expect(needs(count + 1)).toBeGreaterThan(stock);
      },
    ),
  );
});

test.each([
  [{ stock: '0 mm', piece: '610 mm' }, 'stock'],
  [{ stock: '2440 mm', piece: '-610 mm' }, 'piece'],
  [{ stock: '2440 mm', piece: '610 mm', kerf: '300 mm' }, 'kerf'],
  [{ stock: '2440 mm', piece: '610 mm', wanted: '0' }, 'wanted'],
  [{ stock: '2440 mm', piece: '610 mm', wanted: '2.5' }, 'the count wanted must be'],
])('%o is refused with a sentence about the %s', (inputs, start) => {
  const worked = ran(PIECES_FROM_STOCK, inputs);
  expect(worked.verdict).toBe('refused');
  expect(worked.why.startsWith(start)).toBe(true);
});

test('the range holds every count that the sizes allow; longer stock never gives fewer', () => {
  const draws = {
    stock: { least: 0.5, most: 6 },
    piece: { least: 0.02, most: 1 },
    kerf: { least: 0.001, most: 0.006 },
  };
  holdsWhatLiesWithin(PIECES_FROM_STOCK, draws, ['pieces']);
  isMonotone(PIECES_FROM_STOCK, draws, 'pieces', { rises: ['stock'], falls: ['piece', 'kerf'] });
});
