/** The dew point of the air that a batch was put on in, and how far the surface was above it. */
import type { Quantity } from '../../language/notes.ts';
import { convert } from '../units.ts';
import type { BatchFactRow } from './record-rows.ts';

/** Coefficients of the Magnus formula over water. Source: WMO guide to instruments (1990 values), from memory. */
const A = 17.62;
const B = 243.12;

/**
 * Dew point in degrees Celsius, of air in degrees Celsius at a relative humidity in per cent (above 0, at most 100).
 * Good to some tenths of a degree between -45 and 60 degrees.
 */
export function dewPointOf(airC: number, humidity: number): number {
  const x = Math.log(humidity / 100) + (A * airC) / (B + airC);
  return (B * x) / (A - x);
}

export interface DewPoint extends Quantity {
  /** How many degrees, in the same unit, the surface was above it; absent when the surface was not said. */
  readonly surfaceAbove?: number;
  /** Whether that is less than published charts for coatings want: 3 degrees Celsius, 5 Fahrenheit. */
  readonly isClose?: boolean;
}

/**
 * Least distance in degrees Celsius. Source: dew point charts published for coatings say 5 F (3 C), as
 * https://ranachem.com/en/dew-point/ does; the product's data sheet decides.
 */
export const LEAST_ABOVE_C = 3;

/** The dew point where air and humidity were told in numbers; nothing is worked out from what was not said. */
export function dewPointFrom(facts: readonly BatchFactRow[]): DewPoint | undefined {
  const air = degreesOf(facts, 'air');
  const humidity = facts.find(({ what, unit }) => what === 'humidity' && unit === '%')?.value;
  if (!air || humidity === undefined || humidity <= 0 || humidity > 100) return undefined;
  const dew = dewPointOf(air.celsius, humidity);
  const shown = inUnit(dew, air.unit);
  const surface = degreesOf(facts, 'surface');
  if (!surface) return shown;
  const above = surface.celsius - dew;
  const size = air.unit === 'degF' ? above * 1.8 : above;
  return { ...shown, surfaceAbove: Math.round(size * 10) / 10, isClose: above < LEAST_ABOVE_C };
}

function degreesOf(facts: readonly BatchFactRow[], what: 'air' | 'surface') {
  const fact = facts.find((one) => one.what === what && one.value !== undefined && one.unit !== undefined);
  if (fact?.value === undefined || fact.unit === undefined) return undefined;
  const celsius = convert({ value: fact.value, unit: fact.unit }, 'degC')?.value;
  return celsius === undefined ? undefined : { celsius, unit: fact.unit };
}

function inUnit(celsius: number, unit: string): Quantity {
  const value = convert({ value: celsius, unit: 'degC' }, unit)?.value ?? celsius;
  return { value: Math.round(value * 10) / 10, unit };
}
