/**
 * Units in exact rationals. Every quantity has a kind: figures of different kinds are never added or compared, even
 * where their SI dimensions agree (torque and energy, a temperature and a difference of temperatures).
 */
import Fraction from 'fraction.js';
import type { Quantity, UnitName } from '../language/notes.ts';

export interface UnitKind {
  /** `length`, `torque`... or `money:GBP`: money of different currencies does not convert. */
  readonly kind: string;
  /** One of this unit in the kind's base unit. */
  readonly factor: Fraction;
  /** Base value of zero in this unit, for temperatures. */
  readonly offset?: Fraction;
}

/** Definitions that are exact: 1959 yard and pound agreement, US gallon 231 in3, standard gravity 9.80665 m/s2. */
const INCH = '0.0254';
const POUND = '0.45359237';
const US_GALLON = '0.003785411784';
/** Weights and Measures Act 1985 (UK): one gallon is 4.54609 cubic decimetres. */
const IMPERIAL_GALLON = '0.00454609';
/** Pound-force in newtons: the pound times standard gravity. */
const POUND_FORCE = new Fraction(POUND).mul('9.80665');
const FOOT = new Fraction(INCH).mul(12);

type Row = readonly [unit: string, factor: Fraction | string | number];
const TABLE: Readonly<Record<string, readonly Row[]>> = {
  length: [
    ['m', 1],
    ['mm', '0.001'],
    ['cm', '0.01'],
    ['km', 1000],
    ['in', INCH],
    ['ft', FOOT],
    ['yd', FOOT.mul(3)],
    ['thou', new Fraction(INCH).div(1000)],
    ['mi', FOOT.mul(5280)],
    ['nmi', 1852],
  ],
  angle: [['deg', 1]],
  mass: [
    ['kg', 1],
    ['g', '0.001'],
    ['t', 1000],
    ['lb', POUND],
    ['oz', new Fraction(POUND).div(16)],
  ],
  area: [
    ['m2', 1],
    ['mm2', '0.000001'],
    ['cm2', '0.0001'],
    ['ft2', FOOT.mul(FOOT)],
    ['in2', new Fraction(INCH).mul(INCH)],
    // A circle of one thousandth of an inch: pi/4 thou2, which is not rational. To 17 digits.
    ['cmil', '0.00000000050670747909749772'],
  ],
  density: [
    ['kg/m3', 1],
    ['kg/L', 1000],
    ['g/cm3', 1000],
    ['lb/ft3', new Fraction(POUND).div(FOOT.mul(FOOT).mul(FOOT))],
  ],
  volume: [
    ['m3', 1],
    ['L', '0.001'],
    ['mL', '0.000001'],
    ['gal', US_GALLON],
    ['qt', new Fraction(US_GALLON).div(4)],
    ['pt', new Fraction(US_GALLON).div(8)],
    ['floz', new Fraction(US_GALLON).div(128)],
    // Where both gallons stand side by side, whatever the region.
    ['US gal', US_GALLON],
    ['imp gal', IMPERIAL_GALLON],
    ['ft3', FOOT.mul(FOOT).mul(FOOT)],
    ['in3', new Fraction(INCH).mul(INCH).mul(INCH)],
  ],
  voltage: [
    ['V', 1],
    ['mV', '0.001'],
    ['kV', 1000],
  ],
  current: [
    ['A', 1],
    ['mA', '0.001'],
  ],
  charge: [
    ['Ah', 1],
    ['mAh', '0.001'],
  ],
  power: [
    ['W', 1],
    ['kW', 1000],
    ['VA', 1],
    ['kVA', 1000],
    // Mechanical horsepower: 550 foot pounds-force a second.
    ['hp', POUND_FORCE.mul(FOOT).mul(550)],
  ],
  energy: [
    ['Wh', 1],
    ['kWh', 1000],
  ],
  pressure: [
    ['Pa', 1],
    ['kPa', 1000],
    ['bar', 100_000],
    ['psi', POUND_FORCE.div(new Fraction(INCH).mul(INCH))],
  ],
  torque: [
    ['N.m', 1],
    ['ft.lbf', POUND_FORCE.mul(FOOT)],
  ],
  time: [
    ['s', 1],
    ['min', 60],
    ['h', 3600],
    ['d', 86_400],
  ],
  ratio: [
    ['1', 1],
    ['%', '0.01'],
  ],
  // A figure in rpm is a speed in the trade's mouth and a frequency in a physicist's; it compares with itself alone.
  frequency: [
    ['rpm', 1],
    ['Hz', 60],
  ],
  speed: [
    ['m/s', 1],
    ['km/h', new Fraction(5, 18)],
    ['mph', FOOT.mul(5280).div(3600)],
    ['kn', new Fraction(1852, 3600)],
  ],
  'temperature difference': [
    ['K', 1],
    ['degC diff', 1],
    ['degF diff', new Fraction(5, 9)],
  ],
};

const UNITS = new Map<string, UnitKind>();
for (const [kind, rows] of Object.entries(TABLE)) {
  for (const [unit, factor] of rows) UNITS.set(unit, { kind, factor: new Fraction(factor) });
}
UNITS.set('degC', { kind: 'temperature', factor: new Fraction(1), offset: new Fraction('273.15') });
UNITS.set('degF', {
  kind: 'temperature',
  factor: new Fraction(5, 9),
  offset: new Fraction('459.67').mul(5).div(9),
});

