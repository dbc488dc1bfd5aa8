import { Command } from 'commander';
import { printBlocks, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';

interface Options {
  readonly json?: boolean;
  readonly open?: boolean;
}

/** `findings`: what clashes, with the words of both sides. */
export function findingsCommand(): Command {
  return new Command('findings')
    .description('show what clashes and why')
    .option('--open', 'only those not settled yet')
    .option('--json', 'print JSON')
    .action((options: Options, command: Command) =>
      withProject(command, async (project) => {
        const { findingsText } = await import('../../reports/finding-text.ts');
        const findings = project.findings(options.open ? { status: 'open' } : {});
        if (options.json) printJson(findings);
        else printBlocks(findingsText(findings));
      }),
    );
}
