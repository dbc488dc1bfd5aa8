import { Command } from 'commander';
import { EXIT, Problem } from '../../problem.ts';
import { oneLine } from '../../reports/words.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';
import { taskOf } from '../task-of.ts';

/** `before`: the working order by hand. */
export function beforeCommand(): Command {
  return new Command('before')
    .description('put a task before another one in the working order')
    .argument('<task>', 'the one to come first, its id as tasks shows it')
    .argument('<other>', 'the one to come after it')
    .action((id: string, otherId: string, _options: object, command: Command) =>
      withProject(command, (project) => {
        const [task, other] = [taskOf(project, id), taskOf(project, otherId)];
        if (task.id === other.id) throw sameTask(id);
        project.setByHand({ kind: 'task-placed', taskId: task.id, before: other.id });
        print(`${oneLine(task.gist)}: before ${oneLine(other.gist)}.`);
      }),
    );
}

function sameTask(id: string): Problem {
  return new Problem(`task ${id} cannot come before itself`, {
    code: 'value-mismatch',
    exitCode: EXIT.usage,
    kept: 'nothing was changed',
    next: 'see the ids with: hearwright tasks',
  });
}
