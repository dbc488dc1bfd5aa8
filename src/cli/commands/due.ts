import { Command } from 'commander';
import { oneLine } from '../../reports/words.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';
import { taskOf } from '../task-of.ts';
import { dayValue } from '../values.ts';

/** `due`: by when a task is to be done. */
export function dueCommand(): Command {
  return new Command('due')
    .description('say by when a task is to be done')
    .argument('<task>', 'its id, as tasks shows it')
    .argument('<date>', 'YYYY-MM-DD; none takes the date away')
    .action((id: string, date: string, _options: object, command: Command) =>
      withProject(command, (project) => {
        const task = taskOf(project, id);
        const due = date === 'none' ? {} : { due: dayValue('date', date) };
        project.setByHand({ kind: 'task-due-set', taskId: task.id, ...due });
        print(`${due.due ? `Due ${due.due}` : 'No date'}: ${oneLine(task.gist)}.`);
      }),
    );
}
