import { Command } from 'commander';
import { oneLine } from '../../reports/words.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';
import { taskOf } from '../task-of.ts';

/** `reopen`: a task is not done after all, or a problem not put right. */
export function reopenCommand(): Command {
  return new Command('reopen')
    .description('open a task or a problem again by hand')
    .argument('<task>', 'its id, as tasks shows it')
    .action((id: string, _options: object, command: Command) =>
      withProject(command, (project) => {
        const problem = project.problems().find((one) => one.id === id);
        if (problem) {
          if (problem.status === 'open') return print(`It is open: ${oneLine(problem.gist)}.`);
          project.setByHand({ kind: 'problem-reopened', problemId: id });
          return print(`Opened again: ${oneLine(problem.gist)}.`);
        }
        const task = taskOf(project, id);
        if (task.status !== 'done') return print(`It is open: ${oneLine(task.gist)}.`);
        project.setByHand({ kind: 'task-reopened', taskId: task.id });
        print(`Opened again: ${oneLine(task.gist)}.`);
      }),
    );
}
