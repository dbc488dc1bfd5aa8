import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ["it's 5 25 wide", '525 mm'],
  ['the panes are 600 by 4 50', '600 mm; 450 mm'],
  ["it's 18 18 at floor level", '1818 mm'],
  ["the gap's 9 0 5 high", '905 mm'],
  ['eleven 90 wide', '1190 mm'],
  ['the hatch is 9:05 wide', '905 mm'],
  ['the rail is 4:06 between the posts', '406 mm'],
  ['hundred mil ball', '100 mm'],
  ['the hundred and eighteen litre tank is in', '118 L'],
  ['a couple of hundred mil off the floor', '200 mm about'],
  ['a gap of .5 mm', '0.5 mm'],
  ["it's six mills thick", '6 mm'],
  ["it's six milli meters thick", '6 mm'],
  ['twelve centi metres wide', '12 cm'],
  ['thirty linear metres of skirting', '30 m'],
  ['a hundredweight of sand', '112 lb'],
])('"%s" says %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["I've got 5 25 mil boards to plane", '25 mm'],
  ['two twelve volt batteries', '12 V'],
  ['the three forty mil gap', '340 mm'],
  ["it's five twenty five mil", '525 mm'],
])('"%s" keeps the count apart from the size: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['forty-odd mil thick', '40 mm about'],
  ['about forty-ish mil thick', '40 mm about'],
  ['sixty odd kilos', '60 kg about'],
])('"%s" is only about that: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['forty odd boards'],
  ['a few hundred litres'],
  ["there's a hundred of them"],
  ['half a dozen hinges'],
  ['two keys on a ring'],
  ['two horses and a plank'],
  ['two cups of tea'],
])('"%s" states no figure', (said) => {
  expect(figuresSaid(said)).toBe('none');
});

test.each([
  ["it's 300 in 6 mil plate", '300 mm; 6 mm'],
  ["it's 24 in wide", '24 in'],
  ['drill it at 12 in from the end', '12 in'],
])('"%s": "in" is a unit only where one can stand', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['a tank of 1.200 litre', '1200 L'],
  ['it is 1.200 long', '1200 mm'],
  ['2.440 mm by 1.220 mm', '2440 mm; 1220 mm'],
  ['it is 2,125 metre long', '2.125 m'],
  ['it weighs 18,5 kilo', '18.5 kg'],
  ['it is 2 komma 5 metre long', '2.5 m'],
])('"%s" in a house of decimal commas says %s', (said, figures) => {
  expect(figuresSaid(said, 'metric', 'NL')).toBe(figures);
});

test.each([
  ['The hinges are seventy fives, three a door.', '75 mm'],
  ['I got forty fives for the rails.', '45 mm'],
  ['Bought four seventy fives for the door.', '75 mm'],
  ['In the seventies it was a chapel.', 'none'],
])('"%s": two words of a size said as a thing: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
