import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['not 905, 915 wide', '915 mm'],
  ["it ain't no sixteen foot wide, it's fifteen foot", '15 ft'],
  ['I quit on the nine inch spacing', 'none'],
  ['I figured on forty gallons but there is no room', 'none'],
  ['had them down as twelve hundred of lift, it is 1160 high', '1160 mm'],
  ["I'm not stretching it to two foot", 'none'],
  ["nine kilowatts won't carry this place", 'none'],
  ["three eighths won't hold a screw", 'none'],
  ["quarter inch ply's what I'd sketched", 'none'],
  ['twenty-five of foam was stingy', 'none'],
  ['780 wide is too much', 'none'],
  ['18 mil instead of 12 mil', '18 mm'],
])('"%s": what was turned down is no figure: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["the shelf is 900 wide and won't move", '900 mm'],
  ['the gap was twelve mil all the way', '12 mm'],
  ["I'm bringing it to 900", '900 mm'],
  ['it is 18 mil and the paint was rubbish', '18 mm'],
])('"%s" stands: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
