import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { PRISMOIDAL_TANK } from '../../../src/model/checks/prismoidal-tank.ts';
import { holdsWhatLiesWithin, isMonotone } from '../../kit/check-properties.ts';
import { ran, resultOf } from '../../kit/given.ts';

const CUBIC_FOOT = 0.3048 ** 3;

test('the published wedge is 3 cubic feet by its ends and 2.875 by the prismoidal formula', () => {
  // Source: http://www.boatus.com/DIYArticles/volumes.asp (3 ft long; ends 2 x (1 + 0.5)/2 and 1 x (0.75 + 0.25)/2 ft,
  // 3 ft3 by the mean of the ends). The prismoidal 2.875 is computed: half way it is 1.5 x (0.875 + 0.375)/2 ft.
  const worked = ran(PRISMOIDAL_TANK, {
    'first end': '1.5 ft2',
    middle: '0.9375 ft2',
    'other end': '0.5 ft2',
    length: '3 ft',
  });
  expect(resultOf(worked, 'volume').mid / CUBIC_FOOT).toBeCloseTo(2.875, 9);
  expect('notes' in worked && worked.notes.at(-1)).toBe(
    'the mean of the two ends alone would be 4.35 % more',
  );
});

test('with three equal areas it is a box', () => {
  const worked = ran(PRISMOIDAL_TANK, {
    'first end': '0.36 m2',
    middle: '0.36 m2',
    'other end': '0.36 m2',
    length: '600 mm',
  });
  expect(resultOf(worked, 'volume').mid).toBeCloseTo(0.216, 12);
});

test('it is exact for every tank with straight edges', () => {
  const side = fc.integer({ min: 50, max: 2000 });
  const property = fc.property(side, side, side, side, side, (width, toWidth, height, toHeight, length) => {
    const area = (share: number) =>
      (width + (toWidth - width) * share) * (height + (toHeight - height) * share);
    const worked = ran(PRISMOIDAL_TANK, {
      'first end': `${area(0)} mm2`,
      middle: `${area(0.5)} mm2`,
      'other end': `${area(1)} mm2`,
      length: `${length} mm`,
    });
    // The area along it, summed in four hundred slices at their middles.
    const slices = Array.from({ length: 400 }, (_, slice) => area((slice + 0.5) / 400));
    const summed = (slices.reduce((sum, slice) => sum + slice, 0) / 400) * length * 1e-9;
    expect(resultOf(worked, 'volume').mid / summed).toBeCloseTo(1, 4);
  });
  fc.assert(property, { numRuns: 100 });
});

test.each([
  ['first end', '0 m2'],
  ['middle', '-1 m2'],
  ['length', '0 mm'],
])('%s of %s is refused', (input, written) => {
  const inputs = {
    'first end': '0.3 m2',
    middle: '0.2 m2',
    'other end': '0.1 m2',
    length: '1 m',
    [input]: written,
  };
  expect(ran(PRISMOIDAL_TANK, inputs)).toMatchObject({ verdict: 'refused' });
});

test('the range holds every volume that the inputs allow, and every input adds to it', () => {
  const area = { least: 0.01, most: 2 };
  const draws = { 'first end': area, middle: area, 'other end': area, length: { least: 0.1, most: 3 } };
  holdsWhatLiesWithin(PRISMOIDAL_TANK, draws, ['volume']);
  isMonotone(PRISMOIDAL_TANK, draws, 'volume', { rises: Object.keys(draws) });
});
