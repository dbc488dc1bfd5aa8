import { expect, test } from 'vitest';
import { checksIn, recordsIn } from '../../kit/records.ts';

test.each([
  [
    'The ply is three sheets of 12 mil at 2440 by 1220, what does that weigh.',
    'length=2440 mm; width=1220 mm; thickness=12 mm; count=3',
    'plywood',
  ],
  [
    'The bulkhead is 2 metres by 1.2 out of 18 mil ply. How heavy is that going to be?',
    'length=2 m; width=1.2 m; thickness=18 mm',
    'plywood',
  ],
  [
    'The steel plate is 1200 by 600 by 4 mil, I want to know what it weighs.',
    'length=1200 mm; width=600 mm; thickness=4 mm',
    'steel',
  ],
])('"%s" asks what it weighs', (said, inputs, material) => {
  expect(checksIn(said)).toEqual([`sheet mass: ${inputs}`]);
  expect(recordsIn(said)).toMatchObject([{ options: { material } }]);
});

test.each([
  'The bulkhead is 2 metres by 1.2 out of 18 mil ply.',
  'The stove is heavy, how heavy is it?',
  'The plate is 1200 by 600 by 4 mil and I weighed it, it weighs 22 kilos.',
])('"%s" asks for no weight', (said) => {
  expect(checksIn(said)).toEqual([]);
});
