/** Which days an episode covers when none are named. */
import { daysBetween } from './source-text.ts';

/** Common practice, no source. */
const WEEK_DAYS = 7;

/** The first day with talk in the week up to `last`. Days are YYYY-MM-DD, ascending. */
export function firstOfWeek(days: readonly string[], last: string): string {
  return days.find((day) => daysBetween(day, last) < WEEK_DAYS) ?? last;
}
