/** Limits that a person sets, and what becomes of limits when a finding about one is settled. */
import { LIMIT_MARK } from './counterpart.ts';
import type { FindingSettled, LimitSet } from './events.ts';
import { knownDimension } from './hand-figures.ts';
import { holdAgainstStanding } from './limits.ts';
import { itemFor } from './naming.ts';
import type { FindingRow, LimitRow } from './rows.ts';
import { slotOf } from './rows.ts';
import type { SourcedQuantity } from './views.ts';
import type { Working } from './working.ts';

/** Sets a limit in place of the one that stood there, and holds it against what stands. */
export function setLimit(work: Working, event: LimitSet): void {
  const { attribute, bound, about, quantity, high } = event;
  const item = itemFor(work.draft, event.item, []);
  const dimension = knownDimension(work, item, attribute, quantity);
  if (dimension === undefined) return;
  const slot = `${slotOf(item.id, attribute, dimension)}${LIMIT_MARK}`;
  for (const old of work.draft.limitsIn(dimension)) {
    if (old.slot === slot && old.bound === bound && old.about === about) putAway(work, old);
  }
  const limit: LimitRow = {
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
  };
  work.draft.put({ table: 'limits', row: limit });
  holdAgainstStanding(work, limit);
}

function putAway(work: Working, limit: LimitRow): void {
  work.draft.put({ table: 'limits', row: { ...limit, active: false } });
}

/**
 * A thing breaks a limit. `keep-old`: the limit holds, and the thing is to be changed. `take-new`: the limit gives way
 * to the size of the thing. `both-right`: this thing at this size is let pass, and the limit holds for others.
 */
export function settleBreach(
  work: Working,
  finding: FindingRow,
  itemId: string,
  choice: FindingSettled['choice'],
): void {
  if (choice !== 'take-new' && choice !== 'both-right') return;
  const { now } = finding;
  for (const limit of limitsOf(work, finding, finding.was)) {
    if (choice === 'both-right') {
      const letPass = [...(limit.letPass ?? []), { itemId, value: now.value, unit: now.unit }];
      work.draft.put({ table: 'limits', row: { ...limit, letPass } });
      continue;
    }
    putAway(work, limit);
    const source = work.source({ quote: '' });
    work.draft.put({
      table: 'limits',
      row: { ...limit, ...movedTo(limit, finding), id: work.memo.id, source },
    });
  }
}

/** The limit with the edge that was passed moved to where the thing is. */
function movedTo(limit: LimitRow, { was, now }: FindingRow): Pick<LimitRow, 'value' | 'high' | 'unit'> {
  // An edge in another unit than the thing's cannot be moved alone: both are needed in one unit.
  if (limit.bound !== 'between' || limit.unit !== now.unit) return { value: now.value, unit: now.unit };
  if (was.value === limit.high) return { value: limit.value, high: now.value, unit: limit.unit };
  return { value: now.value, ...(limit.high === undefined ? {} : { high: limit.high }), unit: limit.unit };
}

function limitsOf(work: Working, finding: FindingRow, side: SourcedQuantity): readonly LimitRow[] {
  const dimension = finding.slot?.split('|')[2] as LimitRow['dimension'] | undefined;
  if (dimension === undefined) return [];
  return work.draft
    .limitsIn(dimension)
    .filter((limit) => limit.slot === finding.slot && limit.source.memoId === side.source?.memoId);
}

/** Two statements of one limit differ: the limit follows the side that a person says holds. */
export function settleStatedLimit(
  work: Working,
  finding: FindingRow,
  choice: FindingSettled['choice'],
  corrected?: FindingSettled['value'],
): void {
  const [old, young] = [limitsOf(work, finding, finding.was), limitsOf(work, finding, finding.now)];
  const known = young[0] ?? old[0];
  if (!known) return;
  // "Both right" brings the side back that is not in force.
  const keepsOld = choice === 'keep-old' || (choice === 'both-right' && young.length > 0);
  const held = choice === 'correct' ? corrected : keepsOld ? finding.was : finding.now;
  if (!held) return;
  if (choice !== 'both-right') for (const limit of [...old, ...young]) putAway(work, limit);
  const { letPass: _letPass, ...limit } = known;
  const source = choice === 'correct' ? undefined : (keepsOld ? finding.was : finding.now).source;
  work.draft.put({
    table: 'limits',
    row: {
      ...limit,
      id: work.memo.id,
      value: held.value,
      unit: held.unit,
      source: source ?? work.source({ quote: '' }),
      active: true,
    },
  });
}
