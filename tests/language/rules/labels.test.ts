import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  'part two of the build',
  'episode 14 is up',
  'frame six is cracked',
  'eighty grit then one twenty grit',
  'twelve gauge wire',
  'a three phase motor',
  'M twelve bolts',
  'M 6 by 30 bolts',
  '5 by 70 screws',
  'joist number 4 is out',
  '#8 screws',
])('"%s" names and does not measure', (said) => {
  expect(figuresSaid(said)).toBe('none');
});

test.each([
  ['the frame 905 high', '905 mm'],
  ["she's drawing 790", '790 mm'],
  ['slates on a two ten gauge', '210 mm'],
  ['the panel is 600 wide', '600 mm'],
])('"%s" measures: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['pick up a box of number eight by inch and a quarter stainless', 'none'],
  ['number six by an inch and three quarters, brass, and a hinge two inches long', '2 in'],
  ['ran out of number ten by an inch', 'none'],
  ['the gap is number one by the way and an inch and a quarter wide', '1.25 in'],
])('"%s" names screws by gauge and length, and tells %s', (said, figures) => {
  expect(figuresSaid(said, 'us', 'US')).toBe(figures);
});
