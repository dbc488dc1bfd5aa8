import { expect, test } from 'vitest';
import type { KnownFigure } from '../../../src/language/notes.ts';
import { readQuantities } from '../../../src/language/quantities.ts';
import { tokenise } from '../../../src/language/tokens.ts';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['the new lids are cut, 898, square as you like', '898 mm'],
  ['the bung is bored 22, so it wants opening out', '22 mm'],
  ['the felt is lapped a hundred and fifteen, like I said', '115 mm'],
  ["I'm cutting it back six hundred and fitting new oak", '600 mm'],
  ['the beam sits a hundred and eighty into the wall', '180 mm'],
  ["I've only got 250 behind it", '250 mm'],
  ["there's barely forty left above the door", '40 mm'],
  ['we have 90 to play with', '90 mm'],
  ['that leaves me thirty underneath', '30 mm'],
  ['the rails should have been four hundred and twelve', '412 mm'],
])('"%s": a number said by itself is a size: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['she was built in 1945, that hull'],
  ['I am forty-seven, I should know better'],
  ['we had forty, maybe more, at the launch'],
  ['page 212, if you want it'],
  ["Call it nine hundred, I've not had a tape on it"],
  ["there's fourteen of them"],
  ["I've got two lifejackets left in the locker"],
  ["there's forty left in the box of screws"],
  ["I've got two hundred of them behind me"],
  ["ran out of screws so I've ordered another two hundred"],
  ['number eight by two inch, brass'],
])('"%s" states no size', (said) => {
  expect(figuresSaid(said)).toBe('none');
});

test.each([
  ['four fifty it is', '450 mm'],
  ['so 1772 must it be', '1772 mm'],
  ['seven fifty-four the steps should be', '754 mm'],
])('"%s": the value may come first: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['the lid is twenty less than the box', '20 mm'],
  ['the rail gets thicker, twenty more.', '20 mm'],
  ['make it ten longer', '10 mm'],
  ['twenty more to plane', 'none'],
])('"%s": what is compared is a size: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['I put the main fuse up to two hundred', '200 A'],
  ['the alternator is a seventy', '70 A'],
  ['the tyres want thirty-two', '32 psi'],
  ['she ticks over at six fifty', '650 rpm'],
  ['moisture is down to nineteen', '19 %'],
  ['the hatch weighs fourteen', '14 kg'],
  ['concrete is 165 a cube', '165 GBP'],
  ['forty a sheet', '40 GBP'],
])('"%s": the thing tells what is measured: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['the tyres are 620 high', '620 mm'],
  ['the fuse box is 300 wide', '300 mm'],
  ['the alternator bracket is 40 thick', '40 mm'],
])('"%s": a word of size beats the thing: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['114 centimetre long, 76 wide', '114 cm; 76 cm'],
  ['three metres deep and one and a half wide', '3 m; 1.5 m'],
  ['it kicks in at thirty psi and quits at fifty', '30 psi; 50 psi'],
  ["one tank's 180 litres, the other's a ninety", '180 L; 90 L'],
  ["three 110 amp hour ones, that's 330 all told", '110 Ah; 330 Ah'],
])('"%s": a unit carries on: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

const known = (item: string, value: number, unit: string): KnownFigure => ({
  item,
  attribute: 'other',
  value,
  unit,
});

test.each([
  ['the winch stays at three hundred', known('winch', 320, 'A'), 300, 'A'],
  ['the parlour is four twenty by three', known('parlour', 4.2, 'm'), 4.2, 'm'],
  ['the cistern is a ninety now', known('cistern', 110, 'L'), 90, 'L'],
])('"%s" takes the unit that its thing had before', (said, figure, value, unit) => {
  const { quantities } = readQuantities(said, tokenise(said), {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-03-07T18:40:00+00:00',
    knownFigures: [figure],
  });
  expect(quantities[0]).toMatchObject({ value, unit });
});

test.each([
  ['The water tank holds ninety', '90 L'],
  ['the diesel drum took two hundred', '200 L'],
  ['the rack holds ninety', '90 kg at-most'],
])('"%s": what a vessel holds: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['the bilge pump draws six', '6 A'],
  ['the hull draws six hundred', '600 mm'],
])('"%s": a pump takes current and a hull takes depth: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['Backlash is twelve thou, anything over ten is worn out', '12 thou; 10 thou at-most'],
  ['ran four metres of duct and the book says no more than three', '4 m; 3 m at-most'],
  ['the rivets are 9 millimetres and nothing under eight will do', '9 mm; 8 mm at-least'],
  ["the motor's one and a half horse, three phase, 240", '1.5 hp; 240 V'],
  ['single-phase, 230', '230 V'],
  ['the amp draw is 6.2', '6.2 A'],
  ['the panels are 22 kilos each, so 44', '22 kg; 44 kg'],
  ['a shelf takes 12 kilos each, that makes 36', '12 kg; 36 kg'],
  ['The rack is 20 kilos. Plus the roof box, another 35.', '20 kg; 35 kg'],
  ["the run-out was three thou and now it's down to eight tenths", '3 thou; 0.8 thou'],
])('"%s": the unit is left to what was said: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['the deck is four metres long and nothing over 300 wide gets past', '4 m; 300 mm at-most'],
  ['phase two is 240 long', '240 mm'],
  ['the boards are 2 metres each, so 44 wide', '2 m; 44 mm'],
])('"%s": the unit is its own: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
