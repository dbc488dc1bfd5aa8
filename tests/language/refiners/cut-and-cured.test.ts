import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['four shelves at 610 out of a 2440 sheet', '610 mm; 2440 mm'],
  ['I should get four out of a sheet', 'none'],
  ['we can have nine out of the last board', 'none'],
  ['it sticks 40 out of the wall', '40 mm'],
  ['the frame is 12 out at the top', '12 mm'],
  ['the post is 8 out of plumb', '8 mm'],
])('"%s": what pieces come out of is no size by which a thing is out: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['full cure is seven days at twenty', '7 d; 20 degC'],
  ['it cures in 24 hours at 15', '24 h; 15 degC'],
  ['the pot life is 25 minutes at twenty', '25 min; 20 degC'],
  ["you've got 20 minutes pot life at 25", '20 min; 25 degC'],
  ['the glue sets in ten minutes at 60 from the edge', '10 min; 60 mm'],
  ['two coats, 24 hours apart, on a shelf at 400', '24 h; 400 mm'],
])('"%s": a time of curing is given for a warmth: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['recoat after four hours, no more than twenty four', '4 h; 24 h at-most'],
  ['cure it six hours, no more than 72', '6 h; 72 h at-most'],
  ['it cures in six hours and the coat is no more than 200 thick', '6 h; 200 mm at-most'],
])('"%s": the ends of a wait may lie far apart: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['keep everything under 300 kilos', '300 kg at-most'],
  ['I need everything under 900 mil', '900 mm at-most'],
  ['anything under 18 mil is scrap', '18 mm at-least'],
])('"%s" has a bound: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
