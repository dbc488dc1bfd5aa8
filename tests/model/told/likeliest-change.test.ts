/** A new size that goes by another name than the old one, and what only looks like one. */
import { expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

const found = (before: string, after: string) => new ToldStory().hear(before).hear(after).found();

test.each([
  [
    'The hot water cylinder holds 180 litres.',
    'I gave you the cylinder, it is 18 litres, and that is ordered.',
    'slip: hot water cylinder volume 180 L -> 18 L',
  ],
  [
    'The oak lintel is 3250 millimetres long.',
    'I measured again. The lintel should be 3215.',
    'remeasured: oak lintel length 3250 mm -> 3215 mm',
  ],
  [
    'The stair string is 2410 millimetres long.',
    'I put the tape on that string again, stairs and all, and it is 2395 long.',
    'remeasured: stair string length 2410 mm -> 2395 mm',
  ],
  [
    'Slab goes down at a hundred and fifty millimetres on the hardcore.',
    'We poured the floor on the hardcore, a hundred and fifteen millimetres thick.',
    'slip: slab thickness 150 mm -> 115 mm',
  ],
  [
    'The ridge pole is 4650 millimetres long.',
    'The pole at the ridge, I ran the tape along it, is 4600 long.',
    'remeasured: ridge pole length 4650 mm -> 4600 mm',
  ],
])('%s %s', (before, after, finding) => {
  expect(found(before, after)).toEqual([finding]);
});

test.each([
  ['The starboard bunk is 1900 millimetres long.', 'The port bunk is 1880 millimetres long.'],
  ['The bench top is 900 millimetres high.', 'The bench top is 600 millimetres wide.'],
  ['The galley shelf is 300 millimetres deep.', 'The wheel arch is 290 millimetres deep.'],
  ['The keel bolts are 16 millimetres in diameter.', 'The cleat bolts are 10 millimetres in diameter.'],
  ['I cut the shelf for the kiln 400 millimetres deep.', 'I cut the lid for the kiln 420 millimetres deep.'],
  [
    'The saddle rack is fixed 1500 millimetres off the floor.',
    'The bridle hook is fixed 1550 millimetres off the floor.',
  ],
  ['The rear legs are 710 millimetres long.', 'The front legs are 690 millimetres long.'],
])('%s %s: two things', (before, after) => {
  expect(found(before, after)).toEqual([]);
});
