/** Reads the values of options. Each throws a Problem that quotes the value and says what was expected. */

import { isInstant, withOffset } from '../instant.ts';
import type { HouseUnits, Quantity } from '../language/notes.ts';
import { isWrittenDay } from '../model/written-day.ts';
import { EXIT, Problem } from '../problem.ts';

/** A value that is not what was expected. */
export function invalid(what: string, expected: string, got: string): Problem {
  return new Problem(`${what}: expected ${expected}, got "${got}"`, {
    code: 'value-invalid',
    exitCode: EXIT.usage,
  });
}

const UNITS: readonly string[] = ['metric', 'us', 'mixed'] satisfies HouseUnits[];

export function unitsValue(value: string): HouseUnits {
  if (!UNITS.includes(value)) throw invalid('--units', 'metric, us or mixed', value);
  return value as HouseUnits;
}

/** ISO 3166-1 alpha-2, as the language data of this Node know it. */
export function regionValue(value: string): string {
  const code = value.toUpperCase();
  const known =
    /^[A-Z]{2}$/.test(code) && new Intl.DisplayNames('en', { type: 'region', fallback: 'none' }).of(code);
  if (!known || code === 'ZZ') throw invalid('--region', 'an ISO 3166 country code such as GB', value);
  return code === 'UK' ? 'GB' : code;
}

/** ISO 8601 instant or day; without an offset it is this machine's own time. */
export function instantValue(value: string): string {
  if (!isInstant(value)) throw invalid('--at', 'ISO 8601 such as 2026-05-03T16:00:00+02:00', value);
  return withOffset(value);
}

/** A number and a unit: "915 mm". Whether the unit is known is asked where the value is used. */
export function quantityValue(what: string, value: string): Quantity {
  const parts = /^\s*(-?\d+(?:\.\d+)?)\s*([A-Za-z%.]+\d?|1)\s*$/.exec(value);
  if (parts?.[1] && parts[2]) return { value: Number(parts[1]), unit: parts[2] };
  throw invalid(what, 'a number and a unit such as "915 mm"', value);
}

/** A quantity whose unit the project knows. */
export async function knownQuantity(what: string, quantity: Quantity, region?: string): Promise<Quantity> {
  const { unitKind } = await import('../model/units.ts');
  if (unitKind(quantity.unit, region)) return quantity;
  throw invalid(what, 'a known unit such as mm, in, kg, L or V', quantity.unit);
}

/** A quantity with a known unit, and how far it may be off where that is written too: "915 mm ± 2 mm". */
export async function measureValue(
  value: string,
  region?: string,
): Promise<{ readonly quantity: Quantity; readonly plusMinus?: Quantity }> {
  const { readWrittenMeasure } = await import('../model/written.ts');
  const measure = readWrittenMeasure(value, region);
  if (measure.ok && measure.value.quantity.unit !== '1') return measure.value;
  return { quantity: await knownQuantity('quantity', quantityValue('quantity', value), region) };
}

/** One of a list of words; the list is named when it is none of them. */
export function oneOf<T extends string>(what: string, words: readonly T[], value: string): T {
  const found = words.find((word) => word === value);
  if (found === undefined) throw invalid(what, words.join(', '), value);
  return found;
}

/** A number of hours above nothing: "24", "1.5". */
export function hoursValue(what: string, value: string): number {
  const hours = /^\d+(?:\.\d+)?$/.test(value) ? Number(value) : 0;
  if (hours > 0) return hours;
  throw invalid(what, 'a number of hours such as 24', value);
}

/** A number of seconds above nothing: "90", "2.5". */
export function secondsValue(what: string, value: string): number {
  const seconds = /^\d+(?:\.\d+)?$/.test(value) ? Number(value) : 0;
  if (seconds > 0) return seconds;
  throw invalid(what, 'a number of seconds such as 90', value);
}

/** A calendar day: YYYY-MM-DD. */
export function dayValue(what: string, value: string): string {
  if (!isWrittenDay(value)) throw invalid(what, 'a day such as 2026-05-03', value);
  return value;
}
