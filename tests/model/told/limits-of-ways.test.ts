/** A size that is a limit for whatever comes by. */
import { expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

test.each([
  ['The door from the nave is only 765 wide so nothing bigger than that comes through.', '765 mm -> 780 mm'],
  ['Side hatch is 690 wide. No machine wider than that goes in.', '690 mm -> 780 mm'],
  ['The doorway is 740 clear and everything has to come through it.', '740 mm -> 780 mm'],
  ["Everything has to come in through the doorway, and that's 740 clear.", '740 mm -> 780 mm'],
  ["The stair's 740 wide so that's the biggest thing that comes up.", '740 mm -> 780 mm'],
  ['The hatch is 740 wide, and whatever I buy has to go down it.', '740 mm -> 780 mm'],
  ['The biggest thing I can get through the door is 740.', '740 mm -> 780 mm'],
])('"%s" is one', (way, broken) => {
  const story = new ToldStory().hear(way).hear("The fridge came, it's 780 wide.");
  expect(story.found()).toEqual([expect.stringContaining(broken)]);
  expect(story.found()[0]).toMatch(/^limit: fridge width/);
});

test.each([
  'The door from the nave is 765 wide.',
  'The door is 765 wide. Nothing else needs doing bigger than that.',
  "The bench is 740 wide and that's the biggest mess I've ever made.",
  'The bench is 740 wide and everything has to come off it.',
])('"%s" is none', (way) => {
  const story = new ToldStory().hear(way).hear("The fridge came, it's 780 wide.");
  expect(story.limits()).toEqual([]);
  expect(story.found()).toEqual([]);
});
