/** A check goes by the air of its own day, and by no other that was told before or since. */
import { expect, test } from 'vitest';
import { checkViews } from '../../../src/model/checks/check-views.ts';
import { ToldStory } from '../../kit/told-story.ts';

const state = (story: ToldStory, name: string, now: string) =>
  checkViews(story.project.rows, ({ check }) => check === name, now).map(({ state: one, inputs }) => [
    one,
    inputs.find(({ name: input }) => input === 'temperature' || input === 'air')?.range?.mid,
  ]);

test('a mix goes by the air of the day that it was mixed on, whatever is told later', () => {
  const story = new ToldStory()
    .hearAt(
      '2026-03-09T19:40',
      "The epoxy's pot life is 25 minutes at 25 degrees. It's 15 degrees in the shop. Mixed the epoxy at ten past seven.",
    )
    .hearAt('2026-04-06T19:00', "It's 28 degrees in the shop.");
  expect(state(story, 'pot life', '2026-04-06T19:00:00+01:00')).toEqual([['told', 15]]);
});

test('air of another day breaks nothing: it is to be measured again', () => {
  const story = new ToldStory().hearAt(
    '2026-03-09T19:40',
    "It's eighteen degrees in the shed and seventy percent humidity, the steel is at fourteen degrees.",
  );
  expect(state(story, 'dew point', '2026-03-09T20:00:00+01:00')).toEqual([['broken', 18]]);
  story.hand({
    kind: 'check-added',
    check: 'product temperature',
    inputs: [{ input: 'least', expression: '20 degC' }],
  });
  expect(state(story, 'product temperature', '2026-03-09T20:00:00+01:00')).toEqual([['broken', 18]]);
  expect(state(story, 'product temperature', '2026-03-20T20:00:00+01:00')).toEqual([['stale', 18]]);
});
