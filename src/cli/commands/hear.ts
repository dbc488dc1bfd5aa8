import { Command } from 'commander';
import { EXIT } from '../../problem.ts';
import type { ProjectApi } from '../../project-api.ts';
import { interruptSignal } from '../interrupt.ts';
import { print, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';
import { printProblem } from '../report-problem.ts';
import { checkEngine } from './engines.ts';
import { memoOf } from './memos.ts';

interface HearChoices {
  readonly engine?: string;
  readonly json?: boolean;
}

/** `hear`: hears a memo once more, by another engine. */
export function hearCommand(): Command {
  return new Command('hear')
    .description('hear a memo once more, by another engine; the transcripts stand beside each other')
    .argument('<memo>', 'its number')
    .option('--engine <name>', 'what hears it, as engines lists it, or the path of a model')
    .option('--json', 'print JSON')
    .action((number: string, choices: HearChoices, command: Command) =>
      withProject(command, (project) => hearMemo(project, number, choices)),
    );
}

async function hearMemo(project: ProjectApi, number: string, { engine, json }: HearChoices): Promise<void> {
  const memo = memoOf(project, number);
  await checkEngine(engine);
  const { progressOnTerminal } = await import('../progress.ts');
  const line = progressOnTerminal();
  const result = await project.hearAgain(memo.id, {
    ...(engine === undefined ? {} : { engine }),
    onProgress: (progress) => line.show(memo.source.name, progress),
    signal: interruptSignal(),
  });
  line.clear();
  if (!result.ok) {
    printProblem(result.problem);
    process.exitCode = EXIT.partly;
    return;
  }
  if (json) return printJson(result.value);
  const { heardText } = await import('../../reports/transcript-list.ts');
  print(heardText(result.value));
}
