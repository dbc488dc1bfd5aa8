/** Writes the whole site of a project as text, page by page. The same project gives the same bytes. */
import type { SpanView, StandingFigure } from '../../model/views.ts';
import { dayName, dayOf } from '../source-text.ts';
import { oneLine } from '../words.ts';
import { checksMain } from './checks-page.ts';
import { clashesByYear } from './clash-order.ts';
import { clashesMain } from './clashes-page.ts';
import { dayLead, dayMain, dayTitle } from './day-page.ts';
import { episodeMain } from './episode-page.ts';
import { block, clash, counted, type Desk, listOf, taskLine } from './fragments.ts';
import { grouped } from './grouped.ts';
import { html, joinedBy, type Part } from './html.ts';
import { pageOf, type Section } from './layout.ts';
import { STYLE } from './look.ts';
import { dayEntry, type LastWeek, overviewMain } from './overview-page.ts';
import { recordsMain } from './records-page.ts';
import {
  entriesOf,
  indexScript,
  SEARCH_SCRIPT,
  type SearchEntry,
  searchMain,
  talkEntries,
} from './search-page.ts';
import { shelvesOf } from './shelves.ts';
import {
  clashYearPath,
  dayPath,
  linksFrom,
  type SiteMap,
  siteMap,
  taskYearPath,
  weekPath,
} from './site-map.ts';
import type { SitePage, SiteSource } from './site-source.ts';
import { TAB_STOPS_SCRIPT } from './tab-stops.ts';
import { tasksByYear, tasksMain } from './tasks-page.ts';
import { thingMain } from './thing-page.ts';
import {
  letterPath,
  letterTitle,
  thingName,
  thingsByLetter,
  thingsMain,
  thingsOf,
  thingsTable,
} from './things-page.ts';
import { type Week, weeksOf } from './weeks.ts';

interface Written {
  readonly title: string;
  readonly main: Part;
  readonly lead?: Part;
  readonly around?: Part;
  readonly scripts?: readonly string[];
}

/** Every file of the site. Read it to the end: what was said is gathered on the way, and the search comes last. */
export function* sitePages(source: SiteSource): Generator<SitePage> {
  const map = siteMap(source);
  const writer = new SiteWriter(source, map);
  yield { path: 'style.css', text: STYLE };
  yield { path: 'search.js', text: SEARCH_SCRIPT };
  yield { path: 'tab-stops.js', text: TAB_STOPS_SCRIPT };
  yield* writer.weeks();
  yield* writer.things();
  yield* writer.tasks();
  yield* writer.clashes();
  yield* writer.checks();
  yield* writer.lists();
}

class SiteWriter {
  readonly #source: SiteSource;
  readonly #map: SiteMap;
  readonly #today: string;
  readonly #weeks: readonly Week[];
  readonly #talk: SearchEntry[] = [];
  readonly #dayEntries = new Map<string, Part>();
  #last: LastWeek | undefined;

  constructor(source: SiteSource, map: SiteMap) {
    this.#source = source;
    this.#map = map;
    this.#today = dayOf(source.asOf);
    this.#weeks = weeksOf(source.days);
  }

  get #name(): string {
    return oneLine(this.#source.info.name) || 'Project';
  }

