import { Command } from 'commander';
import { oneLine } from '../../reports/words.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';
import { dayValue } from '../values.ts';

/** `todo`: a task by hand. */
export function todoCommand(): Command {
  return new Command('todo')
    .description('add a task by hand')
    .argument('<words...>', 'what is to be done')
    .option('--due <date>', 'by when, YYYY-MM-DD', (value) => dayValue('--due', value))
    .action((words: string[], options: { due?: string }, command: Command) =>
      withProject(command, (project) => {
        const gist = words.join(' ');
        project.setByHand({ kind: 'task-added', gist, ...options });
        print(`Noted: ${oneLine(gist)}.`);
      }),
    );
}
