import type { FigureNote } from '../language/notes.ts';
import { Draft } from './draft.ts';
import type { ProjectEvent } from './events.ts';
import { setFigure, setFormula, setLimit } from './hand-figures.ts';
import type { ModelSettings, ReconcilableMemo } from './reconcile.ts';
import type { ModelChange, ProjectRows, TaskRow } from './rows.ts';
import { settle } from './settling.ts';
import type { Source } from './views.ts';
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
      const finding = rows.get('findings', event.findingId);
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
    case 'task-added':
    case 'task-closed':
    case 'task-reopened': {
      const row = taskAfter(rows, event);
      if (row) work.draft.put({ table: 'tasks', row });
      break;
    }
  }
  return work.draft.changes();
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
  };
  return { id: `s${seq}`, recordedAt: at, text: '', notes };
}

type TaskEvent = Extract<ProjectEvent, { kind: 'task-added' | 'task-closed' | 'task-reopened' }>;

function taskAfter(rows: ProjectRows, event: TaskEvent): TaskRow | undefined {
  const id = `s${event.seq}`;
  const source: Source = { memoId: id, recordedAt: event.at, quote: '' };
  if (event.kind === 'task-added') {
    const { gist, due, waitsFor = [] } = event;
    return {
      id,
      gist,
      quote: gist,
      around: '',
      ...(due === undefined ? {} : { due }),
      waitsFor,
      source,
      status: 'open',
    };
  }
  const task = rows.get('tasks', event.taskId);
  if (!task) return undefined;
  const { closedById: _id, closedBy: _by, ...open } = task;
  return event.kind === 'task-reopened'
    ? { ...open, status: 'open' }
    : { ...open, status: 'done', closedById: id, closedBy: source };
}
