/** Every standing figure of one measure, for sums over all that is there: what everything weighs. */
import type { Attribute } from '../../language/notes.ts';
import { LIMIT_MARK } from '../counterpart.ts';
import { usualDimension } from '../measures.ts';
import { shapeOf, wordsOf } from '../names.ts';
import type { ModelReader, StandingRow } from '../rows.ts';
import { stemOf } from '../stems.ts';

const stemsIn = (words: string) => new Set(words.split(/\s+/).map(stemOf));

/** Things that are what all others go into, or may come to: counted beside them they would count twice. */
const WHOLES = stemsIn(
  `van truck lorry trailer caravan camper motorhome bus car vehicle boat hull barge ship yacht dinghy narrowboat house
  building shed cabin rig hoist crane winch axle tyre jack scale scales weighbridge`,
);
/** Words of a name that make it a sum or a bound. */
const SUMS = stemsIn(
  'total sum whole everything altogether lot gross kerb payload load loading loaded capacity limit maximum most rating rated',
);

export interface EveryFigure {
  readonly rows: readonly StandingRow[];
  /** Names of figures that were left out as wholes. */
  readonly wholes: readonly string[];
  /** Names of figures that are by the metre or the litre, and of no whole thing. */
  readonly byMeasure: readonly string[];
}

/** Costs by the figures of that dimension. */
export function everyFigure(
  reader: Pick<ModelReader, 'standingIn' | 'item' | 'claim'>,
  attribute: Attribute,
): EveryFigure {
  const rows: StandingRow[] = [];
  const wholes: string[] = [];
  const byMeasure: string[] = [];
  for (const row of reader.standingIn(usualDimension(attribute))) {
    if (row.attribute !== attribute || row.slot.includes(LIMIT_MARK) || row.status === 'series') continue;
    const name = reader.item(row.itemId)?.name ?? '';
    const claim = row.claimId === undefined ? undefined : reader.claim(row.claimId);
    if (claim?.each?.per !== undefined) byMeasure.push(`${name} (per ${claim.each.per})`);
    else if (isWhole(name)) wholes.push(name);
    else rows.push(row);
  }
  return { rows, wholes, byMeasure };
}

function isWhole(name: string): boolean {
  return WHOLES.has(shapeOf(name).head) || wordsOf(name).some((word) => SUMS.has(stemOf(word)));
}
