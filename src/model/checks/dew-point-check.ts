import { dewPointOf, LEAST_ABOVE_C } from '../kept/dew-point.ts';
import type { Check, Given, Worked } from './check.ts';
import { isAtLeast } from './noise.ts';
import { exactRange, less, maybe, one, rangeOf, sumOf } from './ranges.ts';
import { saidRange } from './said-range.ts';

/** Kelvin at nought Celsius. */
const ICE = 273.15;
/** The Magnus formula's own range, in kelvin: -45 to 60 degrees Celsius. */
const [COLDEST, WARMEST] = [228.15, 333.15];
const KIND = 'temperature difference';

/**
 * Dew point of the air, and whether the surface is far enough above it for a coat.
 * Formula: Td = b x / (a - x), x = ln(RH / 100 %) + a T / (b + T), a = 17.62, b = 243.12 °C; surface >= Td + 3 °C.
 * Source: Magnus formula, WMO guide to instruments, from memory; the 3 °C (5 °F) as on https://ranachem.com/en/dew-point/
 * and https://elcometer.com/en/what-is-dewpoint.html
 */
export const DEW_POINT: Check = {
  name: 'dew point',
  says: 'the dew point of the air, and whether the surface is at least 3 °C above it',
  formula:
    'Td = b x / (a - x), x = ln(RH / 100 %) + a T / (b + T), a = 17.62, b = 243.12 °C; surface >= Td + 3 °C',
  source:
    'Magnus formula, WMO guide to instruments, from memory; 3 °C (5 °F): https://ranachem.com/en/dew-point/ and https://elcometer.com/en/what-is-dewpoint.html',
  inputs: [
    { name: 'air', kind: 'temperature', says: 'temperature of the air', most: WARMEST, ofAir: true },
    { name: 'humidity', kind: 'ratio', says: 'relative humidity of the air', most: 1, unit: '%' },
    { name: 'surface', kind: 'temperature', says: 'temperature of the surface itself', optional: true },
  ],
  gives: 'dew point',
  run: dewPoint,
};

function dewPoint(given: Given): Worked {
  const [air, humidity] = [one(given, 'air'), one(given, 'humidity')];
  const { say } = given;
  if (air.low < COLDEST || humidity.high > 1) {
    return { verdict: 'refused', why: 'the formula holds from -45 to 60 °C and up to 100 % humidity' };
  }
  const dew = rangeOf((kelvin, share) => dewPointOf(kelvin - ICE, share * 100) + ICE, air, humidity);
  const least = sumOf([dew, exactRange(LEAST_ABOVE_C)]);
  const results = [
    { name: 'dew point', kind: 'temperature', range: dew },
    { name: 'least surface', kind: 'temperature', range: least },
  ];
  const notes = [
    "the product's data sheet decides how far above it the surface must be",
    'charts round down',
  ];
  const told = `dew point ${saidRange(say, dew, 'temperature')}`;
  const surface = maybe(given, 'surface');
  if (!surface) {
    const why = `${told}: the surface must be ${say(least.high, 'temperature')} or more, and was not given`;
    return { verdict: 'told', why, results, notes };
  }
  const above = less(surface, dew);
  const [apart, side] = [say(Math.abs(above.low), KIND), above.low < 0 ? 'below' : 'above'];
  return {
    verdict: isAtLeast(above.low, LEAST_ABOVE_C) ? 'holds' : 'broken',
    why: `${told}, surface ${saidRange(say, surface, 'temperature')}: ${apart} ${side} it at worst, ${say(LEAST_ABOVE_C, KIND)} wanted`,
    results: [...results, { name: 'surface above it', kind: KIND, range: above }],
    notes,
  };
}
