import { basename } from 'node:path';
import { Command } from 'commander';
import type { Problem } from '../../problem.ts';
import type { ProjectApi, Taken } from '../../project-api.ts';
import { isToldOf } from '../../watching/told-of.ts';
import { interruptSignal } from '../interrupt.ts';
import { print, printJsonLine, tell } from '../print.ts';
import { withProject } from '../project-of.ts';
import { printProblem } from '../report-problem.ts';
import { finishKeptFirst } from './resume.ts';

/** `watch`: takes in what comes into a folder, once it is whole, until it is stopped. */
export function watchCommand(): Command {
  return new Command('watch')
    .description('take in the memos that come into a folder, until Control-C')
    .argument('<folder>', 'the folder that a phone or a camera syncs to')
    .option('--json', 'print JSON, an object a line for each file')
    .action((folder: string, options: { json?: boolean }, command: Command) =>
      withProject(command, (project) => watchFolder(project, folder, options.json ?? false), {
        finishesKept: true,
      }),
    );
}

async function watchFolder(project: ProjectApi, folder: string, json: boolean): Promise<void> {
  // Memos are worked into the model in the order in which they were taken: older ones are finished first.
  await finishKeptFirst(project);
  const { filesInto } = await import('../../watching/folder-watch.ts');
  const { takenText } = await import('../taken-text.ts');
  const { progressOnTerminal } = await import('../progress.ts');
  const line = progressOnTerminal();
  const signal = interruptSignal();
  const onGone = (isGone: boolean) =>
    tell(isGone ? `${folder} is gone. Watching goes on when it is back.` : `${folder} is back.`);
  const files = await filesInto(folder, { signal, onGone });
  tell(`Watching ${folder}. Control-C stops.`);
  for await (const file of files) {
    const result = await project.take(file, {
      onProgress: (progress) => line.show(basename(file), progress),
      signal,
    });
    line.clear();
    if (result.ok) {
      const { value } = result;
      // At every start the folder still holds what was taken before.
      if (!value.already) json ? printTakenJson(file, value) : print(takenText(value, file));
    } else if (isToldOf(file, result.problem)) {
      printProblem(result.problem);
      if (json) printFailedJson(file, result.problem);
    }
  }
  line.clear();
  tell('Stopped watching.');
}

function printTakenJson(file: string, taken: Taken): void {
  printJsonLine({ kind: 'taken', file, taken });
}

function printFailedJson(file: string, { code, message, kept, next }: Problem): void {
  printJsonLine({ kind: 'failed', file, problem: { code, message, kept, next } });
}
