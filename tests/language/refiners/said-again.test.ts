import { expect, test } from 'vitest';
import { readMemo } from '../../../src/language/pipeline.ts';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['The lime wants seven days between coats, seven, and no more talk', '7 d'],
  ['It is a thirty litre urn, thirty, three nought', '30 L'],
  ['The piers are four fifty, four five oh, so write it down', '450 mm'],
  ['The sill comes down on 88, 88 centimetres', '88 cm'],
  ['The cistern goes to ten thousand, ten thousand litres', '10000 L'],
  ['The wheel is a seven inch wheel, seven inch, off a barrow', '7 in'],
  ['The treads are 38, aye, 38', '38 mm'],
  ['The flue is 150, I said, 150', '150 mm'],
])('"%s" says one number over: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['The cupboards are 600, 600, 450', '600 mm; 600 mm; 450 mm'],
  ['It is 300 wide, 300 high', '300 mm; 300 mm'],
  ['The hatch is 600 by 600', '600 mm; 600 mm'],
  ["The rail's 38 and the post's 38", '38 mm; 38 mm'],
  ['The fuse is 100 amps, the next one 150', '100 A; 150 A'],
])('"%s" tells each: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

const figuresOf = (text: string) =>
  readMemo(text, {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-03-07T18:40:00+00:00',
  }).notes.figures.map(({ value, unit }) => `${value} ${unit}`);

test.each([
  ['The gap is 5 mil each side. Same five a side on the drawer, so 490.', '5 mm; 490 mm'],
  [
    'I left 12 each end of the shelf. With the same twelve either side the door comes to 640.',
    '12 mm; 640 mm',
  ],
  ['Use the same 18 mil ply as the floor.', '18 mm'],
  ['The legs are 45. Same 45 on the rails.', '45 mm; 45 mm'],
])('"%s" tells an allowance once: %s', (said, figures) => {
  expect(figuresOf(said).join('; ')).toBe(figures);
});

test.each([
  ['The yard said 310, I said 260, we settled on 290.', '290 GBP'],
  ['He wanted 90 for the slates, I offered him 60, and we shook on 75.', '75 GBP'],
  ['The plan says 310. I said 260 to the mason and cut it at 260.', '310 mm; 260 mm; 260 mm'],
  ['We settled on 290 for the shelf.', '290 mm'],
])('"%s": of what was haggled over the last is the price: %s', (said, figures) => {
  expect(figuresOf(said).join('; ')).toBe(figures);
});
