/** Clashes: the open ones, dearest to get wrong first, and how the others were settled. */
import type { FindingView } from '../../model/views.ts';
import { block, clash, counted, type Desk, listOf } from './fragments.ts';
import { grouped } from './grouped.ts';
import { html, type Part } from './html.ts';
import { clashYearPath, MOST_ON_A_PAGE, yearOf } from './site-map.ts';

export const openFirst = (findings: readonly FindingView[]): readonly FindingView[] =>
  findings.filter(({ status }) => status === 'open').sort((a, b) => b.cost - a.cost);

const settledLast = (findings: readonly FindingView[]) =>
  findings.filter(({ status }) => status === 'settled').reverse();

/** Of many clashes, the settled ones by the year in which they were found. */
export function settledByYear(findings: readonly FindingView[]): ReadonlyMap<string, readonly FindingView[]> {
  return findings.length <= MOST_ON_A_PAGE
    ? new Map()
    : grouped(settledLast(findings), ({ foundAt }) => yearOf(foundAt));
}

export function clashesMain(desk: Desk, findings: readonly FindingView[]): Part {
  const open = openFirst(findings);
  const years = settledByYear(findings);
  const settled = settledLast(findings);
  return [
    block(2, 'Open', [
      open.length === 0
        ? html`<p>None. That means only that nothing was found.</p>\n`
        : open.map((one) => clash(desk, one, 3)),
    ]),
    block(2, 'Settled', [
      years.size === 0 && settled.length > 0 && settled.map((one) => clash(desk, one, 3)),
      years.size > 0 &&
        listOf(
          [...years].map(
            ([year, some]) =>
              html`<a href="${desk.links.to(clashYearPath(year))}">Found in ${year}</a>: ${counted(some.length, 'clash', 'clashes')} settled`,
          ),
        ),
    ]),
  ];
}
