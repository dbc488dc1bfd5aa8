/** Tasks for the terminal, in working order. */
import type { ProblemView, TaskView, WaitView } from '../model/views.ts';
import { quantityText } from './quantity-text.ts';
import { age, clock, counted, dayName, memoName, placeOf } from './source-text.ts';
import { oneLine } from './words.ts';

const said = (wait: WaitView) => (wait.source ? `, ${placeOf(wait.source)}` : '');

/** "8 hours", "25 minutes", "1.5 hours". */
function soLong(hours = 0): string {
  if (hours < 1) return counted(Math.round(hours * 60), 'minute');
  return counted(Math.round(hours * 10) / 10, 'hour');
}

/** What a task waits for, as one phrase: "waits for the gutters arrive (expected 2026-05-06)". */
export function waitText(wait: WaitView): string {
  const { kind, words, why } = wait;
  switch (kind) {
    case 'date':
      return `waits until ${dayName(wait.until ?? words)}`;
    case 'hours':
      return wait.until
        ? `waits for ${words} (${soLong(wait.hours)} from ${memoName(wait.source?.memoId ?? '')}: until ${clock(wait.until)})`
        : `waits for ${words} (${soLong(wait.hours)}, not begun)`;
    case 'reading':
      return `waits for ${readingText(wait)}`;
    case 'task':
      return wait.on && why
        ? `waits for ${words} (${why} [${wait.on}])`
        : `waits for ${words}${wait.on ? ` [${wait.on}]` : ''}`;
    default:
      return `waits for ${words}${why ? ` (${why})` : ''}`;
  }
}

function readingText({ words, bound, reach, latest, on, source }: WaitView): string {
  const wanted = reach ? ` (${bound === 'at-most' ? 'at most' : 'at least'} ${quantityText(reach)}` : ' (';
  const last = latest
    ? `; ${on ?? 'read'} ${quantityText(latest)}, ${placeOf(source)})`
    : '; nothing read yet)';
  return `${words}${wanted}${last}`;
}

/** Why a task that waited is ready: "foam laid (said to be done, memo 4)". */
export function metText(wait: WaitView): string {
  switch (wait.kind) {
    case 'hours':
      return `${wait.words}: ${soLong(wait.hours)} were over ${clock(wait.until ?? '')}`;
    case 'reading':
      return readingText(wait);
    case 'date':
      return `it is ${dayName(wait.until ?? wait.words)} or later`;
    default:
      return `${wait.words} (${wait.why ?? 'it has happened'}${said(wait)})`;
  }
}

/** What a task waits for, why it is ready, what comes first, when it is due, how long it was carried: short phrases. */
export function taskDetails(task: TaskView): readonly string[] {
  if (task.status === 'done') return task.due ? [`due ${task.due}`] : [];
  const waits = task.waits ?? [];
  const first = task.first ?? [];
  const undone = first.filter((one) => !one.isDone);
  const open = waits.filter((wait) => !wait.isMet && !first.some((one) => one.id === wait.on));
  return [
    ...(task.status === 'waiting' ? open.map(waitText) : []),
    ...(task.status === 'waiting' && waits.length === 0 && task.waitsFor.length > 0
      ? [`waits for ${task.waitsFor.join(', ')}`]
      : []),
    ...(task.status === 'ready' ? waits.map((wait) => `ready: ${metText(wait)}`) : []),
    ...(undone.length > 0 ? [`first: ${undone.map((one) => `${one.gist} [${one.id}]`).join('; ')}`] : []),
    ...(task.before ? [`to be done before: ${task.before}${overtaken(task)}`] : []),
    ...(task.due ? [`due ${task.due}`] : []),
    ...(task.carriedDays > 0 ? [`carried over ${age(task.carriedDays)}`] : []),
    ...(task.again && task.again.length > 0
      ? [`said again in ${[...new Set(task.again.map((one) => memoName(one.memoId)))].join(', ')}`]
      : []),
  ];
}

/** That what had to wait for a task was done first; nothing where it was not. */
export const overtaken = ({ overtakenBy }: Pick<TaskView, 'overtakenBy'>): string =>
  overtakenBy ? `, which was said to be done first (${placeOf(overtakenBy)})` : '';

interface Shown {
  /** Also say why each stands where it does. */
  readonly why?: boolean;
}

function line(task: TaskView, { why = false }: Shown): string {
  const details = taskDetails(task).map((detail) => `; ${oneLine(detail)}`);
  const place = task.closedBy
    ? `${placeOf(task.source)}; done ${placeOf(task.closedBy)}`
    : placeOf(task.source);
  const reasons = why && task.status !== 'done' ? (task.why ?? []) : [];
  const told = why && task.status !== 'done' && reasons.length === 0 ? ['as it was said'] : reasons;
  return [
    `  ${oneLine(task.gist)}${details.join('')}  (${place}) [${oneLine(task.id)}]\n`,
    ...told.map((reason) => `      ${oneLine(reason)}\n`),
  ].join('');
}

/** Ready, waiting and done tasks under their headings. */
export function taskList(tasks: readonly TaskView[], shown: Shown = {}): string {
  if (tasks.length === 0) return 'No task has been heard yet.\n';
  const block = (status: TaskView['status'], title: string) => {
    const those = tasks.filter((task) => task.status === status);
    return those.length === 0 ? '' : `${title}\n${those.map((task) => line(task, shown)).join('')}`;
  };
  return [block('ready', 'Ready'), block('waiting', 'Waiting'), block('done', 'Done')]
    .filter(Boolean)
    .join('\n');
}

/** Open snags under a heading, latest first; nothing where there is none. */
export function problemList(problems: readonly ProblemView[]): string {
  const open = problems.filter((problem) => problem.status === 'open');
  if (open.length === 0) return '';
  const lines = [...open]
    .reverse()
    .map(
      ({ id, gist, cause, source }) =>
        `  ${oneLine(gist)}${cause ? `; cause: ${oneLine(cause)}` : ''}  (${placeOf(source)}) [${oneLine(id)}]\n`,
    );
  return `Problems still open\n${lines.join('')}`;
}
