import { Command } from 'commander';
import { now } from '../../instant.ts';
import { print, printBlocks, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';
import { dayValue } from '../values.ts';

interface Options {
  readonly on?: string;
  readonly why?: boolean;
  readonly json?: boolean;
}

/** `tasks`: ready, waiting and done, and the snags that are open. */
export function tasksCommand(): Command {
  return new Command('tasks')
    .description('show the tasks in working order')
    .option('--on <date>', 'as of that day instead of today, YYYY-MM-DD', (value) => dayValue('--on', value))
    .option('--why', 'say why each stands where it does')
    .option('--json', 'print JSON')
    .action((options: Options, command: Command) =>
      withProject(command, async (project) => {
        const { cautionsText } = await import('../../reports/checks-text.ts');
        const { cautionsOfTasks } = await import('../../model/day-views.ts');
        const { problemList, taskList } = await import('../../reports/task-list.ts');
        const tasks = project.tasks(options.on ?? now());
        if (options.json) printJson(tasks);
        else {
          const lists = [taskList(tasks, { why: options.why === true }), problemList(project.problems())];
          printBlocks(lists.filter(Boolean).join('\n'));
          const cautions = cautionsText(cautionsOfTasks(tasks));
          if (cautions !== '') print(`\n${cautions}`);
        }
      }),
    );
}
