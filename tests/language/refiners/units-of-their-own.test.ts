/** Bare numbers that take the unit of their own thing, and not of what was told beside them or before. */
import { expect, test } from 'vitest';
import { readMemo } from '../../../src/language/pipeline.ts';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ["The barn's twelve point four long and five six wide", '12.4 m; 5.6 m'],
  [
    'The box inside is 2.28 across, four fifteen long, and two point three to the roof',
    '2.28 m; 4.15 m; 2.3 m',
  ],
  ["The body's six point one long and two oh eight wide", '6.1 m; 2.08 m'],
  ["The drawer's four fifteen long and three twenty wide", '415 mm; 320 mm'],
  ["The room is 2.4 metres high, and the shelf's three fifty deep", '2.4 m; 350 mm'],
])('"%s" tells metres figure by figure only beside metres: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["The skin's one point six ally", '1.6 mm'],
  ["It's 6.4 laminated, ordered", '6.4 mm'],
  ['The zinc is ordered, 1.2 on the roof and point nine down the sides', '1.2 mm; 0.9 mm'],
  ['The tube is 32 outside, 3.25 wall', '32 mm; 3.25 mm'],
  ['The steel is in, 3.2 long, and the door is 1.2 wide', '3.2 m; 1.2 m'],
])('"%s" tells how thick sheet is: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['The electric board put sixty mil tails in', '60 mm2'],
  ["I'm stepping up to fifty mil on the cable", '50 mm2'],
  ['The light table glass went in, ten mil toughened', '10 mm'],
])('"%s": a section only of a cable: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['First portal is up. Thirty eight hundred at the tip, plumb.', '3800 mm'],
  ["I've cut down all those bucket boards, 1,020 now", '1020 mm'],
  ['The lintel goes two hundred into the wall either side', '200 mm'],
  ['Right, fine, 2050 for the bunks', '2050 mm'],
  ['The pulpit is off. Forty in the choir stalls watched.', 'none'],
  ['Two on the roof and one below', 'none'],
])('"%s": a size at the head of its clause: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["The wife asked what it's costing. Three eighty on oak.", '380 GBP'],
  ['The beams are bought and paid for, 2,180 all in', '2180 GBP'],
  ['The felt is priced, three ninety the roll', '390 GBP'],
  ['The pressure test: two forty on the gauge', '240 psi'],
  ['It will sit with one point nine of room behind it', '1.9 m'],
  ["I've 2.52 to walk under now", '2.52 m'],
])('"%s" tells %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

const KNOWN = [
  { item: 'battery', attribute: 'other', value: 200, unit: 'Ah' },
  { item: 'saw', attribute: 'weight', value: 310, unit: 'kg' },
  { item: 'ash ribs', attribute: 'ratio', value: 19, unit: '%' },
  { item: 'partition', attribute: 'width', value: 1950, unit: 'mm' },
] as const;
const after = (text: string) =>
  readMemo(text, {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-03-07T18:40:00+00:00',
    knownFigures: [...KNOWN],
    knownItems: KNOWN.map(({ item }) => item),
  }).notes.figures.map(({ value, unit }) => `${value} ${unit}`);

test.each([
  ['The floor is down, screwed every two hundred.', '200 mm'],
  ["The saw blade's 315.", '315 mm'],
  ['The guard of the saw is getting cut to 280.', '280 mm'],
  ['The ribs are down to seventeen.', '17 %'],
  ['The ribs are planed down to seventeen.', '17 mm'],
  ['The panel has been through the saw, 1934, and it stands.', '1934 mm'],
  ['The saw is 310 still.', '310 kg'],
])('after other figures "%s" tells %s', (said, figures) => {
  expect(after(said).join('; ')).toBe(figures);
});
