import { Command } from 'commander';
import { memoTable } from '../../reports/memo-list.ts';
import { print, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';

/** `memos`: what was taken, in order. */
export function memosCommand(): Command {
  return new Command('memos')
    .description('list the memos that were taken')
    .option('--json', 'print JSON')
    .action((options: { json?: boolean }, command: Command) =>
      withProject(command, (project) => {
        const memos = project.memos();
        if (options.json) printJson(memos);
        else print(memoTable(memos));
      }),
    );
}
