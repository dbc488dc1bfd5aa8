/** What was made to another size than the one that stands, without a word about it: the person is asked. */
import { expect, test } from 'vitest';
import { isQuestion } from '../../../src/model/questions.ts';
import { ToldStory } from '../../kit/told-story.ts';

test('a part that is cut to another size is an open question, and its size is what was cut', () => {
  const story = new ToldStory().hear('The bench legs are 840.', 'Cut the bench legs to 870.');
  expect(story.found(story.open())).toEqual(['remeasured: bench legs length 840 mm -> 870 mm']);
  expect(story.open().filter(isQuestion)).toHaveLength(1);
  expect(story.figures('bench legs')).toEqual(['bench legs length 870 mm']);
});

test.each([
  ['a change that was told', 'I decided on longer legs, so I cut the bench legs to 870 instead of 840.'],
  ['a size measured anew', 'I measured the bench legs again, they are 870.'],
  ['the size that was told', 'Cut the bench legs to 840.'],
])('%s is none', (_, said) => {
  expect(new ToldStory().hear('The bench legs are 840.', said).open().filter(isQuestion)).toEqual([]);
});
