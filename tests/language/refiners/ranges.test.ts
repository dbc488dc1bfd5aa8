import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['between ten and fifteen mil', '10-15 mm between'],
  ['six to eight hours to cure', '6-8 h between'],
  ['a gap of 20-30 mm', '20-30 mm between'],
  ['from 40 to 50 kilos', '40-50 kg between'],
  ['two or three mil of play', '2-3 mm between'],
  ['thirty or forty kilos', '30-40 kg between'],
  ['between 40 and 50 microns', '0.04-0.05 mm between'],
])('"%s" is a range: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['we went from the 70 mil to an 84 mil', '84 mm'],
  ['12 mil or 18 mil ply', '12 mm; 18 mm'],
  ['the depth goes from 600 up to 650', '650 mm'],
  ['rout the groove deeper, from 8 mil to 11 mil', '11 mm'],
  ['the slot wants to be wider, from 40 mm to 45 mm', '45 mm'],
])('"%s" is none: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
