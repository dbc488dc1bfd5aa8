import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['85 by 120 centimetres', '85 cm; 120 cm'],
  ['600 by 400 by 18', '600 mm; 400 mm; 18 mm'],
  ['1210 wide by 1385 high', '1210 mm; 1385 mm'],
  ['4.1 metres by three sixty five', '4.1 m; 3.65 m'],
  ['2.4 metres by twelve twenty', '2.4 m; 1220 mm'],
  ['18 and 25 mil ply', '18 mm; 25 mm'],
  ['12, 15 or 18 mil', '12 mm; 15 mm; 18 mm'],
])('"%s" shares its unit: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['two boards and 25 mil of foam', '25 mm'],
  ['five screws, 40 mil', '40 mm'],
])('"%s" shares none: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["The panel's five eight by two three.", '68 in; 27 in'],
  ["The panel's five eight by twenty three.", '68 in; 23 in'],
])('"%s": feet and inches on both sides of "by": %s', (said, figures) => {
  expect(figuresSaid(said, 'us')).toBe(figures);
});
