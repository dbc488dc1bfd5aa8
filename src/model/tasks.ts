import type { ArrivalNote, DoneNote, FigureNote, Span, TaskNote } from '../language/notes.ts';
import { beforeWhat } from './before.ts';
import { allClosedBy, closesOwn, type Deed } from './closing.ts';
import { gateWords } from './gate-words.ts';
import { dateGate, gateOf, isEarliest } from './gates.ts';
import { isOnlyWaiting } from './gates-met.ts';
import { isReadingFor, isToMeasure } from './measured-tasks.ts';
import { tellingStems } from './open-tasks.ts';
import { mendedBy } from './problems.ts';
import type { Gate, TaskRow } from './rows.ts';
import { isPutOff, isSaidAgain } from './said-again.ts';
import { LONGEST } from './talk.ts';
import type { Kept } from './views.ts';
import { withMore } from './with-more.ts';
import type { Working } from './working.ts';

/** What of a longer one is about the words themselves. */
const NEAR = 80;

/** The sentence around a note, or only the words near it where no full stop ends it. */
function sentenceAt(work: Working, span: Span): string {
  const { sentence } = work.place(span);
  if (sentence.length <= LONGEST) return sentence;
  return work.memo.text.slice(Math.max(0, span.start - NEAR), span.end + NEAR / 2);
}

/** Opens a task; one that is open already under nearly the same words is only noted as said again. */
export function openTask(work: Working, note: Kept<TaskNote>): void {
  const task = taskOf(work, note);
  const before = work.draft
    .openTasksSharing(tellingStems(task.gist))
    .find((open) => isSaidAgain(task, open) || isPutOff(task, open));
  work.draft.put({ table: 'tasks', row: before ? withWordsOf(before, task) : task });
}

function taskOf(work: Working, note: Kept<TaskNote>): TaskRow {
  const place = work.place(note.span);
  const sentence = sentenceAt(work, note.span);
  const isNotBefore = note.due !== undefined && isEarliest(sentence);
  const gates = [
    ...note.waitsFor.map((words) => gateAt(work, note, words)),
    ...(isNotBefore && note.due ? [dateGate(note.due)] : []),
  ];
  const before = beforeWhat(sentence, note);
  const mends = mendedBy(work, note);
  return {
    id: note.id,
    gist: note.gist,
    quote: note.quote,
    around: `${place.before.slice(-LONGEST)} ${sentence}`.trim(),
    ...(note.due === undefined || isNotBefore ? {} : { due: note.due }),
    waitsFor: note.waitsFor,
    ...(gates.length > 0 ? { gates } : {}),
    ...(before === undefined ? {} : { before }),
    ...(mends === undefined ? {} : { mends }),
    source: work.source(note),
    status: 'open',
  };
}

/** A gate with the figures of its sentence; "once that's behind me" means the task said just before. */
function gateAt(work: Working, note: Kept<TaskNote>, words: string): Gate {
  const index = work.sentenceOf(note.span);
  const figures = work.memo.notes.figures.filter((figure) => work.sentenceOf(figure.span) === index);
  const gate = gateOf(words, { recordedAt: work.memo.recordedAt, figures });
  if (gate.kind !== 'event' || gateWords(words).words.length > 0) return gate;
  const last = work.memo.notes.tasks.findLast((task) => task.span.start < note.span.start);
  return last ? { ...gate, kind: 'task', taskId: last.id } : gate;
}

/** What a task said again adds to the one that is open. */
function withWordsOf(open: TaskRow, said: TaskRow): TaskRow {
  const more = (said.gates ?? []).filter((gate) => !open.gates?.some((one) => one.words === gate.words));
  const waitsFor = [...new Set([...open.waitsFor, ...said.waitsFor])];
  const due = said.due ?? open.due;
  const before = said.before ?? open.before;
  const mends = open.mends ?? said.mends;
  return {
    ...open,
    ...(mends === undefined ? {} : { mends }),
    ...(due === undefined ? {} : { due }),
    ...(before === undefined ? {} : { before }),
    waitsFor,
    ...(more.length > 0 ? { gates: [...(open.gates ?? []), ...more] } : {}),
    again: [...(open.again ?? []), { ...said.source, noteId: said.id }],
  };
}

/** What a memo tells as done, and the goods that came or are coming. */
export function deedsOf(
  work: Working,
  notes: readonly Kept<DoneNote>[],
  arrivals: readonly Kept<ArrivalNote>[],
): readonly Deed[] {
  return [
    ...notes.map(({ gist, quote, span }) => ({ gist, quote, around: sentenceAt(work, span) })),
    ...arrivals.map(({ item, quote, received }) => {
      const goods = received ? ('received' as const) : ('expected' as const);
      return { gist: item, quote, around: '', goods };
    }),
  ];
}

