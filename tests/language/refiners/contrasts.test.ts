import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['Insulation is 25 on the walls, 50 in the roof.', '25 mm; 50 mm'],
  ['The cob is six hundred at the bottom, four fifty at the eaves.', '600 mm; 450 mm'],
  ["It's eighty newton metres on the hubs, forty five on the sump.", '80 N.m; 45 N.m'],
  ['Four metres twenty one way and three sixty the other.', '4.2 m; 3.6 m'],
  ['Bottom plate is five mil, top plate eight.', '5 mm; 8 mm'],
  ['The anchor is 15 kilos, chain another 60.', '15 kg; 60 kg'],
  ['It wants 1.2 square metres and ours is 0.9.', '1.2 m2; 0.9 m2'],
  ['Mix 400 grams of resin to 80 of hardener.', '400 g; 80 g'],
  ['Four of 110 amp hours, that gives me 440.', '110 Ah; 440 Ah'],
  ['It was at 1.2 bar, it climbs to 1.9 hot.', '1.2 bar; 1.9 bar'],
  ['Battery is at 12.4, should be 12.7.', '12.4 V; 12.7 V'],
  ['It comes on at thirty and cuts out at fifteen psi.', '30 psi; 15 psi'],
  ['He swore eighty nine kilowatt. The plate says 98.', '89 kW; 98 kW'],
  ["Swapped it for a ten amp. I don't like that. The book says seven and a half.", '10 A; 7.5 A'],
  ['The stern is 5.2 millimetres and 4.1 by the bow.', '5.2 mm; 4.1 mm'],
])('"%s": the second half of a contrast measures the same: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['The tank holds 60 litres, Tuesday another.', '60 L'],
  ['The clamp is 15 kilos, four on the crew agree.', '15 kg'],
  ['It weighs 15 kilos. Number 12 is next.', '15 kg'],
  ['The plate is five mil, page ten.', '5 mm'],
  ['Eighteen are complete, five of nine are cracked.', 'none'],
])('"%s": what is no second half is left alone: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["The fresh tank's 90, the grey's 60.", '90 L; 60 L'],
  ['The diesel tank is a 120.', '120 L'],
  ['The tank is 620, the bay is 640.', '620 mm; 640 mm'],
  ['The fridge pulls 4.2 on start.', '4.2 A'],
  ['Set the stat to 19.', '19 degC'],
  ["Flow's at 55, return 47.", '55 degC; 47 degC'],
  ['In here is it eight.', '8 degC'],
  ['Sockets on 2.5, lights on 1.5.', '2.5 mm2; 1.5 mm2'],
  ['Running the lathe at 450 for the roughing.', '450 rpm'],
  ['The pump cuts in at 2 and shuts off at 3.5.', '2 bar; 3.5 bar'],
  ['He asked 90.', '90 GBP'],
  ['I gave him 70 for it.', '70 GBP'],
  ['A tenner for the lot.', '10 GBP'],
])('"%s": things and deeds that are told in one measure: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['The socket is on 45 mil of ply.', '45 mm'],
  ['The battery is 330 long.', '330 mm'],
  ['He asked 3 times.', 'none'],
  ['The lights are on.', 'none'],
  ['The lathe is 450 wide.', '450 mm'],
  ['The pump starts at seven.', 'none'],
])('"%s": their lengths and clocks stay what they are: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['The leg tapers from 60 to 35.', '60 mm; 35 mm'],
  ['We went from 60 to 35.', '35 mm'],
  ['Anything from 10 to 15 mil will do.', '10-15 mm between'],
])('"%s": a taper has two sizes: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
