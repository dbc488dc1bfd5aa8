/** Troubles told as how much something is out, off, over or short; sizes and places that sound alike are none. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;
const troublesOf = (text: string) => readMemo(text, CONTEXT).notes.problems.map(({ quote }) => quote);

describe('out by a little', () => {
  test.each([
    'The rafter is three mil high at the ridge',
    'The frame is two mil off',
    'The post is 4 mil out',
    'The shelf is 3 mil too low',
    'The hole is four mil too big',
    'The trailer is 200 kilos over',
    'The wall is out by 20 mil',
    'The wall bellies out by an inch',
    'The frame is out of square',
    'Two mil short',
    'The rail is 12 mil short',
    "It's 40 out",
    'The wheel that came out is 40 short',
    'The board came out three mil short',
    'The gap is 5 mil too much',
  ])('"%s"', (text) => expect(troublesOf(`${text}.`)).toEqual([text]));
});

describe('a size or a place', () => {
  test.each([
    "It's six foot high.",
    'The door is six foot off.',
    'The post is two metres out from the wall.',
    'The shelf is 900 high.',
    "It's 200 kilos over one axle.",
    'Call it three mil short.',
    'Say three mil over.',
    'The deck is flat.',
    'The pump runs nicely.',
  ])('"%s" is no trouble', (text) => expect(troublesOf(text)).toEqual([]));
});

describe('what a thing says of itself', () => {
  test.each([
    "The box says 13, I laid a tape across it and it's 13 and 3/4",
    "The drawing says 900 but it's 880",
    "It should be 900 and it's 880",
  ])('"%s" is a misfit', (text) => expect(troublesOf(`${text}.`)).toEqual([text]));

  test('and where nothing was measured, what it should be is no misfit', () => {
    expect(troublesOf('It should be 900, and the shop opens at 9.')).toEqual([]);
  });
});

describe('gone wrong', () => {
  test.each([
    "The paint's gone milky",
    "The sealant's gone hard",
    'The varnish dried cloudy',
    'The batten has gone soft',
    "The battery's gone flat",
    'The pump runs terribly',
    'The door is shutting poorly',
    'I managed to crack the tile',
    'They sent me the wrong hinges',
    'I got one short',
  ])('"%s"', (text) => expect(troublesOf(`${text}.`)).toEqual([text]));

  test.each([
    'The sealant went on hard.',
    "I'm going soft.",
    "He's gone brown.",
    'I work badly.',
    'She sings badly.',
    'I managed to lift the tile.',
    'I forgot to say the kettle is on.',
    'I forgot to mention the stove is in.',
    'I forgot to film the joint.',
  ])('"%s" is no trouble', (text) => expect(troublesOf(text)).toEqual([]));
});
