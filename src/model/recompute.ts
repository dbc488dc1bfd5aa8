/** What follows from a changed figure. */
import type { Quantity } from '../language/notes.ts';
import { accept } from './claims.ts';
import { sourced } from './finding.ts';
import { nameOfSlot, reportCircle } from './formulas.ts';
import type { FindingRow, FormulaRow, Slot, StandingRow } from './rows.ts';
import { agree, toleranceBetween } from './tolerance.ts';
import { settleTroubles } from './troubles.ts';
import { unitKind } from './units.ts';
import type { Tolerance } from './views.ts';
import { inPlainUnit, stackUp, workOut } from './work-out.ts';
import type { Working } from './working.ts';

/** Works out anew everything that follows from a changed figure, however long the chain. */
export function recompute(work: Working, changed: Slot, path: readonly Slot[] = []): void {
  for (const formula of work.draft.formulasReading(changed)) {
    if (path.includes(formula.slot) || formula.slot === changed) {
      reportCircle(work, { ...formula, ...formula.was }, [...path, changed, formula.slot]);
      continue;
    }
    recomputeOne(work, formula, [...path, changed]);
  }
}

function recomputeOne(work: Working, formula: FormulaRow, path: readonly Slot[]): void {
  const { draft, settings } = work;
  const standing = draft.standing(formula.slot);
  const result = workOut(draft, formula, settings.region);
  if (!result.ok) {
    const kind = result.kind === 'unit-clash' ? 'unit-clash' : 'not-run';
    const what = result.kind === 'unknown' ? `${nameOfSlot(draft, result.what)} is not known` : result.what;
    reportTrouble(work, formula, kind, `${formula.text} cannot be worked out: ${what}`);
    return;
  }
  if (result.value.exact.kind.replace(/:.*$/, '') !== formula.dimension) {
    reportTrouble(work, formula, 'unit-clash', `${formula.text} gives no ${formula.attribute}`);
    return;
  }
  const now = inPlainUnit(result.value, standing?.unit ?? formula.was.unit, settings.region);
  settleTroubles(work, formula.slot, 'it can be worked out now');
  const stack = stackUp(result.value, now.unit, settings.region);
  // A size of nothing or less says that the sum was heard wrong, and not that the part must go.
  if (now.value <= 0 && formula.was.value > 0) return;
  if (!standing) standFirst(work, formula, now, stack);
  else if (unitKind(standing.unit, settings.region)?.kind !== result.value.exact.kind) return;
  else if (!changes(work, formula, standing, now, stack)) return;
  recompute(work, formula.slot, path);
}

/** A figure that could not be worked out before. */
function standFirst(work: Working, formula: FormulaRow, now: Quantity, stack: Tolerance | undefined): void {
  const { slot, itemId, attribute, dimension } = formula;
  work.draft.put({ table: 'formulas', row: { ...formula, was: now } });
  work.draft.put({
    table: 'standing',
    row: {
      slot,
      itemId,
      attribute,
      dimension,
      ...now,
      bound: 'exact',
      status: 'stands',
      rule: `worked out: ${formula.text}`,
      ...(stack ? { tolerance: stack } : {}),
    },
  });
}

/** Lets a result that holds have the tolerance that its parts have now; false where that is the same. */
function restacks(work: Working, standing: StandingRow, stack: Tolerance | undefined): boolean {
  const { tolerance: old, ...row } = standing;
  if (standing.claimId !== undefined || old?.from === 'said' || old?.from === 'project') return false;
  const same = (a: number | undefined, b: number | undefined) =>
    Math.abs((a ?? 0) - (b ?? 0)) <= 1e-9 * Math.abs(b ?? 0);
  const isOld = old?.from === 'formula' ? old : undefined;
  if (same(isOld?.value, stack?.value) && same(isOld?.rootSumSquare, stack?.rootSumSquare)) return false;
  work.draft.put({ table: 'standing', row: { ...row, ...(stack ? { tolerance: stack } : {}) } });
  return true;
}

/** Lets the new result stand and says that it differs; false when it does not. */
function changes(
  work: Working,
  formula: FormulaRow,
  standing: StandingRow,
  now: Quantity,
  stack: Tolerance | undefined,
): boolean {
  const { draft, settings } = work;
  const tolerance = toleranceBetween(standing, { ...standing, ...now }, settings.tolerances, settings.region);
  if (agree(now, standing, tolerance, settings.region) !== false) return restacks(work, standing, stack);
  const open = draft.findingsOn(formula.slot).filter((finding) => finding.kind === 'stale');
  const undone = open.find((finding) => agree(now, finding.was, tolerance, settings.region) === true);
  if (undone) {
    for (const finding of open) settle(work, finding, 'keep-old', 'what it follows from was put back');
    putBack(work, formula, standing, undone.was);
    return true;
  }
  for (const finding of open) {
    if (finding.memoId !== work.memo.id) settle(work, finding, 'take-new', 'it has changed again since');
  }
  const claim = standing.claimId === undefined ? undefined : draft.claim(standing.claimId);
  if (claim) draft.put({ table: 'claims', row: { ...claim, status: 'superseded' } });
  const { claimId: _claimId, ...row } = standing;
  const rule = `worked out: ${formula.text}`;
  draft.put({
    table: 'standing',
    row: { ...row, ...now, status: 'stale', rule, tolerance: stack ?? tolerance },
  });
  work.find({
    kind: 'stale',
    item: draft.item(formula.itemId)?.name ?? '',
    itemId: formula.itemId,
    attribute: formula.attribute,
    slot: formula.slot,
    was: sourced(standing, { bound: standing.bound, source: claim?.source ?? formula.source }),
    now: sourced(now, {}),
    tolerance,
    why: `it was worked out as ${formula.text}, and a figure in that has changed`,
  });
  return true;
}

/** The figure as it stood before what it follows from was changed and put back. */
function putBack(work: Working, formula: FormulaRow, standing: StandingRow, was: Quantity): void {
  const rule = `worked out: ${formula.text}`;
  const claim = work.draft
    .claimsOf(formula.itemId)
    .findLast(
      (one) =>
        one.slot === formula.slot &&
        one.status === 'superseded' &&
        one.value === was.value &&
        one.unit === was.unit,
    );
  if (claim) accept(work, claim, rule);
  else {
    const { value, unit } = was;
    work.draft.put({ table: 'standing', row: { ...standing, value, unit, status: 'stands', rule } });
  }
}

function settle(work: Working, finding: FindingRow, choice: string, reason: string): void {
  const settledBy = { choice, at: work.memo.recordedAt, reason };
  work.amend({ ...finding, status: 'settled', settledBy });
}

function reportTrouble(
  work: Working,
  formula: FormulaRow,
  kind: 'unit-clash' | 'not-run',
  why: string,
): void {
  const asked = [...work.findings(), ...work.draft.findingsOn(formula.slot)];
  if (asked.some((finding) => finding.kind === kind && finding.slot === formula.slot)) return;
  work.find({
    kind,
    item: work.draft.item(formula.itemId)?.name ?? '',
    itemId: formula.itemId,
    attribute: formula.attribute,
    slot: formula.slot,
    was: sourced(formula.was, { source: formula.source }),
    now: sourced(formula.was, {}),
    why,
  });
}
