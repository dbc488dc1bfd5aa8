import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  [
    "It's a tapered tank, 0.4 square metres at one end, 0.3 in the middle and 0.2 at the other end and 1.2 metres long, and it has to hold 300 litres.",
    'first end=0.4 m2; middle=0.3 m2; other end=0.2 m2; length=1.2 m; wanted=300 L',
  ],
  [
    'The bow tank is 1200 long, the area at the front is 0.12 square metres, 0.22 half way and 0.3 at the back, and I want 250 litres.',
    'first end=0.12 m2; middle=0.22 m2; other end=0.3 m2; length=1200 mm; wanted=250 L',
  ],
  [
    'The tank is 1200 long, 0.3 square metres at the back end, 0.22 square metres half way and 0.12 square metres at the front.',
    'first end=0.12 m2; middle=0.22 m2; other end=0.3 m2; length=1200 mm',
  ],
])('"%s" is measured by its areas', (said, inputs) => {
  expect(checksIn(said)).toEqual([`prismoidal tank: ${inputs}`]);
});

test.each([
  'The tank is 1200 long, 0.12 square metres at the front and 0.3 at the back.',
  'The deck is 4 square metres at the front, 6 in the middle and 5 at the back.',
])('"%s" is no tapered tank', (said) => {
  expect(checksIn(said)).toEqual([]);
});
