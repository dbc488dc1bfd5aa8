/** Asks about the other hand of a pair when one hand was changed. Nothing is copied from one side to the other. */

import { mirroredName, withoutSide } from '../../language/lexicon/sides.ts';
import type { Attribute, Dimension, Quantity } from '../../language/notes.ts';
import { LIMIT_MARK } from '../counterpart.ts';
import type { FindingSettled } from '../events.ts';
import { sourced } from '../finding.ts';
import { acceptByHand, handClaim, standingFor } from '../hand-figures.ts';
import { kinship, nameKey, nameStems } from '../names.ts';
import { itemFor } from '../naming.ts';
import type { FindingRow, ItemRow, StandingRow } from '../rows.ts';
import { slotOf } from '../rows.ts';
import { toleranceBetween } from '../tolerance.ts';
import { difference } from '../units.ts';
import type { SourcedQuantity } from '../views.ts';
import type { Working } from '../working.ts';
import type { PairRow } from './record-rows.ts';

const MARK = '|hand';
/** What two mirrored parts share. */
const SHARED: ReadonlySet<Dimension> = new Set<Dimension>(['length', 'angle', 'area']);

/** Holds each side of a pair that this memo gave a figure against its other side. */
export function askOtherHands(work: Working): void {
  const pairs = work.draft.records('pair');
  if (pairs.length === 0) return;
  for (const id of new Set(work.recent)) {
    const item = work.draft.item(id);
    const side = item && sideOf(item, pairs);
    if (item && side) askFor(work, item, side);
  }
}

interface Side {
  readonly pair: PairRow;
  /** Name of the other side. */
  readonly other: string;
}

function sideOf(item: ItemRow, pairs: readonly PairRow[]): Side | undefined {
  for (const name of [item.name, ...item.aliases]) {
    const other = mirroredName(name);
    const bare = other === undefined ? '' : withoutSide(name);
    const pair = bare === '' ? undefined : pairs.findLast(({ part }) => isPart(bare, part));
    if (pair && other !== undefined) return { pair, other };
  }
  return undefined;
}

/**
 * Whether a name without its side is that of the part. A longer name will do where the part's own tells enough: the kitchen
 * door need not be the door that was told of.
 */
export const isPart = (bare: string, part: string) =>
  nameKey(bare) === nameKey(part) ||
  (nameStems(part).length > 1 && kinship(bare, part) === 'longer') ||
  (nameStems(bare).length > 1 && kinship(bare, part) === 'shorter');

function askFor(work: Working, item: ItemRow, side: Side): void {
  const said = work.draft.claimsOf(item.id).filter(({ memoId }) => memoId === work.memo.id);
  for (const slot of new Set(said.map((claim) => claim.slot))) {
    const row = work.draft.standing(slot);
    if (!row || slot.includes(LIMIT_MARK) || row.bound !== 'exact' || !SHARED.has(row.dimension)) continue;
    settleAnswered(work, item, row);
    if (side.pair.letDiffer?.includes(row.attribute)) continue;
    const old = valueOfOther(work, item, side, row);
    if (old && differs(work, old, row) && !isAsked(work, item, row)) ask(work, side, row, old);
  }
}

/** The other side was found to differ from this one already: one question is enough. */
function isAsked(work: Working, item: ItemRow, row: StandingRow): boolean {
  return work.draft.findingsOn(otherSlot(work, item.name, row)).some(({ memoId }) => memoId === work.memo.id);
}

/** What the other side has: its own figure, the part's, else what this side had before it was changed. */
function valueOfOther(
  work: Working,
  item: ItemRow,
  side: Side,
  row: StandingRow,
): SourcedQuantity | undefined {
  for (const name of [side.other, side.pair.part]) {
    const other = itemNamed(work, name);
    const standing =
      other && other.id !== item.id ? standingFor(work, other, row.attribute, row.dimension) : undefined;
    if (standing?.bound !== 'exact') continue;
    const claim = standing.claimId === undefined ? undefined : work.draft.claim(standing.claimId);
    return sourced(standing, { ...(claim ? { source: claim.source } : {}) });
  }
  const changed = work
    .findings()
    .find(
      (one) =>
        (one.kind === 'decided' || one.kind === 'remeasured') &&
        one.slot === row.slot &&
        one.attribute === row.attribute,
    );
  return changed?.was;
}

