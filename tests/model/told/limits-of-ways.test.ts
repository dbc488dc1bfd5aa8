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
  ["The companionway's 590 clear and everything comes in through it.", '590 mm -> 780 mm'],
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

test('a limit is of the size right before it, and not of another thing told earlier', () => {
  const story = new ToldStory().hear(
    'The shelf wants to be 690 square. The door opening is 765 by 1980, nothing wider than that comes in.',
  );
  expect(story.hear("The fridge came, it's 740 wide.").found()).toEqual([]);
  expect(story.hear("The dresser came, it's 800 wide.").found()).toEqual([
    expect.stringContaining('765 mm -> 800 mm'),
  ]);
});

test('what is built where it stands is not carried in', () => {
  const way = 'The door from the nave is only 765 wide so nothing bigger than that comes through.';
  expect(new ToldStory().hear(way).hear('The hearth is 900 wide.').found()).toEqual([]);
  expect(new ToldStory().hear(way).hear('The dresser is 900 wide.').found()).toHaveLength(1);
});