/**
 * Closes the tasks that the memo's deeds answer, and gives them back. Call before the memo's own tasks are opened.
 * Goods that came or are coming close the task of getting them.
 */
export function closeTasks(
  work: Working,
  notes: readonly Kept<DoneNote>[],
  arrivals: readonly Kept<ArrivalNote>[],
): readonly TaskRow[] {
  const deeds = deedsOf(work, notes, arrivals);
  if (deeds.length === 0) return [];
  const stems = tellingStems(...deeds.flatMap(({ gist, quote, around }) => [gist, quote, around]));
  // What is to be looked over is ended by that alone: see look-over.ts.
  const open = work.draft.openTasksSharing(stems).filter(({ looksOver }) => looksOver === undefined);
  return allClosedBy(deeds, open, work.memo.recordedAt).flatMap((tasks, at) => {
    const note = at < notes.length ? notes[at] : arrivals[at - notes.length];
    const [first] = tasks;
    if (!first || !note) return [];
    const closedBy = work.source(note);
    const closed = { status: 'done' as const, closedById: note.id, closedBy };
    const rows = tasks.map((task): TaskRow => withMore(task, closed));
    for (const row of rows) work.draft.put({ table: 'tasks', row });
    work.draft.put({ table: 'closings', row: { id: note.id, taskId: first.id } });
    return rows;
  });
}

/**
 * Closes the tasks of this memo that a deed told after them answers: "I must oil the worktop", and later "the worktop's
 * oiled". Call when the memo's own tasks are open. A deed that ended an earlier memo's task is not asked again.
 */
export function closeOwnTasks(work: Working, notes: readonly Kept<DoneNote>[]): readonly TaskRow[] {
  const { tasks } = work.memo.notes;
  if (notes.length === 0 || tasks.length === 0) return [];
  return tasks.flatMap((said) => {
    const open = work.draft.openTasksSharing(tellingStems(said.gist)).find(({ id }) => id === said.id);
    const end = work.sentenceOf(said.span);
    const note =
      open &&
      notes.find(
        ({ gist, quote, span }) =>
          span.start >= said.span.end &&
          work.sentenceOf(span) > end &&
          closesOwn({ gist, quote, around: sentenceAt(work, span) }, open),
      );
    return open && note ? [close(work, open, note)] : [];
  });
}

/** Closes the tasks of measuring whose figure is told, in this memo behind the task or in a later one. */
export function closeMeasured(work: Working, figures: readonly Kept<FigureNote>[]): readonly TaskRow[] {
  return figures.flatMap((note) => {
    // Most figures answer no task at all, and most projects have hardly a task of measuring that is open.
    if (work.draft.measuringTasks().length === 0) return [];
    const place = work.place(note.span);
    const stems = tellingStems(note.item, place.clause);
    const task = work.draft
      .openTasksSharing(stems)
      .find((open) => isToMeasure(open) && isLater(work, note, open) && isReadingFor({ note, place }, open));
    return task ? [close(work, task, note)] : [];
  });
}

/** Whether a figure stands behind the words of a task, in another sentence. */
function isLater(work: Working, note: Kept<FigureNote>, task: TaskRow): boolean {
  if (task.source.memoId !== work.memo.id) return true;
  const own = work.memo.notes.tasks.find(({ id }) => id === task.id);
  return own !== undefined && work.sentenceOf(note.span) > work.sentenceOf(own.span);
}

/** Ends what was nothing but waiting for goods, when they are there. Call when the gates have been gone over. */
export function closeWaits(work: Working, arrivals: readonly Kept<ArrivalNote>[]): readonly TaskRow[] {
  const came = arrivals.filter(({ received }) => received);
  if (came.length === 0) return [];
  return work.draft.gatedTasks().flatMap((task) => {
    if (!isOnlyWaiting(task) || !task.gates?.every(({ met }) => met)) return [];
    const note = came.find(({ quote }) => task.gates?.some(({ met }) => met?.came && met.quote === quote));
    return note ? [close(work, task, note)] : [];
  });
}

function close(
  work: Working,
  task: TaskRow,
  note: Kept<DoneNote> | Kept<FigureNote> | Kept<ArrivalNote>,
): TaskRow {
  const closed = { status: 'done' as const, closedById: note.id, closedBy: work.source(note) };
  const row: TaskRow = withMore(task, closed);
  work.draft.put({ table: 'tasks', row });
  work.draft.put({ table: 'closings', row: { id: note.id, taskId: task.id } });
  return row;
}
