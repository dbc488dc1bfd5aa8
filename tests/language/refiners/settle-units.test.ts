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