  #page(path: string, section: Section, write: (desk: Desk) => Written): SitePage {
    const links = linksFrom(path, this.#map);
    const project = this.#name;
    const written = write({ links, today: this.#today });
    const foot = `Written from what was said. Ages are counted to ${dayName(this.#today)}.`;
    return pageOf({ path, section, project, links, foot, ...written });
  }

  /** Days and episodes, a week at a time: a ten-year project need not be held at once. */
  *weeks(): Generator<SitePage> {
    const { days, figures, info, span: spanOf } = this.#source;
    const spoken = figuresByMemo(figures);
    for (const [index, week] of this.#weeks.entries()) {
      const span = spanOf(week.from, week.to);
      for (const day of span.days) {
        this.#talk.push(...talkEntries(day));
        yield this.#page(dayPath(day.date), 'days', (desk) => ({
          title: dayTitle(day.date),
          lead: html`<p>${dayLead(day)}</p>`,
          main: dayMain(desk, day),
          around: around(desk, days, days.indexOf(day.date), dayPath, dayName),
        }));
        this.#dayEntries.set(
          day.date,
          dayEntry({ links: linksFrom('days.html', this.#map), today: this.#today }, day),
        );
      }
      const standing = [
        ...new Set(span.days.flatMap(({ memos }) => memos.flatMap(({ id }) => spoken.get(id) ?? []))),
      ];
      yield this.#page(`episodes/${week.name}.html`, 'episodes', (desk) => ({
        title: `Episode of week ${week.name}`,
        lead: html`<p>${weekWords(week)}</p>`,
        main: episodeMain(desk, week, span, info, standing),
        around: around(
          desk,
          this.#weeks,
          index,
          ({ from }) => weekPath(from),
          ({ name }) => `Week ${name}`,
        ),
      }));
      if (index === this.#weeks.length - 1) this.#last = { week, span };
    }
  }

  *things(): Generator<SitePage> {
    const shelves = shelvesOf(this.#source);
    const things = thingsOf(this.#source);
    for (const [name, figures] of things) {
      const path = this.#map.items.get(name);
      if (path === undefined) continue;
      yield this.#page(path, 'things', (desk) => ({
        title: thingName(name),
        main: thingMain(desk, name, figures, shelves),
      }));
    }
    for (const [letter, some] of thingsByLetter(things)) {
      yield this.#page(letterPath(letter), 'things', (desk) => ({
        title: letterTitle(letter),
        main: thingsTable(desk, some, letterTitle(letter)),
      }));
    }
    yield this.#page('things.html', 'things', (desk) => ({
      title: 'Things',
      lead: html`<p>${counted(things.size, 'thing')}, ${counted(this.#source.figures.length, 'figure')}</p>`,
      main: thingsMain(desk, this.#source, things),
    }));
  }

  *tasks(): Generator<SitePage> {
    yield this.#page('tasks.html', 'tasks', (desk) => ({
      title: 'Tasks',
      main: tasksMain(desk, this.#source),
    }));
    for (const [year, some] of tasksByYear(this.#source.tasks)) {
      yield this.#page(taskYearPath(year), 'tasks', (desk) => ({
        title: `Tasks of ${year} that are done`,
        main: listOf(some.map((task) => taskLine(desk, task, true))),
      }));
    }
  }

  *clashes(): Generator<SitePage> {
    const { findings } = this.#source;
    yield this.#page('clashes.html', 'clashes', (desk) => ({
      title: 'Clashes',
      main: clashesMain(desk, findings),
    }));
    for (const [year, some] of clashesByYear(findings)) {
      yield this.#page(clashYearPath(year), 'clashes', (desk) => ({
        title: `Clashes found in ${year}`,
        main: some.map((one) => clash(desk, one, 2)),
      }));
    }
  }

  *checks(): Generator<SitePage> {
    yield this.#page('checks.html', 'checks', (desk) => ({
      title: 'Checks',
      main: checksMain(desk, this.#source.checks),
    }));
    yield this.#page('records.html', 'records', (desk) => ({
      title: 'On record',
      main: recordsMain(desk, this.#source.records),
    }));
  }

  /** What is written last, because it tells of all the rest. */
  *lists(): Generator<SitePage> {
    yield this.#page('days.html', 'days', (desk) => ({
      title: 'Days',
      lead: html`<p>${counted(this.#source.days.length, 'day')} with talk</p>`,
      main: this.#daysMain(desk),
    }));
    yield this.#page('episodes.html', 'episodes', (desk) => ({
      title: 'Episodes',
      lead: html`<p>One outline for each calendar week with talk</p>`,
      main:
        listOf(
          [...this.#weeks]
            .reverse()
            .map(
              (week) =>
                html`<a href="${desk.links.to(weekPath(week.from))}">Week ${week.name}</a>: ${weekWords(week)}`,
            ),
        ) ?? html`<p>Nothing was said yet.</p>\n`,
    }));
    yield this.#page('index.html', 'overview', (desk) => ({
      title: this.#name,
      lead: html`<p>As of ${dayName(this.#today)}</p>`,
      main: overviewMain(desk, this.#source, this.#last),
    }));
    yield this.#page('search.html', 'search', (desk) => ({
      title: 'Search',
      main: searchMain(desk.links),
      scripts: ['search-index.js', 'search.js'],
    }));
    yield {
      path: 'search-index.js',
      text: indexScript([...entriesOf(this.#source, this.#map), ...this.#talk]),
    };
  }

  /** By month, newest first. */
  #daysMain(_desk: Desk): Part {
    const newest = [...this.#dayEntries].reverse();
    if (newest.length === 0) return html`<p>Nothing was said yet.</p>\n`;
    return [...grouped(newest, ([date]) => date.slice(0, 7))].map(([month, some]) =>
      block(2, monthName(month), [listOf(some.map(([, entry]) => entry))]),
    );
  }
}

const MONTHS = 'January February March April May June July August September October November December'.split(
  ' ',
);
const monthName = (month: string) =>
  `${MONTHS[Number(month.slice(5)) - 1] ?? ''} ${month.slice(0, 4)}`.trim();

const weekWords = ({ from, to }: Week) => `${dayName(from)} to ${dayName(to)}`;

/** Links to what comes before and after in a list. */
function around<T>(
  desk: Desk,
  list: readonly T[],
  index: number,
  pathOf: (one: T) => string,
  wordsOf: (one: T) => string,
): Part {
  const before = list[index - 1];
  const after = list[index + 1];
  const links = [
    before !== undefined &&
      html`<a rel="prev" href="${desk.links.to(pathOf(before))}">${wordsOf(before)}</a>`,
    after !== undefined && html`<a rel="next" href="${desk.links.to(pathOf(after))}">${wordsOf(after)}</a>`,
  ].filter((link) => link !== false);
  return links.length === 0 ? undefined : html`<p>${joinedBy(links, ' · ')}</p>`;
}

/** Standing figures by the memos that told of them: an outline asks for no others. */
function figuresByMemo(figures: readonly StandingFigure[]): ReadonlyMap<string, readonly StandingFigure[]> {
  const of = new Map<string, StandingFigure[]>();
  for (const figure of figures)
    for (const memoId of new Set(figure.history.map(({ source }) => source?.memoId ?? '')))
      of.set(memoId, [...(of.get(memoId) ?? []), figure]);
  return of;
}

export type { SpanView };
