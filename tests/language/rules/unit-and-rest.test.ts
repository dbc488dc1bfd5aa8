import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['an inch and three sixteenths', '1.1875 in'],
  ['the pipe is inch and a half', '1.5 in'],
  ['inch and a quarter wide', '1.25 in'],
  ['a kilo and a half of glue', '1.5 kg'],
  ['a foot and a half long', '1.5 ft'],
  ['it cures an hour and a half between coats', '1.5 h'],
])('"%s" is a unit and a fraction of it: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["it's one metre eighty wide", '1.8 m'],
  ["it's 1 metre 83 high", '1.83 m'],
  ['two metre four long', '2.04 m'],
  ['it is 1m80 high', '1.8 m'],
  ['a metre twenty deep', '1.2 m'],
  ["it's metre twenty deep", '1.2 m'],
  ['two metres ten', '2.1 m'],
  ['two metres four hundred', '2.4 m'],
  ['a metre and ten mil deep', '1.01 m'],
])('"%s" is metres and a rest: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['two metres 4 boards', '2 m'],
  ['six metres by four', '6 m; 4 m'],
  ['two metres, ten boards', '2 m'],
])('"%s" ends with the metres: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['four pound fifty each', '4.5 GBP'],
  ['twelve euro fifty for the tin', '12.5 EUR'],
  ['three dollars ninety', '3.9 USD'],
  ['four pounds fifty screws', '4 GBP'],
])('"%s" is money: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['a half metre deep', '0.5 m'],
  ['half a mil of play', '0.5 mm'],
  ['point five of a mil', '0.5 mm'],
  ['three quarters of an inch thick', '0.75 in'],
  ['quarter inch plate', '0.25 in'],
  ['one and a half metre deep', '1.5 m'],
  ['a quarter of the boards', 'none'],
  ['half the job', 'none'],
  ['with a breaker and a bar', 'none'],
])('"%s" is a part of a unit or none: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['bored the bush to one inch three sixteenths', '1.1875 in'],
  ['two inch seven eighths across the flats', '2.875 in'],
  ['an inch five eighths, near enough', '1.625 in about'],
])('"%s" is inches and their parts in one breath: %s', (said, figures) => {
  expect(figuresSaid(said, 'us', 'US')).toBe(figures);
});

test.each([
  ['one inch three quarter ply boards', '1 in; 0.75 in'],
  ['two metres three quarters of the way', '2 m'],
])('"%s" is no sum of inches: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});
