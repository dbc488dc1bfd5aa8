import { expect, test } from 'vitest';
import { DEW_POINT } from '../../../src/model/checks/dew-point-check.ts';
import { rangeAbout } from '../../../src/model/checks/ranges.ts';
import { holdsWhatLiesWithin, isMonotone } from '../../kit/check-properties.ts';
import { ran, resultOf } from '../../kit/given.ts';

const fahrenheit = (kelvin: number) => (kelvin - 273.15) * 1.8 + 32;

test.each([
  // Air and dew point as printed, in Fahrenheit: the charts round down. The Magnus values are computed. Source:
  // https://handypdf.com/pdf/dew-point-calculation-sample-chart, https://ranachem.com/en/dew-point/,
  // https://www.scribd.com/document/557686649/
  ['70 degF', '65 %', 57, 57.7],
  ['75 degF', '35 %', 45, 45.5],
  ['80 degF', '50 %', 59, 59.7],
])(
  'air of %s at %s has a dew point of %d F on the chart, %d by the formula',
  (air, humidity, printed, magnus) => {
    const dew = fahrenheit(resultOf(ran(DEW_POINT, { air, humidity }), 'dew point').mid);
    expect(Math.floor(dew)).toBe(printed);
    expect(Math.abs(dew - magnus)).toBeLessThan(0.06);
  },
);

test('the surface must be 3 degrees Celsius above it: the same chart says 62 F for 57', () => {
  // 3 °C is 5.4 F and the chart prints 5 F over a dew point that is rounded down.
  const least = fahrenheit(
    resultOf(ran(DEW_POINT, { air: '70 degF', humidity: '65 %' }), 'least surface').mid,
  );
  expect(least).toBeGreaterThanOrEqual(62);
  expect(least).toBeLessThan(63.2);
});

test.each([
  ['64 degF', 'holds'],
  ['61 degF', 'broken'],
  ['55 degF', 'broken'],
])('a surface of %s in air of 70 F at 65 %% is %s', (surface, verdict) => {
  expect(ran(DEW_POINT, { air: '70 degF', humidity: '65 %', surface }).verdict).toBe(verdict);
});

test('a humidity that may be higher is judged at its worst', () => {
  const at = (spread: number) =>
    ran(DEW_POINT, { air: '20 degC', humidity: rangeAbout(0.6, spread), surface: '15.5 degC' }).verdict;
  expect([at(0), at(0.1)]).toEqual(['holds', 'broken']);
});

test('saturated air is at its dew point', () => {
  expect(resultOf(ran(DEW_POINT, { air: '12 degC', humidity: '100 %' }), 'dew point').mid).toBeCloseTo(
    285.15,
    9,
  );
});

test.each([
  [{ humidity: '65 %' }, 'not-run'],
  [{ air: '20 degC' }, 'not-run'],
  [{ air: '20 degC', humidity: '0 %' }, 'refused'],
  [{ air: '20 degC', humidity: '-5 %' }, 'refused'],
  [{ air: '20 degC', humidity: '65' }, 'refused'],
  [{ air: '80 degC', humidity: '65 %' }, 'refused'],
  [{ air: '-60 degC', humidity: '65 %' }, 'refused'],
  [{ air: '20 degC', humidity: rangeAbout(0.98, 0.05) }, 'refused'],
])('%o is %s, with no number', (inputs, verdict) => {
  const worked = ran(DEW_POINT, inputs);
  expect(worked.verdict).toBe(verdict);
  expect(worked).not.toHaveProperty('results');
});

test('Celsius and Fahrenheit come to the same', () => {
  const celsius = resultOf(ran(DEW_POINT, { air: '25 degC', humidity: '50 %' }), 'dew point').mid;
  expect(resultOf(ran(DEW_POINT, { air: '77 degF', humidity: '0.5' }), 'dew point').mid).toBeCloseTo(
    celsius,
    9,
  );
});

test('the ranges hold every dew point that the air allows; warmth and damp raise it', () => {
  const draws = {
    air: { least: 263, most: 320 },
    humidity: { least: 0.05, most: 1 },
    surface: { least: 265, most: 320 },
  };
  holdsWhatLiesWithin(DEW_POINT, draws, ['dew point', 'surface above it']);
  isMonotone(DEW_POINT, draws, 'dew point', { rises: ['air', 'humidity'] });
  isMonotone(DEW_POINT, draws, 'surface above it', { rises: ['surface'], falls: ['air', 'humidity'] });
});
