import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['metric', 'GB', 'a six mil bolt', '6 mm'],
  ['us', 'US', 'ten mil poly under the slab', '10 thou'],
  ['us', 'US', 'an eighteen mil panel', '18 mm'],
  ['metric', 'AU', 'forty mil of hardener', '40 mL'],
  ['metric', 'GB', 'the cable is six mil', '6 mm2'],
  ['metric', 'GB', 'the cable is thirty five square', '35 mm2'],
  ['metric', 'ZA', 'alternator wire, twenty five squared', '25 mm2'],
  ['metric', 'GB', 'the spindles are thirty-eight mil square', '38 mm'],
  ['metric', 'GB', 'two vents of 5,000 square mil', '5000 mm2'],
] as const)('mil in %s %s: "%s" is %s', (units, region, said, figures) => {
  expect(figuresSaid(said, units, region)).toBe(figures);
});

test.each([
  ['metric', 'GB', 'it cost forty pounds', '40 GBP'],
  ['metric', 'GB', 'it weighs forty pounds', '40 lb'],
  ['metric', 'IE', 'forty pounds to the bay', '40 lb'],
  ['metric', 'IE', 'it cost me forty quid', '40 EUR'],
  ['us', 'US', 'kept 50 pounds on the gauge', '50 psi'],
  ['us', 'US', 'it takes forty pounds', '40 lb'],
] as const)('pounds in %s %s: "%s" is %s', (units, region, said, figures) => {
  expect(figuresSaid(said, units, region)).toBe(figures);
});

test.each([
  ["I can't roof it until it's above ten degrees", '10 degC at-least'],
  ["no slating till it's back over five degrees", '5 degC at-least'],
  ['the roof is at ten degrees', '10 deg'],
  ['the kit is for pitches from 5 to 30 degrees', '5-30 deg between'],
  ["I'm planing the rafter until the roof is over ten degrees", '10 deg at-least'],
  // By words of slopes.
  ['the beds should not be sloping beyond twelve degrees', '12 deg at-most'],
  ['flatten it out to twenty two degrees', '22 deg'],
  // By a title.
  ['Oh, but the rake. Two degrees.', '2 deg'],
  ['The mast rake wants looking at by somebody who knows. Two degrees.', '2 degC'],
  // As the degrees beside them, on either side, the nearer one.
  ["The stretcher's bevel is forty degrees. My heels lift, so 43 degrees.", '40 deg; 43 deg'],
  ["My heels lift, so 43 degrees. The stretcher's bevel is forty degrees.", '43 deg; 40 deg'],
  ['The tilt was 12 degrees. It gets 17 degrees. Cold this morning, four degrees.', '12 deg; 17 deg; 4 degC'],
  ['It was cold, four degrees. It gets 17 degrees.', '4 degC; 17 degC'],
  [`The tilt was 12 degrees. ${'Then I had my tea. '.repeat(15)}It gets 17 degrees.`, '12 deg; 17 degC'],
  // Work that takes its time says so nearby; farther off its words are others.
  ['The bevel is 12 degrees. The epoxy cures at 25 degrees.', '12 deg; 25 degC'],
  ['The bevel is 12 degrees. We put a joint in between, beds coming down to eight degrees.', '12 deg; 8 deg'],
  // What is set at a plain angle.
  ['the fence is set at 45 degrees', '45 deg'],
  ['the oven is set at 90 degrees', '90 degC'],
  ['the glue is set at 17 degrees', '17 degC'],
])('degrees: "%s" is %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ['ZA', 'four thousand two hundred rand', '4200 ZAR'],
  ['KE', 'forty bob for the seal', '40 KES'],
  ['SE', 'two hundred krona', '200 SEK'],
  ['AU', 'eleven hundred bucks', '1100 AUD'],
])('money in %s: "%s" is %s', (region, said, figures) => {
  expect(figuresSaid(said, 'metric', region)).toBe(figures);
});

test.each([
  [
    'the angle of a thing that is named',
    'engine beds',
    'deg',
    'I took the beds down to eight degrees.',
    '8 deg',
  ],
  ['its warmth', 'engine beds', 'degC', 'I took the beds down to eight degrees.', '8 degC'],
  ['the angle of another thing', 'hatch', 'deg', 'I took the beds down to eight degrees.', '8 degC'],
  ['its angle, where warmth is spoken of', 'beds', 'deg', 'The beds got warm, eight degrees.', '8 degC'],
])('degrees where %s is known', (_, item, unit, said, figures) => {
  const attribute = unit === 'deg' ? 'angle' : 'temperature';
  expect(figuresSaid(said, 'metric', 'GB', { knownFigures: [{ item, attribute, value: 12, unit }] })).toBe(
    figures,
  );
});
