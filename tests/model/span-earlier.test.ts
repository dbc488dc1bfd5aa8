/** What a span of days points back to, and how the time before it left things. */
import { expect, test } from 'vitest';
import { daysWithTalk, spanView } from '../../src/model/day-views.ts';
import { readOnce } from '../kit/read-once.ts';
import { ToldStory } from '../kit/told-story.ts';

const story = () =>
  new ToldStory().hear(
    'The bench top is 900 high. I promise I will show you the hoist. I need to order the oak. The door sticks.',
    'I ordered the oak. I have to sand the frame.',
    'The bench top is 915 high now. I showed you the hoist, as promised.',
    'The door does not stick any more.',
  );

test('days with talk come in order, each once', () => {
  const told = story().hearAt('2026-02-04T19:30', 'The shelf is 300 deep.');
  expect(daysWithTalk(told.project.rows)).toEqual(['2026-02-01', '2026-02-02', '2026-02-03', '2026-02-04']);
});

test('a span holds its own days, and the day before it as it ended', () => {
  const span = spanView(story().project.rows, '2026-02-03', '2026-02-05');
  expect(span.days.map(({ date }) => date)).toEqual(['2026-02-03', '2026-02-04']);
  expect(span.last?.date).toBe('2026-02-02');
  expect(span.last?.done.map(({ gist }) => gist)).toEqual([expect.stringMatching(/oak/i)]);
  expect(span.last?.ready.map(({ gist }) => gist)).toEqual([expect.stringMatching(/sand the frame/i)]);
  expect(span.last?.waiting).toEqual([]);
  expect(spanView(story().project.rows, '2026-02-01', '2026-02-05').last).toBeUndefined();
});

test('promises made until its end are there, later ones are not', () => {
  const { rows } = story().hear('I promise you the kiln.').project;
  const made = (to: string) => spanView(rows, '2026-02-01', to).promises.map(({ gist }) => gist);
  expect(made('2026-02-04')).toHaveLength(1);
  expect(made('2026-02-05')).toHaveLength(2);
});

test('snags are those told in the span, with what put them right later', () => {
  const { rows } = story().project;
  const first = spanView(rows, '2026-02-01', '2026-02-01').problems;
  expect(first?.map(({ gist, status }) => [gist, status])).toEqual([
    [expect.stringMatching(/door/i), 'solved'],
  ]);
  expect(spanView(rows, '2026-02-02', '2026-02-05').problems).toEqual([]);
});

test('recordings before the span that its days point back to are named, texts are not', () => {
  const told = new ToldStory();
  const recordedAt = '2026-01-30T17:00:00+01:00';
  const text = 'The bench top is 900 high. The shelf is 300 deep.';
  const source = { name: 'm0.wav', kind: 'recording', sha256: 'x', bytes: 1 } as const;
  told
    .hand(
      { kind: 'recording-kept', memoId: 'm0', source, file: 'm0.wav', recordedAt, recordedAtFrom: 'given' },
      { kind: 'transcript-made', memoId: 'm0', transcript: { text } },
      {
        kind: 'notes-read',
        memoId: 'm0',
        notes: readOnce(text, { units: 'metric', recordedAt }).notes,
        reader: 'test',
      },
    )
    .hear('The door is 740 wide.', 'The bench top is 915 high now.', 'The door is 750 wide now.');
  const earlier = (from: string) => spanView(told.project.rows, from, '2026-02-05').earlier;
  expect(earlier('2026-02-02')).toEqual({ m0: source });
  expect(earlier('2026-02-03')).toEqual({});
});
