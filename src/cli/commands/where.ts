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

/** `where`: where one was when the talk stopped, for the return after a gap. */
export function whereCommand(): Command {
  return new Command('where')
    .description('tell where you were when the talk stopped')
    .option('--on <date>', 'for that day instead of today, YYYY-MM-DD', (value) => dayValue('--on', value))
    .option('--json', 'print JSON')
    .option('--out <file>', 'write a file instead of printing')
    .action((options: Options, command: Command) =>
      withProject(command, async (project) => {
        const { wherePage } = await import('../../reports/where-was-i.ts');
        const where = project.where(options.on ?? now());
        if (options.json) printJson(where);
        else await givePage(project, wherePage(where, project.info), options.out);
      }),
    );
}
