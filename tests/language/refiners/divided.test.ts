import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['it is 101 inches over thirteen, so 7.77 inches a riser', '101 in; 7.77 in'],
  ['the rail is 2400 mm over eight, which makes 300 mm each', '2400 mm; 300 mm'],
])('"%s": what a size is shared in is no bound: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['the load is over thirteen kilos, so it sags', '13 kg at-least'],
  ['the beam is 50 mm over the door', '50 mm'],
])('"%s" is none: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
