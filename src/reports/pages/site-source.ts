/** What the pages are made from: plain views of a project at rest. */
import type { CheckView } from '../../model/checks/check-views.ts';
import type {
  FindingView,
  LimitView,
  MemoSummary,
  NextView,
  ProblemView,
  ProjectInfo,
  PromiseView,
  SpanView,
  StandingFigure,
  TaskView,
} from '../../model/views.ts';
import type { Records } from './records-page.ts';

export interface SiteSource {
  readonly info: ProjectInfo;
  /** ISO 8601. Ages are counted to it; the clock is never asked, so that the same project gives the same bytes. */
  readonly asOf: string;
  readonly memos: readonly MemoSummary[];
  /** Dates with talk, ascending. */
  readonly days: readonly string[];
  readonly figures: readonly StandingFigure[];
  readonly limits: readonly LimitView[];
  /** In working order, the done ones last. */
  readonly tasks: readonly TaskView[];
  readonly problems: readonly ProblemView[];
  readonly promises: readonly PromiseView[];
  readonly findings: readonly FindingView[];
  readonly checks: readonly CheckView[];
  readonly records: Records;
  readonly next: NextView;
  /** The days between two dates. Asked once for each week. */
  readonly span: (from: string, to: string) => SpanView;
}

/** One file of the site. */
export interface SitePage {
  /** Relative to the site's folder, with "/" between. */
  readonly path: string;
  readonly text: string;
}
