import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['mix the mortar five to one', '5 1'],
  ['resin and hardener at 3:1', '3 1'],
  ['one to three with sand', '3 1'],
  ['two parts lime to one part sand', '2 1'],
  ['three of sand to one of lime', '3 1'],
  ['he says three sharp sand to one lime', '3 1'],
  ['two clay to one sand, and render at 1:4', '2 1; 4 1'],
  ['a fall of one in forty', '40 1'],
  ['the gutter falls 1 in 350', '350 1'],
  ['the shower tray slopes one in fifty to the drain', '50 1'],
  ['the patio is falling one in eighty, away from the door', '80 1'],
  ['the waste goes out at one in forty', '40 1'],
  ['the slab drains one in fifty to the door', '50 1'],
  ['the path runs one in a hundred down to the gate', '100 1'],
  ['the yard sheds water at 1 in 80', '80 1'],
  ['that post leans one in sixty', '60 1'],
  ['What fall did I give the gully? One in sixty.', '60 1'],
  ["it's a longer drop than the book asks for on a pipe of that size, one in thirty", '30 1'],
  ['the wheelchair ramp comes out at one in twelve', '12 1'],
  ['the barge board scarf is one in eight', '8 1'],
  ['the roof pitch is four in twelve', '0.333333333333 1'],
])('"%s" is a ratio: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['one to three people came', 'none'],
  ['two in the box', 'none'],
  ['one in ten of the slates is cracked', 'none'],
  ['one in three got lost on the way, and the roof is on', 'none'],
  ['I found one in the shed', 'none'],
  ['one in five drains is blocked', 'none'],
  ['of the drains, one in three is cracked', 'none'],
  ['one in nine of the sheds leaks', 'none'],
])('"%s" is none: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
