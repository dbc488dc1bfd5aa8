/** Where one was when the talk stopped: read on the return, by whoever has forgotten. */
import type {
  ExpectedArrival,
  FindingView,
  ProjectInfo,
  PromiseView,
  Source,
  TaskView,
  ToldWork,
  UntimedClock,
  WaitView,
  WhereView,
} from '../model/views.ts';
import { findingLine } from './finding-text.ts';
import { bullet, escapeMarkdown, page, section } from './markdown.ts';
import { clock, counted, dayName, dayOf, daysBetween, memoName, placeOf } from './source-text.ts';
import { windowEnds } from './window-words.ts';
import { oneLine, sentence } from './words.ts';

/** A heading and its entries: plain words, one line each, further words of an entry on lines of their own. */
export interface WhereSection {
  readonly title: string;
  readonly entries: readonly (readonly string[])[];
}

/** So many ready tasks are named; the others are counted. */
const MOST_READY = 5;

/** "Last talk: Monday 2026-03-09, 21 days ago (memo 3, memo 4)". */
export function lastTalkWords({ lastTalk }: WhereView): string {
  if (!lastTalk) return 'Nothing was taken in yet.';
  const { date, daysAgo, memoIds } = lastTalk;
  return `Last talk: ${dayName(date)}, ${ago(daysAgo)} (${memoIds.map(memoName).join(', ')}).`;
}

/** What there is to tell, in the order in which it presses; sections without entries are left out. */
export function whereSections(view: WhereView): readonly WhereSection[] {
  const today = dayOf(view.now);
  const all: readonly WhereSection[] = [
    { title: 'In the middle', entries: view.begun.map(({ source }) => [quoteAt(source)]) },
    { title: 'Drying and curing', entries: curing(view) },
    { title: 'Done last', entries: view.done.map(toldLine) },
    { title: 'Decided last', entries: view.decided.map(toldLine) },
    { title: 'Filmed last', entries: view.filmed.map(toldLine) },
    { title: 'Expected and due', entries: expected(view, today) },
    { title: 'Clashes, dearest first', entries: clashes(view, today) },
    { title: 'Promised and not kept yet', entries: view.promises.map((one) => promised(one, today)) },
    { title: 'Problems still open', entries: view.problems.map(toldLine) },
    { title: 'Ready to go on with', entries: ready(view) },
  ];
  return all.filter(({ entries }) => entries.length > 0);
}

/** The page as CommonMark; says so where nothing is open. */
export function wherePage(view: WhereView, project: ProjectInfo): string {
  const sections = whereSections(view).flatMap(({ title, entries }) =>
    section(
      2,
      title,
      entries.map(([first = '', ...more]) => bullet(escapeMarkdown(first), ...more.map(escapeMarkdown))),
    ),
  );
  return page([
    `# Where was I, ${dayName(view.now)}: ${escapeMarkdown(project.name)}`,
    '',
    lastTalkWords(view),
    '',
    ...(sections.length > 0 ? sections : ['Nothing is open.']),
  ]);
}

/** "today", "3 days ago", "in 2 days". */
function ago(days: number): string {
  if (days === 0) return 'today';
  return days > 0 ? `${counted(days, 'day')} ago` : `in ${counted(-days, 'day')}`;
}

const quoteAt = (source: Source) =>
  `“${oneLine(source.quote)}” (${placeOf(source)}, ${dayOf(source.recordedAt)})`;

const toldLine = ({ gist, source }: Pick<ToldWork, 'gist' | 'source'>) => [
  `${sentence(oneLine(gist))} (${placeOf(source)}, ${dayOf(source.recordedAt)})`,
];

/** Whether an instant has come. A view made for a day counts up to its end. */
const isPast = (at: string, now: string) =>
  now.length > 10 ? Date.parse(at) <= Date.parse(now) : dayOf(at) <= now;

interface Timed {
  readonly at: string;
  readonly text: string;
}

function curing(view: WhereView): readonly (readonly string[])[] {
  const windows = view.windows.flatMap((check) =>
    windowEnds(check).map(({ at, words, source }): Timed => ({ at, text: `${words} (${placeOf(source)})` })),
  );
  const hours = view.hours.flatMap(({ task, wait }) => (wait.until ? [waited(wait.until, wait, task)] : []));
  const timed = [...windows, ...hours]
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at))
    .map(({ at, text }) => [timedLine(at, text, view)]);
  const unbegun = view.hours
    .filter(({ wait }) => wait.until === undefined)
    .map(({ task, wait }) => [`Not begun, as far as was told: ${waitWords(wait)} (${placeOf(task.source)})`]);
  return [...timed, ...view.untimed.map(untimedLine), ...unbegun];
}