/** Countries where a spoken gallon is the imperial one. From memory; Canada as its Weights and Measures Act has it. */
const IMPERIAL_REGIONS = new Set(['GB', 'IE', 'AU', 'NZ', 'CA', 'ZA', 'IN']);
const IMPERIAL = new Map<string, UnitKind>(
  (
    [
      ['gal', 1],
      ['qt', 4],
      ['pt', 8],
      ['floz', 160],
    ] as const
  ).map(([unit, share]) => [unit, { kind: 'volume', factor: new Fraction(IMPERIAL_GALLON).div(share) }]),
);

/** What a unit measures and how much of it; undefined for a spelling that is not known. */
export function unitKind(unit: UnitName, region?: string): UnitKind | undefined {
  if (region !== undefined && IMPERIAL_REGIONS.has(region)) {
    const imperial = IMPERIAL.get(unit);
    if (imperial) return imperial;
  }
  const known = UNITS.get(unit);
  if (known) return known;
  return /^[A-Z]{3}$/.test(unit) ? { kind: `money:${unit}`, factor: new Fraction(1) } : undefined;
}

const CUSTOMARY: ReadonlySet<string> = new Set([
  ...['in', 'ft', 'yd', 'thou', 'mi', 'in2', 'ft2', 'in3', 'ft3', 'cmil'],
  ...['lb', 'oz', 'lb/ft3', 'psi', 'ft.lbf', 'hp', 'mph', 'degF', 'degF diff'],
  ...['gal', 'qt', 'pt', 'floz', 'US gal', 'imp gal'],
]);

/** Whether a unit is one of inches, pounds and gallons, US or imperial. What both systems use (V, h, kn) is not. */
export const isCustomary = (unit: UnitName): boolean => CUSTOMARY.has(unit);

/** A number as the exact rational that it was said as: 0.1 is one tenth. */
export function exactly(value: number): Fraction {
  // The shortest decimal that reads back as this number is what was written or said.
  const [digits = '0', exponent] = String(value).split('e');
  const said = new Fraction(digits);
  return exponent === undefined ? said : said.mul(new Fraction(10).pow(new Fraction(exponent)) ?? 1);
}

export interface Exact {
  readonly kind: string;
  /** In the kind's base unit. */
  readonly base: Fraction;
}

/** An exact quantity with its base value as a plain number, for sums that need not be exact to the last bit. */
export interface Sized extends Exact {
  readonly size: number;
}

/** Exact quantities by unit and value: the same figures are held against each other again and again. */
const exacts = new Map<UnitKind, Map<number, Sized>>();
const MOST_EXACTS = 5000;

/** A quantity in its kind's base unit, exact; undefined for an unknown unit or a value that is no number. */
export function exactQuantity(quantity: Quantity, region?: string): Sized | undefined {
  const unit = unitKind(quantity.unit, region);
  if (!unit || !Number.isFinite(quantity.value)) return undefined;
  const known = exacts.get(unit)?.get(quantity.value);
  if (known) return known;
  const scaled = exactly(quantity.value).mul(unit.factor);
  const base = unit.offset ? scaled.add(unit.offset) : scaled;
  const exact = { kind: unit.kind, base, size: base.valueOf() };
  if (UNITS.get(quantity.unit) === unit) remember(unit, quantity.value, exact);
  return exact;
}

function remember(unit: UnitKind, value: number, exact: Sized): void {
  let byValue = exacts.get(unit);
  if (!byValue) {
    byValue = new Map();
    exacts.set(unit, byValue);
  }
  if (byValue.size > MOST_EXACTS) byValue.clear();
  byValue.set(value, exact);
}

/** A base value said in a unit of its kind. Throws a TypeError on a unit of another kind: a bug, not a slip. */
export function inUnit(exact: Exact, unit: UnitName, region?: string): Fraction {
  const target = unitKind(unit, region);
  if (target?.kind !== exact.kind) throw new TypeError(`${exact.kind} cannot be said in ${unit}`);
  return (target.offset ? exact.base.sub(target.offset) : exact.base).div(target.factor);
}

/** The same quantity in another unit; undefined when the units do not convert. */
export function convert(quantity: Quantity, unit: UnitName, region?: string): Quantity | undefined {
  const exact = exactQuantity(quantity, region);
  if (!exact || unitKind(unit, region)?.kind !== exact.kind) return undefined;
  return { value: inUnit(exact, unit, region).valueOf(), unit };
}

/** `a - b` in `a`'s unit; undefined when they do not compare. For temperatures it is a difference in `a`'s degrees. */
export function difference(a: Quantity, b: Quantity, region?: string): number | undefined {
  const unit = unitKind(a.unit, region);
  // Whole numbers of one unit: their plain difference is exact, and most figures are.
  if (unit && a.unit === b.unit && Number.isSafeInteger(a.value) && Number.isSafeInteger(b.value))
    return a.value - b.value;
  const [left, right] = [exactQuantity(a, region), exactQuantity(b, region)];
  if (!left || !right || !unit || left.kind !== right.kind) return undefined;
  return left.base.sub(right.base).div(unit.factor).valueOf();
}
