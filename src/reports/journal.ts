/** The journal of a day, or of the days between two dates. The same days give the same bytes. */
import type { Caution, DayView, ProjectInfo } from '../model/views.ts';
import { carriedOver, daySections, memoSection, memoTotal } from './journal-sections.ts';
import { escapeMarkdown, page, section } from './markdown.ts';
import { cautionEntry, NO_CAUTION_IS_NOT_SAFE } from './page-notes.ts';
import { dayName } from './source-text.ts';

function cautions(list: readonly Caution[]): string[] {
  return section(
    2,
    'Cautions',
    list.length > 0 ? [NO_CAUTION_IS_NOT_SAFE, '', ...list.map(cautionEntry)] : [],
  );
}

/**
 * Returns the journal page of one day as CommonMark. Every fact carries its memo and, for a recording, the offset
 * into it. Empty sections are left out.
 */
export function journalPage(day: DayView, project: ProjectInfo): string {
  return page([
    `# ${dayName(day.date)}: ${escapeMarkdown(project.name)}`,
    '',
    memoTotal(day.memos),
    '',
    ...daySections(day, project, 2, true),
    ...cautions(day.cautions),
    ...memoSection(day, 2),
  ]);
}

/**
 * Returns the journal of the days with talk from `from` to `to`, both YYYY-MM-DD, as one page of CommonMark: the days in
 * order, each as on its own page, then what is still open at the end of the last one and each caution once. Days
 * without talk do not stand on it.
 */
export function journalOfDays(
  days: readonly DayView[],
  project: ProjectInfo,
  { from, to }: { readonly from: string; readonly to: string },
): string {
  const memos = days.flatMap((day) => day.memos);
  const last = days.at(-1);
  const once = new Map(days.flatMap((day) => day.cautions).map((caution) => [caution.id, caution]));
  return page([
    `# ${dayName(from)} to ${dayName(to)}: ${escapeMarkdown(project.name)}`,
    '',
    memoTotal(memos, days.length),
    '',
    ...days.flatMap((day) =>
      section(2, dayName(day.date), [
        memoTotal(day.memos),
        '',
        ...daySections(day, project, 3, false),
        ...memoSection(day, 3),
      ]),
    ),
    ...(last ? section(2, `Still open from before ${dayName(last.date)}`, carriedOver(last)) : []),
    ...cautions([...once.values()]),
  ]);
}
