/** What a reading of the talk so far says that was not told before. Pure. */
import type { FindingView, MemoView } from '../model/views.ts';

export type FigureHeard = MemoView['notes']['figures'][number];

/** The talk so far, read and held against the project, without anything being kept of it. */
export interface LookAhead {
  readonly figures: readonly FigureHeard[];
  readonly findings: readonly FindingView[];
}

/** What was told of a recording: how often each figure, and which clashes. */
export interface Told {
  readonly figures: ReadonlyMap<string, number>;
  readonly findings: ReadonlySet<string>;
}

export const NOTHING_TOLD: Told = { figures: new Map(), findings: new Set() };

/**
 * Figures and clashes that were not told yet, and what is told with them. A figure that was put right is new; one that
 * is only heard better, in other words or a little later, is not.
 */
export function whatIsNew(ahead: LookAhead, told: Told): LookAhead & { readonly told: Told } {
  const said = new Map<string, number>();
  const figures = ahead.figures.filter((figure) => {
    const key = figureKey(figure);
    const count = (said.get(key) ?? 0) + 1;
    said.set(key, count);
    return count > (told.figures.get(key) ?? 0);
  });
  const findings = ahead.findings.filter((finding) => !told.findings.has(findingKey(finding)));
  const counts = new Map(told.figures);
  for (const [key, count] of said) counts.set(key, Math.max(count, counts.get(key) ?? 0));
  return {
    figures,
    findings,
    told: { figures: counts, findings: new Set([...told.findings, ...findings.map(findingKey)]) },
  };
}

function figureKey({ item, attribute, value, unit, bound, high }: FigureHeard): string {
  return JSON.stringify([item, attribute, value, unit, bound, high]);
}

function findingKey({ kind, item, attribute, was, now, why }: FindingView): string {
  return JSON.stringify([kind, item, attribute, was.value, was.unit, now.value, now.unit, why]);
}
