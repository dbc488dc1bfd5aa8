import { Command } from 'commander';
import { oneLine } from '../../reports/words.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';
import { invalid } from '../values.ts';

/** `merge`: two names mean one thing. */
export function mergeCommand(): Command {
  return new Command('merge')
    .description('say that two names mean one thing')
    .argument('<name>', 'the name that was misheard or is another word')
    .argument('<into>', 'the name that it stands for')
    .action((from: string, into: string, _options: object, command: Command) =>
      withProject(command, async (project) => {
        const { nameKey } = await import('../../model/names.ts');
        if (nameKey(from) === nameKey(into)) throw invalid('name', 'two names that differ', from);
        project.setByHand({ kind: 'items-merged', from, into });
        print(`"${oneLine(from)}" means "${oneLine(into)}".`);
      }),
    );
}
