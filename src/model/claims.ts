import type { Attribute, FigureNote } from '../language/notes.ts';
import type { Cue } from './cues.ts';
import type { ClaimRow, ItemRow, Slot, StandingRow } from './rows.ts';
import type { Place } from './talk.ts';
import { toldWith } from './told-with.ts';
import { toleranceBetween } from './tolerance.ts';
import type { Kept, Tolerance } from './views.ts';
import { withMore } from './with-more.ts';
import type { Working } from './working.ts';

/** A figure of this memo on its way into the model. */
export interface Arriving {
  readonly note: Kept<FigureNote>;
  readonly item: ItemRow;
  readonly place: Place;
  readonly cue: Cue;
}

/** Makes a claim the standing figure of its slot. */
export function accept(work: Working, claim: ClaimRow, rule: string, tolerance?: Tolerance): void {
  const before = work.draft.standing(claim.slot);
  const old = before?.claimId === undefined ? undefined : work.draft.claim(before.claimId);
  if (old && old.status === 'standing' && old.id !== claim.id) {
    work.draft.put({ table: 'claims', row: { ...old, status: 'superseded' } });
  }
  putClaim(work, { ...claim, status: 'standing' });
  const own = tolerance ?? toleranceBetween(claim, claim, work.settings.tolerances, work.settings.region);
  const also = before?.also === undefined ? {} : { also: before.also };
  work.draft.put({
    table: 'standing',
    row: withMore(standingOf(claim, rule), { ...also, tolerance: own, ...toldIn(work, claim) }),
  });
}

/** The words that a claim of this memo is told with. */
function toldIn(work: Working, claim: ClaimRow): Pick<StandingRow, 'told'> {
  const note = work.figure(claim.id);
  return note ? { told: toldWith(work.place(note.span)) } : {};
}

export function putClaim(work: Working, claim: ClaimRow): void {
  work.draft.put({ table: 'claims', row: claim });
}

export function standingOf(claim: ClaimRow, rule: string): StandingRow {
  return {
    slot: claim.slot,
    itemId: claim.itemId,
    attribute: claim.attribute,
    dimension: claim.dimension,
    value: claim.value,
    unit: claim.unit,
    bound: claim.bound,
    ...(claim.high === undefined ? {} : { high: claim.high }),
    ...(claim.state === undefined ? {} : { state: claim.state }),
    claimId: claim.id,
    status: 'stands',
    rule,
  };
}

const COPIED = [
  'high',
  'plusMinus',
  'plusMinusUnit',
  'state',
  'condition',
  'datum',
  'sizeKind',
  'formula',
  'each',
  'place',
] as const;

/**
 * The measure that a note tells. One that was only guessed is that of the figure whose place it takes: "cut at 624" is how
 * tall the shelf is, once that was told.
 */
function measureOf(work: Working, { attribute, assumed }: Arriving['note'], slot: Slot): Attribute {
  const isGuessed = assumed?.includes('attribute');
  return (isGuessed ? work.draft.standing(slot)?.attribute : undefined) ?? attribute;
}

/** The claim that a note makes, filed in a slot. */
export function claimOf(
  work: Working,
  { note, item }: Pick<Arriving, 'note' | 'item'>,
  slot: Slot,
  status: ClaimRow['status'],
): ClaimRow {
  const copied: Record<string, unknown> = {};
  for (const key of COPIED) if (note[key] !== undefined) copied[key] = note[key];
  return {
    id: note.id,
    memoId: work.memo.id,
    itemId: item.id,
    slot,
    said: note.item,
    attribute: measureOf(work, note, slot),
    dimension: note.dimension,
    bound: note.bound,
    value: note.value,
    unit: note.unit,
    ...copied,
    source: work.source(note),
    status,
  };
}
