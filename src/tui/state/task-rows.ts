/** The rows of the tasks: ready, waiting, done today, each with its state in a word. */
import type { ProblemView, TaskView } from '../../model/views.ts';
import { plainText } from '../../plain-text.ts';
import { age, dayOf, placeOf } from '../../reports/source-text.ts';
import { taskDetails, waitText } from '../../reports/task-list.ts';
import { oneLine } from '../../reports/words.ts';
import type { ScreenState } from './screen-state.ts';
import { shortDay } from './words.ts';

/** Whether a task was closed on a day, YYYY-MM-DD. */
const isDoneOn = (task: TaskView, day: string) =>
  task.status === 'done' && task.closedBy !== undefined && dayOf(task.closedBy.recordedAt) === day;

/** Ready and waiting in working order, then what was done today. */
export function shownTasks({ tasks = [], data }: ScreenState): readonly TaskView[] {
  return [
    ...tasks.filter((task) => task.status === 'ready'),
    ...tasks.filter((task) => task.status === 'waiting'),
    ...tasks.filter((task) => isDoneOn(task, data.next.date)),
  ];
}

/** The task under the mark; nothing where there is none. */
export function chosenTask(state: ScreenState): TaskView | undefined {
  return shownTasks(state)[state.chosen.tasks];
}

/** Snags that are open, latest first: they stand behind the tasks. */
export function shownProblems({ data }: ScreenState): readonly ProblemView[] {
  return data.next.problems ?? [];
}

/** The snag under the mark; nothing where that is a task. */
export function chosenProblem(state: ScreenState): ProblemView | undefined {
  return shownProblems(state)[state.chosen.tasks - shownTasks(state).length];
}

/** One line for each task and each snag. */
export function taskLines(state: ScreenState): readonly string[] {
  const today = state.data.next.date;
  return [...shownTasks(state).map((task) => taskRow(task, today)), ...shownProblems(state).map(problemRow)];
}

const problemRow = ({ gist }: ProblemView) => `${'snag'.padEnd(8)} ${''.padEnd(9)}${oneLine(gist)}`;

/** Everything known of what is under the mark, in phrases; nothing where the list is empty. */
export function chosenWords(state: ScreenState): string | undefined {
  const task = chosenTask(state);
  if (task) return taskWords(task);
  const problem = chosenProblem(state);
  return problem && problemWords(problem);
}

function problemWords({ gist, cause, source }: ProblemView): string {
  const told = `open, told ${shortDay(source.recordedAt)} (${placeOf(source)})`;
  const words = [
    gist,
    told,
    ...(cause ? [`cause: ${cause}`] : []),
    ...(source.quote ? [`"${source.quote}"`] : []),
  ];
  return words.map(oneLine).join('; ');
}

/** One line for a task: state, days it is open, what, what it waits for or its date, loud where that is past. */
export function taskRow(task: TaskView, today: string): string {
  const open = task.status === 'done' || task.carriedDays === 0 ? '' : `${task.carriedDays} d old`;
  const [wait] = openWaits(task);
  const more = wait ? `: ${wait}` : dueWords(task, today);
  return plainText(`${task.status.padEnd(8)} ${open.padEnd(8)} ${oneLine(task.gist + more)}`);
}

function dueWords({ due, status }: TaskView, today: string): string {
  if (!due || status === 'done') return '';
  return `, ${due < today ? 'LATE, ' : ''}due ${due}`;
}

function openWaits({ status, waits = [], waitsFor }: TaskView): readonly string[] {
  if (status !== 'waiting') return [];
  const open = waits.filter((wait) => !wait.isMet).map(waitText);
  return open.length > 0 ? open : waitsFor.map((words) => `waits for ${words}`);
}

/** How many there are of each: "2 ready, 1 waiting, 2 carried over, 1 done today, 1 snag". */
export function taskCounts(state: ScreenState): string {
  const shown = shownTasks(state);
  const snags = shownProblems(state).length;
  const count = (isOne: (task: TaskView) => boolean) => shown.filter(isOne).length;
  return [
    `${count((task) => task.status === 'ready')} ready`,
    `${count((task) => task.status === 'waiting')} waiting`,
    `${count((task) => task.status !== 'done' && task.carriedDays > 0)} carried over`,
    `${count((task) => task.status === 'done')} done today`,
    ...(snags > 0 ? [`${snags} ${snags === 1 ? 'snag' : 'snags'}`] : []),
  ].join(', ');
}

/** Everything known of one task, in phrases. */
function taskWords(task: TaskView): string {
  const told = `told ${shortDay(task.source.recordedAt)} (${placeOf(task.source)})`;
  const ago = task.carriedDays > 0 ? `, ${age(task.carriedDays)} ago` : '';
  const state =
    task.status === 'done' ? `done (${placeOf(task.closedBy)}), ${told}` : `${task.status}, ${told}${ago}`;
  const details = taskDetails(task).filter((detail) => !detail.startsWith('carried over'));
  const quote = task.source.quote ? [`"${task.source.quote}"`] : [];
  // What a task is due for is often why it stands where it does.
  const words = new Set([task.gist, state, ...details, ...(task.why ?? []), ...quote].map(oneLine));
  return [...words].join('; ');
}
