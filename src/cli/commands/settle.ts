import { Command } from 'commander';
import type { Quantity } from '../../language/notes.ts';
import type { FindingView } from '../../model/views.ts';
import { EXIT, Problem } from '../../problem.ts';
import type { SettleChoice } from '../../project-api.ts';
import { printBlocks, tell } from '../print.ts';
import { withProject } from '../project-of.ts';
import { knownQuantity, quantityValue } from '../values.ts';

const CHOICES = ['keep-old', 'take-new', 'both-right', 'correct'] as const satisfies SettleChoice[];

const CHOICES_TOLD = `
keep-old     the earlier figure holds; the limit holds, and the thing is to be changed
take-new     the newer figure holds; the limit moves to the size of the thing
both-right   both hold, as two things of one name; this thing may stay at this size
correct      neither holds: --value "915 mm" does`;

interface Options {
  readonly reason?: string;
  readonly value?: Quantity;
}

/** `settle`: says which side of a clash holds. */
export function settleCommand(): Command {
  return new Command('settle')
    .description('settle a clash: keep-old, take-new, both-right or correct')
    .argument('<finding>', 'its id, as findings shows it')
    .argument('<choice>', 'keep-old, take-new, both-right or correct', choiceOf)
    .option('--value <quantity>', 'the right value, for correct: "915 mm"', (value) =>
      quantityValue('--value', value),
    )
    .option('--reason <words>', 'why')
    .addHelpText('after', CHOICES_TOLD)
    .action((id: string, choice: SettleChoice, options: Options, command: Command) =>
      withProject(command, async (project) => {
        const { findingText } = await import('../../reports/finding-text.ts');
        const before = project.findings().find((finding) => finding.id === id);
        if (!before) throw unknownFinding(id);
        if ((choice === 'correct') !== (options.value !== undefined)) throw valueMismatch(choice);
        if (options.value) await knownQuantity('--value', options.value, project.info.region);
        const { settledBy } = before;
        if (settledBy && settledBy.choice === choice && !options.value && !options.reason) {
          tell(`${id} was settled so already, on ${settledBy.at.slice(0, 10)}: nothing was changed`);
          printBlocks(findingText(before));
          return;
        }
        project.settle(id, choice, options);
        if (settledBy)
          tell(`${id} was settled before: ${earlierChoice(settledBy)}; that gives way to this one`);
        const settled = project.findings().find((finding) => finding.id === id);
        if (settled) printBlocks(findingText(settled));
      }),
    );
}

/** Says in the same breath what each choice does: which of them lets a thing stay is not seen by its name. */
function choiceOf(word: string): SettleChoice {
  const choice = CHOICES.find((one) => one === word);
  if (choice) return choice;
  throw new Problem(`choice: expected ${CHOICES.join(', ')}, got "${word}"`, {
    code: 'value-invalid',
    exitCode: EXIT.usage,
    next: 'both-right lets a thing stay as it is; what each does: hearwright settle --help',
  });
}

/** "keep-old, 2026-04-11: read it off the tape". */
function earlierChoice({ choice, at, reason }: NonNullable<FindingView['settledBy']>): string {
  return `${choice}, ${at.slice(0, 10)}${reason ? `: ${reason}` : ''}`;
}

function unknownFinding(id: string): Problem {
  return new Problem(`no clash has the id "${id}"`, {
    code: 'finding-unknown',
    exitCode: EXIT.usage,
    next: 'see the ids with: hearwright findings',
  });
}

function valueMismatch(choice: SettleChoice): Problem {
  return new Problem(
    choice === 'correct' ? 'correct: no value was given' : `${choice}: a value goes with correct only`,
    {
      code: 'value-mismatch',
      exitCode: EXIT.usage,
      next: 'hearwright settle FINDING correct --value "915 mm"',
    },
  );
}
