import { Command } from 'commander';
import { EXIT } from '../../problem.ts';
import type { ProjectApi } from '../../project-api.ts';
import { interruptSignal } from '../interrupt.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';
import { printProblem } from '../report-problem.ts';
import { instantValue } from '../values.ts';
import { checkEngine } from './engines.ts';
import { finishKeptFirst } from './resume.ts';

interface TakeChoices {
  readonly at?: string;
  readonly engine?: string;
  readonly device?: string;
}

async function takeAll(project: ProjectApi, files: readonly string[], choices: TakeChoices): Promise<void> {
  await checkEngine(choices.engine);
  // Memos are worked into the model in the order in which they were taken: older ones are finished first.
  await finishKeptFirst(project);
  const [{ takenText }, { progressOnTerminal }] = await Promise.all([
    import('../taken-text.ts'),
    import('../progress.ts'),
  ]);
  const line = progressOnTerminal();
  const signal = interruptSignal();
  let failed = 0;
  const left = [...files];
  const taking = project.takeMany(files, {
    ...choices,
    // Of those under way, the one that is due next is shown.
    onProgress: (file, progress) => file === left[0] && line.show(named(left), progress),
    signal,
  });
  for await (const { file, result } of taking) {
    left.shift();
    line.clear();
    if (result.ok) print(takenText(result.value, file));
    else {
      failed++;
      printProblem(result.problem);
    }
  }
  if (failed > 0) process.exitCode = EXIT.partly;
}

/** "a.m4a, 3 more" */
function named([file = '', ...others]: readonly string[]): string {
  return others.length === 0 ? file : `${file}, ${others.length} more`;
}

/** `take`: takes memos in, in the order given. One that cannot be taken hinders no other. */
export function takeCommand(): Command {
  return new Command('take')
    .description('take memos in: text, sound or video')
    .argument('<file...>', '.txt and .md as text, anything else through the recogniser')
    .option('--at <instant>', 'when it was recorded, ISO 8601', instantValue)
    .option('--device <name>', 'the recorder that made them, as device names it')
    .option('--engine <name>', 'what hears it, as engines lists it, or the path of a model')
    .action((files: string[], options: TakeChoices, command: Command) =>
      withProject(command, (project) => takeAll(project, files, options), { finishesKept: true }),
    );
}
