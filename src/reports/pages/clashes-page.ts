/** Clashes: the open ones, dearest to get wrong first, and how the others were settled. */
import type { FindingView } from '../../model/views.ts';
import { clashesByYear, openFirst } from './clash-order.ts';
import { MOST_ON_A_PAGE } from './division.ts';
import { block, clash, counted, type Desk, listOf } from './fragments.ts';
import { html, type Part } from './html.ts';
import { clashYearPath } from './site-map.ts';

export function clashesMain(desk: Desk, findings: readonly FindingView[]): Part {
  const years = clashesByYear(findings);
  const open = openFirst(findings);
  const settled = findings.filter(({ status }) => status === 'settled').reverse();
  return [
    block(2, 'Open', [
      open.length === 0
        ? html`<p>None. That means only that nothing was found.</p>\n`
        : open.slice(0, MOST_ON_A_PAGE).map((one) => clash(desk, one, 3)),
    ]),
    years.size === 0
      ? block(2, 'Settled', [settled.length > 0 && settled.map((one) => clash(desk, one, 3))])
      : block(2, open.length > MOST_ON_A_PAGE ? 'More, and settled ones' : 'Settled', [
          listOf([...years].map(([year, some]) => yearEntry(desk, year, some))),
        ]),
  ];
}

function yearEntry({ links }: Desk, year: string, some: readonly FindingView[]): Part {
  const open = some.filter(({ status }) => status === 'open').length;
  return html`<a href="${links.to(clashYearPath(year))}">Found in ${year}</a>: ${counted(some.length, 'clash', 'clashes')}${open > 0 && `, ${open} of them open`}`;
}
