/** Figures that a person sets. They stand without a word of talk behind them. */
import type { Attribute, Dimension, Quantity } from '../language/notes.ts';
import { accept } from './claims.ts';
import { LIMIT_MARK } from './counterpart.ts';
import type { FigureSet } from './events.ts';
import { sourced } from './finding.ts';
import { breachOf, wordlessly } from './limits.ts';
import { lookOver } from './look-over.ts';
import { dimensionOf, mayBe } from './measures.ts';
import { itemFor } from './naming.ts';
import { recompute } from './recompute.ts';
import type { ClaimRow, ItemRow, Slot, StandingRow } from './rows.ts';
import { slotOf } from './rows.ts';
import type { FindingKind, Source } from './views.ts';
import type { Working } from './working.ts';

/** The standing figure of this attribute and dimension that a person means: the first one that was filed. */
export function standingFor(work: Working, item: ItemRow, attribute: Attribute, dimension?: Dimension) {
  return work.draft
    .standingOf(item.id)
    .find(
      (row) =>
        row.attribute === attribute &&
        (dimension === undefined || row.dimension === dimension) &&
        !row.slot.includes(LIMIT_MARK),
    );
}

/** What a person sets, as a claim of its own. */
export function handClaim(
  work: Working,
  place: Pick<ClaimRow, 'itemId' | 'slot' | 'said' | 'attribute' | 'dimension'>,
  quantity: Quantity,
  plusMinus?: Quantity,
): ClaimRow {
  return {
    id: work.memo.id,
    memoId: work.memo.id,
    ...place,
    bound: 'exact',
    value: quantity.value,
    unit: quantity.unit,
    ...(plusMinus === undefined ? {} : { plusMinus: plusMinus.value, plusMinusUnit: plusMinus.unit }),
    source: work.source({ quote: '' }),
    status: 'standing',
  };
}

/** Sets a figure: it stands, older ones are superseded, open doubts about it are settled by it. */
export function setFigure(work: Working, event: FigureSet): void {
  const { attribute, quantity } = event;
  const item = itemFor(work.draft, event.item, []);
  const dimension = knownDimension(work, item, attribute, quantity);
  if (dimension === undefined) return;
  const slot = standingFor(work, item, attribute, dimension)?.slot ?? slotOf(item.id, attribute, dimension);
  const place = { itemId: item.id, slot, said: event.item, attribute, dimension };
  acceptByHand(work, item, handClaim(work, place, quantity, event.plusMinus));
  for (const finding of work.draft.findingsOn(slot)) {
    if (finding.memoId === work.memo.id) continue;
    const reason = event.reason ? { reason: event.reason } : {};
    const settledBy = { choice: 'correct', at: event.at, ...reason, value: quantity };
    work.draft.put({ table: 'findings', row: { ...finding, status: 'settled', settledBy } });
    lookOver(work, finding, settledBy);
  }
}

/** The rule by which a person's own figure stands. */
export const SET_BY_HAND = 'set by hand';

/** Makes a person's claim stand, and holds it against limits and whatever follows from it. */
export function acceptByHand(work: Working, item: ItemRow, claim: ClaimRow): void {
  accept(work, claim, SET_BY_HAND);
  breachOf(work, claim, wordlessly(work, item, claim));
  recompute(work, claim.slot);
}

/**
 * The dimension of what a person sets. A unit that nobody knows, or one of another kind than the attribute is, sets
 * nothing: that is a finding, and what stood goes on standing.
 */
export function knownDimension(
  work: Working,
  item: ItemRow,
  attribute: Attribute,
  quantity: Quantity,
): Dimension | undefined {
  const dimension = dimensionOf(attribute, quantity.unit, work.settings.region);
  if (dimension !== undefined && mayBe(attribute, dimension)) return dimension;
  const why =
    dimension === undefined
      ? `"${quantity.unit}" is no unit that is known`
      : `${quantity.unit} is a unit of ${dimension}, and ${attribute} is none`;
  reportTrouble(work, 'unit-clash', item, attribute, undefined, quantity, why);
  return undefined;
}

/** Says that something set by hand does not hold together. `slot` is the figure it was meant for, where there is one. */
export function reportTrouble(
  work: Working,
  kind: FindingKind,
  item: ItemRow,
  attribute: Attribute,
  slot: Slot | undefined,
  now: Quantity | undefined,
  why: string,
): void {
  const standing = slot === undefined ? standingFor(work, item, attribute) : work.draft.standing(slot);
  const was = standing ?? now ?? NOTHING;
  work.find({
    kind,
    item: item.name,
    itemId: item.id,
    attribute,
    slot: slot ?? standing?.slot ?? slotOf(item.id, attribute, 'length'),
    was: sourced(was, sourceOfStanding(work, standing)),
    now: sourced(now ?? was, now ? { source: work.source({ quote: '' }) } : {}),
    why,
  });
}

/** Where the figure that stands was said or set; nothing where it was worked out. */
export function sourceOfStanding(
  work: Working,
  standing: StandingRow | undefined,
): { readonly source?: Source } {
  const claim = standing?.claimId === undefined ? undefined : work.draft.claim(standing.claimId);
  return claim ? { source: claim.source } : {};
}

/** What a finding shows where no figure stands. */
const NOTHING: Quantity = { value: 0, unit: '' };
