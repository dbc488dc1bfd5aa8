import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  'two by fours',
  'four by two for the studs',
  'an eight by four sheet',
  '2x6 rafters',
  'six be two, treated',
])('"%s" names timber or sheet', (said) => {
  expect(figuresSaid(said)).toBe('none');
});

test.each([
  ['two by four metres', '2 m; 4 m'],
  ['six by three inches', '6 in; 3 in'],
  ['600 by 400', '600 mm; 400 mm'],
  ['the post is six by six by twelve foot', '12 ft'],
  ['four by two by 2.4 metres', '2.4 m'],
])('"%s" measures: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
