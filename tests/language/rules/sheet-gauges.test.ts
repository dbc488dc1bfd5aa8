import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['0.9 mm is a 20', '0.9 mm'],
  ["the skin's 0.9 mm, that's a 20", '0.9 mm'],
  ['0.9 mm is a 20 and 1.2 is an 18', '0.9 mm; 1.2 mm'],
  ["The skin's 0.9 mm, that's a 20. The new sheet is a 22.", '0.9 mm'],
  ['the deck plate is 18 swg and the sides are 20', 'none'],
  ["the roof's 16 gauge, the cheeks are 18 and the floor is 12 mm", '12 mm'],
  ["It's all 18 swg. The patch is a 20, near enough.", 'none'],
])('"%s" tells gauges of sheet, and measures %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["The tube has a 2 mil wall, it's a 22.", '2 mm; 22 mm'],
  ['The deck is 18 swg and the rails are 20 mm', '20 mm'],
  ['The pipe is a 22.', '22 mm'],
  ['The slates are on a 210 gauge. The dowel is a 20.', '210 mm; 20 mm'],
  ['The board is 12 mm and the batten is 20', '12 mm; 20 mm'],
])('"%s" measures all of it: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['I need a metre and a half of it for the cowl.', '1.5 m'],
  ['Two foot of it is rotten.', '2 ft'],
  ['The seal, there was six metres of it on the roll.', '6 m'],
])('"%s" measures so much of it: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
