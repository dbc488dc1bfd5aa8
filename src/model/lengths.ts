/** Lengths in both systems, for people: millimetres beside inches to the nearest sixteenth, rounding shown. */
import type Fraction from 'fraction.js';
import type { Quantity } from '../language/notes.ts';
import { exactQuantity, inUnit } from './units.ts';

export interface BothLengths {
  /** `131.8 mm` */
  readonly metric: string;
  /** `5 3/16 in`, `4 ft 2 3/8 in`... */
  readonly inches: string;
  /** How far the printed inches are from the exact length, in millimetres; 0 when they are exact. */
  readonly errorMm: number;
}

/** Says a length both ways; undefined when the quantity is no length. */
export function bothLengths(length: Quantity, denominator = 16): BothLengths | undefined {
  const exact = exactQuantity(length);
  if (exact?.kind !== 'length') return undefined;
  const mm = inUnit(exact, 'mm');
  const inches = inUnit(exact, 'in');
  const rounded = nearest(inches, denominator);
  return {
    metric: `${trimmed(mm.valueOf())} mm`,
    inches: `${fractionText(rounded)} in`,
    errorMm: roundTo(rounded.sub(inches).mul(25.4).valueOf(), 3),
  };
}

/** Nearest multiple of 1/denominator. */
export function nearest(value: Fraction, denominator: number): Fraction {
  return value.mul(denominator).round().div(denominator);
}

/** `5 3/16`, `3/4`, `-1 1/2`, `0`. */
export function fractionText(value: Fraction): string {
  const sign = value.compare(0) < 0 ? '-' : '';
  const size = value.abs();
  const whole = size.floor();
  const rest = size.sub(whole);
  const fraction = rest.compare(0) === 0 ? '' : rest.toFraction();
  const text = [whole.compare(0) === 0 && fraction !== '' ? '' : whole.toString(), fraction]
    .filter((part) => part !== '')
    .join(' ');
  return `${sign}${text}`;
}

function trimmed(value: number): string {
  return String(roundTo(value, 1));
}

function roundTo(value: number, places: number): number {
  const scale = 10 ** places;
  return Math.round(value * scale) / scale;
}
