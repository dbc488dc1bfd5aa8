/** One thing: each of its figures with state, age, words and history, its limits, its clashes, and its pictures. */

import type { CheckView } from '../../model/checks/check-views.ts';
import type { ClaimView, FindingView, LimitView, StandingFigure } from '../../model/views.ts';
import { stateText } from '../check-words.ts';
import { inOrder } from '../checks-text.ts';
import { measureOf } from '../finding-text.ts';
import { boundedText } from '../quantity-text.ts';
import { dayOf } from '../source-text.ts';
import { toleranceText } from '../tolerance-text.ts';
import { sentence } from '../words.ts';
import { anchorOf } from './file-names.ts';
import {
  ageWords,
  block,
  bothSystems,
  claimStatus,
  clash,
  type Desk,
  facts,
  linked,
  listOf,
  otherSystem,
  place,
  quote,
  standing,
  subject,
} from './fragments.ts';
import { type Html, html, type Part } from './html.ts';
import { historyOf, relativesOf } from './pictures/of-figure.ts';
import type { Relations } from './relations.ts';
import { figureAnchors, nameOfFigure } from './site-map.ts';

/** What is known of a thing, gathered once for all of them. */
export interface Shelves {
  readonly limitsOf: (figure: StandingFigure) => readonly LimitView[];
  readonly limitsOn: (item: string) => readonly LimitView[];
  readonly findingsOn: (item: string) => readonly FindingView[];
  readonly checksReading: (name: string) => readonly CheckView[];
  readonly relations: Relations;
}

export function thingMain(
  desk: Desk,
  name: string,
  figures: readonly StandingFigure[],
  shelves: Shelves,
): Part {
  const limits = shelves.limitsOn(name);
  const findings = shelves.findingsOn(name);
  return [
    [...figureAnchors(figures)].map(([figure, anchor]) =>
      figureSection(desk, figure, anchor, titleOf(figure, figures), shelves),
    ),
    block(2, 'Limits', [listOf(limits.map((limit) => limitLine(desk, limit)))]),
    block(2, 'Clashes', [
      listOf(
        findings.map((one) => html`${linked(one.id, desk.links.finding(one.id))}: ${one.status}; ${one.why}`),
      ),
    ]),
  ];
}

export const limitLine = (desk: Desk, limit: LimitView): Html =>
  html`${subject(desk, limit)}: ${bothSystems(limit)}${
    limit.about !== '' && limit.about !== limit.item && ` for ${limit.about}`
  } <span class="where">${place(desk, limit.source)}, ${dayOf(limit.source.recordedAt)}</span>${
    limit.source.quote !== '' && html` ${quote(limit.source.quote)}`
  }`;

/** "Height"; where two go by one name, with the value: "Height, 915 mm". */
function titleOf(figure: StandingFigure, all: readonly StandingFigure[]): string {
  const measure = measureOf(figure);
  const alike = all.filter((one) => measureOf(one) === measure).length;
  return alike > 1 ? `${sentence(measure)}, ${boundedText(figure)}` : sentence(measure);
}

function figureSection(
  desk: Desk,
  figure: StandingFigure,
  anchor: string,
  title: string,
  shelves: Shelves,
): Part {
  const { source, tolerance, formula, rule, each } = figure;
  const other = otherSystem(figure);
  const checks = inOrder(shelves.checksReading(nameOfFigure(figure)));
  return block(
    2,
    title,
    [
      html`<p class="stands-at"><strong>${boundedText(figure)}</strong>${other !== undefined && html` <span class="other">${other}</span>`}${each !== undefined && ' each'}</p>\n`,
      facts([
        ['state', standing(figure)],
        [
          'said',
          source
            ? html`${place(desk, source)} on ${dayOf(source.recordedAt)}, ${ageWords(desk, source)}${source.quote !== '' && html` ${quote(source.quote)}`}`
            : 'worked out, never spoken',
        ],
        !rule.startsWith('worked out') && ['why', rule],
        tolerance !== undefined && ['within', toleranceText(tolerance)],
        formula !== undefined && ['comes from', formula],
      ]),
      historyOf(figure, anchor, shelves),
      figure.history.length > 0 && historyTable(desk, figure),
      relativesOf(desk, figure, anchor, shelves),
      block(3, 'Checks that read it', [
        listOf(
          checks.map(
            (check) =>
              html`${stateText(check.state)}: ${linked(check.subject, `${desk.links.to('checks.html')}#${anchorOf(check.id)}`)}<br><span class="detail">${check.why}</span>`,
          ),
        ),
      ]),
    ],
    anchor,
  );
}

/** Newest first. */
function historyTable(desk: Desk, figure: StandingFigure): Html {
  return html`<div class="wide" tabindex="0" role="group" aria-label="History of ${nameOfFigure(figure)}"><table>
<caption>History</caption>
<thead><tr><th scope="col">Day</th><th scope="col">Said</th><th scope="col">State</th><th scope="col">Now</th><th scope="col">Where</th><th scope="col">Words</th></tr></thead>
<tbody>
${[...figure.history].reverse().map((claim) => claimRow(desk, claim))}</tbody></table></div>
`;
}

function claimRow(desk: Desk, claim: ClaimView): Html {
  const { source, state } = claim;
  return html`<tr id="${anchorOf(claim.id)}"><td>${source ? html`<time datetime="${dayOf(source.recordedAt)}">${dayOf(source.recordedAt)}</time>` : 'not spoken'}</td><td>${bothSystems(claim)}</td><td>${state ?? ''}</td><td>${claimStatus(claim)}</td><td>${place(desk, source)}</td><td>${source !== undefined && source.quote !== '' && quote(source.quote)}</td></tr>\n`;
}

export { clash };
