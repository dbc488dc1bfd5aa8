import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['minus five degrees outside last night', '-5 degC'],
  ['it was -5 °C in the shed', '-5 degC'],
  ['the freezer sits at minus 18 degrees', '-18 degC'],
])('"%s" is below zero: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['cut at 45 degrees minus half a degree', '45 deg; 0.5 deg'],
  ['keep it 10-15 degrees in the shed', '10-15 degC between'],
])('"%s" has no sign: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
