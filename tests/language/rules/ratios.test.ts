import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['mix the mortar five to one', '5 1'],
  ['resin and hardener at 3:1', '3 1'],
  ['one to three with sand', '3 1'],
  ['two parts lime to one part sand', '2 1'],
  ['a fall of one in forty', '0.025 1'],
  ['the roof pitch is four in twelve', '0.333333333333 1'],
])('"%s" is a ratio: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['one to three people came', 'none'],
  ['two in the box', 'none'],
])('"%s" is none: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
