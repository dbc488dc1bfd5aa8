import { expect, test } from 'vitest';
import { readSizes, STEP, writeSizes } from '../../src/language/items/size-table.ts';

test('what is written is read back, in whole steps and without what weighs nothing', () => {
  const table = writeSizes({
    votes: { 'known near': 24 * STEP, 'band of next': -3 * STEP, usual: 0.3 * STEP },
    signs: { 'next deep': { depth: 12 * STEP, width: -STEP }, 'after `$': { gap: 2.4 * STEP }, any: {} },
  });
  expect(table).toEqual({ votes: 'band of next -3\nknown near 24', signs: 'after `$ g2\nnext deep d12w-1' });
  const read = readSizes(table);
  expect({ ...read.votes }).toEqual({ 'band of next': -3 * STEP, 'known near': 24 * STEP });
  expect({ ...read.signs }).toEqual({
    'after `$': { gap: 2 * STEP },
    'next deep': { depth: 12 * STEP, width: -STEP },
  });
});

test.each(['next deep', 'next deep d', '12', 'next deep 12d'])('"%s" is no line of the table', (line) => {
  expect(() => readSizes({ votes: '', signs: line })).toThrow(/ends in its weights, got/);
});
