import type { Dimension, Quantity } from '../language/notes.ts';
import { difference, isCustomary, unitKind } from './units.ts';
import type { Tolerance } from './views.ts';

/** A claim, as far as its tolerance goes. */
interface Toleranced extends Quantity {
  readonly bound?: string;
  readonly high?: number;
  readonly plusMinus?: number;
  readonly plusMinusUnit?: string;
  /** Of a standing figure: the one that its claim was said with. */
  readonly tolerance?: Tolerance;
  readonly dimension: Dimension;
}

/**
 * Without a word about tolerance: a millimetre, a quarter of a per cent, whichever is more; less than a millimetre where
 * both were told in finer steps. Common practice, no source.
 */
const LEAST_MM = 1;
const LEAST_SHARE = 0.0025;
/** "About" lets a twentieth pass. Common practice, no source. */
export const ABOUT_SHARE = 0.05;

/**
 * The difference that is let pass between two claims, in the newer one's unit: as said with either, else as the
 * project has it for the dimension, else by how finely they were said. Never zero.
 */
export function toleranceBetween(
  older: Toleranced,
  newer: Toleranced,
  project: Readonly<Record<string, Quantity>>,
  region?: string,
): Tolerance {
  const said = Math.max(
    saidTolerance(newer, newer.unit, region) ?? 0,
    saidTolerance(older, newer.unit, region) ?? 0,
  );
  if (said > 0) return { value: said, unit: newer.unit, from: 'said' };
  const set = project[newer.dimension];
  const own = set && spanIn(set, newer.unit, region);
  if (own !== undefined && own > 0) return { value: own, unit: newer.unit, from: 'project' };
  return { value: precisionOf(older, newer, region), unit: newer.unit, from: 'precision' };
}

function saidTolerance(claim: Toleranced, unit: string, region?: string): number | undefined {
  if (claim.plusMinus !== undefined) {
    return spanIn({ value: claim.plusMinus, unit: claim.plusMinusUnit ?? claim.unit }, unit, region);
  }
  return claim.tolerance?.from === 'said' ? spanIn(claim.tolerance, unit, region) : undefined;
}

/** The size of a difference in another unit: offsets of temperature scales do not count. */
function spanIn(span: Quantity, unit: string, region?: string): number | undefined {
  const [from, to] = [unitKind(span.unit, region), unitKind(unit, region)];
  if (!from || !to || from.kind !== to.kind) return undefined;
  if (from === to) return Math.abs(span.value);
  return Math.abs(span.value) * from.factor.div(to.factor).valueOf();
}

function precisionOf(older: Toleranced, newer: Toleranced, region?: string): number {
  const share = older.bound === 'about' || newer.bound === 'about' ? ABOUT_SHARE : LEAST_SHARE;
  const size = Math.max(Math.abs(newer.value), Math.abs(inUnitOf(older, newer.unit, region)));
  const least = newer.dimension === 'length' ? leastLength(older, newer) : 0;
  const plain = Math.max(size * share, least, Number.EPSILON);
  if (isCustomary(older.unit) === isCustomary(newer.unit)) return plain;
  const steps = [older, newer].map((claim) => spanIn(roundingOf(claim), newer.unit, region) ?? 0);
  return Math.max(plain, ...steps);
}

/** A millimetre, or the coarser one's last place where both were told in thousandths or parts of a millimetre. */
function leastLength(older: Quantity, newer: Quantity): number {
  const steps = [older, newer].map(({ value, unit }) =>
    FINE_UNITS.has(unit) ? (spanIn({ value: finestStep(value), unit }, newer.unit) ?? 0) : LEAST_MM,
  );
  const most = spanIn({ value: LEAST_MM, unit: 'mm' }, newer.unit) ?? 0;
  return Math.min(most, Math.max(...steps));
}
const FINE_UNITS: ReadonlySet<string> = new Set(['mm', 'thou']);

function inUnitOf(claim: Toleranced, unit: string, region?: string): number {
  if (claim.unit === unit) return claim.value;
  const apart = difference({ value: 0, unit }, claim, region);
  return apart === undefined ? claim.value : -apart;
}

/** Nobody rounds further than this share when saying a figure again in the other system. */
const ROUNDING_SHARE = 0.02;

/**
 * How far a figure said again in the other system may have been rounded: whole inches to an eighth, fractions to a
 * thirty-second, anything else to half of its last place ("35 newton metres, call it 26 foot pounds").
 */
function roundingOf({ value, unit }: Quantity): Quantity {
  if (unit === 'in') return { value: Number.isInteger(value) ? 1 / 8 : 1 / 32, unit };
  const half = lastPlace(value) / 2;
  return { value: Math.min(half, Math.abs(value) * ROUNDING_SHARE), unit };
}

/** The last place of a figure, at most one; that of whole ones, which most figures are, needs no look at the digits. */
const finestStep = (value: number): number =>
  Number.isSafeInteger(value) ? 1 : Math.min(lastPlace(value), 1);

/** 240 counts in tens, 26 in ones, 2.45 in hundredths. */
function lastPlace(value: number): number {
  const text = String(Math.abs(value));
  const [whole = '', decimals = ''] = text.split('.');
  if (decimals !== '') return 10 ** -decimals.length;
  const zeros = /0*$/.exec(whole)?.[0].length ?? 0;
  return 10 ** Math.min(zeros, whole.length - 1);
}

/** Whether two claims agree within the tolerance; undefined when they do not compare. */
export function agree(a: Quantity, b: Quantity, tolerance: Quantity, region?: string): boolean | undefined {
  const apart = difference(a, b, region);
  if (apart === undefined) return undefined;
  const allowed = spanIn(tolerance, a.unit, region) ?? 0;
  return Math.abs(apart) <= allowed * (1 + 1e-9);
}
