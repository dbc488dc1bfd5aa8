import { Command } from 'commander';
import { EXIT, Problem } from '../../problem.ts';
import { givePage } from '../give-page.ts';
import { withProject } from '../project-of.ts';
import { dayValue } from '../values.ts';

/** `journal`: the page of one day, without a date the latest day with talk; with two dates the days between them. */
export function journalCommand(): Command {
  return new Command('journal')
    .description('write the journal page of a day, or of the days between two dates')
    .argument('[date]', 'YYYY-MM-DD; without it the latest day with talk')
    .argument('[to]', 'last day: one page with every day of talk from the first date to this one')
    .option('--out <file>', 'write a file instead of printing')
    .action((date: string | undefined, to: string | undefined, options: { out?: string }, command: Command) =>
      withProject(command, async (project) => {
        const { journalOfDays, journalPage } = await import('../../reports/journal.ts');
        if (to !== undefined) {
          const { daysAsked } = await import('../days-asked.ts');
          const [first, last] = daysAsked(project, 'journal', date, to);
          const { days } = project.span(first, last);
          return givePage(project, journalOfDays(days, project.info, { from: first, to: last }), options.out);
        }
        const asked = date === undefined ? project.days().at(-1) : dayValue('date', date);
        const day = asked === undefined ? undefined : project.day(asked);
        if (!day) throw nothingSaid(asked, project.days());
        await givePage(project, journalPage(day, project.info), options.out);
      }),
    );
}

/** No memo is of that day, or there is none at all. */
export function nothingSaid(asked: string | undefined, days: readonly string[]): Problem {
  const last = days.at(-1);
  return new Problem(
    asked === undefined ? 'nothing has been taken yet' : `no memo was recorded on ${asked}`,
    {
      code: 'day-empty',
      exitCode: EXIT.usage,
      next:
        last === undefined
          ? 'take a memo in: hearwright take FILE'
          : `days with talk run from ${days[0]} to ${last}`,
    },
  );
}
