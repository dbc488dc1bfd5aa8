import { Command } from 'commander';
import { now } from '../../instant.ts';
import { givePage } from '../give-page.ts';
import { withProject } from '../project-of.ts';
import { dayValue } from '../values.ts';

/** `calendar`: what has a date, for a calendar program. */
export function calendarCommand(): Command {
  return new Command('calendar')
    .description('write tasks, promises, deliveries and the times of products as an iCalendar file')
    .option('--on <date>', 'for that day instead of today, YYYY-MM-DD', (value) => dayValue('--on', value))
    .option('--out <file>', 'write a file instead of printing')
    .action((options: { on?: string; out?: string }, command: Command) =>
      withProject(command, async (project) => {
        const { calendarOf } = await import('../../reports/calendar/calendar.ts');
        const at = options.on ?? now();
        const contents = {
          project: project.info,
          next: { ...project.next(at), promises: project.promises() },
          tasks: project.tasks(at),
        };
        await givePage(project, calendarOf(contents), options.out);
      }),
    );
}
