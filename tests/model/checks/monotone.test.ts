/**
 * What goes up and what goes down as one size grows, for every check that gives a number, and that inches, pounds and
 * Fahrenheit give what millimetres, kilograms and Celsius give.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CHECKS, checkNamed } from '../../../src/model/checks/all-checks.ts';
import type { Check, Range } from '../../../src/model/checks/check.ts';
import { runCheck } from '../../../src/model/checks/run-check.ts';
import { sayingIn } from '../../../src/model/checks/say.ts';
import { given, quantity, resultOf, type Written } from '../../kit/given.ts';

interface Case {
  readonly check: string;
  readonly inputs: Readonly<Record<string, string | readonly string[]>>;
  readonly options?: Readonly<Record<string, string>>;
  readonly result: string;
  /** Inputs that raise the result, and that lower it, or leave it. */
  readonly up: readonly string[];
  readonly down: readonly string[];
}

const CASES: readonly Case[] = [
  {
    check: 'stack-up',
    inputs: { layers: ['18 mm', '9 mm'], limit: '60 mm' },
    result: 'total',
    up: ['layers'],
    down: [],
  },
  {
    check: 'stack-up',
    inputs: { layers: ['18 mm', '9 mm'], limit: '60 mm' },
    result: 'room left',
    up: ['limit'],
    down: ['layers'],
  },
  {
    check: 'height over finished floor',
    inputs: { height: '900 mm', layers: '22 mm' },
    result: 'height over finished floor',
    up: ['height'],
    down: ['layers'],
  },
  {
    check: 'clearance',
    inputs: { opening: '706 mm', part: '600 mm', gap: '2 mm' },
    result: 'room left',
    up: ['opening'],
    down: ['part', 'gap'],
  },
  {
    check: 'panel through opening',
    inputs: {
      'panel length': '2400 mm',
      'panel width': '880 mm',
      thickness: '27 mm',
      'opening width': '710 mm',
      'opening height': '540 mm',
    },
    result: 'widest that passes',
    up: ['opening width', 'opening height'],
    down: ['thickness'],
  },
  {
    check: 'standing up',
    inputs: { depth: '600 mm', ceiling: '2440 mm', height: '2000 mm' },
    result: 'tallest that stands up',
    up: ['ceiling'],
    down: ['depth'],
  },
  {
    check: 'rod round corner',
    inputs: { 'first passage': '600 mm', 'second passage': '700 mm' },
    result: 'longest rod',
    up: ['first passage', 'second passage'],
    down: [],
  },
  {
    check: 'swing clearance',
    inputs: {
      'box length': '600 mm',
      'box depth': '40 mm',
      'pivot from back': '0 mm',
      'pivot from bottom': '0 mm',
      'from angle': '0 deg',
      'to angle': '60 deg',
      ceiling: '2 m',
    },
    result: 'room left',
    up: ['ceiling'],
    down: ['box length', 'box depth', 'to angle'],
  },
  {
    check: 'slope',
    inputs: { rise: '180 mm', run: '2200 mm' },
    result: 'angle',
    up: ['rise'],
    down: ['run'],
  },
  {
    check: 'rise and run',
    inputs: { angle: '30 deg', run: '2400 mm' },
    result: 'rise',
    up: ['angle', 'run'],
    down: [],
  },
  {
    check: 'taper',
    inputs: { 'large end': '60 mm', 'small end': '40 mm', length: '900 mm' },
    result: 'angle',
    up: ['large end'],
    down: ['small end', 'length'],
  },
  {
    check: 'diagonal for square',
    inputs: { length: '1200 mm', width: '800 mm' },
    result: 'diagonal',
    up: ['length', 'width'],
    down: [],
  },
  {
    check: 'fall over a run',
    inputs: { run: '1500 mm', fall: '0.025' },
    result: 'drop',
    up: ['run', 'fall'],
    down: [],
  },
  {
    check: 'sheet mass',
    inputs: { length: '2440 mm', width: '1220 mm', thickness: '18 mm' },
    options: { material: 'plywood' },
    result: 'mass',
    up: ['length', 'width', 'thickness'],
    down: [],
  },
  {
    check: 'tank contents mass',
    inputs: { volume: '180 L' },
    options: { contents: 'fresh water' },
    result: 'mass',
    up: ['volume'],
    down: [],
  },
  {
    check: 'running mass',
    inputs: { part: ['230 kg', '60 kg'], limit: '400 kg' },
    result: 'left to the limit',
    up: ['limit'],
    down: ['part'],
  },
  {
    check: 'tank volume',
    inputs: { length: '900 mm', width: '450 mm', height: '400 mm' },
    result: 'volume',
    up: ['length', 'width', 'height'],
    down: [],
  },
  {
    check: 'prismoidal tank',
    inputs: { 'first end': '0.2 m2', middle: '0.16 m2', 'other end': '0.1 m2', length: '1100 mm' },
    result: 'volume',
    up: ['first end', 'middle', 'other end', 'length'],
    down: [],
  },
  {
    check: 'length in fractions',
    inputs: { length: '560 mm' },
    result: 'nearest sixteenth',
    up: ['length'],
    down: [],
  },
  {
    check: 'fractions to millimetres',
    inputs: { length: '5 in' },
    result: 'length',
    up: ['length'],
    down: [],
  },
  {
    check: 'pieces from stock',
    inputs: { stock: '2247 mm', piece: '297 mm', kerf: '3 mm' },
    result: 'pieces',
    up: ['stock'],
    down: ['piece', 'kerf'],
  },
  {
    check: 'cure time',
    inputs: { time: '24 h', 'data sheet temperature': '20 degC', temperature: '15 degC' },
    result: 'cured after',
    up: ['time'],
    down: ['temperature'],
  },
  {
    check: 'drying time',
    inputs: { time: '16 h', 'data sheet temperature': '20 degC', temperature: '15 degC' },
    result: 'dry after',
    up: ['time'],
    down: ['temperature'],
  },
  {
    check: 'pot life',
    inputs: { time: '25 min', 'data sheet temperature': '20 degC', temperature: '15 degC' },
    result: 'usable for',
    up: ['time'],
    down: ['temperature'],
  },
  {
    check: 'recoat window',
    inputs: { earliest: '8 h', latest: '48 h', 'data sheet temperature': '20 degC', temperature: '15 degC' },
    result: 'recoat from',
    up: ['earliest'],
    down: ['temperature'],
  },
  {
    check: 'dew point',
    inputs: { air: '18 degC', humidity: '0.7' },
    result: 'dew point',
    up: ['air', 'humidity'],
    down: [],
  },
  {
    check: 'voltage drop',
    inputs: { current: '10 A', length: '6 m', area: '4 mm2' },
    result: 'drop',
    up: ['current', 'length'],
    down: ['area'],
  },
  {
    check: 'battery',
    inputs: { energy: '1200 Wh', voltage: '12 V', 'usable share': '0.5' },
    result: 'bank needed',
    up: ['energy'],
    down: ['voltage', 'usable share'],
  },
  {
    check: 'load sum',
    inputs: { load: ['60 W', '12 W'], 'time on': ['10 h', '24 h'] },
    result: 'energy',
    up: ['load', 'time on'],
    down: [],
  },
  {
    check: 'conduit fill',
    inputs: { cable: ['7 mm', '7 mm'], bore: '27 mm' },
    result: 'fill',
    up: ['cable'],
    down: ['bore'],
  },
];

