import { expect, test } from 'vitest';
import { numberText } from '../../src/model/quantity-words.ts';

test.each([
  [0.375, 'in', '3/8'],
  [48.5, 'in', '48 1/2'],
  [-2.25, 'in', '-2 1/4'],
  [7, 'in', '7'],
  [7.75, 'ft', '7 3/4'],
  [0.375, 'mm', '0.375'],
  [12.5, 'EUR', '12.50'],
  [12, 'EUR', '12'],
] as const)('%d %s is printed as %s', (value, unit, text) => {
  expect(numberText(value, unit)).toBe(text);
});

test('what is no fraction of an inch stays a decimal', () => {
  expect(numberText(0.3, 'in')).toBe('0.3');
});
