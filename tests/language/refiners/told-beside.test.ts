/** What a number measures, told by the word that stands beside it. */
import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['It has a two fifty fuse by the terminals', '250 A'],
  ['The compressor cuts out at 120', '120 psi'],
  ['The flue takes no bend over forty five', '45 deg at-most'],
  ['Plank thickness is twenty-eight mm, width one fifty', '28 mm; 150 mm'],
  ['Five mm wire rope on the hoist', '5 mm'],
  ['The electrician came. He used ten square, heavier than I asked.', '10 mm2'],
  ['The leads I crimped are fine with that, seventy squared.', '70 mm2'],
  ["It's 150 duct", '150 mm'],
  ['The plinths go on bolts, sixteens, stainless', '16 mm'],
  ["The spikes went back. I've come home with 135s.", '135 mm'],
  ['The piston is turned, five point nine nine', '5.99 mm'],
  ['One point two of it goes behind the range', '1.2 m'],
  ['The treads are oak, two thirty rise', '230 mm'],
])('"%s": %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['Three fuses blew', 'none'],
  ['The counter is 700 square', '700 mm'],
  ['It wanted a day and it got, mm, two', 'none'],
  ['Eight round ones went to the glazier', 'none'],
  ['I counted the tiles. A hundred and four.', 'none'],
  ['A wheelwright of thirty one made it', 'none'],
  ['My knees, which at sixty is not what it was', 'none'],
  ['Two fifty of the bricks are cracked', 'none'],
])('"%s" is none of them: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['The tank is nine litres, or two gallon in the book', '9 L'],
  ['It leads by 230, or nine inches if you have the old plan', '230 mm'],
  ['Make it nine litres or three gallon', '9 L; 3 gal'],
  ['It is 230 long and nine inches wide', '230 mm; 9 in'],
])('"%s": the same in other units is told once: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['Not one drip in thirty minutes', '30 min'],
  ['The gas is signed off, five minutes and the needle never stirred', '5 min'],
  ['How long does the goo take? Forty eight hours, says the tube.', '48 h'],
  ['Seven days before the props come away', '7 d'],
  ['The sealant skins in twenty minutes', '20 min'],
])('"%s" is a time of the work: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['The windows are ordered, seven days before the truck comes at the very least'],
  ['It drips a drop a minute'],
  ['I lost two days to the flu'],
  ['He hauls it over a week from today'],
])('"%s" is none of the work', (said) => {
  expect(figuresSaid(said)).toBe('none');
});

test.each([
  ['The corner of the pad sits at 14.2 by the long tape', '14.2 m'],
  ['The spindle blank is 6.1 long', '6.1 m'],
])('in a mixed house of inches "%s" is told in metres by its decimals: %s', (said, figures) => {
  expect(figuresSaid(said, 'mixed', 'CA')).toBe(figures);
});

test.each([
  [
    "Breaker's a ten amp. Pulled the cable through as well, two point five, with a bit left over.",
    '10 A; 2.5 mm2',
  ],
  ['The flex is one point five.', '1.5 mm2'],
  ['That wire is carrying one point five amps.', '1.5 A'],
  ['The cable is 2.5 long.', '2.5 m'],
])('"%s": a bare size of a cable that is named: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['The concrete came in at a hundred and forty with the delivery.', '140 GBP'],
  ['The bath was three eighty plus carriage.', '380 GBP'],
  ['It came in at a hundred and forty with the lining on.', '140 mm'],
])('"%s": money is told with what its delivery costs: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
