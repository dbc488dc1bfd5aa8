import { Command } from 'commander';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';

/** `undo`: takes back the last thing that a person set or settled. */
export function undoCommand(): Command {
  return new Command('undo')
    .description('take back the last thing set or settled by hand')
    .action((_options: object, command: Command) =>
      withProject(command, async (project) => {
        const { oneLine } = await import('../../reports/words.ts');
        const undone = project.undo();
        print(
          undone === undefined ? 'Nothing was set by hand: nothing to undo.' : `Undone: ${oneLine(undone)}.`,
        );
      }),
    );
}
