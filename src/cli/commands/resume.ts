import { Command } from 'commander';
import { EXIT } from '../../problem.ts';
import { interruptSignal } from '../interrupt.ts';
import { print } from '../print.ts';
import { progressOnTerminal } from '../progress.ts';
import { withProject } from '../project-of.ts';
import { printProblem } from '../report-problem.ts';
import { takenText } from './take.ts';

/** `resume`: hears and reads memos that were kept but not finished. */
export function resumeCommand(): Command {
  return new Command('resume')
    .description('go on with memos that were kept but not read yet')
    .action((_options: object, command: Command) =>
      withProject(command, async (project) => {
        const line = progressOnTerminal();
        const results = await project.resume({
          onProgress: (progress) => line.show('kept memo', progress),
          signal: interruptSignal(),
        });
        line.clear();
        if (results.length === 0) print('Nothing is left to read.');
        for (const result of results) {
          if (result.ok) print(takenText(result.value, result.value.memo.source.name));
          else {
            printProblem(result.problem);
            process.exitCode = EXIT.partly;
          }
        }
      }),
    );
}
