/** Pieces that several pages share: a place in the talk, a quantity, a clash, a task. */
import type { Quantity } from '../../language/notes.ts';
import type {
  Caution,
  ClaimView,
  FindingView,
  ProblemView,
  PromiseView,
  Source,
  SourcedQuantity,
  StandingFigure,
  TaskView,
} from '../../model/views.ts';
import { consequenceText, findingHeadline, findingLine, sideLabels, subjectOf } from '../finding-text.ts';
import { NO_CAUTION_IS_NOT_SAFE, tells } from '../page-notes.ts';
import { amountText, type BoundedQuantity, boundedText, counterpartText, ofThing } from '../quantity-text.ts';
import { isSettledByTalk, settledText } from '../settled-words.ts';
import { age, counted, dayName, dayOf, daysBetween, placeOf } from '../source-text.ts';
import { taskDetails } from '../task-list.ts';
import { worstCaseText } from '../tolerance-text.ts';
import { sentence } from '../words.ts';
import { anchorOf } from './file-names.ts';
import { type Html, html, type Part } from './html.ts';
import { mentionsLinked } from './mentions.ts';
import type { Links, Measured } from './site-map.ts';

/** What a page is written with. */
export interface Desk {
  readonly links: Links;
  /** YYYY-MM-DD that ages are counted to. */
  readonly today: string;
}

/** Words that lead somewhere, or the words alone. */
export function linked(words: Part, href: string | undefined): Html {
  return href === undefined ? html`${words}` : html`<a href="${href}">${words}</a>`;
}

/** "memo 12, 02:17", leading to what was said. */
export function place({ links }: Desk, source: Source | undefined): Html {
  return linked(placeOf(source), source && links.memo(source));
}

/** The words that were said. */
export const quote = (words: string): Html => html`<q>${words}</q>`;

/** "5 days old"; of the day that ages are counted to, "of that day". */
export function ageWords({ today }: Desk, source: Source): string {
  const days = daysBetween(source.recordedAt, today);
  return days <= 0 ? 'of this day' : `${age(days)} old`;
}

/** A heading with what stands under it; nothing where nothing does. */
export function block(level: 2 | 3, title: string, parts: readonly Part[], id?: string): Part {
  const told = parts.filter((part) => part !== undefined && part !== false);
  if (told.length === 0) return undefined;
  const at = id === undefined ? undefined : html` id="${anchorOf(id)}"`;
  return level === 2
    ? html`<section${at}><h2>${title}</h2>\n${told}</section>\n`
    : html`<section${at}><h3>${title}</h3>\n${told}</section>\n`;
}

/** A list; nothing where it is empty. */
export function listOf(entries: readonly Part[], kind: 'plain' | 'numbered' = 'plain'): Part {
  if (entries.length === 0) return undefined;
  const rows = entries.map((entry) => html`<li>${entry}</li>\n`);
  return kind === 'numbered' ? html`<ol>\n${rows}</ol>\n` : html`<ul>\n${rows}</ul>\n`;
}

/** Pairs of a word and what it tells. */
export function facts(rows: readonly (readonly [label: string, told: Part] | undefined | false)[]): Part {
  const told = rows.filter((row) => row !== undefined && row !== false);
  if (told.length === 0) return undefined;
  return html`<dl>${told.map(([label, words]) => html`<div><dt>${label}</dt><dd>${words}</dd></div>\n`)}</dl>\n`;
}

/** The same quantity in the other system, "≈ 35 5/8 in"; nothing where there is none. */
export function otherSystem(quantity: BoundedQuantity): string | undefined {
  const low = counterpartText(quantity);
  if (low === undefined || quantity.high === undefined) return low;
  const high = counterpartText({ value: quantity.high, unit: quantity.unit });
  return high === undefined ? low : `${low} to ${high}`;
}

/** A quantity in both systems: "905 mm (≈ 35 5/8 in)". */
export function bothSystems(quantity: BoundedQuantity): Html {
  const other = otherSystem(quantity);
  return html`<span class="figure">${boundedText(quantity)}</span>${other !== undefined && html` <span class="other">(${other})</span>`}`;
}

export const amountInBoth = (amount: Quantity): string => {
  const other = counterpartText({ ...amount, value: Math.abs(amount.value) });
  return other === undefined ? amountText(amount) : `${amountText(amount)} (${other})`;
};

const STANDS: Readonly<Record<StandingFigure['status'], string>> = {
  stands: 'stands',
  'in-doubt': 'in doubt',
  stale: 'stale',
  series: 'one of a series',
};

/** A state in words, with a class of its own for looks alone. */
export function standing({ status, state }: Pick<StandingFigure, 'status' | 'state'>): Html {
  return html`<span class="state ${status}">${STANDS[status]}</span>${state !== undefined && `, ${state}`}`;
}

export const claimStatus = ({ status }: Pick<ClaimView, 'status'>): Html =>
  html`<span class="state ${status}">${status}</span>`;

/** A figure's name, leading to its page. */
export function subject({ links }: Desk, of: Measured): Html {
  return linked(subjectOf(of), links.figure(of));
}

function side(desk: Desk, quantity: SourcedQuantity): Part {
  const { source, state } = quantity;
  return [
    quantity.unit !== '' && html`${bothSystems(quantity)}, `,
    state !== undefined && `${state}, `,
    source ? html`${place(desk, source)} on ${dayOf(source.recordedAt)}` : 'worked out',
    source !== undefined && source.quote !== '' && html` ${quote(source.quote)}`,
  ];
}

