import type { HouseUnits, ReadContext } from '../../src/language/notes.ts';
import { readQuantities } from '../../src/language/quantities.ts';
import { tokenise } from '../../src/language/tokens.ts';

/**
 * The figures of one sentence as short lines: "905 mm", "20-30 mm between", "2.5 m about", "1.22 m ±0.01 m".
 * Counts are left out. "none" when there is no figure.
 */
export function figuresSaid(
  text: string,
  units: HouseUnits = 'metric',
  region = 'GB',
  known: Pick<ReadContext, 'knownFigures'> = {},
): string {
  const context = { ...known, units, region, recordedAt: '2026-03-07T18:40:00+00:00' };
  const { quantities } = readQuantities(text, tokenise(text), context);
  const lines = quantities
    .filter((quantity) => quantity.role === 'figure')
    .map(({ value, high, unit, bound, plusMinus, plusMinusUnit }) =>
      [
        high === undefined ? String(value) : `${value}-${high}`,
        unit,
        ...(bound === 'exact' ? [] : [bound]),
        ...(plusMinus === undefined ? [] : [`±${plusMinus} ${plusMinusUnit}`]),
      ].join(' '),
    );
  return lines.join('; ') || 'none';
}
