/** Why a figure that was measured may not be so any more: a layer went on, or the thing was worked on, since. */
import { shapeOf, wordsOf } from '../names.ts';
import type { ActRow, ModelReader, StandingRow } from '../rows.ts';
import { stemOf } from '../stems.ts';

const stemsIn = (words: string) => new Set(words.split(/\s+/).map(stemOf));

/** Work that puts a layer on, or takes one off: what was measured before it is another size after it. */
export const LAYER_WORK: ReadonlySet<string> = stemsIn(
  `line lined lining clad cladding insulate insulated insulation skin skinned sheathe sheathed sheathing veneer
  veneered tile tiled tiling floor floored carpet carpeted board boarded plank planked batten battened fair faired
  render rendered plaster plastered foam foamed felt felted pad padded upholster upholstered laminate laminated screed
  screeded level levelled pack packed fur furred case cased edge edged lip lipped overlay overlaid cover covered
  plane planed trim trimmed shave shaved ease eased widen widened enlarge enlarged narrow narrowed shorten shortened
  raise raised lower lowered thin thinned`,
);

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
  reader: Pick<ModelReader, 'claim' | 'item' | 'actsNaming'>,
  row: StandingRow,
): string | undefined {
  if (row.status === 'in-doubt') return 'it is in doubt: a slip is likely';
  if (row.status === 'stale') return 'it was worked out anew, and the old one was made or said';
  const claim = row.claimId === undefined ? undefined : reader.claim(row.claimId);
  if (!claim || !SIZES.has(row.dimension) || NOT_MEASURED.has(claim.state ?? '')) return undefined;
  const measured = claim.source.recordedAt;
  const item = reader.item(row.itemId);
  const own = item ? actsOn(reader, item.name) : [];
  const around = circumstanceStems(row, reader).flatMap((stem) => reader.actsNaming(stem, [stem], 1));
  const act = [...own, ...around].find((one) => isLayer(one) && isLater(one.source.recordedAt, measured));
  if (!act) return undefined;
  return `it was said on ${measured.slice(0, 10)}, before “${act.what}” on ${act.source.recordedAt.slice(0, 10)}`;
}

function actsOn(reader: Pick<ModelReader, 'actsNaming'>, name: string): readonly ActRow[] {
  const { head, stems } = shapeOf(name);
  return reader.actsNaming(head, stems, Math.ceil(stems.length / 2));
}

const isLayer = ({ act, words }: ActRow) =>
  act !== 'ordered' && act !== 'filmed' && act !== 'promised' && words.some((stem) => LAYER_WORK.has(stem));

const isLater = (a: string, b: string) => Date.parse(a) > Date.parse(b);

/** What the figure was measured from, and under what: "bare frame, no lining", "above the cabin sole". */
export function circumstanceStems(row: StandingRow, reader: Pick<ModelReader, 'claim'>): readonly string[] {
  const claim = row.claimId === undefined ? undefined : reader.claim(row.claimId);
  const words = wordsOf(`${claim?.condition ?? ''} ${claim?.datum ?? ''}`);
  return [...new Set(words.map(stemOf))].filter((stem) => stem.length > 2 && !PLAIN.has(stem));
}
