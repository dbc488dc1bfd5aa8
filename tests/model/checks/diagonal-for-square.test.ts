/** A frame by its diagonals: how long they should be, and how far out of square it is by one of them or by both. */
import { describe, expect, test } from 'vitest';
import { DIAGONAL_FOR_SQUARE } from '../../../src/model/checks/diagonal-for-square.ts';
import { ran, resultOf, type Written } from '../../kit/given.ts';

// A frame of 4 m by 3 m has diagonals of 5 m; its angle is out by the sine, and its width by that of 3 m.
const FRAME = { length: '4000 mm', width: '3000 mm' };
const of = (more: Readonly<Record<string, Written>> = {}) => ran(DIAGONAL_FOR_SQUARE, { ...FRAME, ...more });
const out = (more: Readonly<Record<string, Written>>) => {
  const { low, mid, high } = resultOf(of(more), 'out of square');
  return [low, mid, high].map((one) => Math.round(one * 1e7) / 1e4);
};

test('it should be the root of both sides squared', () => {
  expect(resultOf(of(), 'diagonal').mid).toBeCloseTo(5, 12);
  expect(of()).toMatchObject({ verdict: 'told', notes: [] });
});

describe('out of square over its width, in millimetres', () => {
  test.each([
    // (5010^2 - 4990^2) / (4 x 4000 x 3000) x 3000
    ['by both diagonals', { 'first diagonal': '5010 mm', 'second diagonal': '4990 mm' }, 12.5],
    ['by both, the other way', { 'first diagonal': '4990 mm', 'second diagonal': '5010 mm' }, 12.5],
    ['by both, equal', { 'first diagonal': '5010 mm', 'second diagonal': '5010 mm' }, 0],
    // (5010^2 - 4000^2 - 3000^2) / (2 x 4000 x 3000) x 3000
    ['by one that is too long', { 'first diagonal': '5010 mm' }, 12.5125],
    // (4990^2 - 4000^2 - 3000^2) / (2 x 4000 x 3000) x 3000
    ['by one that is too short', { 'first diagonal': '4990 mm' }, 12.4875],
    ['by the second alone', { 'second diagonal': '5010 mm' }, 12.5125],
    ['by one that is right', { 'first diagonal': '5000 mm' }, 0],
  ] as const)('%s', (_what, diagonals, mid) => {
    expect(out(diagonals)).toEqual([mid, mid, mid]);
  });

  test('begins at nought where the tolerance goes through it', () => {
    expect(out({ 'first diagonal': '5000 mm ± 2 mm' })).toEqual([0, 0, 2.5005]);
    const [low, mid, high] = out({ 'first diagonal': '5010 mm ± 2 mm', 'second diagonal': '4990 mm ± 2 mm' });
    expect([low, mid, high]).toEqual([10, 12.5, 15]);
  });

  test('in degrees beside it', () => {
    const { mid } = resultOf(
      of({ 'first diagonal': '5010 mm', 'second diagonal': '4990 mm' }),
      'out of square angle',
    );
    // arcsin(12.5 / 3000)
    expect(mid).toBeCloseTo(0.238733, 5);
  });
});

describe('what is allowed', () => {
  const both = { 'first diagonal': '5010 mm', 'second diagonal': '4990 mm' };
  test.each([
    ['exactly that', '12.5 mm', 'holds'],
    ['more', '13 mm', 'holds'],
    ['less', '12.4 mm', 'broken'],
  ])('%s', (_what, allowed, verdict) => {
    expect(of({ ...both, allowed })).toMatchObject({ verdict });
  });

  test('nothing: it is told', () => {
    expect(of(both)).toMatchObject({ verdict: 'told' });
  });

  test('without a diagonal as measured there is nothing to hold it against', () => {
    expect(of({ allowed: '5 mm' })).toMatchObject({
      why: 'missing: first diagonal (a diagonal as measured)',
    });
  });
});

describe('what is told beside it', () => {
  test.each([
    [
      'of one diagonal',
      { 'first diagonal': '5010 mm' },
      ['from one diagonal: it is only as good as the sides'],
    ],
    [
      'of both',
      { 'first diagonal': '5010 mm', 'second diagonal': '4990 mm' },
      ['opposite sides are taken to be equal'],
    ],
    [
      // The root of the mean of both squared, 5009.9, is within a five-hundredth of 5000.
      'of both, a little off',
      { 'first diagonal': '5020 mm', 'second diagonal': '4999.8 mm' },
      ['opposite sides are taken to be equal'],
    ],
    [
      'of both, of another frame',
      { 'first diagonal': '5030 mm', 'second diagonal': '5000 mm' },
      ['the diagonals do not belong to these sides: those would have 5000 mm between them'],
    ],
    [
      'of both, of a smaller frame',
      { 'first diagonal': '4970 mm', 'second diagonal': '5000 mm' },
      ['the diagonals do not belong to these sides: those would have 5000 mm between them'],
    ],
  ])('%s', (_what, diagonals, notes) => {
    expect(of(diagonals)).toMatchObject({ notes });
  });
});

test.each(['7000 mm', '7001 mm', '1000 mm', '999 mm'])(
  'sides of 4 m and 3 m have no diagonal of %s',
  (diagonal) => {
    expect(of({ 'first diagonal': diagonal })).toMatchObject({ verdict: 'refused' });
  },
);
