/** In which order clashes stand, and on which page. */
import type { FindingView } from '../../model/views.ts';
import { MOST_ON_A_PAGE, yearOf } from './division.ts';
import { grouped } from './grouped.ts';

/** Open ones, dearest to get wrong first. */
export const openFirst = (findings: readonly FindingView[]): readonly FindingView[] =>
  findings.filter(({ status }) => status === 'open').sort((a, b) => b.cost - a.cost);

/** Of many clashes, those that stand on the page of the year in which they were found: all but the dearest open ones. */
export function clashesByYear(findings: readonly FindingView[]): ReadonlyMap<string, readonly FindingView[]> {
  if (findings.length <= MOST_ON_A_PAGE) return new Map();
  const dearest = new Set(openFirst(findings).slice(0, MOST_ON_A_PAGE));
  const others = findings.filter((finding) => !dearest.has(finding)).reverse();
  return grouped(others, ({ foundAt }) => yearOf(foundAt));
}
