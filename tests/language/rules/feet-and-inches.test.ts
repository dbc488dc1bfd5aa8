import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['7 foot 4 tall', '88 in'],
  ['4 foot 2 and 3/8', '50.375 in'],
  ['5 foot 10 and a half wide', '70.5 in'],
  [`11'2" clear`, '134 in'],
  ['five foot nothing', '60 in'],
  ['four foot by eight foot', '4 ft; 8 ft'],
  ['eight feet two boards', '8 ft'],
])('"%s" says %s', (said, figures) => {
  expect(figuresSaid(said, 'us', 'US')).toBe(figures);
});

test.each([
  ["it's twenty-nine six between the walls", '354 in'],
  ['the door is six eight tall', '80 in'],
  ["it's 29 6 wide", '354 in'],
  ['the ceiling is nine eleven', '119 in'],
  ['the shelf is seven fifty wide', '750 in'],
  ['cut four six inch blocks', '6 in'],
])('"%s" where people build in feet and inches says %s', (said, figures) => {
  expect(figuresSaid(said, 'us', 'US')).toBe(figures);
});

test.each([
  ['Add it up. Eleven nine and a half, and that is that.', '141.5 in'],
  ['It shuts. Nine nine and a half, shut.', '117.5 in'],
  ['Thirty-eight and a half. Six ten and a half tall.', '38.5 in; 82.5 in'],
  ['The stringers are in. Thirteen ten long.', '166 in'],
  ["they're eleven six long", '138 in'],
  ['the headroom came out six eleven at the high point', '83 in'],
  ['Two four by fours are left', 'none'],
])('"%s" opens a sentence or ends in a part: %s', (said, figures) => {
  expect(figuresSaid(said, 'us', 'US')).toBe(figures);
});

test.each([
  ['the sill beams ought to be nine eleven and a quarter', '119.25 in', 'GB'],
  ['she measures four nine and a quarter', '57.25 in', 'GB'],
  ['the rail is forty nine and a quarter', '49.25 in', 'GB'],
  ["they're eleven six long", '138 in', 'CA'],
])('"%s" in a mixed house says %s', (said, figures, region) => {
  expect(figuresSaid(said, 'mixed', region)).toBe(figures);
});

test.each([["it's six eight wide", '68 mm']])('"%s" in millimetres says %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['five eights of an inch thick', '0.625 in'],
  ['two and five eights inches wide', '2.625 in'],
  ['7 and 5/8 wide', '7.625 in'],
  ['seventeen thirty second of an inch', '0.53125 in'],
  ['a thirty-second proud', '0.03125 in'],
  ['the two eights are gone', 'none'],
])('"%s" as recognisers write fractions says %s', (said, figures) => {
  expect(figuresSaid(said, 'us', 'US')).toBe(figures);
});

test.each([
  ["the battery's reading thirteen two", '13.2 V'],
  ['the batteries are down to twelve four', '12.4 V'],
  ["the battery's at twelve six this morning", '12.6 V'],
])('"%s" tells volts and tenths: %s', (said, figures) => {
  expect(figuresSaid(said, 'us', 'US')).toBe(figures);
});

test.each([
  ['the battery box is twelve six long', '150 in'],
  ["the door's six eight", '80 in'],
  ['she scaled at thirteen four empty', 'none'],
])('"%s" tells none: %s', (said, figures) => {
  expect(figuresSaid(said, 'us', 'US')).toBe(figures);
});
