import { Command } from 'commander';
import { oneLine } from '../../reports/words.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';

/** `split`: a name stands for a thing of its own. */
export function splitCommand(): Command {
  return new Command('split')
    .description('say that a name means a thing of its own')
    .argument('<name>', 'the name')
    .action((name: string, _options: object, command: Command) =>
      withProject(command, (project) => {
        project.setByHand({ kind: 'items-split', name });
        print(`"${oneLine(name)}" means a thing of its own.`);
      }),
    );
}
