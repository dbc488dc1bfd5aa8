import Fraction from 'fraction.js';
import { fractionText } from '../lengths.ts';
import type { Check, Given, Range, Worked } from './check.ts';
import { exactSize, wholeNumber } from './exact-size.ts';
import { feetAndInches } from './length-in-fractions.ts';
import { exactRange, maybe } from './ranges.ts';

const PIECES = ['feet', 'inches', 'parts', 'parts of'] as const;
type Piece = (typeof PIECES)[number];

/**
 * Feet, inches and parts of an inch as millimetres, exact: the way back from the tape.
 * Formula: (12 x feet + inches + parts / parts of) x 25.4 mm. Source: international yard and pound agreement, 1959; from memory.
 */
export const FRACTIONS_TO_MILLIMETRES: Check = {
  name: 'fractions to millimetres',
  says: 'feet, inches and a fraction of an inch as exact millimetres',
  formula: '(12 x feet + inches + parts / parts of) x 25.4 mm',
  source: 'international yard and pound agreement, 1959: one inch is 25.4 mm exactly (from memory)',
  inputs: [
    {
      name: 'length',
      kind: 'length',
      says: 'the whole of it as one: 5 3/16 in, 4 ft 2 3/8 in, or a figure',
      optional: true,
    },
    { name: 'feet', kind: 'ratio', unit: '1', says: 'whole feet', optional: true },
    { name: 'inches', kind: 'ratio', unit: '1', says: 'whole inches', optional: true },
    { name: 'parts', kind: 'ratio', unit: '1', says: 'the 3 of 3/16', optional: true },
    { name: 'parts of', kind: 'ratio', unit: '1', says: 'the 16 of 3/16', optional: true, most: 128 },
  ],
  gives: 'length',
  run: toMillimetres,
};

function toMillimetres(given: Given): Worked {
  const said = PIECES.filter((name) => maybe(given, name));
  const whole = maybe(given, 'length');
  if (whole && said.length > 0) {
    return { verdict: 'refused', why: 'a length was given twice: as one, and as feet, inches and parts' };
  }
  if (whole) return ofInches(exactSize(whole.mid).div('0.0254'), whole);
  if (said.length === 0) return { verdict: 'missing', why: 'no feet, no inches and no fraction were given' };
  const odd = said.find((name) => pieceOf(given, name) === undefined);
  if (odd) return { verdict: 'refused', why: `${odd} must be a whole number` };
  const [feet, inches, parts, partsOf] = PIECES.map((name) => pieceOf(given, name));
  if ((parts === undefined) !== (partsOf === undefined)) {
    return { verdict: 'missing', why: 'a fraction takes both: the 3 and the 16 of 3/16' };
  }
  const total = new Fraction(parts ?? 0)
    .div(partsOf ?? 1)
    .add(inches ?? 0)
    .add(12 * (feet ?? 0));
  return ofInches(total);
}

/** The answer for a length in inches, exact. */
function ofInches(total: Fraction, range?: Range): Worked {
  const metres = total.mul('0.0254').valueOf();
  const long = total.compare(12) < 0 ? '' : ` (${feetAndInches(total)})`;
  const isWide = range !== undefined && range.low !== range.high;
  const between = isWide ? `, from ${millimetres(range.low)} to ${millimetres(range.high)} mm` : '';
  return {
    verdict: 'told',
    why: `${fractionText(total)} in${long} is ${Number(total.mul('25.4').valueOf().toFixed(6))} mm${between}`,
    results: [{ name: 'length', kind: 'length', range: range ?? exactRange(metres), unit: 'mm' }],
    notes: ['exact, not rounded'],
  };
}

const millimetres = (metres: number): number => Number((metres * 1000).toFixed(6));

function pieceOf(given: Given, name: Piece): number | undefined {
  const range = maybe(given, name);
  return range && wholeNumber(range);
}
