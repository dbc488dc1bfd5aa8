import { Command } from 'commander';
import { print, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';
import { setWritten } from '../written.ts';

/** `limits`: bounds that figures must respect. `limits set` sets one. */
export function limitsCommand(): Command {
  return new Command('limits')
    .description('show the limits that figures must respect; set one with limits set')
    .option('--json', 'print JSON')
    .addCommand(setCommand())
    .action((options: { json?: boolean }, command: Command) =>
      withProject(command, async (project) => {
        const { limitTable } = await import('../../reports/figure-table.ts');
        const limits = project.limits();
        if (options.json) printJson(limits);
        else print(limitTable(limits, project.info.units));
      }),
    );
}

function setCommand(): Command {
  return new Command('set')
    .description('set a limit by hand')
    .argument('<statement...>', '"doorway width at most 740 mm", "seam gap between 3 mm and 5 mm"')
    .option('--about <things>', 'what must respect it, when that is not the thing itself: "tanks and panels"')
    .action((words: string[], { about = '' }: { about?: string }, command: Command) =>
      withProject(command, async (project) => {
        const { readWrittenLimit } = await import('../../model/written.ts');
        const { limitTable } = await import('../../reports/figure-table.ts');
        await setWritten(
          project,
          (region) => readWrittenLimit(words.join(' '), about, region),
          {},
          'limits set "doorway width at most 740 mm"',
        );
        print(limitTable(project.limits(), project.info.units));
      }),
    );
}
