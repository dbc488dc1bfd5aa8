/**
 * A part made or ordered to a size that another thing had until it changed: the slate cut to the old hearth, the top
 * ordered for the bench as it was. The part goes by a name of its own, so nothing stands there that it could clash with.
 */
import type { Attribute } from '../language/notes.ts';
import type { Arriving } from './claims.ts';
import { LIMIT_MARK } from './counterpart.ts';
import { sourced } from './finding.ts';
import { nameStems, plainKey, setsApart, shapeOf } from './names.ts';
import type { ClaimRow, ItemRow, StandingRow } from './rows.ts';
import { agree, toleranceBetween } from './tolerance.ts';
import { difference, exactQuantity } from './units.ts';
import type { Working } from './working.ts';

/** Things that are looked at for one part. */
const MOST_ITEMS = 8;
/** Smaller sizes come together by chance: sheets, screws and gaps. */
const LEAST_METRES = 0.05;
const SIDES: ReadonlySet<Attribute> = new Set(['size', 'width', 'height', 'length', 'depth']);

/** Tells of a part that was made or ordered to the size that the thing it is for had before. */
export function tellOldSize(work: Working, { note, item }: Arriving, claim: ClaimRow): void {
  if ((note.state !== 'made' && note.state !== 'ordered') || note.bound !== 'exact') return;
  const size = exactQuantity(note, work.settings.region);
  if (note.dimension !== 'length' || !size || size.base.valueOf() < LEAST_METRES) return;
  if (note.change !== undefined || note.replaces) return;
  // Its own other side may be what it stands beside: "1900 by 640", then 600 wide, and cut at 640.
  const found = [item, ...thingsOf(work, item)]
    .flatMap((thing) => work.draft.standingOf(thing.id).map((row) => ({ thing, row })))
    .find(({ row }) => isSizeOf(row, note.attribute) && hadThatSize(work, claim, row));
  if (!found) return;
  const { thing, row } = found;
  const stands = row.claimId === undefined ? undefined : work.draft.claim(row.claimId);
  work.find({
    kind: 'stale',
    item: item.name,
    itemId: item.id,
    attribute: note.attribute,
    slot: claim.slot,
    was: sourced(note, { bound: note.bound, state: note.state, source: claim.source }),
    now: sourced(row, {
      ...(row.state === undefined ? {} : { state: row.state }),
      ...(stands ? { source: stands.source } : {}),
    }),
    tolerance: toleranceBetween(row, note, work.settings.tolerances, work.settings.region),
    why: `it is the size that ${thing.id === item.id ? 'it' : thing.name} had before`,
  });
}

/** The things that a part names as what it is for: the hearth, of "hearth slate"; the window opening, of "window sill". */
function thingsOf(work: Working, part: ItemRow): readonly ItemRow[] {
  const { head, stems } = shapeOf(part.name);
  const named = stems.filter((stem) => stem !== head);
  if (named.length === 0) return [];
  const isNamed = ({ name }: ItemRow) =>
    named.includes(shapeOf(name).head) ||
    plainKey(name)
      .split(' ')
      .every((stem) => named.includes(stem));
  const isOfSameSide = ({ name }: ItemRow) =>
    nameStems(name).every((stem) => !setsApart(stem) || stems.includes(stem));
  return work.draft
    .itemsNear(named, MOST_ITEMS)
    .filter((thing) => thing.id !== part.id && isNamed(thing) && isOfSameSide(thing));
}

const isSizeOf = (row: StandingRow, attribute: Attribute): boolean =>
  row.status === 'stands' &&
  !row.slot.includes(LIMIT_MARK) &&
  row.dimension === 'length' &&
  (row.attribute === attribute || (SIDES.has(row.attribute) && SIDES.has(attribute)));

/** Whether a figure was given up that is to the last place what the part was made to, and another one stands now. */
function hadThatSize(work: Working, made: ClaimRow, row: StandingRow): boolean {
  const { tolerances, region } = work.settings;
  if (agree(made, row, toleranceBetween(row, made, tolerances, region), region) !== false) return false;
  return work.draft
    .claimsOf(row.itemId)
    .some(
      (claim) =>
        claim.slot === row.slot &&
        claim.status === 'superseded' &&
        claim.id !== made.id &&
        claim.bound === 'exact' &&
        Math.abs(difference(claim, made, region) ?? 1) <= Math.abs(claim.value) * SAME_SHARE,
    );
}
const SAME_SHARE = 1e-4;
