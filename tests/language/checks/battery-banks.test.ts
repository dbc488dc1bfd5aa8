import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  [
    'The bank has to give 1860 watt hours at 12 volts and I only want to use half of it.',
    'energy=1860 Wh; voltage=bank voltage; usable share=50 %',
  ],
  [
    "We use 1860 watt hours a day, the bank's 200 amp hours at 12 volts and I'll only take eighty percent.",
    'energy=1860 Wh; voltage=bank voltage; usable share=80 %; bank=200 Ah',
  ],
])('"%s" asks for the check', (said, inputs) => {
  expect(checksIn(said)).toEqual([`battery: ${inputs}`]);
});

test.each([
  'The heater uses 300 watt hours.',
  'If we use 1860 watt hours the bank is flat.',
  'The bank is 200 amp hours.',
])('"%s" asks for none', (said) => {
  expect(checksIn(said)).toEqual([]);
});
