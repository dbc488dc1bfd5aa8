import { Command } from 'commander';
import { now } from '../../instant.ts';
import { EXIT, Problem } from '../../problem.ts';
import { oneLine } from '../../reports/words.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';

/** `close`: a task is done, said by hand. */
export function closeCommand(): Command {
  return new Command('close')
    .description('close a task by hand')
    .argument('<task>', 'its id, as tasks shows it')
    .action((id: string, _options: object, command: Command) =>
      withProject(command, (project) => {
        const task = project.tasks(now()).find((one) => one.id === id);
        if (!task) throw unknownTask(id);
        if (task.status === 'done') return print(`It was closed already: ${oneLine(task.gist)}.`);
        project.setByHand({ kind: 'task-closed', taskId: id });
        print(`Closed: ${oneLine(task.gist)}.`);
      }),
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
