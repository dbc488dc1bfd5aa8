/** Why a figure that was measured may not be so any more: a layer went on, or the thing was worked on, since. */

import { kindsOf, type NounKind } from '../../language/lexicon/trade-nouns.ts';
import { shapeOf, wordsOf } from '../names.ts';
import { quantityText } from '../quantity-words.ts';
import type { ActRow, ClaimRow, ItemRow, ModelReader, StandingRow } from '../rows.ts';
import { stemOf } from '../stems.ts';
import { convert } from '../units.ts';
import { LAYER_MARK, stemsIn, takesOff } from './layer-words.ts';

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

/** A layer of known thickness that went on after a figure was measured. */
export interface LaterLayer {
  /** In the unit of the figure, with the sign of what it does to it. */
  readonly change: number;
  /** A lining may be on one side or on both: nobody said. A floor is there once. */
  readonly most: 1 | 2;
  /** "6 mm of cork". */
  readonly words: string;
}

export interface Doubt {
  readonly why: string;
  readonly layer?: LaterLayer;
}

type DoubtReader = Pick<
  ModelReader,
  'claim' | 'claimsOf' | 'item' | 'actsNaming' | 'itemsSharing' | 'standingOf'
>;

/** Why this figure is to be measured again or looked at; undefined while it stands as it was said. */
export function doubtOf(reader: DoubtReader, row: StandingRow): Doubt | undefined {
  if (row.status === 'in-doubt') return { why: 'it is in doubt: a slip is likely' };
  if (row.status === 'stale') return { why: 'it was worked out anew, and the old one was made or said' };
  const claim = row.claimId === undefined ? undefined : reader.claim(row.claimId);
  if (!claim || !SIZES.has(row.dimension) || NOT_MEASURED.has(claim.state ?? '')) return undefined;
  const item = reader.item(row.itemId);
  const own = item ? actsOn(reader, item) : [];
  const around = circumstanceStems(row, reader).flatMap((stem) => layersOn(reader, stem));
  const later = [...own, ...around].filter((one) => isLater(one.source.recordedAt, claim.source.recordedAt));
  if (later.length === 0) return undefined;
  const measured = lastMeasured(reader, row, claim);
  const act = later.find((one) => isLater(one.source.recordedAt, measured));
  if (!act) return undefined;
  const why = `it was said on ${measured.slice(0, 10)}, before “${act.what}” on ${act.source.recordedAt.slice(0, 10)}`;
  const layer = layerOf(reader, act, row, item);
  return layer ? { why, layer } : { why };
}

/** When it was measured last: what is measured again and comes to the same keeps its first claim standing. */
function lastMeasured(
  reader: Pick<ModelReader, 'claimsOf'>,
  row: StandingRow,
  { source, value, unit }: ClaimRow,
): string {
  return reader
    .claimsOf(row.itemId)
    .filter((one) => one.slot === row.slot && one.state === 'measured' && one.status === 'superseded')
    .filter((one) => one.value === value && one.unit === unit)
    .map((one) => one.source.recordedAt)
    .reduce((last, one) => (isLater(one, last) ? one : last), source.recordedAt);
}

/** Kinds of thing that a layer makes smaller inside. */
const HOLLOW: readonly NounKind[] = ['opening', 'space', 'hole'];
/** Work that is done inside of what it is done to. */
const LINED = stemsIn('line lined lining insulate insulated insulation foam foamed carpet carpeted');
const INSIDE: ReadonlySet<string> = new Set(['clearance', 'gap']);

/** What a layer of known thickness does to a figure: the thickness of a thing that the work names. */
function layerOf(
  reader: DoubtReader,
  { what, words }: ActRow,
  row: StandingRow,
  item: ItemRow | undefined,
): LaterLayer | undefined {
  if (takesOff(what) || !item) return undefined;
  const layers = reader.itemsSharing(words).flatMap(({ id, name }) => {
    const thickness = reader
      .standingOf(id)
      .find(({ attribute, dimension }) => dimension === 'length' && attribute === 'thickness');
    const isNamed = id !== row.itemId && words.includes(shapeOf(name).head);
    return thickness && isNamed ? [{ name, thickness }] : [];
  });
  const [layer] = layers;
  const inUnit = layer && convert(layer.thickness, row.unit)?.value;
  if (!layer || layers.length > 1 || inUnit === undefined || !(inUnit > 0)) return undefined;
  const isOverFloor = circumstanceStems(row, reader).some((stem) => words.includes(stem));
  const isHollow = HOLLOW.some((kind) => kindsOf(wordsOf(item.name)).has(kind));
  // A locker that was lined has less room inside, and is no larger: nobody said which of the two was measured.
  if (!isOverFloor && !isHollow && words.some((word) => LINED.has(word))) return undefined;
  const isInside = isHollow || INSIDE.has(row.attribute);
  return {
    change: isOverFloor || isInside ? -inUnit : inUnit,
    most: isOverFloor ? 1 : 2,
    words: `${quantityText(layer.thickness)} of ${layer.name}`,
  };
}

function actsOn(reader: Pick<ModelReader, 'actsNaming' | 'itemsSharing'>, item: ItemRow): readonly ActRow[] {
  const isAlone = aloneIn(reader);
  return layersOn(reader, shapeOf(item.name).head).filter(
    (act) => mayConcern(act, item, isAlone) && !isOfPart(reader, act, item),
  );
}

/** "Lined the door opening" does nothing to the door: a longer name that is said whole is the one that is meant. */
function isOfPart(reader: Pick<ModelReader, 'itemsSharing'>, { words }: ActRow, item: ItemRow): boolean {
  const { head, stems } = shapeOf(item.name);
  return reader.itemsSharing([head]).some(({ name }) => {
    const other = shapeOf(name);
    return (
      other.head !== head &&
      stems.every((stem) => other.stems.includes(stem)) &&
      other.stems.every((stem) => words.includes(stem))
    );
  });
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
