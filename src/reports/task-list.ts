/** Tasks for the terminal, in working order. */
import type { TaskView } from '../model/views.ts';
import { age, placeOf } from './source-text.ts';
import { oneLine } from './words.ts';

/** What a task waits for, when it is due and how long it has been carried, as short phrases. */
export function taskDetails(task: TaskView): readonly string[] {
  return [
    ...(task.status === 'waiting' && task.waitsFor.length > 0
      ? [`waits for ${task.waitsFor.join(', ')}`]
      : []),
    ...(task.due ? [`due ${task.due}`] : []),
    ...(task.carriedDays > 0 && task.status !== 'done' ? [`carried over ${age(task.carriedDays)}`] : []),
  ];
}

function line(task: TaskView): string {
  const details = taskDetails(task).map((detail) => `; ${oneLine(detail)}`);
  return `  ${oneLine(task.gist)}${details.join('')}  (${placeOf(task.source)}) [${oneLine(task.id)}]\n`;
}

/** Ready, waiting and done tasks under their headings. */
export function taskList(tasks: readonly TaskView[]): string {
  if (tasks.length === 0) return 'No task has been heard yet.\n';
  const block = (status: TaskView['status'], title: string) => {
    const those = tasks.filter((task) => task.status === status);
    return those.length === 0 ? '' : `${title}\n${those.map(line).join('')}`;
  };
  return [block('ready', 'Ready'), block('waiting', 'Waiting'), block('done', 'Done')]
    .filter(Boolean)
    .join('\n');
}
