/** The reason that stands beside a clash. */
import { expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

test.each([
  ['The door is 1981 high.', 'Measured the door, it is 1975 high.', 'remeasured', 'it was measured anew'],
  ['The panel is 600 wide.', 'The panel is 637 wide.', 'remeasured', 'the later figure was measured'],
  [
    'The bed has to be at least 1900 long.',
    'The bed is 1880 long, damn, that is too short.',
    'limit',
    'it is under the stated limit',
  ],
  [
    'The trailer takes at most 750 kilos.',
    'The trailer is at 7500 kilos.',
    'slip',
    'a factor of ten: a lost point or nought, or millimetres for centimetres, and nothing was said of a change',
  ],
  [
    'The lift is rated for at most 10 tonnes.',
    'The lift will carry 100 tonnes.',
    'slip',
    'a factor of ten: a lost point or nought, or millimetres for centimetres, and nothing was said of a change',
  ],
])('"%s" then "%s": %s', (first, second, kind, why) => {
  const story = new ToldStory().hear(first, second);
  expect(story.findings().map((finding) => [finding.kind, finding.why])).toEqual([[kind, why]]);
});

test('three times past a limit is another measure of the thing, and no breach', () => {
  const story = new ToldStory().hear('The gap must be at most 15 millimetres.', 'The gap is 50 millimetres.');
  expect(story.found()).toEqual([]);
});

test('tasks that wait for each other are a clash until one is done, and one anew when it is opened again', () => {
  const story = new ToldStory().hear(
    "I can't paint the hull until the deck is sanded. I need to sand the deck, but only after the hull is painted.",
  );
  expect(story.open().map(({ why }) => why)).toEqual([
    'each waits for the next: "Paint the hull", "Sand the deck", "Paint the hull"',
  ]);
  story.hand({ kind: 'task-closed', taskId: 'm1.t2' });
  expect(story.open()).toEqual([]);
  expect(story.tasks(28)).toContain('ready Paint the hull [m1.t1]');
  story.hand({ kind: 'task-reopened', taskId: 'm1.t2' });
  expect(story.findings().map(({ kind, status }) => `${status} ${kind}`)).toEqual([
    'settled task-cycle',
    'open task-cycle',
  ]);
});
