/** A person settles a finding: one side holds, both do, or another value does. */
import { accept, putClaim } from './claims.ts';
import { LIMIT_MARK } from './counterpart.ts';
import type { FindingSettled } from './events.ts';
import { acceptByHand, handClaim } from './hand-figures.ts';
import { settleBreach, settleStatedLimit } from './hand-limits.ts';
import { settleHand } from './kept/other-hand.ts';
import { lookOver } from './look-over.ts';
import { nameStems } from './names.ts';
import { recompute } from './recompute.ts';
import type { ClaimRow, FindingRow, ItemRow } from './rows.ts';
import type { SourcedQuantity } from './views.ts';
import type { Working } from './working.ts';

const RULE = 'settled by a person';

/** Findings that are about two values; the others are about formulas that do not run. */
const TWO_SIDED: ReadonlySet<FindingRow['kind']> = new Set(['decided', 'remeasured', 'slip', 'stale']);

/** What a finding says, to know it by when its id has come to mean another one. */
export function wordsOfFinding({
  item,
  attribute,
  was,
  now,
}: FindingRow): NonNullable<FindingSettled['finding']> {
  const bare = ({ value, unit }: SourcedQuantity) => ({ value, unit });
  return { item, attribute, was: bare(was), now: bare(now) };
}

/** Marks the finding as settled and lets the chosen side stand. */
export function settle(work: Working, finding: FindingRow, event: FindingSettled): void {
  const { choice, at, reason, value } = event;
  const settledBy = {
    choice,
    at,
    ...(reason === undefined ? {} : { reason }),
    ...(value === undefined ? {} : { value }),
  };
  work.draft.put({ table: 'findings', row: { ...finding, status: 'settled', settledBy } });
  if (finding.kind === 'hand') {
    settleHand(work, finding, event);
    return;
  }
  lookOver(work, finding, settledBy);
  // A check holds or not by its figures; a person may only let it be.
  if (finding.kind === 'check') return;
  // What came is what came: the figures say what holds of it.
  if (finding.kind === 'received') return;
  const sides = sidesOf(work, finding);
  if (!sides) return;
  if (finding.kind === 'limit') {
    if (event.choice === 'correct') correct(work, sides, event);
    else settleBreach(work, finding, sides.item.id, event.choice);
  } else if (finding.slot?.includes(LIMIT_MARK)) {
    settleStatedLimit(work, finding, event.choice, event.value);
  } else if (TWO_SIDED.has(finding.kind)) chooseSide(work, finding, sides, event);
}

function chooseSide(work: Working, finding: FindingRow, sides: Sides, event: FindingSettled): void {
  switch (event.choice) {
    case 'keep-old':
      hold(work, sides, sides.old, finding.was);
      if (sides.young && finding.kind === 'slip') putClaim(work, { ...sides.young, status: 'rejected' });
      break;
    case 'take-new':
      hold(work, sides, sides.young, finding.now);
      break;
    case 'both-right':
      holdBoth(work, sides, finding);
      break;
    case 'correct':
      correct(work, sides, event);
      break;
  }
}

type Place = Pick<ClaimRow, 'itemId' | 'slot' | 'said' | 'attribute' | 'dimension'>;

interface Sides {
  readonly item: ItemRow;
  /** Of the newer claim, else of the older one, else of the figure that stands by a formula alone. */
  readonly place: Place;
  readonly old: ClaimRow | undefined;
  readonly young: ClaimRow | undefined;
}

/** The claims behind the two sides; nothing where neither was ever said and no figure stands in their place. */
function sidesOf(work: Working, finding: FindingRow): Sides | undefined {
  // The slot of a broken limit is the limit's own: the thing that breaks it is found by its name.
  const items = work.draft.itemsSharing(nameStems(finding.item));
  const claims = items.flatMap((item) => work.draft.claimsOf(item.id));
  const old = claims.find((claim) => isSide(claim, finding.was));
  const young = claims.find((claim) => isSide(claim, finding.now));
  // A part made to the old size of another thing is the one that is asked about, and not that thing.
  const part = finding.kind === 'stale' && old?.slot === finding.slot ? old : undefined;
  const place = part ?? young ?? old ?? placeOf(work, finding);
  const item = place && work.draft.item(place.itemId);
  return place && item ? { item, place, old, young } : undefined;
}

/** A figure by a formula that was set by hand was said in no claim: it stands in the slot that the finding names. */
function placeOf(work: Working, { slot, item: said }: FindingRow): Place | undefined {
  const standing = slot === undefined ? undefined : work.draft.standing(slot);
  if (!standing) return undefined;
  const { itemId, attribute, dimension } = standing;
  return { itemId, slot: standing.slot, said, attribute, dimension };
}

function isSide(claim: ClaimRow, side: SourcedQuantity): boolean {
  const { source } = side;
  return (
    source !== undefined &&
    claim.value === side.value &&
    claim.unit === side.unit &&
    claim.source.memoId === source.memoId &&
    claim.source.quote === source.quote
  );
}

/** Lets one side stand. A side that was worked out and never said stands as a figure without a claim. */
function hold(work: Working, sides: Sides, side: ClaimRow | undefined, value: SourcedQuantity): void {
  const standing = work.draft.standing(sides.place.slot);
  if (side) {
    // A limit that was taken for an older figure stands where it is.
    if (side.slot !== sides.place.slot) return;
    const isStanding = standing?.claimId === side.id;
    accept(work, side, RULE);
    if (!isStanding) recompute(work, sides.place.slot);
  } else if (standing) {
    const { value: size, unit } = value;
    work.draft.put({
      table: 'standing',
      row: { ...standing, value: size, unit, status: 'stands', rule: RULE },
    });
  }
}

/** Two things of one name: the older figure goes on standing, and the other one clashes with it no more. */
function holdBoth(work: Working, { place, young }: Sides, { was, now }: FindingRow): void {
  const standing = work.draft.standing(place.slot);
  if (young) putClaim(work, { ...young, status: 'standing' });
  if (!standing) return;
  const isOld = standing.value === was.value && standing.unit === was.unit;
  const { value, unit } = isOld ? now : was;
  const also = [...(standing.also ?? []), { value, unit }];
  work.draft.put({ table: 'standing', row: { ...standing, also, status: 'stands', rule: RULE } });
}

function correct(work: Working, { item, place, young }: Sides, event: FindingSettled): void {
  if (!event.value) return;
  if (young?.status === 'doubted') putClaim(work, { ...young, status: 'rejected' });
  const { itemId, slot, said, attribute, dimension } = place;
  acceptByHand(work, item, handClaim(work, { itemId, slot, said, attribute, dimension }, event.value));
}
