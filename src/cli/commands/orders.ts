import { Command } from 'commander';
import type { DeliverySizeRow } from '../../model/kept/record-rows.ts';
import { EXIT, Problem } from '../../problem.ts';
import { printBlocks, printJson } from '../print.ts';
import { wantsJson, withProject } from '../project-of.ts';

/** `orders`: what was ordered and what came. `orders add` and `orders came` keep either by hand. */
export function ordersCommand(): Command {
  return new Command('orders')
    .description('show what was ordered and what came; keep it with orders add and orders came')
    .option('--json', 'print JSON')
    .addCommand(keepCommand('add', 'ordered', 'keep on record what was ordered'))
    .addCommand(keepCommand('came', 'received', 'keep on record what came'))
    .action((options: { json?: boolean }, command: Command) =>
      withProject(command, async (project) => {
        const { ordersText } = await import('../../reports/kept-text.ts');
        const orders = project.orders();
        if (options.json) printJson(orders);
        else printBlocks(ordersText(orders));
      }),
    );
}

interface Kept {
  readonly count?: number;
  readonly size?: readonly string[];
}

function keepCommand(name: string, act: 'ordered' | 'received', description: string): Command {
  return new Command(name)
    .description(description)
    .argument('<goods...>', 'what: "larch boards"')
    .option('--count <number>', 'how many', countValue)
    .option(
      '--size <attribute=quantity>',
      'one size, as often as there are sizes: "thickness=21 mm"',
      collect,
    )
    .action((words: string[], options: Kept, command: Command) =>
      withProject(command, async (project) => {
        const { ordersText } = await import('../../reports/kept-text.ts');
        const { findingsText } = await import('../../reports/finding-text.ts');
        const sizes = await Promise.all(
          (options.size ?? []).map((text) => sizeOf(text, project.info.region)),
        );
        const item = words.join(' ');
        const count = options.count === undefined ? {} : { count: options.count };
        const known = new Set(project.findings().map(({ id }) => id));
        project.setByHand({ kind: 'record-kept', record: { kind: 'delivery', act, item, ...count, sizes } });
        if (wantsJson(command)) return printJson(project.orders());
        const found = project.findings().filter(({ id }) => !known.has(id));
        if (found.length > 0) printBlocks(`${findingsText(found)}\n`);
        printBlocks(ordersText(project.orders()));
      }),
    );
}

const collect = (value: string, before: readonly string[] = []) => [...before, value];

function countValue(value: string): number {
  if (/^[1-9]\d{0,6}$/.test(value)) return Number(value);
  throw new Problem(`--count: expected a whole number, got "${value}"`, {
    code: 'value-invalid',
    exitCode: EXIT.usage,
  });
}

/** "thickness=21 mm" */
async function sizeOf(text: string, region?: string): Promise<DeliverySizeRow> {
  const { readWrittenFigure } = await import('../../model/written.ts');
  const { dimensionOf } = await import('../../model/measures.ts');
  const [attribute = '', quantity = ''] = text.split('=');
  const read = readWrittenFigure(`goods ${attribute.trim()} = ${quantity}`, region);
  const figure = read.ok && read.value.kind === 'figure-set' ? read.value : undefined;
  const dimension = figure && dimensionOf(figure.attribute, figure.quantity.unit, region);
  if (figure && dimension) return { attribute: figure.attribute, dimension, ...figure.quantity };
  throw new Problem(`--size: expected an attribute and a quantity such as "thickness=21 mm", got "${text}"`, {
    code: 'value-invalid',
    exitCode: EXIT.usage,
  });
}
