/** Snags that are found, run out of or done by mischance, and talk that only sounds like them. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const read = (text: string) =>
  readMemo(text, { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' }).notes;

describe('a snag, and no work finished', () => {
  test.each([
    [
      "Pulled the awning rail and found the corner stud's gone to powder.",
      "found the corner stud's gone to powder",
    ],
    ['Found the cross members are swiss cheese.', 'Found the cross members are swiss cheese'],
    ["Something's not quite right with the feed pump.", "Something's not quite right with the feed pump"],
    ['Ran out of foam tape.', 'Ran out of foam tape'],
    ['Run out of staples halfway up the second side.', 'Run out of staples halfway up the second side'],
    ["We're clean out of hemp.", "We're clean out of hemp"],
    ['Steamed ten and broke four of them.', 'broke four of them'],
    [
      'Blew a tyre on the trailer coming back from the mill.',
      'Blew a tyre on the trailer coming back from the mill',
    ],
    ["The stock's got a shake in it, eight foot from the poll end.", "The stock's got a shake in it"],
    ["Wall's 620 thick there and it bellies out by 90.", 'it bellies out by 90'],
    ["Chimney's drawing badly.", "Chimney's drawing badly"],
    [
      'The sole bar on the door side has gone at the pillar.',
      'The sole bar on the door side has gone at the pillar',
    ],
    ["I jacked the beam back up, but it's not gonna last.", "it's not gonna last"],
  ])('"%s"', (text, quote) => {
    const { problems, done } = read(text);
    expect(problems.map((each) => each.quote)).toEqual([quote]);
    expect(done.map((each) => each.quote)).not.toContain(quote);
  });
});

test.each([
  "I ran out of time so that's it.",
  'Snapped a chalk line down it.',
  'Found a lovely bit of oak in the yard.',
  'Roof plate for the flue has a nine inch hole in it.',
])('"%s" is no snag', (text) => {
  expect(read(text).problems).toEqual([]);
});

test.each([
  ['Still to do: bed the glass, and the lamp wants rewiring.', ['Bed the glass', 'The lamp wants rewiring']],
  ["The fuse holder's cracked so no fuse yet.", []],
  ["The pinblock's cracked, so there's no point carrying on till that's out.", []],
])('"%s" leaves %j to do', (text, tasks) => {
  expect(read(text).tasks.map(({ gist }) => gist)).toEqual(tasks);
});

test.each([
  ['The frames came in from the mill this morning.', ['frames']],
  // Somebody who comes brings nothing by that.
  ["Ran the new feed out to the dock. Inspector's coming Thursday.", []],
  ['I lifted the flags. Yer man with the digger is coming Monday.', []],
  ['The electrician is coming back on Tuesday for a look.', []],
  ["The plumber's bringing the boiler Friday.", ['boiler']],
  ['Kelson bolts. Ordered new ones in bronze, three weeks.', ['kelson bolts']],
  ['Shed slab got poured this arvo. Keep it wet for a week.', []],
])('"%s" brings %j', (text, items) => {
  expect(read(text).arrivals.map(({ item }) => item)).toEqual(items);
});

test('a reading comes back where the one that it yielded to falls', () => {
  expect(read('Swapped it for a ten amp and it held.').done.map(({ quote }) => quote)).toEqual([
    'Swapped it for a ten amp',
  ]);
});

test('room that there must be is no job, and what was to be is no measure', () => {
  expect(read("Need 450 to the bulkhead by the book, I've 380.").tasks).toEqual([]);
  const { figures } = read("The post's in the ground 600. It was to be 750 but I hit rock.");
  expect(figures.map(({ value, state }) => `${value} ${state}`)).toEqual(['600 made', '750 target']);
});

test('what is left over is no foliage', () => {
  const { figures } = read("Limecrete's at 300, leaves me 50 shy.");
  expect(figures.map(({ item }) => item)).toEqual(['limecrete', 'limecrete']);
});

test.each([
  ['The trestle has a broken leg.', 1],
  ['The ladder has two cracked rungs.', 1],
  ['Tom has a broken leg.', 0],
  ['My sister has a broken leg.', 0],
  ['The trestle has a new leg.', 0],
])('snags in "%s": %i', (text, many) => {
  expect(read(text).problems).toHaveLength(many);
});