const named = (name: string): Check => {
  const check = checkNamed(name);
  if (!check) throw new Error(`no check ${name}`);
  return check;
};
const rangesOf = (inputs: Case['inputs']): Record<string, readonly Range[]> =>
  Object.fromEntries(
    Object.entries(inputs).map(([name, written]) => [name, [written].flat().map((one) => quantity(one))]),
  );
const times =
  (factor: number) =>
  ({ low, mid, high }: Range): Range => ({
    low: low * factor,
    mid: mid * factor,
    high: high * factor,
  });

test('every check that gives a number is among them, but for a count of sheets, which has a test of its own', () => {
  const told = new Set(CASES.map(({ check }) => check));
  const left = CHECKS.filter(({ gives, name }) => gives !== undefined && !told.has(name)).map(
    ({ name }) => name,
  );
  expect(left).toEqual(['sheets for pieces']);
});

describe.each(CASES)('$check: $result', ({ check, inputs, options, result, up, down }) => {
  const numberOf = (changed: Record<string, Written>) =>
    resultOf(runCheck(named(check), given({ ...rangesOf(inputs), ...changed }, options)), result).mid;
  const moves = [...up.map((input) => [input, 1] as const), ...down.map((input) => [input, -1] as const)];

  test.each(moves)('a larger %s moves it by %d, or leaves it', (input, way) => {
    const base = rangesOf(inputs)[input] ?? [];
    let moved = 0;
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1.06, noNaN: true }),
        fc.double({ min: 1, max: 1.06, noNaN: true }),
        (one, more) => {
          const [near, far] = [
            numberOf({ [input]: base.map(times(one)) }),
            numberOf({ [input]: base.map(times(one * more)) }),
          ];
          const noise = 1e-9 * Math.max(1, Math.abs(near));
          expect((far - near) * way).toBeGreaterThanOrEqual(-noise);
          if (Math.abs(far - near) > noise) moved++;
        },
      ),
      { numRuns: 60, seed: 3 },
    );
    // A larger cut may take no piece of a long stock.
    if (!['kerf', 'data sheet temperature'].includes(input)) expect(moved).toBeGreaterThan(0);
  });

  test('inches, pounds and Fahrenheit change the words and no number', () => {
    const [metric, us] = (['metric', 'us'] as const).map((system) =>
      runCheck(named(check), given(rangesOf(inputs), options, sayingIn(system))),
    );
    expect(us?.verdict).toBe(metric?.verdict);
    expect(us && 'results' in us && us.results).toEqual(metric && 'results' in metric && metric.results);
  });
});
