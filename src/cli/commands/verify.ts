import { Command } from 'commander';
import { EXIT, Problem } from '../../problem.ts';
import { absentText } from '../absent-text.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';

/** `verify`: checks the log, the originals and that the model follows from the log. */
export function verifyCommand(): Command {
  return new Command('verify')
    .description('check that nothing in the project is damaged')
    .action((_options: object, command: Command) =>
      withProject(command, async (project) => {
        const { counted } = await import('../../reports/source-text.ts');
        const { oneLine } = await import('../../reports/words.ts');
        const { faults, events, originals, absent } = await project.verify();
        if (faults.length === 0) {
          print(`Whole: ${counted(events, 'event')}, ${counted(originals, 'original')}.`);
          if (absent.length > 0) print(absentText(absent));
          return;
        }
        for (const fault of faults) print(`  ${oneLine(fault)}`);
        throw new Problem(`the project has ${counted(faults.length, 'fault')}`, {
          code: 'project-damaged',
          exitCode: EXIT.damaged,
          kept: 'everything was left as it was',
          next: 'put the project folder back from a copy',
        });
      }),
    );
}
