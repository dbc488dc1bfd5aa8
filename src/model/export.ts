/** The whole project as one JSON document. The shape is described in docs/export.md. */
import type { MemoNotes, RecordNote } from '../language/notes.ts';
import { checkViews } from './checks/check-views.ts';
import type { ProjectEvent } from './events.ts';
import { keepNotes } from './keep-notes.ts';
import { batchViews, hiddenViews, orderViews, pairViews } from './kept/kept-views.ts';
import {
  closings,
  findingViews,
  limitViews,
  memoViews,
  projectInfo,
  standingFigures,
} from './project-views.ts';
import type { ProjectRows } from './rows.ts';
import { taskViews } from './task-views.ts';
import type { FindingView, Kept, MemoView } from './views.ts';

/** Number of the document's format; it grows when a reader of the old one would be misled. */
export const EXPORT_FORMAT = 1;

/** Kinds of finding that are a clash of two figures. */
const CONFLICTS: ReadonlySet<FindingView['kind']> = new Set([
  'decided',
  'remeasured',
  'slip',
  'stale',
  'limit',
]);

interface Placed {
  readonly startSeconds?: number;
  readonly endSeconds?: number;
  readonly span: unknown;
  readonly kind: string;
}

/** Without the fields that are only for this program; seconds get their short names. */
function exported<N extends Placed>({ startSeconds, endSeconds, span: _span, kind: _kind, ...note }: N) {
  return {
    ...note,
    ...(startSeconds === undefined ? {} : { start: startSeconds }),
    ...(endSeconds === undefined ? {} : { end: endSeconds }),
  };
}

const isKept = (note: { readonly review?: string }) => note.review !== 'rejected';

/** A record keeps its kind: the list holds several. */
function recordOf(note: Kept<RecordNote>) {
  const { kind } = note;
  if (kind !== 'batch') return { kind, ...exported(note) };
  return { kind, ...exported(note), facts: note.facts.map(({ span: _span, ...fact }) => fact) };
}

type ExportedNotes = Pick<MemoView, 'notes'>;

function notesObject({ notes }: ExportedNotes, closed: ReadonlyMap<string, string>) {
  return {
    figures: notes.figures.filter(isKept).map(exported),
    decisions: notes.decisions.filter(isKept).map(exported),
    tasks: notes.tasks.filter(isKept).map(exported),
    done: notes.done.filter(isKept).map((note) => {
      const closes = closed.get(note.id);
      return { ...exported(note), ...(closes === undefined ? {} : { closes }) };
    }),
    arrivals: notes.arrivals.filter(isKept).map(exported),
    problems: notes.problems.filter(isKept).map(exported),
    promises: notes.promises.filter(isKept).map(exported),
    corrections: notes.corrections.filter(isKept).map(exported),
    records: notes.records.filter(isKept).map(recordOf),
  };
}

function conflictOf({ id, item, attribute, was, now, kind, why, status }: FindingView) {
  return {
    id,
    item,
    attribute,
    was: { value: was.value, unit: was.unit },
    now: { value: now.value, unit: now.unit },
    kind,
    why,
    status,
  };
}

function memoOf(memo: MemoView, findings: readonly FindingView[], closed: ReadonlyMap<string, string>) {
  return {
    id: memo.id,
    recordedAt: memo.recordedAt,
    source: memo.source.name,
    sha256: memo.source.sha256,
    text: memo.text,
    ...(memo.utterances
      ? {
          utterances: memo.utterances.map(({ startSeconds, endSeconds, text }) => ({
            start: startSeconds,
            end: endSeconds,
            text,
          })),
        }
      : {}),
    ...(memo.repairs
      ? { repairs: memo.repairs.map(({ id, quote, means, why }) => ({ id, quote, means, why })) }
      : {}),
    ...notesObject(memo, closed),
    conflicts: findings
      .filter((finding) => finding.memoId === memo.id && CONFLICTS.has(finding.kind))
      .map(conflictOf),
  };
}

/** One text read without a project, in the shape of a memo of the document. */
export function memoObject(memo: {
  readonly id: string;
  readonly recordedAt: string;
  readonly source: string;
  readonly text: string;
  readonly notes: MemoNotes;
}) {
  const { notes, ...rest } = memo;
  return {
    ...rest,
    ...notesObject({ notes: keepNotes(memo.id, notes, undefined) }, new Map()),
    conflicts: [],
  };
}

/** When the latest memo was recorded: what the document says holds at that time, on whatever day it is printed. */
function lastHeard(rows: ProjectRows): string {
  const times = rows.all('memos').map((memo) => memo.recordedAt);
  return times.reduce((last, at) => (Date.parse(at) > Date.parse(last) ? at : last), '1970-01-01T00:00:00Z');
}

/**
 * The project as the document that `export --json` prints. With the log it can be imported again: all the rest follows
 * from that.
 */
export function exportDocument(rows: ProjectRows, log?: readonly ProjectEvent[]): unknown {
  const { name, units, region, tolerances } = projectInfo(rows);
  const findings = findingViews(rows);
  const closed = closings(rows);
  return {
    format: EXPORT_FORMAT,
    project: { name, units, ...(region ? { region } : {}), tolerances },
    memos: memoViews(rows).map((memo) => memoOf(memo, findings, closed)),
    figures: standingFigures(rows),
    limits: limitViews(rows),
    batches: batchViews(rows),
    behind: hiddenViews(rows),
    hands: pairViews(rows),
    orders: orderViews(rows),
    checks: checkViews(rows),
    open: taskViews(rows, lastHeard(rows))
      .filter((task) => task.status !== 'done')
      .map((task) => task.id),
    ...(log ? { log } : {}),
  };
}
