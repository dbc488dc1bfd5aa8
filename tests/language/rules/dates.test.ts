import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  'the twenty second of May',
  'on 3 May',
  'March 12th, 2026',
  'it came on 12/05/2026',
  'built in 1998',
  'back in nineteen forty eight',
  'the 1950s',
  'the fifteenth',
])('"%s" is a day or a year', (said) => {
  expect(figuresSaid(said)).toBe('none');
});

test.each([
  ["it's 5/8 thick", '0.625 in'],
  ['the rail is 1998 long', '1998 mm'],
  ['it may be 40 mil', '40 mm'],
])('"%s" is a size: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
