import { Command } from 'commander';
import { printBlocks, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';

/** `ask`: figures and talk that hold the words. */
export function askCommand(): Command {
  return new Command('ask')
    .description('find figures and talk by their words')
    .argument('<words...>', 'what to look for')
    .option('--json', 'print JSON')
    .action((words: string[], options: { json?: boolean }, command: Command) =>
      withProject(command, async (project) => {
        const { answerText } = await import('../../reports/answer-text.ts');
        const answer = project.ask(words.join(' '));
        if (options.json) printJson(answer);
        else printBlocks(answerText(answer));
      }),
    );
}
