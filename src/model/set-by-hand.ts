import type { FigureNote, Quantity } from '../language/notes.ts';
import { addCheck, removeCheck, rerunChecks } from './checks/file-checks.ts';
import { Draft } from './draft.ts';
import type { FindingSettled, ProjectEvent } from './events.ts';
import { setFigure } from './hand-figures.ts';
import { setFormula } from './hand-formulas.ts';
import { setLimit } from './hand-limits.ts';
import { setProblem, setTask } from './hand-tasks.ts';
import { fileByHand } from './kept/file-records.ts';
import { nameKey } from './names.ts';
import type { ModelSettings, ReconcilableMemo } from './reconcile.ts';
import type { FindingRow, ModelChange, ProjectRows } from './rows.ts';
import { settle } from './settling.ts';
import { Working } from './working.ts';

/**
 * What a person's own word changes: figures, formulas, limits and tasks set by hand, findings settled. Pure; the
 * changes are in the order in which they must be put. Names of things that are not there change nothing.
 */
export function changesOfHand(
  rows: ProjectRows,
  event: ProjectEvent,
  settings: ModelSettings,
): readonly ModelChange[] {
  const work = new Working(new Draft(rows), wordlessMemo(event), settings);
  switch (event.kind) {
    case 'finding-settled': {
      const finding = meantFinding(rows, event);
      if (finding) settle(work, finding, event);
      break;
    }
    case 'figure-set':
      setFigure(work, event);
      break;
    case 'formula-set':
      setFormula(work, event);
      break;
    case 'limit-set':
      setLimit(work, event);
      break;
    case 'record-kept':
      fileByHand(work, event.record);
      break;
    case 'check-added':
      addCheck(work, event);
      break;
    case 'check-removed':
      removeCheck(work, event);
      break;
    case 'task-added':
    case 'task-closed':
    case 'task-reopened':
    case 'task-due-set':
    case 'task-waits-set':
    case 'task-placed':
      setTask(work, rows, event);
      break;
    case 'problem-solved':
    case 'problem-reopened':
      setProblem(work, rows, event);
      break;
  }
  rerunChecks(work);
  return work.draft.changes();
}

/**
 * The finding that a person settled: the one with the id, as long as it says what it said then. When a changed rule
 * gave the id to another one, the finding that says the same; when there is none left, nothing is settled.
 */
function meantFinding(rows: ProjectRows, { findingId, finding: then }: FindingSettled) {
  const byId = rows.get('findings', findingId);
  if (!then || (byId && saysTheSame(byId, then))) return byId;
  return rows.all('findings').find((one) => one.status === 'open' && saysTheSame(one, then));
}

function saysTheSame(finding: FindingRow, then: NonNullable<FindingSettled['finding']>): boolean {
  const same = (a: Quantity, b: Quantity) => a.value === b.value && a.unit === b.unit;
  return (
    nameKey(finding.item) === nameKey(then.item) &&
    finding.attribute === then.attribute &&
    same(finding.was, then.was) &&
    same(finding.now, then.now)
  );
}

/** A person's word as a memo without talk: its id is that of the event. */
function wordlessMemo({ seq, at }: ProjectEvent): ReconcilableMemo {
  const none: readonly never[] = [];
  const notes = {
    figures: none as readonly (FigureNote & { readonly id: string })[],
    decisions: none,
    tasks: none,
    done: none,
    arrivals: none,
    problems: none,
    promises: none,
    corrections: none,
    records: none,
  };
  return { id: `s${seq}`, recordedAt: at, text: '', notes };
}
