/** The units in which people read what a check gives: by its size, its kind and the system of the project. */
import { describe, expect, test } from 'vitest';
import { baseUnit } from '../../../src/model/base-units.ts';
import {
  exampleOf,
  readable,
  type System,
  sayingIn,
  systemFor,
  systemOf,
  systemOfWarmth,
  unitToRead,
} from '../../../src/model/checks/say.ts';
import { convert, unitKind } from '../../../src/model/units.ts';

/** Kinds with the units they are read in, smallest first, and the size from which on the next one is read. */
const SCALES: readonly (readonly [
  System | 'both',
  kind: string,
  units: readonly string[],
  from: readonly number[],
])[] = [
  ['metric', 'length', ['mm', 'm'], [10]],
  ['metric', 'mass', ['g', 'kg', 't'], [1, 10_000]],
  ['metric', 'area', ['mm2', 'cm2', 'm2'], [0.0005, 0.05]],
  ['metric', 'volume', ['mL', 'L', 'm3'], [0.001, 10]],
  ['metric', 'pressure', ['Pa', 'kPa', 'bar'], [1000, 50_000]],
  ['metric', 'temperature', ['degC'], []],
  ['metric', 'temperature difference', ['degC diff'], []],
  ['metric', 'torque', ['N.m'], []],
  ['metric', 'speed', ['km/h'], []],
  ['us', 'length', ['in', 'ft'], [144 * 0.0254]],
  ['us', 'mass', ['oz', 'lb'], [0.45359237]],
  ['us', 'area', ['in2', 'ft2'], [0.09290304]],
  ['us', 'volume', ['floz', 'gal'], [0.00095]],
  ['us', 'pressure', ['psi'], []],
  ['us', 'temperature', ['degF'], []],
  ['us', 'temperature difference', ['degF diff'], []],
  ['us', 'torque', ['ft.lbf'], []],
  ['us', 'speed', ['mph'], []],
  ['both', 'voltage', ['mV', 'V'], [0.1]],
  ['both', 'current', ['mA', 'A'], [0.1]],
  ['both', 'power', ['W', 'kW'], [10_000]],
  ['both', 'energy', ['Wh', 'kWh'], [10_000]],
  ['both', 'time', ['s', 'min', 'h', 'd'], [120, 7200, 259_200]],
];

describe('the unit of a size', () => {
  test.each(SCALES)('in %s, of %s', (system, kind, units, from) => {
    for (const one of system === 'both' ? (['metric', 'us'] as const) : [system]) {
      expect(unitToRead(0, kind, one)).toBe(units[0]);
      for (const [at, size] of from.entries()) {
        expect(unitToRead(size * 0.999, kind, one)).toBe(units[at]);
        expect(unitToRead(size, kind, one)).toBe(units[at + 1]);
        expect(unitToRead(-size, kind, one)).toBe(units[at + 1]);
      }
    }
    for (const unit of units) expect(unitKind(unit)?.kind).toBe(kind);
    expect(from.length).toBe(units.length - 1);
  });

  test('of a kind that has no scale is its base unit', () => {
    expect(unitToRead(3, 'angle', 'us')).toBe('deg');
    expect(unitToRead(3, 'money:GBP', 'metric')).toBe(baseUnit('money:GBP'));
  });
});

describe('a size is rounded', () => {
  test.each([
    ['to a tenth of a millimetre', 0.123456, 'mm', 123.5],
    ['down where that is nearer', 0.12344, 'mm', 123.4],
    ['but not to nothing', 0.00003217, 'mm', 0.03217],
    ['to a thirty-second of an inch', 0.0254 * 3.04, 'in', 3.03125],
    ['to four figures', 1.23456, 'm', 1.235],
    ['to four figures of small ones', 0.00123456, 'kg', 0.001235],
    ['to a whole one from five figures on', 12_345.6, 'kg', 12_346],
    ['and below nought', -12_345.6, 'kg', -12_346],
    ['to four figures just before', 9999.4, 'kg', 9999],
    ['from the nought of its scale', 293.15, 'degC', 20],
    ['what binary fractions leave is nothing', 1e-13, 'm', 0],
    ['and what is more is something', 1e-11, 'm', 1e-11],
    ['as it is in a unit that is not known', 3.2, 'wicket', 3.2],
  ] as const)('%s', (_what, base, unit, value) => {
    expect(readable(base, unit)).toEqual({ value, unit });
  });

  test('gallons are those of the region', () => {
    expect(readable(0.00454609 * 3, 'gal', 'GB').value).toBe(3);
    expect(readable(0.003785411784 * 3, 'gal', 'US').value).toBe(3);
  });
});