const PAST: Readonly<Record<string, string>> = { opens: 'opened', closes: 'closed', ends: 'ended' };

/** What has come is told as past, since when; what is coming, when. */
function timedLine(at: string, text: string, { now }: WhereView): string {
  const away = ago(daysBetween(at, now));
  if (!isPast(at, now)) return `At ${clock(at)}, ${away}: ${text}`;
  const past = text.replace(/\b(?:opens|closes|ends)(?= \()/, (word) => PAST[word] ?? word);
  return `Since ${clock(at)}, ${away}: ${past}`;
}

const waited = (at: string, wait: WaitView, task: TaskView): Timed => ({
  at,
  text: `${waitWords(wait)} over, for: ${oneLine(task.gist)} (${placeOf(wait.source ?? task.source)})`,
});

/** "Glue is dry, 24 hours"; where the words name the hours they are not said twice. */
const waitWords = ({ words, hours = 0 }: WaitView) =>
  /\bhours?\b/i.test(words) ? oneLine(words) : `${oneLine(words)}, ${counted(hours, 'hour')}`;

/** How long a product takes stands on its data sheet: nothing is guessed here. */
function untimedLine({ product, act, at, source }: UntimedClock): readonly string[] {
  const what = oneLine(product) || (act === 'mixed' ? 'a mix' : 'a coat or joint');
  return [
    `${sentence(what)} ${act} ${clock(at)} (${placeOf(source)}): how long it takes was not said, see its data sheet`,
  ];
}

interface Dated {
  readonly date: string;
  readonly text: string;
}

/** Arrivals and tasks by their dates, what is past first; then arrivals without one. */
function expected(view: WhereView, today: string): readonly (readonly string[])[] {
  const arrivals = view.arrivals.flatMap((one) =>
    one.expected ? [{ date: one.expected, text: `arrival: ${goods(one)}` }] : [],
  );
  const tasks = view.dated.flatMap(taskDates);
  const dated = [...arrivals, ...tasks]
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
    .map(({ date, text }) => [
      `${dayName(date)}, ${ago(daysBetween(date, today))}${date < today ? ', nothing said of it since' : ''}: ${text}`,
    ]);
  const undated = view.arrivals
    .filter((one) => !one.expected)
    .map((one) => [`No date: arrival: ${goods(one)}`]);
  return [...dated, ...undated];
}

const goods = ({ item, source }: ExpectedArrival) => `${oneLine(item)} (${placeOf(source)})`;

function taskDates({ due, gist, source, waits = [] }: TaskView): readonly Dated[] {
  const text = `${oneLine(gist)} (${placeOf(source)})`;
  const days = waits.flatMap(({ kind, until, isMet }) =>
    kind === 'date' && until !== undefined && !isMet
      ? [{ date: until, text: `to wait for until then: ${text}` }]
      : [],
  );
  return [...(due ? [{ date: due, text: `to do: ${text}` }] : []), ...days];
}

function clashes({ findings, openFindings }: WhereView, today: string): readonly (readonly string[])[] {
  const more = openFindings - findings.length;
  return [
    ...findings.map((finding) => clash(finding, today)),
    ...(more > 0 ? [[`and ${counted(more, 'more clash', 'more clashes')}: hearwright findings --open`]] : []),
  ];
}

const clash = (finding: FindingView, today: string) => [
  `${findingLine(finding)}, ${ago(daysBetween(finding.foundAt, today))}`,
  `next: ${oneLine(finding.next)}`,
];

function promised({ gist, due, source }: PromiseView, today: string): readonly string[] {
  const when = due ? `; due ${due}, ${ago(daysBetween(due, today))}` : '';
  return [`${sentence(oneLine(gist))} (${placeOf(source)}, ${dayOf(source.recordedAt)})${when}`];
}

function ready({ ready: tasks, waiting }: WhereView): readonly (readonly string[])[] {
  const more = tasks.length - MOST_READY;
  const rest = [
    ...(more > 0 ? [`${more} more ready`] : []),
    ...(waiting > 0 ? [`${waiting} waiting`] : []),
  ].join(', ');
  return [
    ...tasks
      .slice(0, MOST_READY)
      .map((task) => [`${sentence(oneLine(task.gist))} (${placeOf(task.source)})`]),
    ...(rest === '' ? [] : [[`and ${rest}: hearwright tasks`]]),
  ];
}
