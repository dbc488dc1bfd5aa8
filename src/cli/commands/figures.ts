import { Command } from 'commander';
import { EXIT, Problem } from '../../problem.ts';
import { print, printBlocks, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';

/** `figures`: the figures that stand; of one item with their history. */
export function figuresCommand(): Command {
  return new Command('figures')
    .description('show the figures that stand, of one item with their history')
    .argument('[item...]', 'words of its name')
    .option('--json', 'print JSON')
    .action((words: string[], options: { json?: boolean }, command: Command) =>
      withProject(command, async (project) => {
        const { figuresOfItem, figureTable } = await import('../../reports/figure-table.ts');
        const item = words.length > 0 ? words.join(' ') : undefined;
        const figures = project.figures(item);
        if (options.json) return printJson(figures);
        // Counts of things are no measure: they are shown where their thing is asked for.
        const measures = figures.filter((figure) => figure.dimension !== 'count');
        if (item === undefined) return print(figureTable(measures, project.info.units));
        if (figures.length === 0) throw unknownItem(item);
        printBlocks(figuresOfItem(figures, project.info.units));
      }),
    );
}

function unknownItem(item: string): Problem {
  return new Problem(`no figure stands for "${item}"`, {
    code: 'item-unknown',
    exitCode: EXIT.usage,
    next: 'see the names with: hearwright figures',
  });
}
