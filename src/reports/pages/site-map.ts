/** Which page tells what, and how one page links to another. */
import type { FindingView, Source, StandingFigure, TaskView } from '../../model/views.ts';
import { clashesByYear } from './clash-order.ts';
import { MOST_ON_A_PAGE, yearOf } from './division.ts';
import { anchorOf, fileStems } from './file-names.ts';
import { grouped } from './grouped.ts';
import type { SiteSource } from './site-source.ts';
import { weekOf } from './weeks.ts';

/** Paths of pages, relative to the site's folder. */
export interface SiteMap {
  readonly items: ReadonlyMap<string, string>;
  /** Memo ids with the path and place of their words. */
  readonly memos: ReadonlyMap<string, string>;
  readonly days: ReadonlySet<string>;
  readonly findings: ReadonlyMap<string, string>;
  readonly tasks: ReadonlyMap<string, string>;
  readonly figures: ReadonlyMap<StandingFigure, string>;
  /** Figures by the name that formulas and checks give them: "bench top height". Of two of one name, the first. */
  readonly named: ReadonlyMap<string, string>;
  /** Figures by the notes that told of them, and by the clashes on them. */
  readonly claims: ReadonlyMap<string, string>;
  /** Figures by their name, memo and words: tells two of one name apart. */
  readonly told: ReadonlyMap<string, string>;
}

type Spoken = Pick<Source, 'memoId' | 'quote'>;
const toldKey = (name: string, { memoId, quote }: Spoken) => `${name}\u0000${memoId}\u0000${quote}`;

export const dayPath = (date: string) => `days/${anchorOf(date)}.html`;
export const weekPath = (date: string) => `episodes/${weekOf(date).name}.html`;
/** As formulas, checks and dependents name a figure. */
export const nameOfFigure = ({ item, attribute }: { readonly item: string; readonly attribute: string }) =>
  `${item} ${attribute}`;
/** A place of its own on the thing's page for each of its figures: two may go by one name. */
export function figureAnchors(figures: readonly StandingFigure[]): ReadonlyMap<StandingFigure, string> {
  const taken = new Map<string, number>();
  return new Map(
    figures.map((figure) => {
      const { attribute, dimension } = figure;
      const stem = anchorOf(attribute === dimension ? attribute : `${attribute}-${dimension}`);
      const count = (taken.get(stem) ?? 0) + 1;
      taken.set(stem, count);
      return [figure, count === 1 ? stem : `${stem}-${count}`];
    }),
  );
}

/** Where each figure stands. */
function figurePlaces(
  figures: readonly StandingFigure[],
  items: ReadonlyMap<string, string>,
): ReadonlyMap<StandingFigure, string> {
  return new Map(
    [...grouped(figures, ({ item }) => item)].flatMap(([item, own]) =>
      [...figureAnchors(own)].map(([figure, anchor]) => [figure, `${items.get(item)}#${anchor}`] as const),
    ),
  );
}

export function siteMap(source: SiteSource): SiteMap {
  const { figures, limits, memos, days, findings, tasks } = source;
  const stems = fileStems([...figures, ...limits].map(({ item }) => item));
  const items = new Map([...stems].map(([name, stem]) => [name, `things/${stem}.html`]));
  const places = figurePlaces(figures, items);
  const told = new Map(
    [...places].flatMap(([figure, place]) =>
      [figure.source, ...figure.history.map((claim) => claim.source)].flatMap((one) =>
        one ? [[toldKey(nameOfFigure(figure), one), place] as const] : [],
      ),
    ),
  );
  return {
    items,
    memos: new Map(
      memos.map(({ id, recordedAt }) => [id, `${dayPath(recordedAt.slice(0, 10))}#${anchorOf(id)}`]),
    ),
    days: new Set(days),
    findings: clashPlaces(findings),
    tasks: new Map(tasks.map((one) => [one.id, `${taskPage(one, tasks)}#${anchorOf(one.id)}`])),
    figures: places,
    named: new Map([...places].reverse().map(([figure, place]) => [nameOfFigure(figure), place])),
    claims: new Map([
      ...[...places].flatMap(([{ history }, place]) => history.map(({ id }) => [id, place] as const)),
      ...findings.flatMap((finding) => {
        const sides = [finding.now.source, finding.was.source].flatMap((one) => one ?? []);
        const keys = sides.map((one) => told.get(toldKey(nameOfFigure(finding), one)));
        const place = keys.find((one) => one !== undefined);
        return place === undefined ? [] : [[finding.id, place] as const];
      }),
    ]),
    told,
  };
}

/** Where each clash stands: together, or where they are many in years. */
function clashPlaces(findings: readonly FindingView[]): ReadonlyMap<string, string> {
  const place = (path: string) => (one: FindingView) => [one.id, `${path}#${anchorOf(one.id)}`] as const;
  return new Map([
    ...findings.map(place('clashes.html')),
    ...[...clashesByYear(findings)].flatMap(([year, some]) => some.map(place(clashYearPath(year)))),
  ]);
}
export const clashYearPath = (year: string) => `clashes-${anchorOf(year)}.html`;

/** The page of a task, in the same way. */
function taskPage({ status, source }: TaskView, all: readonly TaskView[]): string {
  return status !== 'done' || all.length <= MOST_ON_A_PAGE
    ? 'tasks.html'
    : taskYearPath(yearOf(source.recordedAt));
}
export const taskYearPath = (year: string) => `tasks-${anchorOf(year)}.html`;

/** A standing figure, a note or a claim by its id, or whatever else is said of a thing. */
export interface Measured {
  readonly item: string;
  readonly attribute: string;
  readonly id?: string;
}

/** Links from one page to others. */
export interface Links {
  /** A path of the site as it is reached from this page. */
  readonly to: (path: string) => string;
  readonly item: (name: string) => string | undefined;
  readonly figure: (of: Measured) => string | undefined;
  /** By its name in a formula; of two of one name the one that was said there, else the first. */
  readonly named: (name: string, said?: Spoken) => string | undefined;
  readonly memo: (source: Pick<Source, 'memoId'>) => string | undefined;
  readonly day: (date: string) => string | undefined;
  readonly finding: (id: string) => string | undefined;
  readonly task: (id: string) => string | undefined;
}

/** Links of a page at this path. */
export function linksFrom(path: string, map: SiteMap): Links {
  const up = path.includes('/') ? '../' : '';
  const to = (wanted: string) => `${up}${wanted}`;
  const maybe = (wanted: string | undefined) => (wanted === undefined ? undefined : to(wanted));
  return {
    to,
    item: (name) => maybe(map.items.get(name)),
    figure: (of) =>
      maybe(
        map.figures.get(of as StandingFigure) ??
          map.claims.get(of.id ?? '') ??
          map.named.get(nameOfFigure(of)) ??
          map.items.get(of.item),
      ),
    named: (name, said) => maybe((said && map.told.get(toldKey(name, said))) ?? map.named.get(name)),
    memo: ({ memoId }) => maybe(map.memos.get(memoId)),
    day: (date) => maybe(map.days.has(date) ? dayPath(date) : undefined),
    finding: (id) => maybe(map.findings.get(id)),
    task: (id) => maybe(map.tasks.get(id)),
  };
}
