import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  'fifty-fifty whether it holds',
  'a hundred per cent sure',
  'it weighs a ton',
  'a million miles off',
  'three times I told him',
  'two thirds of the wall',
  'five of the nine joists',
  'the whole nine yards',
  'half the boards',
  'out by a mile',
])('"%s" is a manner of speaking', (said) => {
  expect(figuresSaid(said)).toBe('none');
});

test.each([
  ['40 mil give or take five', '40 mm ±5 mm'],
  ['two thirds of a litre', '0.666666666667 L'],
  ['half a ton of sand', '0.5 t'],
])('"%s" is a figure: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
