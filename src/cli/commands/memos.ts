import { Command } from 'commander';
import type { MemoView } from '../../model/views.ts';
import { EXIT, Problem } from '../../problem.ts';
import type { ProjectApi } from '../../project-api.ts';
import type { KeptNote } from '../../reports/note-doubts.ts';
import { print, printBlocks, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';

/** `memos`: what was taken, in order; one memo with its notes. */
export function memosCommand(): Command {
  return new Command('memos')
    .description('list the memos that were taken; show one with its notes')
    .argument('[memo]', 'its number')
    .option('--unsure', 'of one memo: only the notes to be looked at, and why')
    .option('--json', 'print JSON')
    .action((number: string | undefined, options: { json?: boolean; unsure?: boolean }, command: Command) =>
      withProject(command, async (project) => {
        const { memoTable, memoText } = await import('../../reports/memo-list.ts');
        if (number !== undefined) {
          const memo = memoOf(project, number);
          if (options.unsure) return showUnsure(project, memo, options.json ?? false);
          return options.json ? printJson(memo) : printBlocks(memoText(memo));
        }
        const memos = project.memos();
        return options.json ? printJson(memos) : print(memoTable(memos));
      }),
    );
}

/** Notes that nobody went over and that something speaks against, with what that is. */
async function showUnsure(project: ProjectApi, memo: MemoView, json: boolean): Promise<void> {
  const { doubtsOf, everyNote } = await import('../../reports/note-doubts.ts');
  const { noteRows } = await import('../../reports/memo-list.ts');
  const { textTable } = await import('../../reports/text-table.ts');
  const findings = project.findings({ memoId: memo.id, status: 'open' });
  const words = new Map<string, string>();
  for (const [note, said] of noteRows(memo.notes)) words.set((note as KeptNote).id, said);
  const unsure = everyNote(memo).flatMap((note) => {
    const why = doubtsOf(note, memo.text, findings);
    return why.length === 0 ? [] : [{ note, why }];
  });
  if (json) return printJson(unsure);
  if (unsure.length === 0) return print(`${memo.id}: no note is unsure.`);
  print(
    textTable(unsure.map(({ note, why }) => [note.id, note.kind, words.get(note.id) ?? '', why.join('; ')])),
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
