import { Command } from 'commander';
import { now } from '../../instant.ts';
import { givePage } from '../give-page.ts';
import { withProject } from '../project-of.ts';
import { dayValue } from '../values.ts';

/** `sheet`: every size that stands, for the wall. */
export function sheetCommand(): Command {
  return new Command('sheet')
    .description('write the figure sheet for the wall: sizes in both systems, and what is not settled')
    .argument('[item...]', 'words of its name; without any, everything')
    .option('--on <date>', 'ages count to that day instead of today, YYYY-MM-DD', (value) =>
      dayValue('--on', value),
    )
    .option('--out <file>', 'write a file instead of printing')
    .action((words: string[], options: { on?: string; out?: string }, command: Command) =>
      withProject(command, async (project) => {
        const { figureSheet } = await import('../../reports/sheet/figure-sheet.ts');
        const figures = project.figures(words.length > 0 ? words.join(' ') : undefined);
        const named = new Set(figures.map(({ item }) => item));
        const isAsked = ({ item }: { readonly item: string }) => words.length === 0 || named.has(item);
        const sheet = figureSheet({
          project: project.info,
          figures,
          findings: project.findings({ status: 'open' }).filter(isAsked),
          limits: project.limits().filter(isAsked),
          date: (options.on ?? now()).slice(0, 10),
        });
        await givePage(project, sheet, options.out);
      }),
    );
}
