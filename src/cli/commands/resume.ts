import { Command } from 'commander';
import { EXIT, type Problem } from '../../problem.ts';
import type { ProjectApi } from '../../project-api.ts';
import { counted } from '../../reports/source-text.ts';
import { interruptSignal } from '../interrupt.ts';
import { print, tell } from '../print.ts';
import { withProject } from '../project-of.ts';
import { printProblem } from '../report-problem.ts';

interface Finished {
  readonly count: number;
  readonly problems: readonly Problem[];
}

/** Finishes memos that were kept but not read, prints what each gave, and returns what could not be finished. */
async function finishKept(project: ProjectApi): Promise<Finished> {
  const { progressOnTerminal } = await import('../progress.ts');
  const line = progressOnTerminal();
  const results = await project.resume({
    onProgress: (progress) => line.show('kept memo', progress),
    signal: interruptSignal(),
  });
  line.clear();
  const { takenText } = await import('../taken-text.ts');
  for (const result of results) {
    if (result.ok) print(takenText(result.value, result.value.memo.source.name));
  }
  const problems = results.flatMap((result) => (result.ok ? [] : [result.problem]));
  return { count: results.length, problems };
}

/** `finishKept` on the way to something else: what cannot be finished is only counted. */
export async function finishKeptFirst(project: ProjectApi): Promise<void> {
  const { problems } = await finishKept(project);
  if (problems.length > 0)
    tell(`${counted(problems.length, 'kept memo')} could not be read; to see why: hearwright resume`);
}

/** `resume`: hears and reads memos that were kept but not finished. */
export function resumeCommand(): Command {
  return new Command('resume')
    .description('go on with memos that were kept but not read yet')
    .action((_options: object, command: Command) =>
      withProject(
        command,
        async (project) => {
          const { count, problems } = await finishKept(project);
          if (count === 0) print('Nothing is left to read.');
          for (const problem of problems) printProblem(problem);
          if (problems.length > 0) process.exitCode = EXIT.partly;
        },
        { finishesKept: true },
      ),
    );
}
