/** What a reading of the talk so far says that the reading before did not. Pure. */
import type { FindingView, MemoView } from '../model/views.ts';

export type FigureHeard = MemoView['notes']['figures'][number];

/** The talk so far, read and held against the project, without anything being kept of it. */
export interface LookAhead {
  readonly figures: readonly FigureHeard[];
  readonly findings: readonly FindingView[];
}

/** Figures and clashes of `now` that `before` did not have. A figure that was put right counts as new. */
export function whatIsNew(now: LookAhead, before: LookAhead): LookAhead {
  const figures = new Set(before.figures.map(figureKey));
  const findings = new Set(before.findings.map(findingKey));
  return {
    figures: now.figures.filter((figure) => !figures.has(figureKey(figure))),
    findings: now.findings.filter((finding) => !findings.has(findingKey(finding))),
  };
}

/** What a person would call the same figure: a word more in its quote changes nothing. */
function figureKey({ item, attribute, value, unit, bound, high, startSeconds, span }: FigureHeard): string {
  return JSON.stringify([item, attribute, value, unit, bound, high, startSeconds ?? span.start]);
}

function findingKey({ kind, item, attribute, was, now, why }: FindingView): string {
  return JSON.stringify([kind, item, attribute, was.value, was.unit, now.value, now.unit, why]);
}
