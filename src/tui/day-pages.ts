/** The pages of a day, as the command line writes them. */
import type { ProjectApi } from '../project-api.ts';
import { episodePage } from '../reports/episode.ts';
import { firstOfWeek } from '../reports/episode-days.ts';
import { journalPage } from '../reports/journal.ts';
import { nextStepsPage } from '../reports/next-steps.ts';
import type { DayPage } from './state/screen-state.ts';

/**
 * Journal of a day with talk (of the newest, where none is given), next steps at `now` (ISO 8601), outline of the week
 * up to that day; none without talk.
 */
export function dayPages(project: ProjectApi, now: string, asked?: string): readonly DayPage[] {
  const days = project.days();
  const date = asked ?? days.at(-1);
  const day = date === undefined ? undefined : project.day(date);
  if (date === undefined || !day) return [];
  const { info } = project;
  const next = project.next(now);
  const first = firstOfWeek(days, date);
  const span = project.many().span(first, date);
  // Of those that are said nothing of in these days the outline says nothing.
  const told = project.figuresToldIn(span.days.flatMap(({ memos }) => memos.map(({ id }) => id)));
  return [
    { title: 'journal', file: `journal-${date}.md`, text: journalPage(day, info) },
    { title: 'next steps', file: `next-${next.date}.md`, text: nextStepsPage(next, info) },
    {
      title: 'outline',
      file: `episode-${first}-${date}.md`,
      text: episodePage(span, info, told),
    },
  ];
}
