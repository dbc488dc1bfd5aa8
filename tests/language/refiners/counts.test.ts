import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  'five jobs to do',
  'nine of them',
  'sixty odd nails',
  'three barrow loads',
  "I've got four.",
  'Chickens, eleven.',
  'I counted the panes, it is 61',
  'twelve more screws',
  'that leaves five',
  'six fence posts',
])('"%s" counts', (said) => {
  expect(figuresSaid(said)).toBe('none');
});

test.each([
  ['225 off any board', '225 mm'],
  ['that leaves 1,837 to stand in', '1837 mm'],
  ['ripped to eight hundred downstairs', '800 mm'],
  ['thirty each side', '30 mm'],
])('"%s" measures: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["I've settled on two 200 amp hour batteries.", '200 Ah'],
  ['The door is on two 150 mm hinges.', '150 mm'],
])('"%s": how many of the size that follows: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
