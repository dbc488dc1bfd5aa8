import type { Attribute, Quantity } from '../language/notes.ts';
import type { Draft } from './draft.ts';
import { shapeOf } from './names.ts';
import type { ActRow, FindingRow, ModelReader, Slot } from './rows.ts';
import { difference } from './units.ts';
import type { Consequence, FindingKind, Source, SourcedQuantity, Tolerance } from './views.ts';
import { workedOut } from './work-out.ts';

/** What a check found, before it is written up. */
export interface Clash {
  readonly kind: FindingKind;
  readonly item: string;
  readonly itemId: string;
  readonly attribute: Attribute;
  readonly slot: Slot;
  readonly was: SourcedQuantity;
  readonly now: SourcedQuantity;
  readonly tolerance?: Tolerance;
  readonly likeness?: string;
  readonly why: string;
  /** Made so without a word about the earlier figure: it is not settled by itself. */
  readonly isUnasked?: true;
  /** Of tasks that wait for each other: see `FindingView`. */
  readonly path?: readonly string[];
  /** Of a check: see `FindingView`. */
  readonly checkId?: string;
  /** The things that it is about, where they are several: what was done to any of them hangs on it. */
  readonly things?: readonly string[];
}

const NEXT: Readonly<Record<FindingKind, string>> = {
  decided: 'the new figure holds: settle it; what was ordered or made to the old one stays to be looked over',
  remeasured:
    'use the new figure: settle it; what was made or ordered to the old one stays to be looked over',
  slip: 'measure again, or say which one holds',
  stale: 'make it anew, trim it, or say that it may stay',
  limit: 'change the thing, change the limit, or say that it may stay',
  cycle: 'take one of these formulas away',
  'unit-clash': 'put the formula or the unit right',
  'not-run': 'say the missing figure',
  received: 'claim it from the supplier, or make what hangs on it to what came',
  hand: 'say whether the other side is to be changed as well',
  'task-cycle': 'say which of them can be done first, or take away what one waits for',
  check: 'change one of its figures, or say that it may stay',
};

/** How dear each kind is to get wrong, before what hangs on it is counted. */
const COST: Readonly<Record<FindingKind, number>> = {
  limit: 6,
  slip: 5,
  stale: 4,
  cycle: 3,
  'unit-clash': 3,
  'not-run': 2,
  received: 5,
  hand: 4,
  'task-cycle': 3,
  check: 5,
  remeasured: 2,
  decided: 1,
};
const ACT_COST: Readonly<Record<Consequence['act'], number>> = {
  ordered: 5,
  'closed-in': 4,
  made: 3,
  planned: 2,
  promised: 1,
  filmed: 1,
  derived: 1,
};

const MADE_SO =
  'if it may stay so, take the new figure: settle it; if not, keep the old one and make it anew';

/** Findings about formulas themselves. */
export const FORMULA_KINDS: ReadonlySet<FindingKind> = new Set(['cycle', 'unit-clash', 'not-run']);

/** Writes a clash up as a finding: its difference, what hangs on it and what it may cost. */
export function findingOf(
  draft: Draft,
  clash: Clash,
  memo: { readonly id: string; readonly recordedAt: string },
  number: number,
  region?: string,
): FindingRow {
  const { itemId: _itemId, things: _things, isUnasked = false, ...shown } = clash;
  // What is wrong with a formula or an order changes no figure: nothing differs, and nothing hangs on it.
  const isOfFormula = FORMULA_KINDS.has(clash.kind) || clash.kind === 'task-cycle';
  const consequences = isOfFormula ? [] : consequencesOf(draft, clash, region);
  const apart = isOfFormula || clash.kind === 'check' ? undefined : difference(clash.now, clash.was);
  const hangs = consequences.some((one) => one.act !== 'derived');
  // Said on purpose or measured anew: the new figure holds already, and only what hangs on the old one is left.
  const isSettled = (clash.kind === 'decided' || clash.kind === 'remeasured') && !hangs && !isUnasked;
  return {
    id: `${memo.id}.c${number}`,
    memoId: memo.id,
    foundAt: memo.recordedAt,
    ...shown,
    ...(apart === undefined ? {} : { difference: { value: tidy(apart), unit: clash.now.unit } }),
    next: isUnasked ? MADE_SO : NEXT[clash.kind],
    consequences,
    cost: COST[clash.kind] + consequences.reduce((sum, one) => sum + ACT_COST[one.act], 0),
    ...(isSettled
      ? { status: 'settled', settledBy: { choice: 'take-new', at: memo.recordedAt, reason: 'said so' } }
      : { status: 'open' }),
  };
}

/** What was ordered, made or closed in on the strength of the old figure, orders first; then what is worked out from it. */
function consequencesOf(draft: Draft, clash: Clash, region?: string): readonly Consequence[] {
  const acts = actsOnAny(draft, clash.things ?? [clash.item])
    .filter((act) => !isDoneTo(clash.now, act.source))
    .map((act): Consequence => ({ act: act.act, what: act.what, source: act.source }));
  const derived = draft.formulasReading(clash.slot).map((formula): Consequence => {
    const after = workedOut(draft, formula, region);
    return {
      act: 'derived',
      what: `${draft.item(formula.itemId)?.name ?? ''} ${formula.attribute}`,
      before: formula.was,
      ...(after ? { after } : {}),
      source: formula.source,
    };
  });
  return [...acts, ...derived];
}

/** "Cut the legs to 870 instead of 840": told with the new figure, and done to it. */
const isDoneTo = ({ source, state }: SourcedQuantity, act: Source): boolean =>
  state === 'made' &&
  source?.memoId === act.memoId &&
  source.quote !== '' &&
  act.quote.includes(source.quote);

/** Acts that were done to any of these things, each once, orders first. */
export function actsOnAny(reader: ModelReader, names: readonly string[]): readonly FiguredAct[] {
  const acts = names.flatMap((name) => actsOn(reader, name));
  const each = [...new Map(acts.map((act) => [act.id, act])).values()];
  return each.sort((a, b) => ACT_COST[b.act] - ACT_COST[a.act]);
}

/** An act that was done on the strength of figures. */
type FiguredAct = ActRow & { readonly act: Exclude<ActRow['act'], 'layered'> };
const isFigured = (act: ActRow): act is FiguredAct => act.act !== 'layered';

/** Acts that were done to this thing: they name it with at least half of what tells it apart. */
export function actsOn(draft: ModelReader, name: string): readonly FiguredAct[] {
  const { head, stems } = shapeOf(name);
  return draft.actsNaming(head, stems, Math.ceil(stems.length / 2)).filter(isFigured);
}

/** A quantity with its source, without the fields that a finding does not show. */
export function sourced(
  quantity: Quantity,
  rest: {
    readonly bound?: SourcedQuantity['bound'];
    readonly state?: SourcedQuantity['state'];
    readonly source?: Source;
  },
): SourcedQuantity {
  return {
    value: tidy(quantity.value),
    unit: quantity.unit,
    ...(rest.bound === undefined ? {} : { bound: rest.bound }),
    ...(rest.state === undefined ? {} : { state: rest.state }),
    ...(rest.source === undefined ? {} : { source: rest.source }),
  };
}

/** Drops the noise of binary fractions: 0.30000000000000004 is 0.3. */
export function tidy(value: number): number {
  return Number.parseFloat(value.toPrecision(12));
}
