import { Command } from 'commander';
import { oneLine } from '../../reports/words.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';
import { dayValue, invalid } from '../values.ts';

interface Options {
  readonly due?: string;
  readonly waitsFor: readonly string[];
}

/** `todo`: a task by hand. */
export function todoCommand(): Command {
  return new Command('todo')
    .description('add a task by hand')
    .argument('<words...>', 'what is to be done')
    .option('--due <date>', 'by when, YYYY-MM-DD', (value) => dayValue('--due', value))
    .option(
      '--waits-for <words>',
      'what has to happen first; may be given again',
      (value, all: string[]) => [...all, value],
      [] as string[],
    )
    .action((words: string[], { waitsFor, ...due }: Options, command: Command) =>
      withProject(command, (project) => {
        const gist = words.join(' ').trim();
        if (gist === '') throw invalid('words', 'what is to be done', gist);
        const waits = waitsFor.length > 0 ? { waitsFor } : {};
        project.setByHand({ kind: 'task-added', gist, ...due, ...waits });
        print(`Noted: ${oneLine(gist)}.`);
      }),
    );
}
