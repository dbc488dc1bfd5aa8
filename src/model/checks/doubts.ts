/** Why a figure that was measured may not be so any more: a layer went on, or the thing was worked on, since. */

import { namesAtLeast } from '../acts.ts';
import { shapeOf, wordsOf } from '../names.ts';
import type { ActRow, ItemRow, ModelReader, StandingRow } from '../rows.ts';
import { stemOf } from '../stems.ts';
import { LAYER_WORK, stemsIn } from './layer-words.ts';

/** States of a figure that stay true whatever is done after: it was meant, or it is how the part was made. */
const NOT_MEASURED: ReadonlySet<string> = new Set([
  'target',
  'decided',
  'ordered',
  'quoted',
  'assumed',
  'calculated',
]);

/** Only sizes change by a layer. */
const SIZES: ReadonlySet<string> = new Set(['length', 'area', 'volume']);

/** Words of a circumstance that name nothing: "bare frame, no lining yet". */
const PLAIN = stemsIn(
  `a an the no not yet without with before after bare still only just above below over under from to of on in at and or
  it is was be this that finished existing old new top bottom side face edge inside outside centre center`,
);

/** Why this figure is to be measured again or looked at, in words; undefined while it stands as it was said. */
export function doubtOf(
  reader: Pick<ModelReader, 'claim' | 'item' | 'actsNaming' | 'itemsSharing'>,
  row: StandingRow,
): string | undefined {
  if (row.status === 'in-doubt') return 'it is in doubt: a slip is likely';
  if (row.status === 'stale') return 'it was worked out anew, and the old one was made or said';
  const claim = row.claimId === undefined ? undefined : reader.claim(row.claimId);
  if (!claim || !SIZES.has(row.dimension) || NOT_MEASURED.has(claim.state ?? '')) return undefined;
  const measured = claim.source.recordedAt;
  const item = reader.item(row.itemId);
  const own = item ? actsOn(reader, item) : [];
  const around = circumstanceStems(row, reader).flatMap((stem) => reader.actsNaming(stem, [stem], 1));
  const act = [...own, ...around].find((one) => isLayer(one) && isLater(one.source.recordedAt, measured));
  if (!act) return undefined;
  return `it was said on ${measured.slice(0, 10)}, before “${act.what}” on ${act.source.recordedAt.slice(0, 10)}`;
}

function actsOn(reader: Pick<ModelReader, 'actsNaming' | 'itemsSharing'>, item: ItemRow): readonly ActRow[] {
  const { head, stems } = shapeOf(item.name);
  return reader.actsNaming(head, stems, leastNamed(reader, item));
}

/** Two thirds of the words of a name, so that the wheel hatch is not the side hatch; the thing itself where it is one alone. */
const SHARE_NAMED = 2 / 3;

function leastNamed(reader: Pick<ModelReader, 'itemsSharing'>, item: ItemRow): number {
  const { head, stems } = shapeOf(item.name);
  const others = reader
    .itemsSharing([head])
    .filter(({ id, name }) => id !== item.id && shapeOf(name).head === head);
  return others.length === 0 ? 1 : Math.ceil(stems.length * SHARE_NAMED);
}

/** Whether work on a thing may put this item in doubt. */
export function mayConcern(reader: Pick<ModelReader, 'itemsSharing'>, act: ActRow, item: ItemRow): boolean {
  const { head, stems } = shapeOf(item.name);
  return namesAtLeast(act, head, stems, leastNamed(reader, item));
}

/** Whether an act put a layer on something or took one off. */
export const isLayer = ({ act, words }: ActRow) =>
  act !== 'ordered' && act !== 'filmed' && act !== 'promised' && words.some((stem) => LAYER_WORK.has(stem));

const isLater = (a: string, b: string) => Date.parse(a) > Date.parse(b);

/** What the figure was measured from, and under what: "bare frame, no lining", "above the cabin sole". */
export function circumstanceStems(row: StandingRow, reader: Pick<ModelReader, 'claim'>): readonly string[] {
  const claim = row.claimId === undefined ? undefined : reader.claim(row.claimId);
  const words = wordsOf(`${claim?.condition ?? ''} ${claim?.datum ?? ''}`);
  return [...new Set(words.map(stemOf))].filter((stem) => stem.length > 2 && !PLAIN.has(stem));
}
