/** A gap that is told for each side is half of what the opening leaves. */
import { expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

const told = (words: string) =>
  new ToldStory().hear(`The drawer opening is 450 wide and the drawer is 424 wide. ${words}`);
const stale = (story: ToldStory) =>
  story
    .open()
    .filter(({ kind }) => kind === 'stale')
    .map(({ item, now }) => `${item} ${now.value} ${now.unit}`);

test.each([
  'Opening less the drawer gives 13 each side.',
  'I worked out the gap, opening less the drawer, 13 each side.',
])('"%s" is half of the difference, also when the opening changes', (words) => {
  const story = told(words);
  expect(stale(story)).toEqual([]);
  story.hear('The drawer opening is 454 wide now.');
  expect(story.open().map(({ item, was, now }) => [item, was.value, now.value])).toEqual([
    [expect.stringMatching(/each side/), 13, 15],
  ]);
});

test('all of what is left is the whole difference', () => {
  const story = told('Opening less the drawer gives a gap of 26.').hear(
    'The drawer opening is 454 wide now.',
  );
  expect(story.open().map(({ was, now }) => [was.value, now.value])).toEqual([[26, 30]]);
});
