/** Figures, formulas and limits that a person sets. They stand without a word of talk behind them. */
import { type Attribute, DIMENSIONS, type Dimension, type Quantity } from '../language/notes.ts';
import { accept } from './claims.ts';
import { LIMIT_MARK } from './counterpart.ts';
import type { FigureSet, FormulaSet, LimitSet } from './events.ts';
import { sourced } from './finding.ts';
import { putFormula, saidFormula } from './formulas.ts';
import { breachOf } from './limits.ts';
import { itemFor } from './naming.ts';
import { recompute } from './recompute.ts';
import type { ClaimRow, ItemRow, StandingRow } from './rows.ts';
import { slotOf } from './rows.ts';
import { inUnit, unitKind } from './units.ts';
import { workOut } from './work-out.ts';
import type { Working } from './working.ts';

/** The dimension of a quantity, read off its unit; a bare 1 is a count where a count is set. */
function dimensionOf(attribute: Attribute, unit: string, region?: string): Dimension {
  if (attribute === 'count') return 'count';
  const kind = unitKind(unit, region)?.kind.replace(/:.*$/, '');
  return DIMENSIONS.find((dimension) => dimension === kind) ?? 'ratio';
}

/** The standing figure of this attribute and dimension that a person means: the first one that was filed. */
function standingFor(work: Working, item: ItemRow, attribute: Attribute, dimension?: Dimension) {
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
): ClaimRow {
  return {
    id: work.memo.id,
    memoId: work.memo.id,
    ...place,
    bound: 'exact',
    value: quantity.value,
    unit: quantity.unit,
    source: work.source({ quote: '' }),
    status: 'standing',
  };
}

/** Sets a figure: it stands, older ones are superseded, open doubts about it are settled by it. */
export function setFigure(work: Working, event: FigureSet): void {
  const { attribute, quantity } = event;
  const item = itemFor(work.draft, event.item, []);
  const dimension = dimensionOf(attribute, quantity.unit, work.settings.region);
  const slot = standingFor(work, item, attribute, dimension)?.slot ?? slotOf(item.id, attribute, dimension);
  const place = { itemId: item.id, slot, said: event.item, attribute, dimension };
  acceptByHand(work, item, handClaim(work, place, quantity));
  for (const finding of work.draft.findingsOn(slot)) {
    if (finding.memoId === work.memo.id) continue;
    const settledBy = { choice: 'correct', at: event.at, ...(event.reason ? { reason: event.reason } : {}) };
    work.draft.put({ table: 'findings', row: { ...finding, status: 'settled', settledBy } });
  }
}

/** Makes a person's claim stand, and holds it against limits and whatever follows from it. */
export function acceptByHand(work: Working, item: ItemRow, claim: ClaimRow): void {
  accept(work, claim, 'set by hand');
  const { value, unit, attribute, dimension } = claim;
  breachOf(work, claim, {
    note: {
      kind: 'figure',
      id: claim.id,
      quote: '',
      span: { start: 0, end: 0 },
      item: item.name,
      attribute,
      bound: 'exact',
      dimension,
      value,
      unit,
    },
    item,
    place: work.place({ start: 0, end: 0 }),
    cue: { change: undefined, weight: 0, isNeeded: false, isRestated: false },
  });
  recompute(work, claim.slot);
}

/** Sets how a figure follows from others; an empty formula takes it away. What cannot be worked out is said. */
export function setFormula(work: Working, event: FormulaSet): void {
  const item = itemFor(work.draft, event.item, []);
  const standing = standingFor(work, item, event.attribute);
  const slot = standing?.slot ?? slotOf(item.id, event.attribute, 'length');
  const dimension = standing?.dimension ?? 'length';
  const place = { slot, itemId: item.id, attribute: event.attribute, dimension };
  const was = standing ?? { value: 0, unit: 'mm' };
  const source = work.source({ quote: '' });
  if (event.formula.trim() === '') {
    const { value, unit } = was;
    const gone = { expression: '', text: '', inputs: [], was: { value, unit }, source, from: 'set' } as const;
    work.draft.put({ table: 'formulas', row: { ...place, ...gone } });
    return;
  }
  const formula = saidFormula(work, place, event.formula);
  if (!formula) {
    reportUnread(work, item, place, was, event.formula);
    return;
  }
  putFormula(work, { ...place, value: was.value, unit: was.unit, source }, formula, 'set');
  const kept = work.draft.formula(slot);
  const result = kept && workOut(work.draft, kept, work.settings.region);
  const unit = standing?.unit ?? work.draft.standing(kept?.inputs[0] ?? '')?.unit ?? was.unit;
  if (!kept || !result?.ok || unitKind(unit, work.settings.region)?.kind !== result.value.exact.kind) {
    reportUnread(work, item, place, was, event.formula);
    return;
  }
  const value = inUnit(result.value.exact, unit, work.settings.region).valueOf();
  work.draft.put({ table: 'formulas', row: { ...kept, was: { value, unit } } });
  work.draft.put({
    table: 'standing',
    row: {
      ...place,
      value,
      unit,
      bound: 'exact',
      status: 'stands',
      rule: `worked out: ${kept.text}`,
    },
  });
  recompute(work, slot);
}

function reportUnread(
  work: Working,
  item: ItemRow,
  place: Pick<StandingRow, 'slot' | 'attribute'>,
  was: Quantity,
  text: string,
): void {
  work.find({
    kind: 'not-run',
    item: item.name,
    itemId: item.id,
    attribute: place.attribute,
    slot: place.slot,
    was: sourced(was, {}),
    now: sourced(was, {}),
    why: `"${text}" cannot be worked out: a name in it stands for no figure, or its units do not fit`,
  });
}

/** Sets a limit in place of the one that stood there. */
export function setLimit(work: Working, event: LimitSet): void {
  const { attribute, bound, about, quantity, high } = event;
  const item = itemFor(work.draft, event.item, []);
  const dimension = dimensionOf(attribute, quantity.unit, work.settings.region);
  const slot = `${slotOf(item.id, attribute, dimension)}${LIMIT_MARK}`;
  for (const old of work.draft.limitsIn(dimension)) {
    if (old.slot === slot && old.bound === bound)
      work.draft.put({ table: 'limits', row: { ...old, active: false } });
  }
  work.draft.put({
    table: 'limits',
    row: {
      id: work.memo.id,
      itemId: item.id,
      slot,
      said: event.item,
      attribute,
      dimension,
      about,
      sentence: '',
      bound,
      value: quantity.value,
      ...(high === undefined ? {} : { high }),
      unit: quantity.unit,
      source: work.source({ quote: '' }),
      active: true,
    },
  });
}
