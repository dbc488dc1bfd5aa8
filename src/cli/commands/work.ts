import { Command } from 'commander';
import { now } from '../../instant.ts';
import type { HouseUnits } from '../../language/notes.ts';
import type { WorkedCheck } from '../../model/checks/work-check.ts';
import { EXIT } from '../../problem.ts';
import { askedCheck, cannotAsk } from '../asked-check.ts';
import { print, printBlocks, printJson } from '../print.ts';
import { globalsOf } from '../project-of.ts';
import { regionValue, unitsValue } from '../values.ts';

interface Options {
  readonly units?: HouseUnits;
  readonly region?: string;
  readonly json?: boolean;
}

/** `work out`: one check, now, on figures of the project or on plain numbers. */
export function workCommand(): Command {
  return new Command('work')
    .description('work out a check once, on figures of the project or on plain numbers: work out')
    .addCommand(outCommand());
}

function outCommand(): Command {
  return new Command('out')
    .description('work out a check once; without a project on plain numbers')
    .argument('<check...>', 'its name, then its inputs: clearance "opening=706 mm" "part=700 mm"')
    .option('--units <system>', 'units to answer in: metric, us or mixed', unitsValue)
    .option('--region <cc>', 'country code: settles gallon and pint', regionValue)
    .option('--json', 'print JSON')
    .action(async (words: string[], options: Options, command: Command) => {
      const asked = await askedCheck(words, 'work out');
      const { worked, units } = await workedOut(asked, options, command);
      const { run } = worked;
      const hasNone = run.state === 'not-run' || run.state === 'refused';
      if (options.json) {
        printJson(run);
        if (hasNone) process.exitCode = EXIT.usage;
        return;
      }
      if (hasNone) throw await cannotAsk(run, 'work out');
      const { checkNamed } = await import('../../model/checks/all-checks.ts');
      const { cautionsOfChecks } = await import('../../model/checks/check-views.ts');
      const { cautionsText, workedOutText } = await import('../../reports/checks-text.ts');
      const check = checkNamed(run.check);
      if (!check) return;
      printBlocks(workedOutText(run, check, units, now()));
      const cautions = cautionsText(cautionsOfChecks([run]));
      if (cautions !== '') print(cautions);
    });
}

interface Answer {
  readonly worked: WorkedCheck;
  /** Where both systems are shown. */
  readonly units: HouseUnits;
}

/** On the figures of the project where there is one; else numbers alone, answered in the system they are written in. */
async function workedOut(
  asked: Parameters<typeof import('../../model/checks/check-views.ts').workOutCheck>[1],
  { units, region }: Options,
  command: Command,
): Promise<Answer> {
  const named = globalsOf(command).project;
  const { findProject } = await import('../../find-project.ts');
  if (named !== undefined || findProject('.') !== undefined) {
    const { openNearestProject } = await import('../../project.ts');
    const project = await openNearestProject(named);
    try {
      return { worked: project.workOut(asked, units), units: units ?? project.info.units };
    } finally {
      project.close();
    }
  }
  const { MemoryRows } = await import('../../model/memory-rows.ts');
  const { workOutCheck } = await import('../../model/checks/check-views.ts');
  const settings = { units: units ?? 'mixed', ...(region ? { region } : {}) } as const;
  return { worked: workOutCheck(new MemoryRows(), asked, settings), units: units ?? 'metric' };
}
