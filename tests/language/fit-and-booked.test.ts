/** Orders that begin with "fit", other people's time, and deeds told beside what has not come yet. */
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const read = (text: string, region = 'GB') =>
  readMemo(text, { units: 'metric', region, recordedAt: '2026-06-10T18:00:00+01:00' }).notes;

test.each([
  'Fit the tiller before the pintles.',
  'Fit the tiller.',
  'Order the glass. Fit the tiller before the pintles.',
])('"%s" orders one thing of oneself', (text) => {
  expect(read(text).tasks.at(-1)?.gist).toBe('Fit the tiller');
  expect(read(text).done).toEqual([]);
});

test.each([
  ['I went over there and fit the boards.', 'US', ['Fit the boards']],
  ['We fit the boards this morning.', 'GB', ['Fit the boards this morning']],
  [
    'Long day. Hung both doors, fitted the stops, no glass yet.',
    'GB',
    ['Hung both doors', 'Fitted the stops'],
  ],
])('"%s" in %s tells what was done', (text, region, done) => {
  expect(read(text, region).tasks).toEqual([]);
  expect(read(text, region).decisions).toEqual([]);
  expect(read(text, region).done.map(({ gist }) => gist)).toEqual(done);
});

test('a thing that another comes before is no job of its own', () => {
  const { tasks } = read('To do. Fit the tiller before the pintles. Oil the hinges.');
  expect(tasks.map(({ gist }) => gist)).toEqual(['Fit the tiller', 'Oil the hinges']);
});

test.each([
  "Can't take it till the 20th.",
  "The glazier can't take it till the 20th.",
  "They can't do it till Monday.",
  "The yard can't lift us till the 20th.",
])('"%s" tells of other people\'s time: nothing comes, and nothing is to do', (text) => {
  const { tasks, arrivals } = read(text);
  expect([...tasks, ...arrivals]).toEqual([]);
});

test.each([
  ["I can't weld it till the tank's out.", 'tasks'],
  ['The glazier ordered the glass, it should be here on the 20th.', 'arrivals'],
] as const)('"%s" still has its %s', (text, kind) => {
  expect(read(text)[kind]).toHaveLength(1);
});
