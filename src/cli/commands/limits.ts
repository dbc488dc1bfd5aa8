import { Command } from 'commander';
import { print, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';

/** `limits`: bounds that figures must respect. */
export function limitsCommand(): Command {
  return new Command('limits')
    .description('show the limits that figures must respect')
    .option('--json', 'print JSON')
    .action((options: { json?: boolean }, command: Command) =>
      withProject(command, async (project) => {
        const { limitTable } = await import('../../reports/figure-table.ts');
        const limits = project.limits();
        if (options.json) printJson(limits);
        else print(limitTable(limits, project.info.units));
      }),
    );
}
