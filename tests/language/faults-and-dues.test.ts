/** Faulty things told by their number, what falls due, goods that reach the site, and talk that is no deed and no choice. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const notesOf = (text: string) =>
  readMemo(text, { units: 'metric', region: 'GB', recordedAt: '2026-06-10T12:00:00+01:00' }).notes;

describe('a snag, and no work done', () => {
  test.each([
    'Three of the panes are cracked.',
    'Six sheets turned up dented.',
    'The brackets are welded wrong.',
    'The knee on frame two is checked bad.',
    "I'm not happy with the fill pipe.",
    'The Y axis has a dead spot in the middle.',
    "One pane's got a busted corner.",
    'The pintles are shot.',
  ])('%s', (text) => {
    const { problems, done } = notesOf(text);
    expect(problems).toHaveLength(1);
    expect(done).toEqual([]);
  });
  test.each([
    'Three of the panes are fitted.',
    'The brackets are welded.',
    "I'm happy with the fill pipe.",
    "I'm not happy with the video.",
    'The scarf came out beautiful.',
    "The frame's got a new corner.",
  ])('none: %s', (text) => expect(notesOf(text).problems).toEqual([]));
});

test.each([
  ['Knocked off early.', 0],
  ['Knocked off the old render.', 1],
])('%s', (text, count) => expect(notesOf(text).done).toHaveLength(count));

test('what falls due is paid, and brings nothing', () => {
  const fee = notesOf("The mooring fee's due by the end of the month.");
  expect(fee.tasks.map(({ due }) => due)).toEqual(['2026-06-30']);
  expect(fee.arrivals).toEqual([]);
  const sand = notesOf("The sand's due by the end of the month.");
  expect(sand.tasks).toEqual([]);
  expect(sand.arrivals).toHaveLength(1);
});

test.each([
  ['Tiles, 600 by 600, reached site yesterday.', 'tiles', true],
  ['The lintel is oak, ordered from the mill.', 'lintel', false],
])('%s', (text, item, received) =>
  expect(notesOf(text).arrivals.map((each) => [each.item, each.received])).toEqual([[item, received]]),
);

test.each([
  ['No coal, no slates.', 0],
  ["The lintel is oak, ordered from the mill, six weeks they said, so that'll be mid July.", 0],
  ['No porch, just steps.', 1],
])('choices in "%s"', (text, count) => expect(notesOf(text).decisions).toHaveLength(count));

test('a day that was named before is the day "by then"', () => {
  expect(notesOf("The raising's on Saturday so the pegs have to be turned by then.").tasks.at(-1)?.due).toBe(
    '2026-06-13',
  );
});

test('nobody decides the weather', () => {
  expect(notesOf('It went down to minus two last night.').figures[0]?.state).toBe('measured');
});

test('the thing that a clause begins with is what its own "it" stands for', () => {
  const [crack] = notesOf("Mounts are the soft ones. The bell housing's got a crack in it.").problems;
  expect(crack?.gist).toBe("The bell housing's got a crack in it");
});

test('square millimetres said short', () => {
  expect(notesOf('The socket cable is 2.5 sq mm.').figures.map(({ unit }) => unit)).toEqual(['mm2']);
});

test.each([
  ["Not sending it back, can't be bothered.", []],
  ["She's smoking, so that's rings or valve seals.", []],
  ['First coat tomorrow.', ['First coat']],
  ['First I have to sand the door.', ['Sand the door']],
  ["The rafter's at 38. I'll notch the rafter and header it off.", ['Notch the rafter and header it off']],
])('jobs in "%s"', (text, gists) => expect(notesOf(text).tasks.map(({ gist }) => gist)).toEqual(gists));

test.each([
  ['Slab casting is on Sunday.', 0],
  ['Going up Saturday with the trailer.', 0],
  ["The video's going up Saturday.", 1],
])('promises in "%s"', (text, count) => expect(notesOf(text).promises).toHaveLength(count));

test('somebody who looks at it brings nothing', () => {
  expect(notesOf('Rang the welder, he can look at it Tuesday.').arrivals).toEqual([]);
});

test('what a cylinder is pressed to is a pressure', () => {
  const told = (text: string) => notesOf(text).figures.map(({ value, unit }) => `${value} ${unit}`);
  expect(told('Compression on the back one is 240.')).toEqual(['240 psi']);
  expect(told('Compression is 12 on all three.')).toEqual(['12 bar']);
});
