import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  [
    "The twelve foot lengths have to get round the corner in the hall, the hall's 900 wide and the passage is 1100.",
    'first passage=hall width; second passage=passage width; length=12 ft',
  ],
  [
    "I've got to get the ridge beam round the corner from the passage to the landing.",
    'first passage=passage width; second passage=landing width; length=ridge beam length',
  ],
  [
    'The pipe has to go round the bend between the 600 corridor and the 700 one.',
    'first passage=600 mm; second passage=700 mm; length=pipe length',
  ],
  [
    "The worktop's going to have to come round the corner from the hallway. The hallway's 3 foot wide and the landing's 34 inches.",
    'first passage=hallway width; second passage=landing width; length=worktop length',
  ],
  ['That tube needs to get round the corner at the top of the stairs.', 'length=tube length'],
])('"%s" wants something round a corner', (said, inputs) => {
  expect(checksIn(said)).toEqual([`rod round corner: ${inputs}`]);
});

test.each([
  "We've got to turn round at the corner.",
  "The shop's just round the corner.",
  'The trim has to go round the corner post.',
  'The beam went round the corner in one go.',
  "The beam doesn't have to go round the corner in the hall.",
])('"%s" wants nothing round one', (said) => {
  expect(checksIn(said)).toEqual([]);
});
