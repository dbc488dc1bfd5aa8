import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['the lid is one thousand, two hundred, ten wide', '1210 mm'],
  ['it is two thousand, four hundred, ninety six long', '2496 mm'],
  ['the hall is four point seven, four long', '4.74 m'],
  ['a two point, one metre drop', '2.1 m'],
  ['the hall is for point eight metres long', '4.8 m'],
  ['the hall is for point eight matters long', '4.8 m'],
  ['glass is ordered, for mil', '4 mm'],
  ["that's to inches a side", '2 in'],
  ['it is twenty to and a half inches', '22.5 in'],
  ['it took five lighters of primer', '5 L'],
  ['done up to fifteen newton members', '15 N.m'],
  ['the vee is three meal from end to end', '3 mm'],
  ['the shaft is a seven, sixteenths inch', '0.4375 in'],
  ['a three kilo watt heater', '3 kW'],
])('"%s", as recognisers write it, says %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["it's at twenty one per cent", '21 %'],
  ['go down to mil by mil', 'none'],
  ['save some for metre readings', 'none'],
  ['I went for point blank', 'none'],
  ['nine hundred, five of them', '900 mm'],
  ['pick up two matters', 'none'],
])('"%s" says %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
