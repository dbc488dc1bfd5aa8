import { Command } from 'commander';
import { EXIT, Problem } from '../../problem.ts';
import { oneLine } from '../../reports/words.ts';
import { print, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';
import { memoOf } from './memos.ts';

/** `words`: misheard words of a memo put right; their sentence is read again. */
export function wordsCommand(): Command {
  return new Command('words')
    .description('put misheard words of a memo right: their sentence is read again')
    .argument('<memo>', 'its number')
    .argument('<heard>', 'the words as they stand in the memo; enough of them to be found once')
    .argument('<said>', 'the words that were said')
    .option('--json', 'print JSON')
    .action((number: string, heard: string, said: string, { json }: { json?: boolean }, command: Command) =>
      withProject(command, async (project) => {
        const memo = memoOf(project, number);
        if (said.trim() === '') throw noWords();
        const start = onlyPlace(memo.text, heard, memo.id);
        const { memo: now } = await project.reword(memo.id, {
          span: { start, end: start + heard.length },
          words: said.trim(),
        });
        if (json) return printJson(now);
        const { memoText } = await import('../../reports/memo-list.ts');
        print(`${now.id}: "${oneLine(said)}" in the place of "${oneLine(heard)}".\n\n${memoText(now)}`);
      }),
    );
}

/** Where the words stand; throws a Problem when they stand nowhere, or in several places. */
function onlyPlace(text: string, words: string, memoId: string): number {
  const start = words.trim() === '' ? -1 : text.indexOf(words);
  const isOnly = start >= 0 && text.indexOf(words, start + 1) < 0;
  if (isOnly) return start;
  const place = start < 0 ? 'are not in' : 'are more than once in';
  throw new Problem(`the words "${oneLine(words)}" ${place} memo ${memoId.slice(1)}`, {
    code: 'words-not-found',
    exitCode: EXIT.usage,
    kept: 'nothing was changed',
    next: 'take them as they stand there, with the words around them',
  });
}

function noWords(): Problem {
  return new Problem('no words were given for what was said', {
    code: 'value-mismatch',
    exitCode: EXIT.usage,
    kept: 'nothing was changed',
    next: 'hearwright words 3 "heard wrong" "as it was said"',
  });
}
