import { Command } from 'commander';
import { print, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';

/** `memos`: what was taken, in order. */
export function memosCommand(): Command {
  return new Command('memos')
    .description('list the memos that were taken')
    .option('--json', 'print JSON')
    .action((options: { json?: boolean }, command: Command) =>
      withProject(command, async (project) => {
        const { memoTable } = await import('../../reports/memo-list.ts');
        const memos = project.memos();
        if (options.json) printJson(memos);
        else print(memoTable(memos));
      }),
    );
}
