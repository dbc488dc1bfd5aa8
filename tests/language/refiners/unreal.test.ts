import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  'if it was 600 wide I would fit a drawer',
  'say nine hundred',
  "let's say forty mil",
  'what if we had 80 mil',
  'suppose it were two metres',
  'somebody suggested 40 mil ply',
  'call it nine hundred',
])('"%s" is supposed', (said) => {
  expect(figuresSaid(said)).toBe('none');
});

test.each([
  ['the calipers say 18.2 mil', '18.2 mm'],
  ['somebody asked, it weighs 160 kilos', '160 kg'],
  ['call it 26 foot pounds', '26 ft.lbf about'],
  ['the rules say 40 mil', '40 mm'],
])('"%s" is so: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
