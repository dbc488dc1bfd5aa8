/** What was to be done before a wall is closed, and was not. */
import { expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

const SOCKETS = 'Need to put the sockets in before the boarding.';
const overtaken = (story: ToldStory, day: number) =>
  story.tasksOn(day).map(({ gist, overtakenBy }) => [gist, overtakenBy?.memoId]);

test.each([
  [SOCKETS, 'Boarded the back wall.'],
  [SOCKETS, 'The boarding is done.'],
  ['I need to photograph the pipes before the floor goes down.', 'The floor is down.'],
])('%s %s', (task, deed) => {
  const story = new ToldStory().hear(task, deed);
  expect(overtaken(story, 2).map(([, by]) => by)).toEqual(['m2']);
});

test('what is done in time is overtaken by nothing', () => {
  const story = new ToldStory().hear(SOCKETS, 'Put the sockets in.', 'Boarded the back wall.');
  expect(overtaken(story, 3)).toEqual([['Put the sockets in', undefined]]);
});

test('work on something else overtakes nothing', () => {
  const story = new ToldStory().hear(SOCKETS, 'Painted the back wall.');
  expect(overtaken(story, 2)).toEqual([['Put the sockets in', undefined]]);
});

test('it is told until it is done', () => {
  const story = new ToldStory().hear(SOCKETS, 'Boarded the back wall.', 'Put the sockets in.');
  expect(overtaken(story, 3)).toEqual([['Put the sockets in', undefined]]);
});
