/** Jobs for fair weather, things looked for, others' time, and words of mixing, age and use that sound like notes. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const notesOf = (text: string) =>
  readMemo(text, { units: 'metric', region: 'GB', recordedAt: '2026-06-10T12:00:00+01:00' }).notes;
const tasks = (text: string) =>
  notesOf(text).tasks.map(({ gist, due }) => (due ? `${gist} by ${due}` : gist));

describe('a job that only the weather may put off', () => {
  test.each([
    ["If it's dry tomorrow I'm pointing the chimney.", ['Point the chimney by 2026-06-11']],
    ["If the rain holds off I'll get the battens on.", ['Get the battens on']],
    ["If it's fine on Saturday we're going to lift the mast.", ['Lift the mast by 2026-06-13']],
    // Nothing to build, no fair weather, no job.
    ["If it's dry tomorrow we're going sailing.", []],
    ["If it's sunny I'll film it.", []],
    ['If it rains tomorrow the roof leaks.', []],
    ["If I had a bigger saw I'd be ripping the keelson.", []],
  ])('%s', (text, told) => expect(tasks(text)).toEqual(told));
});

describe('what is looked for', () => {
  test.each([
    ["I'm after a decent leg vice.", ['Get a decent leg vice']],
    ["We're after two more lengths of angle.", ['Get two more lengths of angle']],
    ["I'm after a while in the sun.", []],
    ["I'm looking for a way to hold it.", []],
  ])('%s', (text, told) => expect(tasks(text)).toEqual(told));

  test('what somebody is after breaking is broken', () => {
    expect(notesOf("I'm after snapping the tap in the block.").problems).toHaveLength(1);
    expect(notesOf("I'm after oiling the block.").problems).toEqual([]);
  });
});

test.each([
  ["They can't pour till the week after next.", []],
  ["The mason can't start till August.", []],
  ["I can't pour till Thursday.", ['Pour till Thursday by 2026-06-11']],
])("others' time is no work of one's own: %s", (text, told) => expect(tasks(text)).toEqual(told));

describe('words of mixing', () => {
  const clocks = (text: string) => notesOf(text).records.filter(({ kind }) => kind === 'clock').length;
  test.each([
    ['I mixed the epoxy at two.', 1],
    ["I've mixed feelings about the epoxy.", 0],
    ['Sean mixed his own epoxy.', 0],
    ["The plaster's lovely. It's down and fixed.", 0],
    ["The primer's lovely. It's on.", 1],
  ])('%s', (text, count) => expect(clocks(text)).toBe(count));

  test('mixed feelings and what came in handy are no work done', () => {
    expect(notesOf("I've mixed feelings about the epoxy.").done).toEqual([]);
    expect(notesOf('The old chain hoist came in handy.').done).toEqual([]);
  });
});

test.each([
  ['The range is three weeks old.', 0],
  ["The range came, it's three weeks old.", 1],
])('how old a thing is tells of no delivery: %s', (text, count) =>
  expect(notesOf(text).arrivals).toHaveLength(count),
);

test('a day is no goods: those that were asked for before are', () => {
  expect(notesOf('I rang about the hinges. Blacksmith said end of the month.').arrivals[0]?.item).toBe(
    'hinges',
  );
});
