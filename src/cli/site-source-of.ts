/** Gathers the views of a project that its pages are made of. */
import type { ProjectApi } from '../project-api.ts';
import { latestOnRecord } from '../reports/pages/as-of.ts';
import type { SiteSource } from '../reports/pages/site-source.ts';

/**
 * Ages count to `on` (YYYY-MM-DD), else to the latest instant on record. Nothing of a project of which nothing is on
 * record. Holds only while nothing is written to the project.
 */
export function siteSourceOf(project: ProjectApi, on?: string): SiteSource | undefined {
  const many = project.many();
  const memos = project.memos();
  const figures = many.figures();
  const findings = project.findings();
  const days = project.days();
  // What tasks wait for may hang on the hour, so they are asked for again once the instant is known.
  const tasks = project.tasks(days.at(-1) ?? '');
  const asOf = on ?? latestOnRecord({ memos, figures, findings, tasks });
  if (asOf === undefined) return undefined;
  return {
    info: project.info,
    asOf,
    memos,
    days,
    figures,
    limits: project.limits(),
    tasks: project.tasks(asOf),
    problems: project.problems(),
    promises: project.promises(),
    findings,
    checks: project.checks(asOf),
    records: {
      behind: project.behind(),
      batches: project.batches(),
      orders: project.orders(),
      hands: project.hands(),
    },
    next: project.next(asOf),
    span: many.span,
  };
}
