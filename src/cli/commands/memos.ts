import { Command } from 'commander';
import type { MemoView } from '../../model/views.ts';
import { EXIT, Problem } from '../../problem.ts';
import type { ProjectApi } from '../../project-api.ts';
import { print, printBlocks, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';

/** `memos`: what was taken, in order; one memo with its notes. */
export function memosCommand(): Command {
  return new Command('memos')
    .description('list the memos that were taken; show one with its notes')
    .argument('[memo]', 'its number')
    .option('--json', 'print JSON')
    .action((number: string | undefined, options: { json?: boolean }, command: Command) =>
      withProject(command, async (project) => {
        const { memoTable, memoText } = await import('../../reports/memo-list.ts');
        if (number !== undefined) {
          const memo = memoOf(project, number);
          return options.json ? printJson(memo) : printBlocks(memoText(memo));
        }
        const memos = project.memos();
        return options.json ? printJson(memos) : print(memoTable(memos));
      }),
    );
}

/** The memo of this number (`7`) or id (`m7`); throws a Problem when there is none. */
export function memoOf(project: ProjectApi, number: string): MemoView {
  const memo = project.memo(/^\d+$/.test(number) ? `m${number}` : number);
  if (memo) return memo;
  throw new Problem(`no memo has the number "${number}"`, {
    code: 'memo-unknown',
    exitCode: EXIT.usage,
    next: 'see the numbers with: hearwright memos',
  });
}
