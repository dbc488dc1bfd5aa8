/**
 * What has a date, for a calendar program: tasks and promises as to-dos, deliveries and the times of products as
 * events. Source of the format: RFC 5545; of the calendar's name: RFC 7986, section 5.1; of "depends on": RFC 9253,
 * section 5. Days are days without a zone, instants are in UTC.
 */
import type { CheckWindow } from '../../model/checks/check-rows.ts';
import type { CheckView } from '../../model/checks/check-views.ts';
import type {
  ExpectedArrival,
  NextView,
  ProjectInfo,
  PromiseView,
  Source,
  TaskView,
  WaitView,
} from '../../model/views.ts';
import { clock, placeOf } from '../source-text.ts';
import { taskDetails } from '../task-list.ts';
import { productWords } from '../window-words.ts';
import { oneLine, sentence } from '../words.ts';
import { calendarLines, calendarText, dayStamp, folded, utcStamp } from './content-lines.ts';

export interface CalendarContents {
  readonly project: ProjectInfo;
  readonly next: Pick<NextView, 'arrivals' | 'promises' | 'windows'>;
  /** Open and done. A done one is written as completed, so that a calendar that holds it learns of that. */
  readonly tasks: readonly TaskView[];
}

/** Property and value; without a value the property is left out. */
type Line = readonly [name: string, value: string | undefined];

/** No entry is without the time it was made; this stands where that cannot be read. */
const NO_TIME = '19700101T000000Z';

function component(name: 'VTODO' | 'VEVENT', lines: readonly Line[]): readonly Line[] {
  return [['BEGIN', name], ...lines, ['END', name]];
}

/** What makes an id the same in every rewriting, and another project's id another one. */
function uidOf({ name, madeAt }: ProjectInfo) {
  const slug = oneLine(name)
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  const since = (madeAt && utcStamp(madeAt)) ?? '0';
  return (id: string) => calendarText(`${id}-${since}-${slug || 'project'}@hearwright`);
}

/**
 * The time at which an entry was last made known: that of the talk it comes from, so that the same project gives the
 * same bytes.
 */
const stampOf = (...sources: readonly (Source | undefined)[]): string =>
  sources
    .flatMap((source) => (source && utcStamp(source.recordedAt)) ?? [])
    .sort()
    .at(-1) ?? NO_TIME;

/** Words as a summary: they start with a capital. */
const sentenceText = (words: string) => calendarText(sentence(oneLine(words)));

const saidLine = (source: Source) =>
  `${placeOf(source)}, ${clock(source.recordedAt)}${source.quote ? `: “${oneLine(source.quote)}”` : ''}`;

/** The first day on which a task can be begun, where it waits for one; never on or after its due day. */
function startOf({ waits = [], due }: TaskView): string | undefined {
  const days = waits.flatMap(({ kind, until }) => (kind === 'date' && until ? [until] : [])).sort();
  const last = days.at(-1);
  return last !== undefined && (due === undefined || last < due) ? dayStamp(last) : undefined;
}

/** What a task waits for and what waits for it. Its day has a property; its age would change every day. */
const lastingDetails = ({ due: _due, ...task }: TaskView) => taskDetails({ ...task, carriedDays: 0 });

function todoOf(task: TaskView, uid: (id: string) => string): readonly Line[] {
  const isDone = task.status === 'done';
  const needs = (task.waits ?? []).filter(({ kind, isMet, on }) => kind === 'task' && !isMet && on);
  return component('VTODO', [
    ['UID', uid(task.id)],
    ['DTSTAMP', stampOf(task.source, task.closedBy)],
    ['SUMMARY', sentenceText(task.gist)],
    ['DTSTART;VALUE=DATE', startOf(task)],
    ['DUE;VALUE=DATE', task.due && dayStamp(task.due)],
    ['STATUS', isDone ? 'COMPLETED' : 'NEEDS-ACTION'],
    ['COMPLETED', isDone && task.closedBy ? utcStamp(task.closedBy.recordedAt) : undefined],
    ['PERCENT-COMPLETE', isDone ? '100' : undefined],
    ['CATEGORIES', task.status],
    ['DESCRIPTION', calendarLines([...lastingDetails(task), saidLine(task.source)])],
    ...needs.map(({ on = '' }): Line => ['RELATED-TO;RELTYPE=DEPENDS-ON', uid(on)]),
  ]);
}

function promiseOf(promise: PromiseView, uid: (id: string) => string): readonly Line[] {
  const isKept = promise.status === 'kept';
  return component('VTODO', [
    ['UID', uid(promise.id)],
    ['DTSTAMP', stampOf(promise.source, promise.keptBy)],
    ['SUMMARY', calendarText(`Promised: ${promise.gist}`)],
    ['DUE;VALUE=DATE', promise.due && dayStamp(promise.due)],
    ['STATUS', isKept ? 'COMPLETED' : 'NEEDS-ACTION'],
    ['COMPLETED', isKept && promise.keptBy ? utcStamp(promise.keptBy.recordedAt) : undefined],
    ['CATEGORIES', 'promise'],
    ['DESCRIPTION', calendarLines([saidLine(promise.source)])],
  ]);
}

