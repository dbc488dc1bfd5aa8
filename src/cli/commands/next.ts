import { Command } from 'commander';
import { now } from '../../instant.ts';
import { givePage } from '../give-page.ts';
import { printJson } from '../print.ts';
import { withProject } from '../project-of.ts';
import { dayValue } from '../values.ts';

interface Options {
  readonly on?: string;
  readonly out?: string;
  readonly json?: boolean;
}

/** `next`: what is ready, what waits, what was promised, what to ask. */
export function nextCommand(): Command {
  return new Command('next')
    .description('write the next steps')
    .option('--on <date>', 'for that day instead of today, YYYY-MM-DD', (value) => dayValue('--on', value))
    .option('--json', 'print JSON')
    .option('--out <file>', 'write a file instead of printing')
    .action((options: Options, command: Command) =>
      withProject(command, async (project) => {
        const { nextStepsPage } = await import('../../reports/next-steps.ts');
        const next = project.next(options.on ?? now());
        if (options.json) printJson(next);
        else await givePage(project, nextStepsPage(next, project.info), options.out);
      }),
    );
}
