import { Command } from 'commander';
import { SERVICES, type Service } from '../../language/notes.ts';
import { print, printBlocks, printJson } from '../print.ts';
import { wantsJson, withProject } from '../project-of.ts';
import { oneOf } from '../values.ts';

/** `behind`: what is behind panels. `behind add` keeps it by hand. */
export function behindCommand(): Command {
  return new Command('behind')
    .description('show what is behind panels: cables, pipes, fixings; keep it with behind add')
    .argument('[panel...]', 'words of its name')
    .option('--json', 'print JSON')
    .addCommand(addCommand())
    .action((words: string[], options: { json?: boolean }, command: Command) =>
      withProject(command, async (project) => {
        const { hiddenText } = await import('../../reports/kept-text.ts');
        const panel = words.length > 0 ? words.join(' ') : undefined;
        const hidden = project.behind(panel);
        if (options.json) printJson(hidden);
        else printBlocks(hiddenText(hidden, panel));
      }),
    );
}

interface Added {
  readonly service: Service;
  readonly shot?: string;
}

function addCommand(): Command {
  return new Command('add')
    .description('keep by hand what is behind a panel')
    .argument('<panel>', 'its name: "galley panel"')
    .argument('<what...>', 'what is there: "12 V feed for the pump, 120 up from the floor"')
    .option(
      '--service <kind>',
      `what kind: ${SERVICES.join(', ')}`,
      (value) => oneOf('--service', SERVICES, value),
      'other',
    )
    .option('--shot <words>', 'the photo or clip that shows it: "photo 214"')
    .option('--json', 'print JSON')
    .action((panel: string, words: string[], options: Added, command: Command) =>
      withProject(command, async (project) => {
        const { hiddenText } = await import('../../reports/kept-text.ts');
        const { service, shot } = options;
        const what = words.join(' ');
        const record = { kind: 'hidden', panel, what, service, ...(shot ? { shot } : {}) } as const;
        project.setByHand({ kind: 'record-kept', record });
        const kept = project.behind().slice(-1);
        if (wantsJson(command)) printJson(kept[0]);
        else print(hiddenText(kept));
      }),
    );
}
