import type { HouseUnits, Quantity } from '../language/notes.ts';
import { fileAct } from './acts.ts';
import { rerunChecks } from './checks/file-checks.ts';
import { Draft } from './draft.ts';
import { fileFigure } from './figures.ts';
import { type Filed, fileFormulas } from './formulas.ts';
import { meetGates } from './gates-met.ts';
import { fileArrival, receiveUsed } from './goods.ts';
import { fileRecords } from './kept/file-records.ts';
import { closeLookedOver } from './look-over.ts';
import { markOvertaken } from './overtaken.ts';
import { openProblem, solveProblems } from './problems.ts';
import { keepPromises, openPromise } from './promises.ts';
import type { ModelChange, ModelReader } from './rows.ts';
import { checkCircles } from './task-circles.ts';
import { closeMeasured, closeOwnTasks, closeTasks, closeWaits, openTask } from './tasks.ts';
import type { MemoView } from './views.ts';
import { Working } from './working.ts';

/** What reconciling leans on beside the model. */
export interface ModelSettings {
  readonly units: HouseUnits;
  readonly region?: string;
  /** Per dimension, set by a person. */
  readonly tolerances: Readonly<Record<string, Quantity>>;
}

/** A memo as reconciling sees it: its words and its notes with their ids. */
export type ReconcilableMemo = Pick<MemoView, 'id' | 'recordedAt' | 'text' | 'notes'>;

/**
 * Works one memo's notes into the model: names items, files claims, chooses the standing figures, works derived
 * figures out again, checks limits, closes tasks, receives arrivals, and says what clashed and why.
 * Pure; the changes are in the order in which they must be put. Notes that a person rejected do not count.
 */
export function reconcileMemo(
  reader: ModelReader,
  memo: ReconcilableMemo,
  settings: ModelSettings,
): readonly ModelChange[] {
  const work = new Working(new Draft(reader), withoutRejected(memo), settings);
  const { notes } = work.memo;
  const before = closeTasks(work, notes.done, notes.arrivals);
  for (const note of notes.tasks) openTask(work, note);
  const closed = [
    ...before,
    ...closeOwnTasks(work, notes.done),
    ...closeMeasured(work, notes.figures),
    ...closeLookedOver(work, [...notes.done, ...notes.arrivals]),
  ];
  meetGates(work, closed);
  closed.push(...closeWaits(work, notes.arrivals));
  markOvertaken(work);
  if (closed.length + notes.tasks.length > 0) checkCircles(work);
  for (const note of notes.problems) openProblem(work, note);
  solveProblems(work, closed);
  // Acts and figures in order of speech: what was cut before a change was cut to the old figure.
  const inOrder = [...notes.done, ...notes.arrivals, ...notes.figures].sort(
    (a, b) => a.span.start - b.span.start,
  );
  const filed: Filed[] = [];
  for (const note of inOrder) {
    if (note.kind === 'figure') filed.push({ note, claim: fileFigure(work, note) });
    else fileAct(work, note, filed);
  }
  fileFormulas(work, filed);
  for (const note of notes.arrivals) fileArrival(work, note);
  receiveUsed(work);
  for (const note of notes.promises) openPromise(work, note);
  keepPromises(work);
  fileRecords(work, notes.records);
  rerunChecks(work);
  return work.draft.changes();
}

function withoutRejected(memo: ReconcilableMemo): ReconcilableMemo {
  const { notes } = memo;
  const kept = <N extends { readonly review?: string }>(list: readonly N[]) =>
    list.filter((note) => note.review !== 'rejected');
  return {
    ...memo,
    notes: {
      figures: kept(notes.figures),
      decisions: kept(notes.decisions),
      tasks: kept(notes.tasks),
      done: kept(notes.done),
      arrivals: kept(notes.arrivals),
      problems: kept(notes.problems),
      promises: kept(notes.promises),
      corrections: kept(notes.corrections),
      records: kept(notes.records),
    },
  };
}
