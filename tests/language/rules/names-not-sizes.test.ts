import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  'Bridge 114 is the low one.',
  'We did lock 42 before lunch.',
  'Interstate 40 was shut.',
  'RAL 7016 for the doors.',
  "The paint code's 2041.",
  'Oil for the headstock, ISO 32.',
  "It's a 2014, and it runs.",
  "Room 12's key is missing.",
  'Three out of five.',
  'I have 4 left out of 20.',
  'On a scale of one to ten.',
  'Thirty-two of the thirty-eight are on.',
  "There's eighteen to be bent in.",
  'I have 64 slates and I want seventy.',
  'Sanded it 80, 120, then 240.',
  '304 for the screws and 316 stainless for the bolts.',
  'Somebody find my 13 mil spanner.',
  'A half inch chisel and a three eighths drive.',
  'Built in the sixties for the river.',
  'Drove 600 miles in two days.',
  'The two long sill logs are down.',
  'I was on site at half seven and packed in at twenty to five.',
  'I settled on a third one.',
  'My son at fifteen does the sanding.',
  'The inspector is booked, Friday at ten.',
  'It is in the way of pile twenty six.',
  'I was going to give her forty horsepower, but no.',
  'I was thinking 100 gallon but it would not fit.',
  'So scratch the 18.',
  'Seats are out, 26 of em.',
])('"%s" states no size', (said) => {
  expect(figuresSaid(said)).toBe('none');
});

test.each([
  ['The bridge is 114 wide.', '114 mm'],
  ['The berth is 1900 long.', '1900 mm'],
  ["The lock's 60 deep.", '60 mm'],
  ['Planed and sanded down to 18.', '18 mm'],
  ['The bolts are 316 long.', '316 mm'],
  ['The sleeve is 2014 long.', '2014 mm'],
  ['It was packed out at 20 to 25 mil.', '20-25 mm between'],
  ['A 13 mil hole for the bolt.', '13 mm'],
  ['A half inch socket screw head, 12 mil deep.', '12 mm'],
  ['Its range is 300 kilometres.', '300 km'],
  ['Two metres long, the logs.', '2 m'],
  ['The boards are 6 wide.', '6 m'],
])('"%s" still does: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['Eish, R4,200 for one window.', 'ZA', '4200 ZAR'],
  ['R450 a sheet.', 'ZA', '450 ZAR'],
  ['The rivets are R4.', 'GB', 'none'],
])('"%s" in %s: %s', (said, region, figures) => {
  expect(figuresSaid(said, 'metric', region)).toBe(figures);
});

test.each([
  ['The gap is nine-and-a-half.', '9.5 mm'],
  ['Two-and-three-quarter-inch stock.', '2.75 in'],
  ['Thirty-one-and-a-half clear.', '31.5 mm'],
  ['A go-and-see job, 40 wide.', '40 mm'],
])('"%s": a number joined by hyphens: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['No more than 420 in diameter.', '420 mm at-most'],
  ['A 12 in pipe.', '12 in'],
  ['The air draught is one point eight.', '1.8 m'],
  ['The quay is 2.4 above the water.', '2.4 m'],
  ["The key's six square.", '6 mm'],
  ['The slab drops twelve mil over four metres.', '12 mm; 4 m'],
  ['The glue needs ten degrees.', '10 degC at-least'],
  ["The cradle's plated for fourteen tonne.", '14 t at-most'],
  ['My brother-in-law says sixty.', '60 mm'],
  ["Forty tonne he's good for.", '40 t at-most'],
])('"%s": %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['The door is one metre and eight, because I took it high.', 'IT', '1.08 m'],
  ['The vault has two metres and sixty five of height.', 'IT', '2.65 m'],
  ['Two metres and sixty mil of packing.', 'IT', '2.06 m'],
  ['It is one metre and the lid is 40 mm.', 'IT', '1 m; 40 mm'],
  ['She measures eleven point four metres by nine two.', 'NZ', '11.4 m; 9.2 m'],
  ['The bearers are hundred by seventy five.', 'NZ', '100 mm; 75 mm'],
  ['The floor is at zero point seven above the water.', 'IN', '0.7 m'],
])('"%s" in %s: %s', (said, region, figures) => {
  expect(figuresSaid(said, 'metric', region)).toBe(figures);
});

test.each([
  ['With the hinges its 24 and 3 8', '24.375 in'],
  ['The bus weighs 17 thousand 2 40', '17240 lb'],
  ["She's thirty three and a quarter the narrow way", '33.25 in'],
  ["She's thirty three, my sister", 'none'],
])('"%s" in inches: %s', (said, figures) => {
  expect(figuresSaid(said, 'us', 'US')).toBe(figures);
});

test.each([
  ['Keep eighteen inches off the woodwork.', '18 in at-least'],
  ['I keep a ruler 300 long.', '300 mm'],
  ["don't spray under 12 degrees", '12 degC at-least'],
  ['dont spray under 12 degrees', '12 degC at-least'],
  ['The jacks are rated ten tonnes.', '10 t at-most'],
  ['Eleven is too many.', 'none'],
  ['The spacing in the lounge is thirteen hundred.', '1300 mm'],
  ['The gap behind the stove is six.', '6 mm'],
  ['The gap is bad and there were six.', 'none'],
  ['Tonight its 8.', '8 degC'],
  ['It has to sit seven days before the load.', '7 d'],
])('"%s": %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  // A mixed house: inches and millimetres side by side.
  ['Too fat by five mil, they should be seventy.', 'GB', '5 mm; 70 mm'],
  ['Three inches deep, and it was 400 wide.', 'GB', '3 in; 400 mm'],
  ['The window is five hundred by six twenty.', 'CA', '500 mm; 620 mm'],
  ['The rail is 38 and a half.', 'CA', '38.5 in'],
])('"%s" in a mixed house in %s: %s', (said, region, figures) => {
  expect(figuresSaid(said, 'mixed', region)).toBe(figures);
});
