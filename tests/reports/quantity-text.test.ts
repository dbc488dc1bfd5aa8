import { expect, test } from 'vitest';
import {
  amountText,
  boundedText,
  counterpartText,
  figureText,
  quantityText,
} from '../../src/reports/quantity-text.ts';

test.each([
  [905, 'mm', '905 mm'],
  [48.5, 'in', '48 1/2 in'],
  [0.125, 'in', '1/8 in'],
  [-1.5, 'in', '-1 1/2 in'],
  [1 / 3, 'in', '0.333333 in'],
  [688.18602, 'mm', '688.186 mm'],
  [12.3456, 'mm', '12.3456 mm'],
  [22, 'degC', '22 °C'],
  [45, 'deg', '45°'],
  [137.5, 'USD', '137.50 USD'],
  [200, 'GBP', '200 GBP'],
  [0.1 + 0.2, 'm', '0.3 m'],
  [12, '1', '12'],
  [45, 'ft.lbf', '45 ft·lbf'],
  [35, 'mm2', '35 mm²'],
])('%d %s is printed as "%s"', (value, unit, text) => {
  expect(quantityText({ value, unit })).toBe(text);
});

test.each([
  [{ value: 40, unit: 'mm', plusMinus: 1 }, '40 mm ± 1 mm'],
  [{ value: 5, unit: 'in', plusMinus: 1, plusMinusUnit: 'mm' }, '5 in ± 1 mm'],
  [{ value: 10, high: 12, unit: 'mm', bound: 'between' as const }, '10 to 12 mm'],
  [{ value: 740, unit: 'mm', bound: 'at-most' as const }, 'at most 740 mm'],
  [{ value: 20, unit: 'L', bound: 'at-least' as const }, 'at least 20 L'],
  [{ value: 3, unit: 'kg', bound: 'about' as const }, 'about 3 kg'],
])('%j is printed as "%s"', (figure, text) => {
  expect(boundedText(figure)).toBe(text);
});

test.each([
  [{ value: 40, attribute: 'ratio', quote: 'one in forty' }, '1 in 40'],
  [{ value: 60, attribute: 'ratio', item: 'wet room floor', source: { quote: '1 in 60' } }, '1 in 60'],
  [{ value: 80, attribute: 'ratio', item: 'waste pipe fall', quote: 'eighty' }, '1 in 80'],
  [{ value: 12, attribute: 'angle', item: 'ramp' }, '1 in 12'],
  [{ value: 3, attribute: 'ratio', item: 'pointing mortar', quote: 'three to one' }, '3 to 1'],
  [{ value: 5, attribute: 'ratio', quote: '5:1' }, '5 to 1'],
  [{ value: 2.5, attribute: 'ratio', quote: 'five parts to two' }, '2.5 to 1'],
  [{ value: 4, attribute: 'ratio', item: 'gearbox reduction' }, '4 to 1'],
  [{ value: 60, attribute: 'ratio', quote: 'one in sixty', bound: 'at-least' as const }, 'at least 1 in 60'],
  [
    { value: 40, high: 60, attribute: 'ratio', quote: 'one in 40 to one in 60', bound: 'between' as const },
    '1 in 40 to 1 in 60',
  ],
  // A share, a count, a plain number that nothing tells of, a unit.
  [{ value: 0.025, attribute: 'ratio', quote: 'one in forty' }, '0.025'],
  [{ value: 40, attribute: 'count', quote: 'one in forty' }, '40'],
  [{ value: 4, attribute: 'ratio', item: 'winch', quote: 'four' }, '4'],
  [{ value: 6, attribute: 'ratio', item: 'winch', quote: 'the one in the shed, six' }, '6'],
  [{ value: 19, unit: '%', attribute: 'ratio', item: 'ramp', quote: 'nineteen per cent' }, '19 %'],
])('a proportion %j is printed as "%s"', (figure, text) => {
  expect(boundedText({ unit: '1', ...figure })).toBe(text);
});

// 1 in = 25.4 mm and 1 lb = 0.45359237 kg exactly: NIST SP 811, appendix B. The results are worked out from these by
// hand; "≈" marks a value that was rounded.
test.each([
  [25.4, 'mm', '1 in'],
  [1220, 'mm', '≈ 48 1/16 in'],
  [48.5, 'in', '1231.9 mm'],
  [0.0625, 'in', '≈ 1.6 mm'],
  [0.45359237, 'kg', '1 lb'],
  [100, 'degC', '212 °F'],
  [50, 'degF', '10 °C'],
  [30.48, 'm', '100 ft'],
])('%d %s is "%s" in the other system', (value, unit, text) => {
  expect(counterpartText({ value, unit })).toBe(text);
});

test.each(['V', 'h', 'USD', '%', '1'])('%s has no other system', (unit) => {
  expect(counterpartText({ value: 5, unit })).toBeUndefined();
  expect(figureText({ value: 5, unit }, 'mixed')).toBe(quantityText({ value: 5, unit }));
});

test('a range is given in both systems', () => {
  expect(figureText({ value: 254, high: 508, unit: 'mm', bound: 'between' }, 'mixed')).toBe(
    '254 to 508 mm (10 in to 20 in)',
  );
});

test.each([
  [-279.4, 'mm', '279.4 mm'],
  [2.5748031, 'in', '2.575 in'],
  [1.5, 'in', '1 1/2 in'],
  [0.2425, 'in', '0.2425 in'],
])('a difference of %d %s is printed as "%s"', (value, unit, text) => {
  expect(amountText({ value, unit })).toBe(text);
});
