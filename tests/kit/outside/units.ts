/**
 * The unit names of the published sets in our own spelling. What is not here (bits, electronvolts, prices by the
 * kilogram...) is no unit of a build; gold in such units is left out of the count.
 */
import { UNIT_TABLE } from '../../../src/language/units/unit-table.ts';

/** Name in the set, unit in our spelling, one of theirs in ours where they differ. */
type Row = readonly [name: string, unit: string, factor?: number];

const LENGTHS: readonly Row[] = [
  ...(
    ['m metre Meter', 'ft foot Foot', 'km kilometre Kilometer', 'mm millimetre Millimeter'] as const
  ).flatMap(names),
  ...(['mi mile Mile', 'in inch Inch', 'cm centimetre Centimeter', 'yd yard Yard'] as const).flatMap(names),
  ['Decimeter', 'cm', 10],
  ['μm', 'mm', 1e-3],
  ['nm', 'mm', 1e-6],
  ['nanometre', 'mm', 1e-6],
  ['Picometer', 'mm', 1e-9],
  ['picometre', 'mm', 1e-9],
];
const AREAS: readonly Row[] = [
  ...(['m2 m² square_metre Square_meter', 'km2 km² square_kilometre Square_kilometer'] as const).flatMap(
    names,
  ),
  ...(['ft2 sq_ft', 'mi2 sq_mi square_mile', 'ha ha', 'acre Acre'] as const).flatMap(names),
];
const VOLUMES: readonly Row[] = [
  ...(['L litre Liter', 'mL ml cc Milliliter cubic_centimetre', 'gal gallon Gallon'] as const).flatMap(names),
  ...(['m3 m³', 'ft3 Cubic_foot', 'cup cup Cup'] as const).flatMap(names),
  ['kl', 'L', 1000],
  ['dm³', 'L'],
  ['centilitre', 'L', 0.01],
  ['Tablespoon', 'mL', 15],
  ['tablespoon', 'mL', 15],
  ['Teaspoon', 'mL', 5],
];
const MASSES: readonly Row[] = [
  ...(['kg kilogram Kilogram', 'g gram', 'oz ounce Ounce', 'lb Pound pound-mass'] as const).flatMap(names),
  ...(['t tonne Metric_ton'] as const).flatMap(names),
  ['milligram', 'g', 1e-3],
  ['Microgram', 'g', 1e-6],
  // The sets are American: a ton is the short one.
  ['Ton', 'lb', 2000],
];
const SPEEDS: readonly Row[] = [
  ...(['km/h Kilometer_per_hour kilometre_per_hour', 'mph Mile_per_hour'] as const).flatMap(names),
];
const HEAT: readonly Row[] = [
  ...(['degC °C C degree_Celsius', 'degF °F F degree_Fahrenheit degree_fahrenheit'] as const).flatMap(names),
];
const POWER: readonly Row[] = [
  ...(['W watt', 'kW kW', 'hp hp', 'Wh watt_hour', 'kWh kWh', 'V v'] as const).flatMap(names),
  ['MW', 'MW'],
  // Wrongly cased in the set: the words say megawatts.
  ['mW', 'MW'],
  ['gWh', 'kWh', 1e6],
  ['megawatt hour', 'kWh', 1000],
  ['british thermal unit', 'BTU'],
  ['khz', 'kHz'],
  ['mhz', 'kHz', 1000],
  ['gigahertz', 'kHz', 1e6],
];
const TIMES: readonly Row[] = [
  ['second', 's'],
  ['minute', 's', 60],
  ['min', 's', 60],
  ['hour', 's', 3600],
  ['h', 's', 3600],
  ['day', 's', 86_400],
  ['d', 's', 86_400],
  ['week', 's', 604_800],
  // Thirty days and 365 days, as Recognizers-Text counts them.
  ['month', 's', 2_592_000],
  ['year', 's', 31_536_000],
];
const MONEY: readonly Row[] = [
  ...(['USD dollar Dollar United_States_dollar $', 'EUR euro Euro €'] as const).flatMap(names),
  ...(['GBP Pound_sterling pound_sterling British_pound £', 'CAD Canadian_dollar'] as const).flatMap(names),
  ...(['AUD Australian_dollar', 'NZD New_Zealand_dollar', 'CHF Swiss_franc'] as const).flatMap(names),
  ['cent', 'USD', 0.01],
  ['Cent', 'USD', 0.01],
  ['Pence', 'GBP', 0.01],
];
const RATIOS: readonly Row[] = names('% percentage');

function names(row: string): Row[] {
  const [unit = '', ...rest] = row.split(' ');
  return [...new Set([unit, ...rest])].map((name) => [name.replaceAll('_', ' '), unit] as const);
}

const THEIRS = new Map<string, { readonly unit: string; readonly factor: number }>(
  [LENGTHS, AREAS, VOLUMES, MASSES, SPEEDS, HEAT, POWER, TIMES, MONEY, RATIOS]
    .flat()
    .map(([name, unit, factor = 1]) => [name, { unit, factor }]),
);

/** Units that a reading may still hold where it was dropped before context settled them; American, as the sets. */
const UNSETTLED: Readonly<Record<string, Row>> = {
  pounds: ['pounds', 'lb'],
  degrees: ['degrees', 'deg'],
  ton: ['ton', 'lb', 2000],
  dollars: ['dollars', 'USD'],
  cents: ['cents', 'USD', 0.01],
};

export type OutsideKind =
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'temperature'
  | 'angle'
  | 'speed'
  | 'power'
  | 'time'
  | 'money'
  | 'ratio'
  | 'date';

const KIND_OF: ReadonlyMap<string, OutsideKind> = (() => {
  const kinds = new Map<string, OutsideKind>([
    ['mi2', 'area'],
    ['GBP', 'money'],
    ['USD', 'money'],
    ['lb', 'mass'],
  ]);
  const OURS: Readonly<Record<string, OutsideKind>> = {
    energy: 'power',
    voltage: 'power',
    frequency: 'power',
  };
  for (const { key, dimension } of UNIT_TABLE) {
    if (dimension) kinds.set(key, OURS[dimension] ?? (dimension as OutsideKind));
  }
  return kinds;
})();

/** One value in one unit as a word to compare: "2.5 in". Times are in seconds on both sides. */
export interface Atom {
  readonly kind: OutsideKind;
  readonly key: string;
}

function atom(value: number, unit: string): Atom | undefined {
  const kind = KIND_OF.get(unit);
  return kind && { kind, key: `${Number(value.toPrecision(9))} ${unit}` };
}

/** A published value, or undefined where its unit is none of a build's. */
export function theirAtom(value: number, name: string): Atom | undefined {
  const row = THEIRS.get(name);
  return row && (row.unit === 's' ? seconds(value * row.factor) : atom(value * row.factor, row.unit));
}

/** A value as we read it. */
export function ourAtom(value: number, unit: string): Atom | undefined {
  const time = TIMES.find(([name]) => name === unit);
  if (time || unit === 's') return seconds(value * (time?.[2] ?? 1));
  const [, name = unit, factor = 1] = UNSETTLED[unit] ?? [];
  return atom(value * factor, name);
}

export const seconds = (value: number): Atom => ({ kind: 'time', key: `${Number(value.toPrecision(9))} s` });
