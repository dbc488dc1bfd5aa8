/** Where one was when the talk stopped, told memo by memo. */
import { expect, test } from 'vitest';
import { whereView } from '../../src/model/where-view.ts';
import { whereSections } from '../../src/reports/where-was-i.ts';
import { ToldStory } from '../kit/told-story.ts';

const where = (story: ToldStory, now: string) => whereView(story.project.rows, now);
const entriesOf = (story: ToldStory, now: string, title: string) =>
  whereSections(where(story, now))
    .find((one) => one.title === title)
    ?.entries.flat() ?? [];

test('what was begun is in the middle until it is told to be done', () => {
  const story = new ToldStory().hearAt(
    '2026-02-03T17:00',
    "We've started tiling the porch floor. Three of the five shutters are hung.",
  );
  expect(entriesOf(story, '2026-03-01', 'In the middle')).toEqual([
    '“Three of the five shutters are hung” (memo 1, 2026-02-03)',
    "“We've started tiling the porch floor.” (memo 1, 2026-02-03)",
  ]);
  story.hearAt('2026-02-05T17:00', 'Tiled the porch floor. That was hard.');
  expect(where(story, '2026-03-01').begun.map(({ gist }) => gist)).toEqual([
    'Three of the five shutters are hung',
  ]);
});

test('what was begun longer than a week before the last talk is no longer in the middle', () => {
  const story = new ToldStory()
    .hearAt('2026-02-03T17:00', "We've started tiling the porch floor.")
    .hearAt('2026-02-20T17:00', 'Swept the porch.');
  expect(where(story, '2026-03-01').begun).toEqual([]);
});

test('a clock with a time from its data sheet is told with its ends; one without is named, and nothing is guessed', () => {
  const story = new ToldStory().hearAt(
    '2026-02-03T14:20',
    'The primer can be recoated after four hours, no later than twelve. First coat of primer went on at two.',
  );
  expect(entriesOf(story, '2026-02-03T15:00:00+01:00', 'Drying and curing')).toContain(
    'At 2026-02-03 18:00, today: primer: the window for the next coat opens (memo 1)',
  );
  expect(entriesOf(story, '2026-02-20T15:00:00+01:00', 'Drying and curing')).toContain(
    'Since 2026-02-04 02:00, 16 days ago: primer: the window for the next coat closed (memo 1)',
  );
  const plain = new ToldStory().hearAt('2026-02-03T14:20', 'Glued up the gate frame at one.');
  expect(entriesOf(plain, '2026-02-20', 'Drying and curing')).toEqual([
    'Glue laid 2026-02-03 13:00 (memo 1): how long it takes was not said, see its data sheet',
  ]);
});

test('hours that a task waits for are told with their end, before it and after', () => {
  const story = new ToldStory().hearAt(
    '2026-02-03T14:00',
    "The glue needs 24 hours to cure. I can't plane the gate until the glue is dry. Glued the gate at two.",
  );
  const [before] = entriesOf(story, '2026-02-03T16:00:00+01:00', 'Drying and curing');
  expect(before).toMatch(/^At 2026-02-04 14:00, in 1 day: /);
  const [past] = entriesOf(story, '2026-02-20T16:00:00+01:00', 'Drying and curing');
  expect(past).toMatch(/^Since 2026-02-04 14:00, 16 days ago: /);
});

test('what was expected is told by date, what is past first, as late', () => {
  const story = new ToldStory().hearAt(
    '2026-02-03T17:00',
    "I've ordered the slates, they come on the 10th of February. The hinges are on order. I need to paint the gate by the 1st of March.",
  );
  const lines = entriesOf(story, '2026-02-20', 'Expected and due');
  expect(lines[0]).toBe(
    'Tuesday 2026-02-10, 10 days ago, nothing said of it since: arrival: slates (memo 1)',
  );
  expect(lines[1]).toMatch(/^Sunday 2026-03-01, in 9 days: to do: .*paint the gate/i);
  expect(lines.at(-1)).toMatch(/^No date: arrival: .*hinges/);
});

test('open clashes stand dearest first, with what to do; settled ones are left out', () => {
  const story = new ToldStory()
    .hearAt('2026-02-03T17:00', 'The hatch is 820 wide, I measured it.')
    .hearAt('2026-02-04T17:00', 'The hatch is 280 wide.');
  const lines = entriesOf(story, '2026-02-20', 'Clashes, dearest first');
  expect(lines[0]).toMatch(/^hatch width 820 mm → 280 mm: a slip is likely \[.*\], 16 days ago$/);
  expect(lines[1]).toMatch(/^next: /);
  const [finding] = story.open();
  story.hand({ kind: 'finding-settled', findingId: finding?.id ?? '', choice: 'keep-old' });
  expect(entriesOf(story, '2026-02-20', 'Clashes, dearest first')).toEqual([]);
});

test('a project without talk, and a day before the first talk, say so', () => {
  expect(where(new ToldStory(), '2026-02-20').lastTalk).toBeUndefined();
  const story = new ToldStory().hearAt('2026-02-03T17:00', 'Swept the porch.');
  expect(where(story, '2026-02-01').lastTalk).toBeUndefined();
  expect(where(story, '2026-02-03').lastTalk).toEqual({
    date: '2026-02-03',
    daysAgo: 0,
    memoIds: ['m1'],
  });
});

test('a task put before another, and then behind it, is behind it', () => {
  const story = new ToldStory()
    .hand({ kind: 'task-added', gist: 'plane the gate' }, { kind: 'task-added', gist: 'sweep the yard' })
    .hand({ kind: 'task-placed', taskId: 's3', before: 's2' });
  const order = () => where(story, '2026-03-01').ready.map(({ id }) => id);
  expect(order()).toEqual(['s3', 's2']);
  story.hand({ kind: 'task-placed', taskId: 's2', before: 's3' });
  expect(order()).toEqual(['s2', 's3']);
});