/** A clash with both sides, how far apart they are, why, what was done on the older one, and what to do or what was done. */
export function clash(desk: Desk, finding: FindingView, level: 2 | 3): Html {
  const { was, now, status } = finding;
  const label = sideLabels(finding);
  const title = html`${subject(desk, finding)}: ${findingHeadline(finding)}`;
  const told = (value: SourcedQuantity) => value.unit !== '' || Boolean(value.source?.quote);
  const same = was.value === now.value && was.unit === now.unit && was.source?.quote === now.source?.quote;
  return html`<article class="clash ${status}" id="${anchorOf(finding.id)}">
${level === 2 ? html`<h2>${title}</h2>` : html`<h3>${title}</h3>`}
<p class="mark">${status === 'open' ? 'Open' : 'Settled'} <span class="id">${finding.id}</span></p>
${facts([
  told(now) && [label.now, side(desk, ofThing(now, finding))],
  told(was) && !same && [label.was, side(desk, ofThing(was, finding))],
  finding.standsNow !== undefined && ['stands now', side(desk, ofThing(finding.standsNow, finding))],
  finding.difference !== undefined &&
    now.unit !== '' &&
    !isSettledByTalk(finding) && ['differs', apart(finding)],
  ['why', finding.why],
  ...finding.consequences.map((one) => ['on it', mentionsLinked(desk.links)(consequenceText(one))] as const),
  (finding.path ?? []).length > 0 && ['round', path(desk, finding.path ?? [])],
  finding.settledBy ? ['settled', settledText(finding)] : ['next', finding.next],
])}</article>
`;
}

function path({ links }: Desk, ids: readonly string[]): Part {
  return ids.map((id, index) => [index > 0 && ', then ', linked(id, links.task(id))]);
}

function apart({ difference, tolerance }: FindingView): string {
  const allowed = tolerance ? `, tolerance ${worstCaseText(tolerance)}` : '';
  return `${difference ? amountInBoth(difference) : ''}${allowed}`;
}

/** A task with what it waits for, where it was said, and what closed it. */
export function taskLine(desk: Desk, task: TaskView, isTarget = false): Html {
  const { closedBy, source } = task;
  const words = sentence(task.gist);
  const details = taskDetails(task);
  return html`<div class="task"${isTarget && html` id="${anchorOf(task.id)}"`}><span class="gist">${
    isTarget ? words : linked(words, desk.links.task(task.id))
  }</span> <span class="where">${place(desk, source)}, ${dayOf(source.recordedAt)}${
    closedBy && html`; done ${place(desk, closedBy)}, ${dayOf(closedBy.recordedAt)}`
  }</span>${details.length > 0 && html`<br><span class="detail">${mentionsLinked(desk.links)(details.join('; '))}</span>`}</div>`;
}

/** A gist with its place: "Oak beam (memo 1, 00:08)". */
export function said(desk: Desk, gist: string, source: Source, ...more: readonly Part[]): Html {
  return html`${sentence(gist)} <span class="where">${place(desk, source)}</span>${more
    .filter((part) => part !== undefined && part !== false && part !== '')
    .map((part) => html`<br><span class="detail">${part}</span>`)}`;
}

/** A snag with its cause. */
export function problemLine(desk: Desk, { gist, cause, source, solvedBy }: ProblemView): Html {
  return said(
    desk,
    gist,
    source,
    cause !== undefined && !tells(gist, cause) && `cause: ${cause}`,
    solvedBy && html`put right ${place(desk, solvedBy)} on ${dayOf(solvedBy.recordedAt)}`,
  );
}

/** A promise with the day it is due, and where it was kept. */
export function promiseLine(desk: Desk, { gist, source, due, keptBy }: PromiseView): Html {
  return said(
    desk,
    gist,
    source,
    `said on ${dayOf(source.recordedAt)}`,
    due !== undefined && `due ${due}`,
    keptBy && html`kept ${place(desk, keptBy)} on ${dayOf(keptBy.recordedAt)}`,
  );
}

/** Cautions with whoever decides; silence is said to be no safety. */
export function cautionBlock(cautions: readonly Caution[]): Part {
  if (cautions.length === 0) return undefined;
  const entries = cautions.map(({ caution, defer }) => html`${caution} Who decides: ${defer}`);
  return block(2, 'Cautions', [html`<p>${NO_CAUTION_IS_NOT_SAFE}</p>\n`, listOf(entries)]);
}

/** A day, leading to its page. */
export function dayLink({ links }: Desk, date: string): Html {
  return html`<time datetime="${date}">${linked(dayName(date), links.day(date))}</time>`;
}

/** "water tank width 600 mm → 640 mm: a slip is likely", leading to the clash, with why it is one. */
export function clashLine(desk: Desk, finding: FindingView): Html {
  const words = findingLine(finding).replace(/ \[[^\]]*\]$/u, '');
  return html`${linked(words, desk.links.finding(finding.id))} <span class="id">${finding.id}</span><br><span class="detail">${finding.why}</span>`;
}

/** A weekday and how far it is away: "Thursday 2026-04-09, in 6 days". */
export function whenWords({ today }: Desk, date: string): Html {
  const away = daysBetween(today, date);
  const days = counted(Math.abs(away), 'day');
  const when = away < 0 ? `${days} ago` : away === 0 ? 'this day' : `in ${days}`;
  return html`<time datetime="${dayOf(date)}">${dayName(date)}</time>, ${when}`;
}

export { counted };
