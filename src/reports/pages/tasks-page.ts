/** Tasks: ready in working order, waiting and on what, done; then what else is open. */
import type { TaskView } from '../../model/views.ts';
import { gatesOf, isErrand } from '../next-steps.ts';
import { dayOf } from '../source-text.ts';
import { sentence } from '../words.ts';
import { MOST_ON_A_PAGE, yearOf } from './division.ts';
import {
  block,
  cautionBlock,
  counted,
  type Desk,
  linked,
  listOf,
  place,
  problemLine,
  promiseLine,
  taskLine,
  whenWords,
} from './fragments.ts';
import { grouped } from './grouped.ts';
import { html, joinedBy, type Part } from './html.ts';
import { taskYearPath } from './site-map.ts';
import type { SiteSource } from './site-source.ts';

/** Newest first, by when they were done. */
export function doneLast(tasks: readonly TaskView[]): readonly TaskView[] {
  const when = ({ closedBy, source }: TaskView) => Date.parse((closedBy ?? source).recordedAt);
  return tasks
    .filter(({ status }) => status === 'done')
    .map((task, index) => ({ task, index }))
    .sort((a, b) => when(b.task) - when(a.task) || a.index - b.index)
    .map(({ task }) => task);
}

/** Of many tasks, those that stand on the page of one year: by the day they were said. */
export function tasksByYear(tasks: readonly TaskView[]): ReadonlyMap<string, readonly TaskView[]> {
  return tasks.length <= MOST_ON_A_PAGE
    ? new Map()
    : grouped(doneLast(tasks), ({ source }) => yearOf(source.recordedAt));
}

/** Everything with a day to it, nearest first. */
function dates(desk: Desk, { next }: SiteSource): Part {
  const entries = [
    ...[...next.ready, ...next.waiting].flatMap(({ due, gist, id }) =>
      due === undefined ? [] : [{ date: due, words: linked(sentence(gist), desk.links.task(id)) }],
    ),
    ...next.arrivals.flatMap(({ expected, item, status }) =>
      expected === undefined || status !== 'expected'
        ? []
        : [{ date: expected, words: html`${sentence(item)} expected` }],
    ),
    ...next.promises.flatMap(({ due, gist, status }) =>
      due === undefined || status !== 'open' ? [] : [{ date: due, words: html`promised: ${gist}` }],
    ),
  ].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  return listOf(entries.map(({ date, words }) => html`${whenWords(desk, date)}: ${words}`));
}

/** What must be done before something is closed in, by what that is. */
function gates(desk: Desk, tasks: readonly TaskView[]): Part {
  return listOf(
    gatesOf(tasks).map(
      ([before, some]) =>
        html`before ${before}: ${joinedBy(
          some.map(({ id, gist }) => linked(sentence(gist), desk.links.task(id))),
          '; ',
        )}`,
    ),
  );
}

export function tasksMain(desk: Desk, source: SiteSource): Part {
  const { tasks, problems, promises, next } = source;
  const of = (status: TaskView['status']) => tasks.filter((task) => task.status === status);
  const lines = (some: readonly TaskView[], isTarget: boolean) =>
    some.map((task) => taskLine(desk, task, isTarget));
  const ready = of('ready');
  const years = tasksByYear(tasks);
  const open = problems.filter(({ status }) => status === 'open').reverse();
  const promised = promises.filter(({ status }) => status === 'open');
  const nothing = html`<p>None.</p>\n`;
  return [
    block(2, 'Ready, in working order', [
      listOf(
        lines(
          ready.filter((task) => !isErrand(task)),
          true,
        ),
        'numbered',
      ) ?? nothing,
    ]),
    block(2, 'To buy or order', [listOf(lines(ready.filter(isErrand), true))]),
    block(2, 'Waiting', [listOf(lines(of('waiting'), true)) ?? nothing]),
    block(2, 'Before it is closed in', [gates(desk, [...ready, ...of('waiting')])]),
    block(2, 'Dates', [dates(desk, source)]),
    block(2, 'Problems still open', [listOf(open.map((one) => problemLine(desk, one)))]),
    block(2, 'Expected', [
      listOf(
        next.arrivals
          .filter(({ status }) => status === 'expected')
          .map(
            ({ item, expected, source: at }) =>
              html`${sentence(item)}: ${expected ?? 'no day said'} <span class="where">${place(desk, at)}, ${dayOf(at.recordedAt)}</span>`,
          ),
      ),
    ]),
    block(2, 'Promised to viewers', [listOf(promised.map((one) => promiseLine(desk, one)))]),
    block(2, 'Done', [
      years.size === 0 && (listOf(lines(doneLast(tasks), true)) ?? nothing),
      years.size > 0 &&
        listOf(
          [...years]
            .sort()
            .reverse()
            .map(
              ([year, some]) =>
                html`<a href="${desk.links.to(taskYearPath(year))}">Said in ${year}</a>: ${counted(some.length, 'task')} done`,
            ),
        ),
    ]),
    cautionBlock(next.cautions),
  ];
}
