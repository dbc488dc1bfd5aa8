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
  [
    "The boards are 3.6 metres long and they've got to turn the corner at the end of the passage, the passage is 900 wide and the lobby is 1100.",
    'first passage=passage width; second passage=lobby width; length=boards length',
  ],
  [
    'I need to swing the 4.8 metre purlins round the corner between the 1200 alley and the 900 path.',
    'first passage=alley width; second passage=path width; length=purlins length',
  ],
  [
    "The skirtings are 3 metres and there's a right angle turn from the landing, 850 wide, into the hall, 900 wide, to get them through.",
    'first passage=hall width; second passage=landing width; length=3 m',
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
  "There's a right angle turn in the passage.",
  'I turned the corner with the roof this week.',
  "The beam doesn't have to go round the corner in the hall.",
])('"%s" wants nothing round one', (said) => {
  expect(checksIn(said)).toEqual([]);
});