function deliveryOf(arrival: ExpectedArrival, uid: (id: string) => string): readonly Line[] {
  const day = arrival.expected && dayStamp(arrival.expected);
  if (!day || arrival.status !== 'expected' || arrival.id === undefined) return [];
  return component('VEVENT', [
    ['UID', uid(arrival.id)],
    ['DTSTAMP', stampOf(arrival.source)],
    ['SUMMARY', calendarText(`Delivery: ${arrival.item}`)],
    ['DTSTART;VALUE=DATE', day],
    ['TRANSP', 'TRANSPARENT'],
    ['CATEGORIES', 'delivery'],
    ['DESCRIPTION', calendarLines([saidLine(arrival.source)])],
  ]);
}

/** What a window is called, by the check that knows it. */
const WINDOW_NAMES: Readonly<Record<string, string>> = {
  'recoat window': 'window for the next coat',
  'cure time': "the data sheet's cure time is over",
  'drying time': "the data sheet's drying time is over",
  'pot life': 'pot life ends',
};

/** Each window from its opening to its closing; one that only opens or only closes is that moment. */
function windowsOf(check: CheckView, uid: (id: string) => string): readonly Line[] {
  const { window, alsoRunning = [] } = check;
  return (window ? [window, ...alsoRunning] : []).flatMap((one) => windowOf(check, one, uid));
}

function windowOf({ id, check, inputs, note }: CheckView, window: CheckWindow, uid: (id: string) => string) {
  const name = WINDOW_NAMES[check];
  const [opens, closes] = [window.opens, window.closes].map((at) => at && utcStamp(at));
  const start = opens ?? closes;
  if (!name || !start) return [];
  const product = productWords(window, inputs);
  // The clocks of one check are told apart by what the product was put on.
  const own = window.on === undefined ? id : `${id}.${window.on.toLowerCase().replace(/[^a-z0-9]+/g, '-')}`;
  return component('VEVENT', [
    ['UID', uid(own)],
    ['DTSTAMP', stampOf(window.source, window.usedSource)],
    ['SUMMARY', sentenceText(product ? `${product}: ${name}` : name)],
    ['DTSTART', start],
    ['DTEND', opens && closes && closes > opens ? closes : undefined],
    ['TRANSP', 'TRANSPARENT'],
    ['CATEGORIES', 'window'],
    ['DESCRIPTION', calendarLines([note, saidLine(window.source)])],
  ]);
}

/** The moment at which hours that an open task waits for are over. */
function hoursOf(task: TaskView, wait: WaitView, number: number, uid: (id: string) => string) {
  const over = wait.until && utcStamp(wait.until);
  if (wait.kind !== 'hours' || !over || task.status === 'done') return [];
  return component('VEVENT', [
    ['UID', uid(`${task.id}.h${number + 1}`)],
    ['DTSTAMP', stampOf(task.source, wait.source)],
    ['SUMMARY', sentenceText(`${wait.words}: over; then ${task.gist}`)],
    ['DTSTART', over],
    ['TRANSP', 'TRANSPARENT'],
    ['CATEGORIES', 'window'],
    ['DESCRIPTION', calendarLines([wait.source && saidLine(wait.source), saidLine(task.source)])],
  ]);
}

/** Returns an iCalendar file. Ids stay from one writing to the next, and the time of writing is not in it. */
export function calendarOf({ project, next, tasks }: CalendarContents): string {
  const uid = uidOf(project);
  const lines: readonly Line[] = [
    ['BEGIN', 'VCALENDAR'],
    ['VERSION', '2.0'],
    ['PRODID', '-//Hearwright//Hearwright//EN'],
    ['CALSCALE', 'GREGORIAN'],
    ['NAME', calendarText(project.name)],
    ...tasks.flatMap((task) => todoOf(task, uid)),
    ...next.promises.flatMap((promise) => promiseOf(promise, uid)),
    ...next.arrivals.flatMap((arrival) => deliveryOf(arrival, uid)),
    ...(next.windows ?? []).flatMap((check) => windowsOf(check, uid)),
    ...tasks.flatMap((task) => (task.waits ?? []).flatMap((wait, at) => hoursOf(task, wait, at, uid))),
    ['END', 'VCALENDAR'],
  ];
  return lines
    .filter(([, value]) => value !== undefined && value !== '')
    .map(([name, value]) => `${folded(`${name}:${value}`)}\r\n`)
    .join('');
}
