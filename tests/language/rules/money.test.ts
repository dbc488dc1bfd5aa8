import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['GB', '£31.50 for the hinge', '31.5 GBP'],
  ['US', '$640 delivered', '640 USD'],
  ['NL', '€ 20', '20 EUR'],
  ['GB', 'three grand for the engine', '3000 GBP'],
  ['AU', 'forty dollars', '40 AUD'],
  ['GB', '80 pence each', '0.8 GBP'],
])('money in %s: "%s" is %s', (region, said, figures) => {
  expect(figuresSaid(said, 'metric', region)).toBe(figures);
});

test.each(['a grand old door', 'worth every penny'])('"%s" is no money', (said) => {
  expect(figuresSaid(said)).toBe('none');
});
