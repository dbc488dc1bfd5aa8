import * as fc from 'fast-check';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { FRACTIONS_TO_MILLIMETRES } from '../../../src/model/checks/fractions-to-millimetres.ts';
import { feetAndInches, LENGTH_IN_FRACTIONS } from '../../../src/model/checks/length-in-fractions.ts';
import { ran, resultOf } from '../../kit/given.ts';

const sixteenths = (length: string) => {
  const worked = ran(LENGTH_IN_FRACTIONS, { length });
  return {
    at: (resultOf(worked, 'nearest sixteenth').mid / 0.0254) * 16,
    offMm: resultOf(worked, 'off at the sixteenth').mid * 1000,
  };
};

test.each([
  // Computed: the nearest sixteenth and how far it is off, in millimetres.
  ['1010 mm', 636, -0.35],
  ['905 mm', 570, -0.125],
  ['18 mm', 11, -0.5375],
  ['12 mm', 8, 0.7],
  ['2440 mm', 1537, -0.0125],
  ['1220 mm', 769, 0.7875],
  // Source: https://dotsnel.com/1-16-inch-to-millimeters/
  ['131.7625 mm', 83, 0],
])('%s is %d sixteenths, %d mm off', (length, at, offMm) => {
  expect(sixteenths(length).at).toBeCloseTo(at, 9);
  expect(sixteenths(length).offMm).toBeCloseTo(offMm, 9);
});

test.each([
  [
    '1220 mm',
    'nearest 1/16: 48 1/16 in (4 ft 0 1/16 in), 0.79 mm over; nearest 1/32: 48 1/32 in (4 ft 0 1/32 in), 0.01 mm under',
  ],
  ['131.7625 mm', 'nearest 1/16: 5 3/16 in, exact; nearest 1/32: 5 3/16 in, exact'],
  ['18 mm', 'nearest 1/16: 11/16 in, 0.54 mm under; nearest 1/32: 23/32 in, 0.26 mm over'],
])('%s is told as "%s"', (length, why) => {
  expect(ran(LENGTH_IN_FRACTIONS, { length })).toMatchObject({ verdict: 'told', why });
});

test('no sixteenth is off by more than 0.79375 mm and no thirty-second by more than 0.396875 mm', () => {
  // Computed: half of one sixteenth of 25.4 mm.
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 49_999_999 }), (micrometres) => {
      const worked = ran(LENGTH_IN_FRACTIONS, { length: `${micrometres / 1000} mm` });
      expect(Math.abs(resultOf(worked, 'off at the sixteenth').mid)).toBeLessThanOrEqual(0.00079375);
      expect(Math.abs(resultOf(worked, 'off at the thirty-second').mid)).toBeLessThanOrEqual(0.000396875);
    }),
  );
});

test.each([
  // Source: https://dotsnel.com/1-16-inch-to-millimeters/
  [{ inches: '5', parts: '3', 'parts of': '16' }, '5 3/16 in is 131.7625 mm'],
  // Source: https://machinecalcs.com/decimal-to-fraction-chart
  [{ parts: '1', 'parts of': '16' }, '1/16 in is 1.5875 mm'],
  // Computed.
  [{ feet: '4', parts: '1', 'parts of': '16' }, '48 1/16 in (4 ft 0 1/16 in) is 1220.7875 mm'],
  [{ feet: '8' }, '96 in (8 ft 0 in) is 2438.4 mm'],
  [{ parts: '6', 'parts of': '16' }, '3/8 in is 9.525 mm'],
])('%o is "%s"', (inputs, why) => {
  expect(ran(FRACTIONS_TO_MILLIMETRES, inputs)).toMatchObject({ verdict: 'told', why });
});

test('every mark of a tape goes to millimetres and back to itself', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1900 }), fc.integer({ min: 1, max: 31 }), (inches, parts) => {
      const written = { inches: String(inches), parts: String(parts), 'parts of': '32' };
      const length = resultOf(ran(FRACTIONS_TO_MILLIMETRES, written), 'length');
      const back = ran(LENGTH_IN_FRACTIONS, { length });
      expect(resultOf(back, 'nearest thirty-second').mid).toBe(length.mid);
      expect(resultOf(back, 'off at the thirty-second').mid).toBe(0);
    }),
  );
});

test.each([
  [{}, 'not-run'],
  [{ parts: '3' }, 'not-run'],
  [{ 'parts of': '16', inches: '5' }, 'not-run'],
  [{ inches: '5.5' }, 'refused'],
  [{ inches: '0' }, 'refused'],
  [{ inches: '5', parts: '-3', 'parts of': '16' }, 'refused'],
  [{ parts: '1', 'parts of': '1000' }, 'refused'],
] as const)('%o gives a sentence and no number: %s', (inputs, verdict) => {
  const worked = ran(FRACTIONS_TO_MILLIMETRES, inputs);
  expect(worked.verdict).toBe(verdict);
  expect(worked.why).not.toBe('');
  expect(worked).not.toHaveProperty('results');
});

test.each(['0 mm', '-12 mm', '92 m'])('a length of %s is refused', (length) => {
  expect(ran(LENGTH_IN_FRACTIONS, { length }).verdict).toBe('refused');
});

test.each([
  ['767/16', '3 ft 11 15/16 in'],
  ['12', '1 ft 0 in'],
  ['5/2', '0 ft 2 1/2 in'],
])('%s inches are %s', (inches, said) => {
  expect(feetAndInches(new Fraction(inches))).toBe(said);
});

test('a length that is a range has the marks of both its ends', () => {
  const worked = ran(LENGTH_IN_FRACTIONS, { length: '1220 mm ± 2 mm' });
  const { low, high } = resultOf(worked, 'nearest sixteenth');
  // Computed: 1218 mm is 47.953 in and 1222 mm is 48.110 in.
  expect(low / 0.0254).toBeCloseTo(47.9375, 9);
  expect(high / 0.0254).toBeCloseTo(48.125, 9);
  expect(worked.why).toContain('from 47 15/16 to 48 1/8 in');
});

test('a length in inches goes in as one, or in parts, and not as both', () => {
  // Source: https://dotsnel.com/1-16-inch-to-millimeters/
  expect(ran(FRACTIONS_TO_MILLIMETRES, { length: '5.1875 in' }).why).toBe('5 3/16 in is 131.7625 mm');
  expect(ran(FRACTIONS_TO_MILLIMETRES, { length: '5.1875 in', inches: '5' })).toMatchObject({
    verdict: 'refused',
    why: 'a length was given twice: as one, and as feet, inches and parts',
  });
});
