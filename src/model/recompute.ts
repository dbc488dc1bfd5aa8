import { sourced } from './finding.ts';
import type { FormulaRow, Slot, StandingRow } from './rows.ts';
import { agree, toleranceBetween } from './tolerance.ts';
import { inUnit, unitKind } from './units.ts';
import { workOut } from './work-out.ts';
import type { Working } from './working.ts';

/** Works out anew everything that follows from a changed figure, however long the chain. */
export function recompute(work: Working, changed: Slot, path: readonly Slot[] = []): void {
  for (const formula of work.draft.formulasReading(changed)) {
    if (path.includes(formula.slot) || formula.slot === changed) {
      reportTrouble(work, formula, 'cycle', 'the formulas go round in a circle');
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
    reportTrouble(work, formula, kind, `${formula.text} cannot be worked out: ${result.what}`);
    return;
  }
  if (!standing || unitKind(standing.unit, settings.region)?.kind !== result.value.exact.kind) {
    if (standing) reportTrouble(work, formula, 'unit-clash', `${formula.text} gives no ${formula.attribute}`);
    return;
  }
  const now = {
    value: inUnit(result.value.exact, standing.unit, settings.region).valueOf(),
    unit: standing.unit,
  };
  const tolerance = toleranceBetween(standing, { ...standing, ...now }, settings.tolerances, settings.region);
  if (agree(now, standing, tolerance, settings.region) !== false) return;
  const claim = standing.claimId === undefined ? undefined : draft.claim(standing.claimId);
  if (claim) draft.put({ table: 'claims', row: { ...claim, status: 'superseded' } });
  const { claimId: _claimId, ...row } = standing;
  const derived: StandingRow = {
    ...row,
    ...now,
    status: 'stale',
    rule: `worked out: ${formula.text}`,
    tolerance,
  };
  draft.put({ table: 'standing', row: derived });
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

  recompute(work, formula.slot, path);
}

function reportTrouble(
  work: Working,
  formula: FormulaRow,
  kind: 'cycle' | 'unit-clash' | 'not-run',
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
