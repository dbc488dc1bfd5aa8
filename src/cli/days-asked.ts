/** The days that a call names. */
import { EXIT, Problem } from '../problem.ts';
import type { ProjectApi } from '../project-api.ts';
import { firstOfWeek } from '../reports/episode-days.ts';
import { nothingSaid } from './commands/journal.ts';
import { dayValue } from './values.ts';

/** The days asked for; without any, the last week up to the latest talk. `command` is what to call again. */
export function daysAsked(
  project: ProjectApi,
  command: string,
  from: string | undefined,
  to: string | undefined,
): [string, string] {
  const days = project.days();
  const last = to === undefined ? days.at(-1) : dayValue('to', to);
  if (last === undefined) throw nothingSaid(undefined, days);
  const first = from === undefined ? firstOfWeek(days, last) : dayValue('from', from);
  if (first > last) {
    throw new Problem(`the last day would come before the first: ${first} is after ${last}`, {
      code: 'days-reversed',
      exitCode: EXIT.usage,
      next: `hearwright ${command} ${last} ${first}`,
    });
  }
  if (!days.some((day) => day >= first && day <= last))
    throw nothingSaid(`any day from ${first} to ${last}`, days);
  return [first, last];
}
