import { expect, test } from 'vitest';
import { dewPointFrom, dewPointOf } from '../../src/model/kept/dew-point.ts';

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;

/**
 * Air and dew point in Fahrenheit as printed in dew point charts for coatings, which round down. Source:
 * https://handypdf.com/pdf/dew-point-calculation-sample-chart, https://ranachem.com/en/dew-point/
 */
test.each([
  [70, 65, 57],
  [75, 35, 45],
  [80, 50, 59],
])('air of %d F at %d %% has a dew point of %d F', (air, humidity, printed) => {
  const dew = dewPointOf(celsius(air), humidity) * 1.8 + 32;
  expect(dew).toBeGreaterThanOrEqual(printed);
  expect(dew).toBeLessThan(printed + 1);
});

const fact = (what: 'air' | 'surface' | 'humidity', value: number, unit: string) => ({
  what,
  words: String(value),
  value,
  unit,
});

test('a surface less than 5 F above it is close, as the same charts say', () => {
  const at = (surface: number) =>
    dewPointFrom([fact('air', 70, 'degF'), fact('humidity', 65, '%'), fact('surface', surface, 'degF')]);
  expect(at(64)).toMatchObject({ unit: 'degF', isClose: false });
  expect(at(61)).toMatchObject({ isClose: true });
  expect(at(57)?.surfaceAbove).toBeLessThan(0);
});

test('saturated air is at its dew point', () => {
  expect(dewPointOf(12, 100)).toBeCloseTo(12, 9);
});

test.each([
  ['no humidity', [fact('air', 14, 'degC')]],
  ['no air', [fact('humidity', 60, '%')]],
  ['a humidity that is none', [fact('air', 14, 'degC'), fact('humidity', 140, '%')]],
  ['degrees without a unit', [{ what: 'air', words: 'fourteen' }, fact('humidity', 60, '%')]],
] as const)('nothing is worked out with %s', (_name, facts) => {
  expect(dewPointFrom(facts)).toBeUndefined();
});

test('without a surface only the dew point is known', () => {
  expect(dewPointFrom([fact('air', 14, 'degC'), fact('humidity', 65, '%')])).toEqual({
    value: 7.5,
    unit: 'degC',
  });
});
