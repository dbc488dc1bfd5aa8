/** Which words keep a promise, and which only make one more. */
import { expect, test } from 'vitest';
import { promiseViews } from '../../../src/model/project-views.ts';
import { ToldStory } from '../../kit/told-story.ts';

const PROMISED = 'I will show you the moisture meter next week.';
const promises = (story: ToldStory) =>
  promiseViews(story.project.rows).map(({ gist, status }) => `${status} ${gist}`);

test('the deed told as past keeps the promise of that thing, and no other', () => {
  const story = new ToldStory().hear(PROMISED, 'I will show you round the shed later.');
  story.hear('Showed you the moisture meter today.');
  expect(promises(story)).toEqual([
    'kept Show you the moisture meter next week',
    'open Show you round the shed later',
  ]);
});

test.each([
  "We'll show you the moisture meter soon.",
  'Need to show you the moisture meter.',
  'I am going to show you the moisture meter.',
  'Showed you the spokeshave today.',
])('"%s" keeps nothing', (said) => {
  expect(promises(new ToldStory().hear(PROMISED, said))[0]).toBe(
    'open Show you the moisture meter next week',
  );
});

test('one sentence keeps a promise and makes the next', () => {
  const story = new ToldStory().hear(
    PROMISED,
    "I did show you the moisture meter, so that's one promise kept, and I'll show you the first cut.",
  );
  expect(promises(story)).toEqual([
    'kept Show you the moisture meter next week',
    'open Show you the first cut',
  ]);
});
