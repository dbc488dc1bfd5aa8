/** Reads the values of options. Each throws a Problem that quotes the value and says what was expected. */

import { isInstant, withOffset } from '../instant.ts';
import type { HouseUnits } from '../language/notes.ts';
import { EXIT, Problem } from '../problem.ts';

function invalid(what: string, expected: string, got: string): Problem {
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

/** A calendar day: YYYY-MM-DD. */
export function dayValue(what: string, value: string): string {
  const real =
    /^\d{4}-\d{2}-\d{2}$/.test(value) &&
    !Number.isNaN(Date.parse(`${value}T00:00Z`)) &&
    new Date(`${value}T00:00Z`).toISOString().startsWith(value);
  if (!real) throw invalid(what, 'a day such as 2026-05-03', value);
  return value;
}
