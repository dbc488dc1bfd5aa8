import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['40 millimetres give or take one', '40 mm ±1 mm'],
  ['five inches plus or minus an eighth', '5 in ±0.125 in'],
  ['40 mil, one either way', '40 mm ±1 mm'],
  ['420 centres, give or take thirty', '420 mm ±30 mm'],
])('"%s" has a spread: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['two weavers give or take one', 'none'],
  ['within three mil of plumb', '3 mm at-most'],
])('"%s" has none: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
