/** The instant that a site speaks of, by what is on record: never the clock's. */
import type { FindingView, MemoSummary, StandingFigure, TaskView } from '../../model/views.ts';

interface OnRecord {
  readonly memos: readonly MemoSummary[];
  readonly figures: readonly StandingFigure[];
  readonly findings: readonly FindingView[];
  readonly tasks: readonly TaskView[];
}

/** The latest instant of which anything is on record, ISO 8601 in its own zone; nothing of an empty project. */
export function latestOnRecord({ memos, figures, findings, tasks }: OnRecord): string | undefined {
  const instants = [
    ...memos.map(({ recordedAt }) => recordedAt),
    ...figures.map(({ source }) => source?.recordedAt),
    ...findings.map(({ settledBy }) => settledBy?.at),
    ...tasks.flatMap(({ source, closedBy }) => [source.recordedAt, closedBy?.recordedAt]),
  ];
  let latest: string | undefined;
  for (const instant of instants) {
    if (instant === undefined) continue;
    if (latest === undefined || Date.parse(instant) > Date.parse(latest)) latest = instant;
  }
  return latest;
}
