import { Command } from 'commander';
import type { Quantity } from '../../language/notes.ts';
import { EXIT, Problem } from '../../problem.ts';
import type { SettleChoice } from '../../project-api.ts';
import { printBlocks } from '../print.ts';
import { withProject } from '../project-of.ts';

const CHOICES: readonly string[] = ['keep-old', 'take-new', 'both-right', 'correct'] satisfies SettleChoice[];

function choiceOf(word: string): SettleChoice {
  if (CHOICES.includes(word)) return word as SettleChoice;
  throw new Problem(`choice: expected ${CHOICES.join(', ')}, got "${word}"`, {
    code: 'value-invalid',
    exitCode: EXIT.usage,
  });
}

/** "915 mm": a number and a unit. */
function quantityOf(text: string): Quantity {
  const parts = /^\s*(-?\d+(?:\.\d+)?)\s*([A-Za-z%.]+\d?|1)\s*$/.exec(text);
  if (parts?.[1] && parts[2]) return { value: Number(parts[1]), unit: parts[2] };
  throw new Problem(`--value: expected a number and a unit such as "915 mm", got "${text}"`, {
    code: 'value-invalid',
    exitCode: EXIT.usage,
  });
}

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
    .option('--value <quantity>', 'the right value, for correct: "915 mm"', quantityOf)
    .option('--reason <words>', 'why')
    .action((id: string, choice: SettleChoice, options: Options, command: Command) =>
      withProject(command, async (project) => {
        const { findingText } = await import('../../reports/finding-text.ts');
        if (!project.findings().some((finding) => finding.id === id)) throw unknownFinding(id);
        if ((choice === 'correct') !== (options.value !== undefined)) throw valueMismatch(choice);
        project.settle(id, choice, options);
        const settled = project.findings().find((finding) => finding.id === id);
        if (settled) printBlocks(findingText(settled));
      }),
    );
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
