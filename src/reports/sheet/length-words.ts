/** A length for the wall: millimetres, and the nearest mark of a tape in sixteenths with how far it is off. */
import type Fraction from 'fraction.js';
import type { Bound, Quantity } from '../../language/notes.ts';
import { feetAndInches } from '../../model/checks/length-in-fractions.ts';
import { fractionText, nearest } from '../../model/lengths.ts';
import { exactQuantity, inUnit } from '../../model/units.ts';

/** Marks in an inch on most tapes. Common practice, no source. */
const MARKS = 16;
/** Below this nobody reads a tape. Common practice, no source. */
const UNSEEN_MM = 0.005;

export interface TapeReading {
  /** `915 mm`; with "≈" where the printed tenth is not the whole length. */
  readonly metric: string;
  /** `36 in`, `93 5/16 in (7 ft 9 5/16 in)`. */
  readonly inches: string;
  /** The mark less the length, in millimetres, to the hundredth. */
  readonly offMm: number;
}

/** The nearest mark; of a limit the nearest that keeps it: "at most 690 mm" is read at 27 1/8 in, not at 27 3/16 in. */
function markAt(inches: Fraction, bound: Bound | undefined): Fraction {
  const marks = inches.mul(MARKS);
  if (bound === 'at-most') return marks.floor().div(MARKS);
  if (bound === 'at-least') return marks.ceil().div(MARKS);
  return nearest(inches, MARKS);
}

/** How a tape reads a length in both systems; nothing where it is no length. */
export function tapeReading(length: Quantity & { readonly bound?: Bound }): TapeReading | undefined {
  const exact = exactQuantity(length);
  if (exact?.kind !== 'length') return undefined;
  const [mm, inches] = [inUnit(exact, 'mm'), inUnit(exact, 'in')];
  const at = markAt(inches, length.bound);
  const tenth = Math.round(mm.valueOf() * 10) / 10;
  const feet = at.compare(12) < 0 ? '' : ` (${feetAndInches(at)})`;
  return {
    metric: `${Math.abs(mm.valueOf() - tenth) < UNSEEN_MM ? '' : '≈ '}${tenth} mm`,
    inches: `${fractionText(at)} in${feet}`,
    offMm: Math.round(at.sub(inches).mul(2540).valueOf()) / 100,
  };
}

/** `0.4 mm under`, `exact`: the mark against the length. */
export function offText({ offMm }: TapeReading): string {
  if (offMm === 0) return 'exact';
  return `${Math.abs(offMm)} mm ${offMm < 0 ? 'under' : 'over'}`;
}
