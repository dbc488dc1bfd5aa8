import { Command } from 'commander';
import { BATCH_FACTS } from '../../language/notes.ts';
import type { BatchFactRow } from '../../model/kept/record-rows.ts';
import { print, printBlocks, printJson } from '../print.ts';
import { wantsJson, withProject } from '../project-of.ts';

/** `batches`: what was mixed and put on, in what conditions. `batches add` keeps one by hand. */
export function batchesCommand(): Command {
  return new Command('batches')
    .description('show batches of resin, paint, glue, filler, concrete; keep one with batches add')
    .option('--json', 'print JSON')
    .addCommand(addCommand())
    .action((options: { json?: boolean }, command: Command) =>
      withProject(command, async (project) => {
        const { batchesText } = await import('../../reports/kept-text.ts');
        const batches = project.batches();
        if (options.json) printJson(batches);
        else printBlocks(batchesText(batches));
      }),
    );
}

type Facts = Readonly<Record<string, string | undefined>>;

function addCommand(): Command {
  return new Command('add')
    .description('keep a batch on record by hand')
    .argument('<product...>', 'what was mixed or put on: "laminating epoxy"')
    .option('--ratio <words>', 'mix ratio: "5 to 1 by weight"')
    .option('--metered <words>', 'how it was metered: "scales"')
    .option('--amount <words>', 'how much: "200 g"')
    .option('--air <words>', 'air temperature: "14 degC"')
    .option('--surface <words>', 'surface temperature: "11 degC"')
    .option('--humidity <words>', 'relative humidity: "65 %"')
    .option('--used <words>', 'where it went: "keel floors"')
    .option('--when <words>', 'when: "yesterday evening"')
    .option('--json', 'print JSON')
    .action((words: string[], options: Facts, command: Command) =>
      withProject(command, async (project) => {
        const { batchesText } = await import('../../reports/kept-text.ts');
        const { readWrittenQuantity } = await import('../../model/written.ts');
        const product = words.join(' ');
        const facts = BATCH_FACTS.flatMap((what): BatchFactRow[] => {
          const said = options[what];
          if (said === undefined) return [];
          const read = readWrittenQuantity(said, project.info.region);
          const isAmount = read.ok && read.value.unit !== '1';
          return [{ what, words: said, ...(isAmount ? read.value : {}) }];
        });
        project.setByHand({ kind: 'record-kept', record: { kind: 'batch', product, facts } });
        const kept = project.batches().slice(-1);
        if (wantsJson(command)) printJson(kept[0]);
        else print(batchesText(kept));
      }),
    );
}
