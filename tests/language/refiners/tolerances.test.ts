import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['40 millimetres give or take one', '40 mm ±1 mm'],
  ['five inches plus or minus an eighth', '5 in ±0.125 in'],
  ['40 mil, one either way', '40 mm ±1 mm'],
  ['420 centres, give or take thirty', '420 mm ±30 mm'],
  ['the shelf is 62 millimetres thick, give or take half a mil', '62 mm ±0.5 mm'],
  ['the rail is two and a half inches, give or take half a mil', '2.5 in ±0.5 mm'],
  ['the stile is 915 high, give or take one mil', '915 mm ±1 mm'],
  ['the strut is 1.2 metres plus or minus two mil', '1.2 m ±2 mm'],
  ['put 50 millilitres of hardener in, give or take two mil', '50 mL ±2 mL'],
  ['the resin is at 20 degrees Celsius, give or take two degrees', '20 degC ±2 degC'],
])('"%s" has a spread: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['two weavers give or take one', 'none'],
  ['within three mil of plumb', '3 mm at-most'],
])('"%s" has none: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['the crank weighs 45 kilos, give or take two pounds', 'metric', 'GB', '45 kg ±2 lb'],
  ['the bore is two inches on the lathe, give or take two mil', 'us', 'US', '2 in ±2 thou'],
  ['the bench is 36 inches high, give or take half a mil', 'mixed', 'GB', '36 in ±0.5 mm'],
  ['the sand is two tons, give or take half a ton', 'us', 'US', '4000 lb ±1000 lb'],
] as const)('"%s" in a house of %s, %s: %s', (said, units, region, figures) => {
  expect(figuresSaid(said, units, region)).toBe(figures);
});
