/** Where the project stands: what clashes, what is ready, what was said last. */
import type { DayView, SpanView } from '../../model/views.ts';
import { openFirst } from './clash-order.ts';
import { dayGist, dayLead } from './day-page.ts';
import {
  block,
  clashLine,
  counted,
  type Desk,
  dayLink,
  listOf,
  problemLine,
  promiseLine,
  taskLine,
} from './fragments.ts';
import { html, type Part } from './html.ts';
import { weekPicture } from './pictures/week.ts';
import type { SiteSource } from './site-source.ts';
import { unsettledBlock } from './things-page.ts';
import type { Week } from './weeks.ts';

/** So many of each kind: the rest is one link away. */
const SHOWN = 7;

export interface LastWeek {
  readonly week: Week;
  readonly span: SpanView;
}

export function overviewMain(desk: Desk, source: SiteSource, last: LastWeek | undefined): Part {
  const { findings, next, figures, problems, promises } = source;
  const open = openFirst(findings);
  const snags = problems.filter(({ status }) => status === 'open').reverse();
  const promised = promises.filter(({ status }) => status === 'open');
  const more = (count: number, path: string, words: string) =>
    count > SHOWN && html`<p><a href="${desk.links.to(path)}">All ${count} ${words}</a></p>\n`;
  return [
    counts(source),
    block(2, 'Clashes to settle', [
      listOf(open.slice(0, SHOWN).map((one) => clashLine(desk, one))),
      more(open.length, 'clashes.html', 'open clashes'),
    ]),
    block(2, 'Ready now', [
      listOf(
        next.ready.slice(0, SHOWN).map((task) => taskLine(desk, task)),
        'numbered',
      ),
      more(next.ready.length, 'tasks.html', 'ready tasks'),
    ]),
    block(2, 'Waiting', [
      listOf(next.waiting.slice(0, SHOWN).map((task) => taskLine(desk, task))),
      more(next.waiting.length, 'tasks.html', 'waiting tasks'),
    ]),
    unsettledBlock(desk, figures.slice(0)),
    block(2, 'Problems still open', [
      listOf(snags.slice(0, SHOWN).map((one) => problemLine(desk, one))),
      more(snags.length, 'tasks.html', 'open problems'),
    ]),
    block(2, 'Promised to viewers', [
      listOf(promised.slice(0, SHOWN).map((one) => promiseLine(desk, one))),
      more(promised.length, 'tasks.html', 'open promises'),
    ]),
    last &&
      block(2, 'The latest week', [
        weekPicture(desk, last.week, last.span.days),
        listOf([...last.span.days].reverse().map((day) => dayEntry(desk, day))),
        html`<p><a href="${desk.links.to(`episodes/${last.week.name}.html`)}">Outline of its episode</a></p>\n`,
      ]),
  ];
}

export function dayEntry(desk: Desk, day: DayView): Part {
  const gist = dayGist(day);
  return html`${dayLink(desk, day.date)}: ${dayLead(day)}${gist !== '' && html`<br><span class="detail">${gist}</span>`}`;
}

function counts({ memos, days, figures, tasks, findings }: SiteSource): Part {
  const notes = memos.reduce((sum, { noteCount }) => sum + noteCount, 0);
  const unread = memos.filter(({ status }) => status === 'kept').length;
  const open = tasks.filter(({ status }) => status !== 'done').length;
  const clashes = findings.filter(({ status }) => status === 'open').length;
  const rows: readonly (readonly [string, string])[] = [
    ['Talk', `${counted(memos.length, 'memo')} on ${counted(days.length, 'day')}`],
    ['Read', `${counted(notes, 'note')}, ${counted(figures.length, 'figure')} standing`],
    ['Open', `${counted(open, 'task')}, ${counted(clashes, 'clash', 'clashes')}`],
  ];
  return html`<dl class="counts">${rows.map(([label, words]) => html`<div><dt>${label}</dt><dd>${words}</dd></div>\n`)}</dl>
${unread > 0 && html`<p>${counted(unread, 'memo')} kept and not read yet.</p>\n`}`;
}
