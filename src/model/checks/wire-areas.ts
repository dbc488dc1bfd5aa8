/** Cross-sections of wire by gauge: SAE areas as published, which are smaller than the plain gauge's, and ASTM B258. */
import { unitKind } from '../units.ts';

/** Square metres in a circular mil. */
export const CIRCULAR_MIL = unitKind('cmil')?.factor.valueOf() ?? Number.NaN;

export interface WireArea {
  /** As it is chosen: "10 AWG (SAE)". */
  readonly name: string;
  /** Square metres of copper. */
  readonly area: number;
}

/**
 * Least areas of marine and vehicle wire in circular mils. Only those that a page prints: 10, 12 and 16 AWG
 * http://hollandmarine.com/hmp-flipbook-2022/flipbook/inc/html/52.html, these and 14 and 18 AWG
 * https://sportsmensmarine.com/archives/1034
 */
const SAE: readonly (readonly [awg: number, circularMils: number])[] = [
  [18, 1537],
  [16, 2336],
  [14, 3702],
  [12, 5833],
  [10, 9343],
];

export const SAE_AREAS: readonly WireArea[] = SAE.map(([awg, mils]) => ({
  name: `${awg} AWG (SAE)`,
  area: mils * CIRCULAR_MIL,
}));

/** Gauges that are bought for building wire. */
const PLAIN = [18, 16, 14, 12, 10, 8, 6, 4, 2, 1] as const;

/**
 * Area of a plain gauge in square metres. Source: ASTM B258, d = 0.127 mm x 92^((36 - n)/39), as on bit1024.com and
 * superglobalcalculator.com
 */
export const gaugeArea = (awg: number): number => (Math.PI / 4) * (0.000127 * 92 ** ((36 - awg) / 39)) ** 2;

export const PLAIN_AREAS: readonly WireArea[] = PLAIN.map((awg) => ({
  name: `${awg} AWG (plain)`,
  area: gaugeArea(awg),
}));

/** The smallest SAE gauge of those known here that has at least this area in square metres; undefined for none. */
export const saeGaugeFor = (area: number): WireArea | undefined =>
  SAE_AREAS.find((wire) => wire.area >= area);

/** The smallest plain gauge of those bought for building wire that has at least this area in square metres. */
export const plainGaugeFor = (area: number): WireArea | undefined =>
  PLAIN_AREAS.find((wire) => wire.area >= area);
