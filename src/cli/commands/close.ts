import { Command } from 'commander';
import { oneLine } from '../../reports/words.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';
import { taskOf } from '../task-of.ts';

/** `close`: a task is done or a problem put right, said by hand. */
export function closeCommand(): Command {
  return new Command('close')
    .description('close a task by hand, or a problem that is put right')
    .argument('<task>', 'its id, as tasks shows it')
    .action((id: string, _options: object, command: Command) =>
      withProject(command, (project) => {
        const problem = project.problems().find((one) => one.id === id);
        if (problem) {
          if (problem.status === 'solved')
            return print(`It was put right already: ${oneLine(problem.gist)}.`);
          project.setByHand({ kind: 'problem-solved', problemId: id });
          return print(`Put right: ${oneLine(problem.gist)}.`);
        }
        const task = taskOf(project, id);
        if (task.status === 'done') return print(`It was closed already: ${oneLine(task.gist)}.`);
        project.setByHand({ kind: 'task-closed', taskId: task.id });
        print(`Closed: ${oneLine(task.gist)}.`);
      }),
    );
}
