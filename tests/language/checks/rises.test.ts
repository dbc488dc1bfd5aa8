import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  ["The roof's at 35 degrees and the run is 1200, so how much does it rise?", 'angle=35 deg; run=1200 mm'],
  ['The roof pitches at 30 degrees over a run of 1100.', 'angle=30 deg; run=1100 mm'],
  [
    "The ladder's 2.1 metres and leans at 75 degrees, how high does it reach?",
    'angle=75 deg; slope length=2.1 m',
  ],
  [
    'The roof is at 30 degrees with a rise of 700. Work out the length of the rafters.',
    'angle=30 deg; rise=700 mm',
  ],
])('"%s" asks for the sizes of a slope', (said, inputs) => {
  expect(checksIn(said)).toEqual([`rise and run: ${inputs}`]);
});

test.each([
  'The rafter is 1400 long at 30 degrees.',
  "It's 18 degrees in the shed and the bench is 900 long.",
  'How high is the roof?',
  'The roof pitches at 30 degrees.',
])('"%s" asks for none', (said) => {
  expect(checksIn(said)).toEqual([]);
});
