import { Command } from 'commander';
import { now } from '../../instant.ts';
import type { CheckView } from '../../model/checks/check-views.ts';
import { EXIT, Problem } from '../../problem.ts';
import type { ProjectApi } from '../../project-api.ts';
import { askedCheck, cannotAsk } from '../asked-check.ts';
import { print, printBlocks, printJson } from '../print.ts';
import { wantsJson, withProject } from '../project-of.ts';

/** `checks`: sums that have to hold, run anew when a figure changes. `add` and `remove` by hand, `kinds` tells what there is. */
export function checksCommand(): Command {
  return new Command('checks')
    .description(
      'show the checks that run by themselves; add one, take one away, or see what there is to check',
    )
    .option('--json', 'print JSON')
    .addCommand(addCommand())
    .addCommand(removeCommand())
    .addCommand(kindsCommand())
    .action((_options: { json?: boolean }, command: Command) =>
      withProject(command, (project) => show(project, project.checks(now()), command)),
    );
}

async function show(project: ProjectApi, checks: readonly CheckView[], command: Command): Promise<void> {
  if (wantsJson(command)) return printJson(checks);
  const { cautionsText, checksText } = await import('../../reports/checks-text.ts');
  const { cautionsOfChecks } = await import('../../model/checks/check-views.ts');
  printBlocks(checksText(checks, project.info.units, now()));
  const cautions = cautionsText(cautionsOfChecks(checks));
  if (cautions !== '') print(`\n${cautions}`);
}

function addCommand(): Command {
  return new Command('add')
    .description('attach a check that runs by itself: clearance opening="side hatch width" part="40 mm"')
    .argument('<check...>', 'its name, then its inputs: "opening=side hatch width"')
    .option('--note <words>', 'why it matters')
    .action((words: string[], { note }: { note?: string }, command: Command) =>
      withProject(command, async (project) => {
        const asked = await askedCheck(words, 'checks add');
        const { run, isWrong } = project.workOut(asked);
        if (isWrong || run.state === 'refused') throw await cannotAsk(run, 'checks add');
        const known = new Set(project.checks().map(({ id }) => id));
        project.setByHand({ kind: 'check-added', ...asked, ...(note === undefined ? {} : { note }) });
        const added = project.checks().filter(({ id }) => !known.has(id));
        if (added.length === 0 && !wantsJson(command)) print('That check stands already.\n');
        await show(project, added.length > 0 ? added : project.checks(), command);
      }),
    );
}

function removeCommand(): Command {
  return new Command('remove')
    .description('take a check away by its id')
    .argument('<id>', 'as hearwright checks shows it: s12')
    .action((id: string, _options: unknown, command: Command) =>
      withProject(command, async (project) => {
        const check = project.checks().find((one) => one.id === id);
        if (!check) throw unknownId(id);
        project.setByHand({ kind: 'check-removed', checkId: id });
        if (wantsJson(command)) return printJson(project.checks());
        const { oneLine } = await import('../../reports/words.ts');
        print(`Taken away: ${oneLine(check.subject)}. "hearwright undo" brings it back.\n`);
      }),
    );
}

function unknownId(id: string): Problem {
  return new Problem(`no check has the id "${id}"`, {
    code: 'check-unknown',
    exitCode: EXIT.usage,
    kept: 'nothing was changed',
    next: 'see the ids with: hearwright checks',
  });
}

function kindsCommand(): Command {
  return new Command('kinds')
    .description('show what there is to check, or one of them with its inputs, formula and source')
    .argument('[check...]', 'its name')
    .action(async (words: string[], _options: unknown, command: Command) => {
      const { CHECKS } = await import('../../model/checks/all-checks.ts');
      const { kindsTable, kindText } = await import('../../reports/checks-text.ts');
      const { exampleCall } = await import('../../model/checks/written-check.ts');
      if (words.length === 0) {
        if (wantsJson(command)) return printJson(CHECKS.map(described));
        return print(kindsTable(CHECKS));
      }
      const { checkNamed } = await import('../../model/checks/all-checks.ts');
      const check = checkNamed(words.join(' '));
      // A name that is none is told as it is where a check is asked for.
      if (!check) throw await unknownKind(words);
      if (wantsJson(command)) return printJson(described(check));
      printBlocks(kindText(check, exampleCall(check, 'work out')));
    });
}

/** A check without its function. */
function described<C extends { readonly run: unknown }>({ run: _run, ...check }: C): Omit<C, 'run'> {
  return check;
}

async function unknownKind(words: readonly string[]): Promise<Error> {
  try {
    await askedCheck(words, 'work out');
  } catch (error) {
    if (error instanceof Error) return error;
  }
  return new Error(`no check is called "${words.join(' ')}"`);
}
