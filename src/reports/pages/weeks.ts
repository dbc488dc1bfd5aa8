/** Calendar weeks. Source: ISO 8601 (a week starts on Monday; week 1 holds the year's first Thursday). */

const DAY = 86_400_000;

export interface Week {
  /** "2026-W11". */
  readonly name: string;
  /** Monday and Sunday, YYYY-MM-DD. */
  readonly from: string;
  readonly to: string;
}

const dateOf = (time: number) => new Date(time).toISOString().slice(0, 10);

/** The week of a date, YYYY-MM-DD. */
export function weekOf(date: string): Week {
  const time = Date.parse(`${date}T00:00Z`);
  const monday = time - ((new Date(time).getUTCDay() + 6) % 7) * DAY;
  const thursday = new Date(monday + 3 * DAY);
  const first = Date.UTC(thursday.getUTCFullYear(), 0, 1);
  const number = Math.floor((thursday.getTime() - first) / (7 * DAY)) + 1;
  return {
    name: `${thursday.getUTCFullYear()}-W${String(number).padStart(2, '0')}`,
    from: dateOf(monday),
    to: dateOf(monday + 6 * DAY),
  };
}

/** The weeks that hold these dates, each once, in their order. */
export function weeksOf(dates: readonly string[]): readonly Week[] {
  return [...new Map(dates.map(weekOf).map((week) => [week.name, week])).values()];
}

/** Every date of a week, Monday first. */
export function datesOf({ from }: Week): readonly string[] {
  const monday = Date.parse(`${from}T00:00Z`);
  return Array.from({ length: 7 }, (_, day) => dateOf(monday + day * DAY));
}
