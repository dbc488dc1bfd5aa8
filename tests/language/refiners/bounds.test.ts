import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['half a tonne and not an ounce over', '0.5 t at-most'],
  ['at least 300 mm clear, or 150 mm with a shield', '300 mm at-least; 150 mm at-least'],
  ['eighteen inches deep, not an inch shallower', '18 in at-least'],
  ['two foot off the floor, no lower', '2 ft at-least'],
  ['110 mil wide, no wider', '110 mm at-most'],
  ['eleven hundred rpm is the ceiling', '1100 rpm at-most'],
  ["fifty kilos, that's the limit", '50 kg at-most'],
  ['it may not come higher than 2.9 metres', '2.9 m at-most'],
  ['the mast is not to pass four and a half metres', '4.5 m at-most'],
  ['no flame within three metres of the locker', '3 m at-least'],
  ['the joint is level to half a mil', '0.5 mm at-most'],
  ['two seven fifty all up at the very most', '2750 mm at-most'],
  ['the flue has to clear the beam by 50', '50 mm at-least'],
  ['the boom must clear the wheelhouse by 200 mm', '200 mm at-least'],
  ['I want two inches clear all round', '2 in at-least'],
  ['the rating on that winch is 450 kilos', '450 kg at-most'],
  ['the shelf brackets hold 40 kilos each', '40 kg at-most'],
  ['the biggest thing I can get through the door is 740 mil', '740 mm at-most'],
  ["740 mil is the widest that'll come through", '740 mm at-most'],
  ["the most it'll lift is 80 kilos", '80 kg at-most'],
])('"%s" has a bound: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['at least 40 mil', '40 mm at-least'],
  ['no more than 40 mil', '40 mm at-most'],
  ['nothing wider than 740 mil', '740 mm at-most'],
  ['just shy of 40 mil', '40 mm about'],
  ['40 mil or so', '40 mm about'],
  ['1.2 tonnes of them roughly', '1.2 t about'],
  ['40 mil give or take two', '40 mm ±2 mm'],
  ['within three mil', '3 mm at-most'],
  ['right around forty kilos', '40 kg about'],
  ['somewhere between 40 and 50 mil', '40-50 mm between'],
  ['three psi tops', '3 psi at-most'],
  ['1.5 metres strong', '1.5 m about'],
])('"%s" says %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['go over to 12 volts', '12 V'],
  ['she ticks over at 650 rpm', '650 rpm'],
  ['a 40 amp light circuit', '40 A'],
  ['the nuts are done up to 45 newton metres', '45 N.m'],
  ['40 mil and no paint', '40 mm'],
  ['40 mil is the size', '40 mm'],
  ['the longest board I can find is 2.4 metres', '2.4 m'],
  ['the widest part of the hull is 2.4 metres', '2.4 m'],
  ["at 4 metres it is the biggest thing I've built", '4 m'],
])('"%s" has none: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['the lid over it is 12 thick', '12 mm'],
  ['the door clears the step by 20', '20 mm'],
  ['we have to clear the yard by Friday, the skip is 3 metres long', '3 m'],
])('"%s" has none: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['the maker says leave fifty mil behind it for air', '50 mm at-least'],
  ['you have to leave 25 at the bottom for the draught', '25 mm at-least'],
  ['allow 40 all round the glass for the gasket', '40 mm at-least'],
  ['the kiln needs 600 in front of it, there is 480', '600 mm at-least; 480 mm'],
  [
    'the stove wants eighteen and a half between the posts and I have got eighteen',
    '18.5 mm at-least; 18 mm',
  ],
  ['the pump wants 12 volts and it is only getting 10.8', '12 V at-least; 10.8 V'],
])('"%s" asks for room: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['I left 10 mil at the end for the felt to move', '10 mm'],
  ['that leaves 640 to the ceiling', '640 mm'],
  ['I leave 20 mil on for planing', '20 mm'],
  ['the gate needs 40 mil off and I have got 12 mil off', '40 mm; 12 mm'],
  ['the jug is 23 kilos full', '23 kg'],
  ['we are up to 40 kilos on the hook now', '40 kg'],
  ['the floor slopes half an inch over four foot', '0.5 in; 4 ft'],
  ['the drain falls an inch and a quarter over ten foot', '1.25 in; 10 ft'],
])('"%s" tells and bounds nothing: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['the loft cables sit under 270 mil of wool', '270 mm'],
  ["the pipe's buried under 450 mil of gravel", '450 mm'],
  ['the width inside is six foot two', '74 in'],
  ['it has to be inside three mil', '3 mm at-most'],
  ['the lintel has to stay under 4 mil of sag', '4 mm at-most'],
])('"%s": where a thing is bounds nothing: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test('what a lift takes is in the unit of the load', () => {
  expect(figuresSaid('the sofa is 48 kilos and the lift takes 300')).toBe('48 kg; 300 kg at-most');
});

test.each([
  ['three thou is the most I would tolerate', '3 thou at-most'],
  ["eight foot wide is the most the state'll let you be", '8 ft at-most'],
  ['each jack may take eight tonnes and no gram more', '8 t at-most'],
  ['thirty-five hundred kilos loaded and not an ounce more', '3500 kg at-most'],
  ["it's three and a half ton fully loaded and that's your lot", '3.5 t at-most'],
  ['the controller takes up to a hundred volts', '100 V at-most'],
  ['no loop can run over 300 feet', '300 ft at-most'],
  ['nowt over 620 mil is going through that door', '620 mm at-most'],
  ['the hoist lifts 250 kilos', '250 kg at-most'],
  ['the crane does two tonnes', '2 t at-most'],
  ['the shelf will only carry 40 kilos', '40 kg at-most'],
])('"%s" has a limit: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['the floor takes 400 kilos of tiles', '400 kg'],
  ['I can lift 40 kilos on my own', '40 kg'],
  ['the tank holds 90 litres', '90 L'],
  ['we took it up to 100 volts', '100 V'],
  ['the gutter falls 40 mil over two metres', '40 mm; 2 m'],
  ['300 mil is the most of it', '300 mm'],
  ['the sheet is 18 mil and that goes in the hall', '18 mm'],
])('"%s" has none: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['the floor is nine mil ply over twenty five mil foam', '9 mm; 25 mm'],
  ['18 mil board over 50 mil battens', '18 mm; 50 mm'],
  ['no board over 50 mil', '50 mm at-most'],
  ['the board is over 50 mil', '50 mm at-least'],
])('"%s": what lies over something is no bound of it: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
