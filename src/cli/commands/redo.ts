import { Command } from 'commander';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';

/** `redo`: does again what undo took back last. */
export function redoCommand(): Command {
  return new Command('redo')
    .description('do again what undo took back last')
    .action((_options: object, command: Command) =>
      withProject(command, async (project) => {
        const { oneLine } = await import('../../reports/words.ts');
        const done = project.redo();
        print(
          done === undefined
            ? 'Nothing was taken back, or something else was done since: nothing to do again.'
            : `Done again: ${oneLine(done)}.`,
        );
      }),
    );
}