function itemNamed(work: Working, name: string): ItemRow | undefined {
  return work.draft
    .itemsLike(nameStems(name))
    .find((item) => [item.name, ...item.aliases].some((known) => nameKey(known) === nameKey(name)));
}

function differs(work: Working, old: Quantity, row: StandingRow): boolean {
  const { tolerances, region } = work.settings;
  const apart = difference(row, old, region);
  if (apart === undefined) return false;
  return (
    Math.abs(apart) > toleranceBetween({ ...old, dimension: row.dimension }, row, tolerances, region).value
  );
}

function ask(work: Working, { pair, other }: Side, row: StandingRow, old: SourcedQuantity): void {
  const slot = otherSlot(work, other, row);
  for (const open of work.draft.findingsOn(slot)) close(work, open, 'asked again');
  const claim = row.claimId === undefined ? undefined : work.draft.claim(row.claimId);
  work.find({
    kind: 'hand',
    item: other,
    itemId: itemNamed(work, other)?.id ?? '',
    attribute: row.attribute,
    slot,
    was: old,
    now: sourced(row, { ...(claim ? { source: claim.source } : {}) }),
    why: `${pair.part}: said to be one for each hand, and ${isChange(work, row) ? `only one of the two has the new ${row.attribute}` : `the two differ in ${row.attribute}`}`,
  });
}

/** Whether this memo changed a figure that stood before. */
const isChange = (work: Working, row: StandingRow) =>
  work
    .findings()
    .some(({ kind, slot }) => (kind === 'decided' || kind === 'remeasured') && slot === row.slot);

const otherSlot = (work: Working, other: string, row: Pick<StandingRow, 'attribute' | 'dimension'>) =>
  `${slotOf(itemNamed(work, other)?.id ?? nameKey(other), row.attribute, row.dimension)}${MARK}`;

/** The other side was given the same figure since: nothing is left to ask. */
function settleAnswered(work: Working, item: ItemRow, row: StandingRow): void {
  for (const name of [item.name, ...item.aliases]) {
    const slots = [
      otherSlot(work, name, row),
      `${slotOf(nameKey(name), row.attribute, row.dimension)}${MARK}`,
    ];
    for (const open of slots.flatMap((slot) => work.draft.findingsOn(slot))) {
      if (!differs(work, open.now, row)) close(work, open, 'the other side has it as well');
    }
  }
}

function close(work: Working, finding: FindingRow, reason: string): void {
  const settledBy = { choice: 'take-new', at: work.memo.recordedAt, reason };
  work.draft.put({ table: 'findings', row: { ...finding, status: 'settled', settledBy } });
}

/** A person says of the other hand: it is changed as well, or the two may differ. */
export function settleHand(work: Working, finding: FindingRow, event: FindingSettled): void {
  const value =
    event.choice === 'take-new' ? finding.now : event.choice === 'correct' ? event.value : undefined;
  if (!value) {
    letDiffer(work, finding);
    return;
  }
  const item = itemFor(work.draft, finding.item, []);
  const slot = finding.slot?.replace(MARK, '').split('|') ?? [];
  const dimension = (slot.at(-1) ?? 'length') as Dimension;
  const place = {
    itemId: item.id,
    slot: slotOf(item.id, finding.attribute, dimension),
    said: finding.item,
    attribute: finding.attribute,
    dimension,
  };
  acceptByHand(work, item, handClaim(work, place, { value: value.value, unit: value.unit }));
}

function letDiffer(work: Working, finding: FindingRow): void {
  const bare = withoutSide(finding.item);
  const pair = work.draft.records('pair').findLast(({ part }) => isPart(bare, part));
  if (!pair) return;
  const known: readonly Attribute[] = pair.letDiffer ?? [];
  work.draft.put({
    table: 'records',
    row: { ...pair, letDiffer: [...new Set([...known, finding.attribute])] },
  });
}
