import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  ['All of it has to stay under 400 kilos.', '400 kg'],
  ["The whole lot can't go over three and a half tonnes.", '3.5 t'],
  ["I've got to keep the whole build under two tonnes.", '2 t'],
  ["All up it mustn't weigh more than 650 kilos.", '650 kg'],
  ['Keep everything under 300 pounds.', '300 lb'],
  ['The payload is 620 kilos.', '620 kg'],
  ["We've got a payload of 540 kilos to play with.", '540 kg'],
  ["I've only got 500 kilos to play with.", '500 kg'],
  ["I've got 620 kilos left for the whole build.", '620 kg'],
])('"%s" limits the whole', (said, limit) => {
  expect(checksIn(said)).toEqual([`running mass: limit=${limit}`]);
});

test('no part is named, so that every weight counts, also one told later', () => {
  const said =
    "The stove's 28 kilos and the water tank weighs 60 kilos. The whole lot can't go over 400 kilos.";
  expect(checksIn(said)).toEqual(['running mass: limit=400 kg']);
});

test.each([
  "The lid can't weigh more than 10 kilos.",
  'The crane takes two tonnes.',
  "I've got 40 kilos of lead for the keel.",
  "The rack's rated for 75 kilos.",
  'Nothing heavier than 20 kilos goes on the roof.',
  "Total weight of the kitchen can't be over 80 kilos.",
  'Everything so far weighs 320 kilos.',
  'We weighed the whole lot, 412 kilos.',
  'Is it all under 400 kilos?',
  'If it all stays under 400 kilos we can tow it.',
  'Keep everything under 400 high.',
])('"%s" limits no whole', (said) => {
  expect(checksIn(said)).toEqual([]);
});
