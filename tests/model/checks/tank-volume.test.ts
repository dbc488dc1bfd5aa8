import { expect, test } from 'vitest';
import { TANK_VOLUME } from '../../../src/model/checks/tank-volume.ts';
import { holdsWhatLiesWithin, isMonotone } from '../../kit/check-properties.ts';
import { ran, resultOf } from '../../kit/given.ts';

/** Litres in a gallon: 231 in3 and 4.54609 L. Source: http://pewterbank.com/html/american_measures.htm */
const [US, IMPERIAL] = [3.785411784, 4.54609];

const volumeOf = (length: string, width: string, height: string) =>
  resultOf(ran(TANK_VOLUME, { length, width, height }), 'volume').mid * 1000;

test.each([
  // Source: http://cars454.blogspot.com/2015/05/measure-fuel-oil-tank-capabilities.html (US gallons)
  ['27 in', '48 in', '12 in', 254.85, 67.324],
  // Source: https://www.boatdesign.net/threads/determining-capacity-of-a-tank.17614/
  ['12 in', '24 in', '48 in', 226.53, 59.84],
  // Same thread, litres; the gallons are computed.
  ['600 mm', '600 mm', '600 mm', 216, 57.061],
])('%s x %s x %s holds %d L, which is %d US gal', (length, width, height, litres, gallons) => {
  expect(Math.abs(volumeOf(length, width, height) - litres)).toBeLessThan(0.01);
  expect(Math.abs(volumeOf(length, width, height) / US - gallons)).toBeLessThan(0.01);
});

test('both gallons are named, and are never one for the other', () => {
  const worked = ran(TANK_VOLUME, {
    length: '600 mm',
    width: '600 mm',
    height: '600 mm',
    'usable share': '85 %',
  });
  expect(worked.why).toBe('216 L (57.06 US gal, 47.51 imp gal); usable 183.6 L (48.5 US gal, 40.39 imp gal)');
  const units = 'results' in worked ? worked.results.map(({ name, unit }) => [name, unit]) : [];
  expect(units).toEqual([
    ['volume', 'L'],
    ['volume in US gallons', 'US gal'],
    ['volume in imperial gallons', 'imp gal'],
    ['usable volume', 'L'],
    ['usable volume in US gallons', 'US gal'],
    ['usable volume in imperial gallons', 'imp gal'],
  ]);
  expect(216 / IMPERIAL).toBeCloseTo(47.51, 2);
});

test('inches hold what their millimetres hold', () => {
  expect(volumeOf('27 in', '48 in', '12 in')).toBeCloseTo(volumeOf('685.8 mm', '1219.2 mm', '304.8 mm'), 9);
});

test('without a usable share the whole inside is counted, and said to be', () => {
  const worked = ran(TANK_VOLUME, { length: '600 mm', width: '600 mm', height: '600 mm' });
  expect('notes' in worked && worked.notes.at(-1)).toBe(
    'no usable share was given: the whole inside is counted',
  );
});

test.each([
  ['length', '0 mm'],
  ['width', '-600 mm'],
  ['height', '600 m'],
  ['usable share', '120 %'],
  ['usable share', '0 %'],
])('%s of %s is refused with a sentence and no number', (input, written) => {
  const worked = ran(TANK_VOLUME, { length: '600 mm', width: '600 mm', height: '600 mm', [input]: written });
  expect(worked).toMatchObject({ verdict: 'refused', why: expect.stringMatching(new RegExp(`^${input}: `)) });
  expect(worked).not.toHaveProperty('results');
});

test('the range holds every volume that the sizes allow, and every size adds to it', () => {
  const draws = {
    length: { least: 0.05, most: 3 },
    width: { least: 0.05, most: 2 },
    height: { least: 0.05, most: 2 },
    'usable share': { least: 0.3, most: 1 },
  };
  holdsWhatLiesWithin(TANK_VOLUME, draws, ['volume', 'usable volume']);
  isMonotone(TANK_VOLUME, draws, 'volume', { rises: ['length', 'width', 'height'] });
  isMonotone(TANK_VOLUME, draws, 'usable volume', { rises: Object.keys(draws) });
});
