import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['Hull, 1,180. Motor, 610. Comes to 1,790 pounds.', '1180 lb; 610 lb; 1790 lb'],
  ['Oak, 240. Brass, 60. Comes to 300 dollars.', '240 USD; 60 USD; 300 USD'],
])('"%s": the parts take the unit of the total', (said, figures) => {
  expect(figuresSaid(said, 'us', 'US')).toBe(figures);
});

test.each([['The slide is 560 deep. That comes to thirty thousand dollars.', '560 in; 30000 USD']])(
  '"%s": a stray size is no part',
  (said, figures) => {
    expect(figuresSaid(said, 'us', 'US')).toBe(figures);
  },
);
