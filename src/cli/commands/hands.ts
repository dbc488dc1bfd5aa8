import { Command } from 'commander';
import { sidesOf } from '../../language/lexicon/sides.ts';
import { EXIT, Problem } from '../../problem.ts';
import { print, printBlocks, printJson } from '../print.ts';
import { wantsJson, withProject } from '../project-of.ts';

/** `hands`: parts that are made once for each hand. `hands add` keeps a pair by hand. */
export function handsCommand(): Command {
  return new Command('hands')
    .description('show parts that are made one for each hand; keep a pair with hands add')
    .option('--json', 'print JSON')
    .addCommand(addCommand())
    .action((options: { json?: boolean }, command: Command) =>
      withProject(command, async (project) => {
        const { pairsText } = await import('../../reports/kept-text.ts');
        const pairs = project.hands();
        if (options.json) printJson(pairs);
        else printBlocks(pairsText(pairs));
      }),
    );
}

function addCommand(): Command {
  return new Command('add')
    .description('keep a pair of mirrored parts on record by hand')
    .argument('<part...>', 'the part without its side: "locker lid"')
    .option('--side <word>', 'a word for one side: port, left, nearside, driver', sideValue)
    .option('--json', 'print JSON')
    .action((words: string[], { side }: { side?: readonly [string, string] }, command: Command) =>
      withProject(command, async (project) => {
        const { pairsText } = await import('../../reports/kept-text.ts');
        const record = { kind: 'pair', part: words.join(' '), ...(side ? { sides: side } : {}) } as const;
        project.setByHand({ kind: 'record-kept', record });
        const kept = project.hands().slice(-1);
        if (wantsJson(command)) printJson(kept[0]);
        else print(pairsText(kept));
      }),
    );
}

function sideValue(value: string): readonly [string, string] {
  const sides = sidesOf(value);
  if (sides) return sides;
  throw new Problem(
    `--side: expected port, starboard, left, right, nearside, offside, driver or passenger, got "${value}"`,
    {
      code: 'value-invalid',
      exitCode: EXIT.usage,
    },
  );
}
