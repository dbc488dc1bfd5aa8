import { now } from '../instant.ts';
import type { TaskView } from '../model/views.ts';
import { EXIT, Problem } from '../problem.ts';
import type { ProjectApi } from '../project-api.ts';

/** The task of this id, or the one that was said again under it; throws a Problem when there is none. */
export function taskOf(project: ProjectApi, id: string): TaskView {
  const task = findTask(project, id);
  if (!task) throw unknownTask(id);
  return task;
}

export function findTask(project: ProjectApi, id: string): TaskView | undefined {
  const tasks = project.tasks(now());
  return (
    tasks.find((one) => one.id === id) ?? tasks.find((one) => one.again?.some(({ noteId }) => noteId === id))
  );
}

/** No task goes by this id. */
export function unknownTask(id: string): Problem {
  return new Problem(`no task has the id "${id}"`, {
    code: 'task-unknown',
    exitCode: EXIT.usage,
    next: 'see the ids with: hearwright tasks',
  });
}
