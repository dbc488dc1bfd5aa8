import { Command } from 'commander';
import { EXIT, Problem } from '../../problem.ts';
import type { ProjectApi } from '../../project-api.ts';
import { firstOfWeek } from '../../reports/episode-days.ts';
import { givePage } from '../give-page.ts';
import { withProject } from '../project-of.ts';
import { dayValue } from '../values.ts';
import { nothingSaid } from './journal.ts';

/** The days asked for; without any, the last week up to the latest talk. */
function daysOf(project: ProjectApi, from: string | undefined, to: string | undefined): [string, string] {
  const days = project.days();
  const last = to === undefined ? days.at(-1) : dayValue('to', to);
  if (last === undefined) throw nothingSaid(undefined, days);
  const first = from === undefined ? firstOfWeek(days, last) : dayValue('from', from);
  if (first > last) {
    throw new Problem(`the episode would end before it starts: ${first} is after ${last}`, {
      code: 'days-reversed',
      exitCode: EXIT.usage,
      next: `hearwright episode ${last} ${first}`,
    });
  }
  if (!days.some((day) => day >= first && day <= last))
    throw nothingSaid(`any day from ${first} to ${last}`, days);
  return [first, last];
}

/** `episode`: the outline of the days from FROM to TO. */
export function episodeCommand(): Command {
  return new Command('episode')
    .description('write the outline of an episode')
    .argument('[from]', 'first day, YYYY-MM-DD; without it the week up to the latest talk')
    .argument('[to]', 'last day; without it the latest day with talk')
    .option('--out <file>', 'write a file instead of printing')
    .action((from: string | undefined, to: string | undefined, options: { out?: string }, command: Command) =>
      withProject(command, async (project) => {
        const { episodePage } = await import('../../reports/episode.ts');
        const [first, last] = daysOf(project, from, to);
        const page = episodePage(project.span(first, last), project.info, project.figures());
        await givePage(project, page, options.out);
      }),
    );
}
