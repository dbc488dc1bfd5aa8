/** "It's 48" right behind a reading: the unit goes on where nothing but a pronoun and a verb lead to the number. */
import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ["The ground's at 24 percent. It's got to be below 18.", '24 %; 18 % at-most'],
  ["The posts are at 20 percent and they've got to be under 15.", '20 %; 15 % at-most'],
  [
    "Sixteen percent at knee height, and plaster's not going near them till it's below fifteen.",
    '16 %; 15 % at-most',
  ],
  ["Glue likes it fifty five degrees or warmer. It's 48.", '55 degC at-least; 48 degC'],
  ["The tyres were at 30 psi. They're at 45 now.", '30 psi; 45 psi'],
  ["The battery read 12.4 volts this morning. It's 12.9 now.", '12.4 V; 12.9 V'],
  ["The pump draws 4 amps. It's 6 with the filter on.", '4 A; 6 A'],
])('"%s" gives %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['a size behind the number', "The glue likes 55 degrees. It's 48 wide.", '55 degC; 48 mm'],
  ['a unit of its own', "The fan draws 5 amps. It's 40 mil.", '5 A; 40 mm'],
  ['a pair of sizes', "The oak's 18 percent. They're 20 by 40.", '18 %; 20 mm; 40 mm'],
  ['a thing named in between', "The oak's at 24 percent. The lid's 18 wide.", '24 %; 18 mm'],
  ['another verb', "The oak's at 24 percent. We planed it to 18 thick.", '24 %; 18 mm'],
  ['a sentence in between', "The oak's at 24 percent. The kettle is on. It's 18 thick.", '24 %; 18 mm'],
  ['a value far from it', "The oak's at 10 percent. It's 400.", '10 %; 400 mm'],
  ['a length', "The rail is 2 metres. It's 3.", '2 m'],
  ['a price', "It came to 40 pounds. It's 48.", '40 GBP; 48 mm'],
  ['a count', "It was 14 percent. That's eight boards.", '14 %'],
  ['an age', "The boiler's at 60 degrees. It's 50 years old.", '60 degC'],
  ['the clock', "The shop's at 12 degrees. It's 10 o'clock now.", '12 degC'],
])('%s: "%s" gives %s', (_, said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
