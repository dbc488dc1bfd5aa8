import { Command } from 'commander';
import { EXIT, Problem } from '../../problem.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';

/** `withdraw`: a fact no longer counts, whether it was said or set by hand. */
export function withdrawCommand(): Command {
  return new Command('withdraw')
    .description('take one fact out of the model: a note that was read, or something set by hand')
    .argument('<fact>', 'its id: m3.f2 for a note, s12 for something set by hand')
    .action((id: string, _options: object, command: Command) =>
      withProject(command, async (project) => {
        const { oneLine } = await import('../../reports/words.ts');
        const withdrawn = project.withdraw(id);
        if (withdrawn === undefined) throw unknownFact(id);
        print(`Withdrawn: ${oneLine(withdrawn)}.`);
      }),
    );
}

function unknownFact(id: string): Problem {
  return new Problem(`no fact that counts has the id "${id}"`, {
    code: 'fact-unknown',
    exitCode: EXIT.usage,
    next: 'see ids with: hearwright memos MEMO, hearwright figures ITEM, hearwright limits',
  });
}
