import { expect, test } from 'vitest';
import { TANK_CONTENTS_MASS } from '../../../src/model/checks/tank-contents-mass.ts';
import { holdsWhatLiesWithin, isMonotone } from '../../kit/check-properties.ts';
import { ran, resultOf } from '../../kit/given.ts';

const massOf = (volume: string, density: string) =>
  resultOf(ran(TANK_CONTENTS_MASS, { volume, density }), 'mass').mid;

test('a litre of water weighs a kilogram (common practice, no source)', () => {
  expect(
    resultOf(ran(TANK_CONTENTS_MASS, { volume: '216 L' }, { contents: 'fresh water' }), 'mass').mid,
  ).toBe(216);
  expect(massOf('216 L', '1 kg/L')).toBe(216);
});

test('diesel is a range, EN 590: https://www.ncheurope.com/en/diesel-requirements-eu', () => {
  const worked = ran(TANK_CONTENTS_MASS, { volume: '100 L' }, { contents: 'diesel' });
  expect(worked.why).toBe('82 to 84.5 when full');
});

test('three cubic feet at 62.2 lb/ft3 weigh 186.6 lb', () => {
  // Source: http://www.boatus.com/DIYArticles/volumes.asp prints 3 ft3 and 186.6 lb; the density is what they give.
  expect(massOf('3 ft3', '62.2 lb/ft3') / 0.45359237).toBeCloseTo(186.6, 9);
});

test('an imperial gallon of water weighs a fifth more than a US one', () => {
  // Gallons of 4.54609 and 3.785411784 L: http://pewterbank.com/html/american_measures.htm
  expect(massOf('1 imp gal', '1 kg/L')).toBeCloseTo(4.54609, 12);
  expect(massOf('1 US gal', '1 kg/L')).toBeCloseTo(3.785411784, 12);
});

test('without a density and without contents nothing is worked out', () => {
  expect(ran(TANK_CONTENTS_MASS, { volume: '216 L' })).toMatchObject({ verdict: 'not-run', missing: [] });
});

test.each(['0 L', '-20 L', '9000 m3'])('a tank of %s is refused', (volume) => {
  expect(ran(TANK_CONTENTS_MASS, { volume }, { contents: 'fresh water' })).toMatchObject({
    verdict: 'refused',
    why: expect.stringMatching(/^volume: /),
  });
});

test('the range holds every mass that the inputs allow, and both inputs add to it', () => {
  const draws = { volume: { least: 0.005, most: 2 }, density: { least: 600, most: 1400 } };
  holdsWhatLiesWithin(TANK_CONTENTS_MASS, draws, ['mass']);
  isMonotone(TANK_CONTENTS_MASS, draws, 'mass', { rises: ['volume', 'density'] });
});
