import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ["The epoxy's here. It won't go below twelve, so that's next month.", '12 degC at-least'],
  ["The varnish came. It's not keen on anything under fifteen.", '15 degC at-least'],
  ['Paint is due Friday. Nothing under ten, and four hours between coats.', '10 degC at-least; 4 h'],
  ["Got the sealant out. Can't use it under five.", '5 degC at-least'],
  ["At the tap it's meant to be no hotter than fifty.", '50 degC at-most'],
  ['I held the thermometer under. Sixty one.', '61 degC'],
  ['It was thirty one up there.', '31 degC'],
  ["It's been seven in there all week.", '7 degC'],
  ["The studio's warmer already, fourteen with no stove.", '14 degC'],
  ['Heat in here, 29.', '29 degC'],
  ["It's 22 in here and minus two out.", '22 degC; -2 degC'],
  ['Warmed them to ninety in oil.', '90 degC'],
  ['It was six at breakfast.', '6 degC'],
  ['Thirty five out there and nineteen in here.', '35 degC; 19 degC'],
  ['It got to thirty two Saturday.', '32 degC'],
])('"%s" is how warm it is: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["The gap's cold, four at the top.", '4 mm'],
  ["No gap over ten, the glue won't fill it.", '10 mm at-most'],
  ["The plaster's on. No crack over three.", '3 mm at-most'],
  ["The resin's in. I won't have a shelf under three hundred.", '300 mm at-least'],
  ["The paint's on. No hole through a joist over 45.", '45 mm at-most'],
  ['The board went down to twenty in the planer.', '20 mm'],
  ['The frame is 900 minus two off the top.', '900 mm; 2 mm'],
])('"%s" is none: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
