/** What was to be done before a wall is closed, and was not. */
import { expect, test } from 'vitest';
import { dayView } from '../../../src/model/day-views.ts';
import { projectInfo } from '../../../src/model/project-views.ts';
import type { DayView } from '../../../src/model/views.ts';
import { journalPage } from '../../../src/reports/journal.ts';
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

test.each([
  ['Cut the bunk base at 640.', undefined],
  ['The foam was cut this morning.', 'm2'],
])('before they cut it: of the foam, and not of whatever is cut: %s', (deed, by) => {
  const story = new ToldStory().hear('Need to ring the foam place before they cut it.', deed);
  expect(overtaken(story, 2).map(([, memoId]) => memoId)).toEqual([by]);
});

test('it is told until it is done', () => {
  const story = new ToldStory().hear(SOCKETS, 'Boarded the back wall.', 'Put the sockets in.');
  expect(overtaken(story, 3)).toEqual([['Put the sockets in', undefined]]);
});

test('the journal tells it of the day it happened on, and of no day before', () => {
  const { rows } = new ToldStory().hear(SOCKETS, 'Painted the door.', 'Boarded the back wall.').project;
  const page = (date: string) => journalPage(dayView(rows, date) as DayView, projectInfo(rows));
  const line = 'to be done before: the boarding, which was said to be done first (memo 3)';
  expect(page('2026-02-03')).toContain(line);
  for (const earlier of ['2026-02-01', '2026-02-02']) {
    expect(page(earlier)).toContain('Put the sockets in');
    expect(page(earlier)).not.toContain('said to be done first');
  }
});
