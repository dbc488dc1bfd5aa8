/** Tasks and snags as a person sets them: added, closed, opened again, dated, made to wait, put in order. */
import { DIMENSIONS } from '../language/notes.ts';
import type { ProjectEvent, TaskAdded, TaskWaitsSet } from './events.ts';
import { dateGate, gateOf } from './gates.ts';
import { meetGatesByHand } from './gates-met.ts';
import type { Gate, ProjectRows, TaskRow } from './rows.ts';
import { checkCircles } from './task-circles.ts';
import { unitKind } from './units.ts';
import type { Source } from './views.ts';
import type { Working } from './working.ts';

type TaskEvent = Extract<
  ProjectEvent,
  {
    kind: 'task-added' | 'task-closed' | 'task-reopened' | 'task-due-set' | 'task-waits-set' | 'task-placed';
  }
>;
type ProblemEvent = Extract<ProjectEvent, { kind: 'problem-solved' | 'problem-reopened' }>;

const sourceOf = ({ seq, at }: ProjectEvent): Source => ({ memoId: `s${seq}`, recordedAt: at, quote: '' });

/** Puts a task as the event leaves it, and what follows for the others. An id that is no task's changes nothing. */
export function setTask(work: Working, rows: ProjectRows, event: TaskEvent): void {
  const row = taskAfter(rows, event);
  if (!row) return;
  work.draft.put({ table: 'tasks', row });
  if (event.kind === 'task-placed') takeBackPlace(work, rows, event);
  if (event.kind === 'task-closed') meetGatesByHand(work.draft, row);
  if (event.kind !== 'task-due-set' && event.kind !== 'task-placed') checkCircles(work);
}

function taskAfter(rows: ProjectRows, event: TaskEvent): TaskRow | undefined {
  if (event.kind === 'task-added') return added(event);
  const task = rows.get('tasks', event.taskId);
  if (!task) return undefined;
  switch (event.kind) {
    case 'task-reopened': {
      const { closedById: _id, closedBy: _by, ...open } = task;
      return { ...open, status: 'open' };
    }
    case 'task-closed':
      return { ...task, status: 'done', closedById: `s${event.seq}`, closedBy: sourceOf(event) };
    case 'task-due-set': {
      const { due: _due, ...undated } = task;
      return event.due === undefined ? undated : { ...undated, due: event.due };
    }
    case 'task-waits-set':
      return waiting(task, event);
    case 'task-placed':
      return { ...task, ahead: [...new Set([...(task.ahead ?? []), event.before])] };
  }
}

/** The last word on an order counts: the other task is no longer before this one. */
function takeBackPlace(
  work: Working,
  rows: ProjectRows,
  { taskId, before }: Extract<TaskEvent, { kind: 'task-placed' }>,
): void {
  const other = rows.get('tasks', before);
  if (!other?.ahead?.includes(taskId) || before === taskId) return;
  const { ahead, ...rest } = other;
  const left = ahead.filter((id) => id !== taskId);
  work.draft.put({ table: 'tasks', row: left.length > 0 ? { ...rest, ahead: left } : rest });
}

function added(event: TaskAdded): TaskRow {
  const { gist, due, waitsFor = [] } = event;
  const gates = waitsFor.map((words) => gateOf(words, { recordedAt: event.at, figures: [] }));
  return {
    id: `s${event.seq}`,
    gist,
    quote: gist,
    around: '',
    ...(due === undefined ? {} : { due }),
    waitsFor,
    ...(gates.length > 0 ? { gates } : {}),
    source: sourceOf(event),
    status: 'open',
  };
}

function waiting(task: TaskRow, event: TaskWaitsSet): TaskRow {
  const { gates = [], ...rest } = task;
  if (event.waits.length === 0) return { ...rest, waitsFor: [] };
  return {
    ...rest,
    waitsFor: [...task.waitsFor, ...event.waits.map((wait) => wait.words)],
    gates: [...gates, ...event.waits.map((wait) => gateByHand(wait, event))],
  };
}

function gateByHand(wait: TaskWaitsSet['waits'][number], event: TaskWaitsSet): Gate {
  const { words, taskId, until, hours, reading } = wait;
  if (taskId !== undefined) return { kind: 'task', words, taskId };
  if (until !== undefined) return dateGate(until);
  if (hours !== undefined) return { kind: 'hours', words, hours, since: sourceOf(event) };
  const kind = reading && unitKind(reading.unit)?.kind;
  const dimension = DIMENSIONS.find((one) => one === kind);
  if (reading && dimension) return { kind: 'reading', words, reading: { ...reading, dimension } };
  return gateOf(words, { recordedAt: event.at, figures: [] });
}

/** Marks a snag as put right, or as open again. */
export function setProblem(work: Working, rows: ProjectRows, event: ProblemEvent): void {
  const problem = rows.get('problems', event.problemId);
  if (!problem) return;
  const { solvedById: _id, solvedBy: _by, ...open } = problem;
  const row =
    event.kind === 'problem-reopened'
      ? ({ ...open, status: 'open' } as const)
      : ({ ...open, status: 'solved', solvedById: `s${event.seq}`, solvedBy: sourceOf(event) } as const);
  work.draft.put({ table: 'problems', row });
}
