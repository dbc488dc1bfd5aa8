/** Readings that change by themselves, beside sizes that clash. */
import { expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

test.each([
  [
    'a pressure that is read just now',
    'The gas line pressure is showing 1.2 bar right now.',
    'The gas line pressure is showing 3.5 bar right now.',
    'gas line pressure 3.5 bar (series)',
  ],
  [
    'a voltage that is read just now',
    'The battery voltage is 12.6 volts right now.',
    'The battery voltage is 11.9 volts right now.',
    'battery voltage 11.9 V (series)',
  ],
])('%s is a reading: the latest stands and nothing clashes', (_, first, second, figure) => {
  const story = new ToldStory().hear(first, second);
  expect(story.found()).toEqual([]);
  expect(story.figures()).toEqual([figure]);
});

test('a pressure without a word of when is a figure like any other', () => {
  const story = new ToldStory().hear('The tyre pressure is 2.5 bar.', 'The tyre pressure is 3.5 bar.');
  expect(story.found()).toEqual(['remeasured: tyre pressure 2.5 bar -> 3.5 bar']);
});

test('a size read just now is no series: it changes by somebody', () => {
  const story = new ToldStory().hear('The door is 1981 high right now.', 'The door is 1975 high right now.');
  expect(story.found()).toEqual(['remeasured: door height 1981 mm -> 1975 mm']);
});
