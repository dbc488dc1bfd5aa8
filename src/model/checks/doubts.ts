/** Why a figure that was measured may not be so any more: a layer went on, or the thing was worked on, since. */

import { shapeOf, wordsOf } from '../names.ts';
import type { ActRow, ItemRow, ModelReader, StandingRow } from '../rows.ts';
import { stemOf } from '../stems.ts';
import { LAYER_MARK, stemsIn } from './layer-words.ts';

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
  const around = circumstanceStems(row, reader).flatMap((stem) => layersOn(reader, stem));
  const act = [...own, ...around].find((one) => isLater(one.source.recordedAt, measured));
  if (!act) return undefined;
  return `it was said on ${measured.slice(0, 10)}, before “${act.what}” on ${act.source.recordedAt.slice(0, 10)}`;
}

function actsOn(reader: Pick<ModelReader, 'actsNaming' | 'itemsSharing'>, item: ItemRow): readonly ActRow[] {
  const isAlone = aloneIn(reader);
  return layersOn(reader, shapeOf(item.name).head).filter((act) => mayConcern(act, item, isAlone));
}

/** Two thirds of the words of a name: the wheel hatch is not the side hatch. */
const SHARE_NAMED = 2 / 3;

/** Whether work is on this thing: it says enough of its name, or the bare name of a thing that is one alone. */
export function mayConcern({ words }: ActRow, item: ItemRow, isAlone: (item: ItemRow) => boolean): boolean {
  const { head, stems } = shapeOf(item.name);
  if (!words.includes(head)) return false;
  const named = stems.filter((stem) => words.includes(stem)).length;
  return named >= stems.length * SHARE_NAMED || isAlone(item);
}

/** How many things are of this name, whatever tells them apart. */
export function namedSo(reader: Pick<ModelReader, 'itemsSharing'>, head: string): number {
  return reader.itemsSharing([head]).filter(({ name }) => shapeOf(name).head === head).length;
}

/** Tells things that are the only one of their kind; each kind is looked up once. */
export function aloneIn(reader: Pick<ModelReader, 'itemsSharing'>): (item: ItemRow) => boolean {
  const counts = new Map<string, number>();
  return ({ name }) => {
    const { head } = shapeOf(name);
    const known = counts.get(head);
    const count = known ?? namedSo(reader, head);
    counts.set(head, count);
    return count < 2;
  };
}

/** Whether an act put a layer on something or took one off. */
export const isLayer = ({ words }: ActRow) => words.includes(LAYER_MARK);

/** Layers that went on or came off what has this stem in its name, oldest first. */
export function layersOn(reader: Pick<ModelReader, 'actsNaming'>, stem: string): readonly ActRow[] {
  return reader.actsNaming(LAYER_MARK, [LAYER_MARK, stem], 2);
}

const isLater = (a: string, b: string) => Date.parse(a) > Date.parse(b);

/** What the figure was measured from, and under what: "bare frame, no lining", "above the cabin sole". */
export function circumstanceStems(row: StandingRow, reader: Pick<ModelReader, 'claim'>): readonly string[] {
  const claim = row.claimId === undefined ? undefined : reader.claim(row.claimId);
  const words = wordsOf(`${claim?.condition ?? ''} ${claim?.datum ?? ''}`);
  return [...new Set(words.map(stemOf))].filter((stem) => stem.length > 2 && !PLAIN.has(stem));
}
