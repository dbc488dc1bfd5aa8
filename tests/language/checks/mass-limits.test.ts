import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  ['All of it has to stay under 400 kilos.', '400 kg'],
  ["The whole lot can't go over three and a half tonnes.", '3.5 t'],
  ["I've got to keep the whole build under two tonnes.", '2 t'],
  ["All up it mustn't weigh more than 650 kilos.", '650 kg'],
  ['Keep everything under 300 pounds.', '300 lb'],
  ['The payload is 620 kilos.', '620 kg'],
  ["The paper says she's not to go over fifteen hundred kilos all up.", '1500 kg'],
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
  'Everything so far weighs 320 kilos.',
  'We weighed the whole lot, 412 kilos.',
  'Is it all under 400 kilos?',
  'If it all stays under 400 kilos we can tow it.',
  'Keep everything under 400 high.',
])('"%s" limits no whole', (said) => {
  expect(checksIn(said)).toEqual([]);
});

test.each([
  ['Everything on the roof has to stay under 100 kilos.', 'part=every weight in roof; limit=100 kg'],
  [
    "All the kit in the back locker mustn't come to more than 80 kilos.",
    'part=every weight in back locker; limit=80 kg',
  ],
  [
    "Whatever goes in the rear overhang can't be over 150 kilos.",
    'part=every weight in rear overhang; limit=150 kg',
  ],
  ['No more than 75 kilos on the roof.', 'part=every weight in roof; limit=75 kg'],
  [
    "We mustn't put more than fifty kilos of books up in the lockers.",
    'part=every books weight in lockers; limit=50 kg',
  ],
  [
    "The shelves in the kiln can't come to more than 40 kilos.",
    'part=every shelves weight in kiln; limit=40 kg',
  ],
  ["The two tanks together can't be more than 500 pounds.", 'part=every tanks weight; limit=500 lb'],
  ["The three doors together mustn't weigh more than 60 kilos.", 'part=every doors weight; limit=60 kg'],
  ["The galley can't weigh more than 60 kilos all in.", 'part=every weight in galley; limit=60 kg'],
  ["Total weight of the kitchen can't be over 80 kilos.", 'part=every weight in kitchen; limit=80 kg'],
  [
    "The ballast and the batteries together can't be over 300 kilos.",
    'part=every ballast weight; part=every batteries weight; limit=300 kg',
  ],
  [
    'The anchor, chain and windlass all together have to stay under 90 kilos.',
    'part=every anchor weight; part=every chain weight; part=every windlass weight; limit=90 kg',
  ],
  [
    "Between the tank and the batteries I've got 250 kilos to play with.",
    'part=every tank weight; part=every batteries weight; limit=250 kg',
  ],
  [
    "The roof rack and what's on it can't be more than 75 kilos.",
    'part=roof rack weight; part=every weight in roof rack; limit=75 kg',
  ],
])('"%s" limits some things together', (said, inputs) => {
  expect(checksIn(said)).toEqual([`running mass: ${inputs}`]);
});

test.each([
  'Each shelf has to be under nine kilos.',
  "The cradle on the slip's plated for fourteen tonnes.",
  'There is a little gallery of wood, and the surveyor has written, maximum 800 kilos, with the stamp.',
  "The doors can't weigh more than 40 kilos each.",
  "The door can't weigh more than 40 kilos.",
  "I can't carry more than 25 kilos up the ladder.",
  'We weighed everything on the roof, 92 kilos.',
  'Is everything on the roof under 100 kilos?',
])('"%s" limits nothing together', (said) => {
  expect(checksIn(said)).toEqual([]);
});

test('of two limits in one sentence that of everything is meant; what joists may bear is no sum of joists', () => {
  expect(
    checksIn("The trailer's plated at two tonnes so the whole lot can't come to more than 1800 kilos."),
  ).toEqual(['running mass: limit=1800 kg']);
  expect(checksIn("The loft joists can't take more than 250 kilos all together up there.")).toEqual([]);
});
