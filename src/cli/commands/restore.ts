import { Command } from 'commander';
import { EXIT, Problem } from '../../problem.ts';
import { print } from '../print.ts';

/** `restore`: a backup becomes a project again. */
export function restoreCommand(): Command {
  return new Command('restore')
    .description('make a project again from a backup')
    .argument('<file>', 'a file that backup wrote')
    .requiredOption('--into <dir>', 'a folder that is empty or not there yet')
    .action(async (file: string, { into }: { readonly into: string }) => {
      const { restore } = await import('../../backup/restore.ts');
      const { counted } = await import('../../reports/source-text.ts');
      const { oneLine } = await import('../../reports/words.ts');
      const { faults, events, originals } = await restore(file, into);
      print(
        `Restored into ${oneLine(into)}: ${counted(events, 'event')}, ${counted(originals, 'original')}.`,
      );
      if (faults.length === 0) return;
      for (const fault of faults) print(`  ${oneLine(fault)}`);
      throw new Problem(`the project in the backup has ${counted(faults.length, 'fault')}`, {
        code: 'project-damaged',
        exitCode: EXIT.damaged,
        kept: 'everything that the backup holds was restored',
        next: 'see whether an older backup is whole',
      });
    });
}
