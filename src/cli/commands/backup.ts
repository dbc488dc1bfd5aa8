import { Command } from 'commander';
import { EXIT, Problem } from '../../problem.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';

/** `backup`: the whole project in one file. */
export function backupCommand(): Command {
  return new Command('backup')
    .description('write the whole project into one file, while it is in use')
    .argument('<file>', 'the file to write, best on another disk')
    .option('--replace', 'write over a backup that is there already')
    .action((file: string, options: { readonly replace?: boolean }, command: Command) =>
      withProject(command, async (project) => {
        const { counted } = await import('../../reports/source-text.ts');
        const { oneLine } = await import('../../reports/words.ts');
        const { events, originals, recordings, bytes, faults } = await project.backUp(file, options);
        const waiting = recordings > 0 ? `, ${counted(recordings, 'recording')} not taken in yet` : '';
        print(
          `Backed up into ${oneLine(file)}: ${counted(events, 'event')}, ${counted(originals, 'original')}${waiting}, ${sizeText(bytes)}.`,
        );
        if (faults.length === 0) return;
        for (const fault of faults) print(`  ${oneLine(fault)}`);
        throw new Problem(`the project that was backed up has ${counted(faults.length, 'fault')}`, {
          code: 'backup-of-faulty',
          exitCode: EXIT.partly,
          kept: 'the backup holds the project as it is; older backups may hold what is missing',
          next: 'hearwright verify',
        });
      }),
    );
}

/** A length in decimal units, as disks are sold. */
function sizeText(bytes: number): string {
  if (bytes < 1_000_000) return `${Math.ceil(bytes / 1000)} kB`;
  return bytes < 1_000_000_000 ? `${(bytes / 1e6).toFixed(1)} MB` : `${(bytes / 1e9).toFixed(1)} GB`;
}
