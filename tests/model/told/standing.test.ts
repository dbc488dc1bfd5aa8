/** Which claim stands, where tolerances come from, what hangs on a figure, and what is asked of a day. */
import { expect, test } from 'vitest';
import { nextView } from '../../../src/model/day-views.ts';
import { standingFigures } from '../../../src/model/project-views.ts';
import { ToldStory } from '../../kit/told-story.ts';

const ruleOf = (story: ToldStory, item: string) => standingFigures(story.project.rows, item)[0]?.rule;

test('the first word of a thing stands', () => {
  expect(ruleOf(new ToldStory().hear('The shelf is 300 millimetres deep.'), 'shelf')).toBe('first said');
});

test('a measured value beats an assumed one that agrees with it', () => {
  const story = new ToldStory().hear(
    'The shelf is about 300 millimetres deep.',
    'I measured the shelf, it is 302 millimetres deep.',
  );
  expect(story.found()).toEqual([]);
  expect(story.figures()).toEqual(['shelf depth 302 mm']);
  expect(ruleOf(story, 'shelf')).toMatch(/^measured beats|^said again, more exactly$/);
});

test.each([
  [
    'The counter is 910 millimetres high.',
    "Counter's coming up to 940 millimetres after all, my back says so.",
  ],
  [
    'The counter is 910 millimetres high.',
    "I've decided the counter goes up to about 940 millimetres instead.",
  ],
  [
    'The rail is 1000 millimetres long.',
    "I changed my mind, I'm making the rail roughly 1030 millimetres long.",
  ],
])('a change is no agreement, however roughly it is said: %s %s', (before, after) => {
  const [finding, ...more] = new ToldStory().hear(before, after).findings();
  expect([finding?.kind, more]).toEqual(['decided', []]);
});

test('a rough word about what stands is an agreement still', () => {
  const story = new ToldStory().hear(
    'The counter is 910 millimetres high.',
    'The counter is still about 930 millimetres high.',
  );
  expect(story.found()).toEqual([]);
});

test('what is said more exactly is held to its own fineness from then on', () => {
  const story = new ToldStory().hear(
    'The counter is about 940 millimetres high.',
    'I measured the counter, it is 938 millimetres high.',
    'I measured the counter again, it is 958 millimetres high.',
  );
  expect(story.found()).toHaveLength(1);
});

test('a figure set by hand stands until something is said of it', () => {
  const story = new ToldStory().hear('The shelf is 300 millimetres deep.').set('shelf', 'depth', 320);
  expect([story.figures(), ruleOf(story, 'shelf')]).toEqual([['shelf depth 320 mm'], 'set by hand']);
});

test.each([
  [
    'said with the figure',
    'The shelf is 300 millimetres deep give or take 4 millimetres.',
    undefined,
    { value: 4, from: 'said' },
  ],
  ['set for the project', 'The shelf is 300 millimetres deep.', 6, { value: 6, from: 'project' }],
  [
    'from how finely it was said',
    'The shelf is 600 millimetres deep.',
    undefined,
    { value: 1.5, from: 'precision' },
  ],
  [
    'never under a millimetre',
    'The shelf is 20 millimetres thick.',
    undefined,
    { value: 1, from: 'precision' },
  ],
] as const)('a tolerance %s', (_name, talk, project, tolerance) => {
  const story = new ToldStory();
  if (project !== undefined)
    story.hand({ kind: 'tolerance-set', dimension: 'length', quantity: { value: project, unit: 'mm' } });
  story.hear(talk);
  expect(standingFigures(story.project.rows, 'shelf')[0]?.tolerance).toMatchObject(tolerance);
});

test('what was ordered and made on the old size is listed, the order first', () => {
  const story = new ToldStory().hear(
    'The bench top is 2400 millimetres long.',
    'I cut the bench top battens today. I ordered the bench top from the sawmill.',
    'Change of plan, the bench top is now 2600 millimetres long.',
  );
  const [changed] = story.open();
  expect(changed).toMatchObject({ kind: 'decided', was: { value: 2400 }, now: { value: 2600 } });
  expect(changed?.consequences.map(({ act }) => act)).toEqual(['ordered', 'made']);
});

test('a change that nothing hangs on is settled by the word that made it', () => {
  const story = new ToldStory().hear(
    'The shelf is 300 millimetres deep.',
    'Change of plan, the shelf is now 350 millimetres deep.',
  );
  expect(story.findings()[0]).toMatchObject({ status: 'settled', settledBy: { choice: 'take-new' } });
});

test('at most five questions a day, the dearest first', () => {
  const things = ['rail', 'shelf', 'hatch', 'bunk', 'locker', 'table', 'step'];
  const story = new ToldStory().hear(
    things.map((thing) => `The ${thing} is 50 millimetres thick.`).join(' '),
    `I ordered the bunk today.`,
    things.map((thing) => `The ${thing} is 15 millimetres thick.`).join(' '),
  );
  const { questions } = nextView(story.project.rows, '2026-02-04T08:00:00+01:00');
  expect(story.open().length).toBe(things.length);
  expect(questions.length).toBe(5);
  expect(questions[0]).toMatchObject({ item: 'bunk', kind: 'slip' });
  const costs = questions.map(({ cost }) => cost);
  expect(costs).toEqual([...costs].sort((a, b) => b - a));
});

test('what is said again agrees with what stands; what was said before it changed is superseded', () => {
  const history = (...memos: readonly string[]) =>
    standingFigures(new ToldStory().hear(...memos).project.rows, 'shelf')[0]?.history.map(
      ({ value, status }) => `${value} ${status}`,
    );
  expect(history('The shelf is 704 long.', 'The shelf is 704 long.')).toEqual(['704 standing', '704 agrees']);
  expect(
    history('The shelf is 740 long.', 'Change of plan, the shelf is now 704 long.', 'The shelf is 704 long.'),
  ).toEqual(['740 superseded', '704 standing', '704 agrees']);
});