describe('the system', () => {
  test.each([
    ['metric', ['in', 'lb'], 'metric'],
    ['us', ['mm'], 'us'],
    ['mixed', [], 'metric'],
    ['mixed', ['in', 'mm'], 'us'],
    ['mixed', ['mm', 'in'], 'metric'],
    ['mixed', ['V', 'h', 'in'], 'us'],
    ['mixed', ['V', 'kg', 'in'], 'metric'],
    ['mixed', ['V', 'h'], 'metric'],
  ] as const)('of a project in %s units with figures in %j is %s', (house, units, system) => {
    expect(systemOf(house, units)).toBe(system);
  });

  test.each([
    [[], {}],
    [['mm', 'in'], {}],
    [['degC'], { warmth: 'metric' }],
    [['degF', 'mm'], { warmth: 'us' }],
    [['degF', 'degF'], { warmth: 'us' }],
    [['degC', 'degF'], {}],
    [['degF', 'degC'], {}],
  ] as const)('of temperatures given as %j is %j', (units, warmth) => {
    expect(systemOfWarmth(units)).toEqual(warmth);
  });

  test('of temperatures and of their differences is their own where there is one', () => {
    for (const kind of ['temperature', 'temperature difference']) {
      expect(systemFor(kind, { all: 'us', warmth: 'metric' })).toBe('metric');
      expect(systemFor(kind, { all: 'us' })).toBe('us');
    }
    expect(systemFor('length', { all: 'us', warmth: 'metric' })).toBe('us');
  });
});

test('a size is said in the system, or in the unit that is asked for', () => {
  expect(sayingIn('metric')(0.56, 'length')).toBe('560 mm');
  expect(sayingIn('metric')(0.56, 'length', 'cm')).toBe('56 cm');
  expect(sayingIn('us')(0.254, 'length')).toBe('10 in');
  const mixed = sayingIn({ all: 'us', warmth: 'metric' });
  expect(mixed(0.254, 'length')).toBe('10 in');
  expect(mixed(293.15, 'temperature')).toContain('20');
});

const EXAMPLE_KINDS = [
  ...['length', 'mass', 'area', 'volume', 'temperature', 'ratio', 'angle', 'voltage', 'current', 'charge'],
  ...['power', 'energy', 'time', 'temperature difference', 'torque', 'speed', 'pressure', 'density'],
];

test.each(EXAMPLE_KINDS)('an example of %s is a number and a unit of that kind', (kind) => {
  for (const system of ['metric', 'us'] as const) {
    const [, number = '', unit = ''] = /^([\d.]+)(?: (.+))?$/.exec(exampleOf(kind, system)) ?? [];
    expect(Number(number)).toBeGreaterThan(0);
    expect(unitKind(unit === '' ? '1' : unit)?.kind).toBe(kind);
  }
});

test('examples in both systems are of a like size, each in its own units', () => {
  for (const kind of ['length', 'mass', 'area', 'volume', 'temperature']) {
    const [metric, us] = (['metric', 'us'] as const).map((system) => {
      const [value, unit = ''] = exampleOf(kind, system).split(' ');
      return { value: Number(value), unit };
    }) as [{ value: number; unit: string }, { value: number; unit: string }];
    expect(us.unit).not.toBe(metric.unit);
    const there = convert(us, metric.unit);
    expect((there?.value ?? 0) / metric.value).toBeGreaterThan(0.8);
    expect((there?.value ?? 0) / metric.value).toBeLessThan(1.25);
  }
});
