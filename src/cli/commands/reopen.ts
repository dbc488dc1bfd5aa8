import { Command } from 'commander';
import { now } from '../../instant.ts';
import { oneLine } from '../../reports/words.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';
import { unknownTask } from './close.ts';

/** `reopen`: a task is not done after all. */
export function reopenCommand(): Command {
  return new Command('reopen')
    .description('open a task again by hand')
    .argument('<task>', 'its id, as tasks shows it')
    .action((id: string, _options: object, command: Command) =>
      withProject(command, (project) => {
        const task = project.tasks(now()).find((one) => one.id === id);
        if (!task) throw unknownTask(id);
        if (task.status !== 'done') return print(`It is open: ${oneLine(task.gist)}.`);
        project.setByHand({ kind: 'task-reopened', taskId: id });
        print(`Opened again: ${oneLine(task.gist)}.`);
      }),
    );
}
