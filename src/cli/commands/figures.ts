import { Command } from 'commander';
import { EXIT, Problem } from '../../problem.ts';
import { print, printBlocks, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';
import { setWritten } from '../written.ts';

/** `figures`: the figures that stand; of one item with their history. `figures set` sets one. */
export function figuresCommand(): Command {
  return new Command('figures')
    .description('show the figures that stand, of one item with their history; set one with figures set')
    .argument('[item...]', 'words of its name')
    .option('--json', 'print JSON')
    .addCommand(setCommand())
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

function setCommand(): Command {
  return new Command('set')
    .description('set a figure or how it follows from others, by hand')
    .argument('<statement...>', '"bench top height = 915 mm", "bench top length = room length - 1700 mm"')
    .option('--reason <words>', 'why')
    .action((words: string[], options: { reason?: string }, command: Command) =>
      withProject(command, async (project) => {
        const { readWrittenFigure } = await import('../../model/written.ts');
        const { figuresOfItem } = await import('../../reports/figure-table.ts');
        const change = await setWritten(
          project,
          (region) => readWrittenFigure(words.join(' '), region),
          options,
        );
        const figures = project
          .figures(change.item)
          .filter(({ attribute }) => attribute === change.attribute);
        if (figures.length > 0) print(figuresOfItem(figures, project.info.units));
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
