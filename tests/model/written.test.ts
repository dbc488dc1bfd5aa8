import { expect, test } from 'vitest';
import { readWrittenFigure, readWrittenLimit } from '../../src/model/written.ts';

test.each([
  ['gap height between 3 mm and 5 mm', { bound: 'between', quantity: { value: 3, unit: 'mm' }, high: 5 }],
  ['gap height between 3 mm and 1 cm', { bound: 'between', quantity: { value: 3, unit: 'mm' }, high: 10 }],
  ['doorway width at most 740 mm', { bound: 'at-most', quantity: { value: 740, unit: 'mm' } }],
  ['step depth ≥ 240 mm', { bound: 'at-least', quantity: { value: 240, unit: 'mm' } }],
])('"%s" is a limit', (line, limit) => {
  expect(readWrittenLimit(line, 'the step')).toMatchObject({
    ok: true,
    value: { ...limit, about: 'the step' },
  });
});

test.each([
  ['gap height between 3 mm and 5 kg', 'mm and kg do not compare'],
  ['gap height between 3 mm and 5 furlongs', '"5 furlongs" is no quantity'],
  ['gap height 3 mm', 'expected "at most", "at least" or "between"'],
  ['gap at most 3 mm', 'gap'],
])('"%s" is none: %s', (line, why) => {
  expect(readWrittenLimit(line, '')).toMatchObject({ ok: false, why: expect.stringContaining(why) });
});

test.each([
  [
    'bench top height = 915 mm',
    { kind: 'figure-set', item: 'bench top', quantity: { value: 915, unit: 'mm' } },
  ],
  ['bench top height = 2 * 18 mm', { kind: 'figure-set', quantity: { value: 36, unit: 'mm' } }],
  ['legs length = bench top height - 38 mm', { kind: 'formula-set', formula: 'bench top height - 38 mm' }],
  ['legs length =', { kind: 'formula-set', formula: '' }],
])('"%s" sets a figure or a formula', (line, value) => {
  expect(readWrittenFigure(line)).toMatchObject({ ok: true, value });
});
