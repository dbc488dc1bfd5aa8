/** Numbers of checks in the units that people read: base units in, millimetres, inches, kilos or pounds out. */
import type { HouseUnits, Quantity, UnitName } from '../../language/notes.ts';
import { baseUnit } from '../base-units.ts';
import { quantityText } from '../quantity-words.ts';
import { isCustomary, unitKind } from '../units.ts';
import type { Say } from './check.ts';

export type System = 'metric' | 'us';

/** Units of a kind, each from the size on from which it is read, in the base unit of the kind; smallest first. */
type Scale = readonly (readonly [from: number, unit: UnitName])[];

const INCHES_UP_TO = 12 * 12 * 0.0254;

/** What a size is said in, by its size. Common practice, no source. */
const SCALES: Readonly<Record<System, Readonly<Record<string, Scale>>>> = {
  metric: {
    length: [
      [0, 'mm'],
      [10, 'm'],
    ],
    mass: [
      [0, 'g'],
      [1, 'kg'],
      [10_000, 't'],
    ],
    area: [
      [0, 'mm2'],
      [0.0005, 'cm2'],
      [0.05, 'm2'],
    ],
    volume: [
      [0, 'mL'],
      [0.001, 'L'],
      [10, 'm3'],
    ],
    pressure: [
      [0, 'Pa'],
      [1000, 'kPa'],
      [50_000, 'bar'],
    ],
    temperature: [[0, 'degC']],
    'temperature difference': [[0, 'degC diff']],
    torque: [[0, 'N.m']],
    speed: [[0, 'km/h']],
  },
  us: {
    length: [
      [0, 'in'],
      [INCHES_UP_TO, 'ft'],
    ],
    mass: [
      [0, 'oz'],
      [0.45359237, 'lb'],
    ],
    area: [
      [0, 'in2'],
      [0.09290304, 'ft2'],
    ],
    volume: [
      [0, 'floz'],
      [0.00095, 'gal'],
    ],
    pressure: [[0, 'psi']],
    temperature: [[0, 'degF']],
    'temperature difference': [[0, 'degF diff']],
    torque: [[0, 'ft.lbf']],
    speed: [[0, 'mph']],
  },
};

/** The same in both systems. */
const SHARED: Readonly<Record<string, Scale>> = {
  voltage: [
    [0, 'mV'],
    [0.1, 'V'],
  ],
  current: [
    [0, 'mA'],
    [0.1, 'A'],
  ],
  power: [
    [0, 'W'],
    [10_000, 'kW'],
  ],
  energy: [
    [0, 'Wh'],
    [10_000, 'kWh'],
  ],
  time: [
    [0, 's'],
    [120, 'min'],
    [2 * 3600, 'h'],
    [72 * 3600, 'd'],
  ],
};

/** The unit in which a size of this kind is read. Of nothing, that of a size at hand. */
export function unitToRead(base: number, kind: string, system: System): UnitName {
  const scale = SCALES[system][kind] ?? SHARED[kind];
  if (!scale) return baseUnit(kind);
  const size = Math.abs(base);
  const found = scale.findLast(([from]) => size >= from) ?? scale[0];
  return found?.[1] ?? baseUnit(kind);
}

/** A size in a unit, rounded as it is read: tenths of a millimetre, thirty-seconds of an inch, else four figures. */
export function readable(base: number, unit: UnitName, region?: string): Quantity {
  const kind = unitKind(unit, region);
  const value = kind ? (base - (kind.offset?.valueOf() ?? 0)) / kind.factor.valueOf() : base;
  return { value: Math.abs(base) < NOISE ? 0 : rounded(value, unit), unit };
}

/** What binary fractions leave of nothing. */
const NOISE = 1e-12;
const FIGURES = 4;
const STEPS: Readonly<Record<UnitName, number>> = { mm: 1 / 10, in: 1 / 32 };

function rounded(value: number, unit: UnitName): number {
  const step = STEPS[unit];
  const stepped = step === undefined ? undefined : Math.round(value / step) * step;
  // What is finer than the step, and not nothing, keeps its own figures.
  if (stepped !== undefined && (stepped !== 0 || value === 0)) return Number(stepped.toPrecision(12));
  if (Math.abs(value) >= 10 ** FIGURES) return Math.round(value);
  return Number(value.toPrecision(FIGURES));
}

/** Systems of a run: that of its answers, and that of its temperatures where those were all given in one. */
export interface Systems {
  readonly all: System;
  readonly warmth?: System;
}

const WARMTH: ReadonlySet<string> = new Set(['temperature', 'temperature difference']);

/** The system that a quantity of a kind is answered in. */
export const systemFor = (kind: string, { all, warmth }: Systems): System =>
  WARMTH.has(kind) ? (warmth ?? all) : all;

/** Temperatures are answered in the degrees that they were given in: nobody reads a thermometer in both. */
export function systemOfWarmth(units: readonly UnitName[]): Pick<Systems, 'warmth'> {
  const given = units.filter((unit) => unitKind(unit)?.kind === 'temperature');
  if (given.length === 0) return {};
  const isCustomaryAll = given.every((unit) => isCustomary(unit));
  return isCustomaryAll
    ? { warmth: 'us' }
    : given.some((unit) => isCustomary(unit))
      ? {}
      : { warmth: 'metric' };
}

/** Says sizes in a system of units. */
export function sayingIn(system: System | Systems, region?: string): Say {
  const systems = typeof system === 'string' ? { all: system } : system;
  return (base, kind, unit) => {
    const inUnit = unit ?? unitToRead(base, kind, systemFor(kind, systems));
    return quantityText(readable(base, inUnit, region));
  };
}

/** The system to answer in: the project's own; in a project of mixed units that of the first figure that has one. */
export function systemOf(house: HouseUnits, units: readonly UnitName[]): System {
  if (house !== 'mixed') return house;
  const first = units.find((unit) => hasSystem(unit));
  return first !== undefined && isCustomary(first) ? 'us' : 'metric';
}

/** Volts and hours are of no system. */
function hasSystem(unit: UnitName): boolean {
  const kind = unitKind(unit)?.kind ?? '';
  return isCustomary(unit) || SCALES.metric[kind] !== undefined;
}

/** A size to show how an input is written, where nobody has said one. */
const EXAMPLES: Readonly<Record<System, Readonly<Record<string, string>>>> = {
  metric: { length: '560 mm', mass: '12 kg', area: '1.2 m2', volume: '80 L', temperature: '18 degC' },
  us: { length: '22 in', mass: '25 lb', area: '12 ft2', volume: '20 gal', temperature: '65 degF' },
};
const SHARED_EXAMPLES: Readonly<Record<string, string>> = {
  ratio: '4',
  angle: '30 deg',
  voltage: '12 V',
  current: '10 A',
  charge: '100 Ah',
  power: '60 W',
  energy: '1200 Wh',
  time: '3 h',
  density: '700 kg/m3',
  'temperature difference': '10 K',
};

/** "560 mm" for a length: a quantity of a kind as it is written. */
export function exampleOf(kind: string, system: System): string {
  return EXAMPLES[system][kind] ?? SHARED_EXAMPLES[kind] ?? `1 ${baseUnit(kind)}`;
}
