import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  'I was up at half six',
  'the show is at half-past nine',
  'the last van left at ten',
  'the oil turned up at nine',
  'I started at seven thirty',
  'come round at 7:15 tonight',
  "she's here by six o'clock",
  'it was quarter past four',
])('"%s" is an hour and no figure', (said) => {
  expect(figuresSaid(said)).toBe('none');
});

test.each([
  ['the hatch is 9:05 wide', '905 mm'],
  ['the shelf sits at seven thirty high', '730 mm'],
  ['fix the rail at 10:10 centres', '1010 mm'],
])('"%s" is a length: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
