/** Where one was when the talk stopped. Nothing here changes anything. */
import { readBegun } from '../language/statements/begun.ts';
import { isPartly } from './closing.ts';
import { windowsFrom } from './day-views.ts';
import { answersGate, gateWords } from './gate-words.ts';
import { expectedArrivalViews, findingViews, memoView, openProblemViews } from './project-views.ts';
import { dayOf, type ProjectRows } from './rows.ts';
import { daysBetween, openTaskViews } from './task-views.ts';
import type { Kept, MemoView, Source, TaskView, ToldWork, UntimedClock, WhereView } from './views.ts';

/** What was begun longer than this before the last talk, and not told of since, is no longer in the middle. */
const REACH_DAYS = 7;
/** More than this is no answer to "where was I". Common practice, no source. */
const MOST = { begun: 6, done: 8, decided: 6, filmed: 3, findings: 10, problems: 6 } as const;

/** What was in the middle, dries, is expected, clashes and was promised. `now` is an ISO 8601 day or instant. */
export function whereView(rows: ProjectRows, now: string): WhereView {
  const today = dayOf(now);
  const days = rows.daysWithTalk().filter((date) => date <= today);
  const last = days.at(-1);
  const memos = last === undefined ? [] : memosFrom(rows, days, daysBefore(last, REACH_DAYS));
  const at = instantOf(now, memos[0]?.recordedAt);
  const tasks = openTaskViews(rows, now);
  const open = findingViews(rows, { status: 'open' });
  const begun = begunIn(memos);
  const filmed = filmedLast(rows);
  return {
    now,
    ...(last === undefined ? {} : { lastTalk: lastTalk(rows, last, today) }),
    begun: begun.slice(0, MOST.begun),
    done: latestDay(memos, ({ notes }) => notes.done)
      .filter((one) => ![...begun, ...filmed].some((other) => isToldIn(one, other)))
      .slice(0, MOST.done),
    decided: latestDay(memos, ({ notes }) => notes.decisions).slice(0, MOST.decided),
    filmed,
    windows: last === undefined ? [] : windowsFrom(rows, last, at),
    untimed: last === undefined ? [] : untimed(rows, daysBefore(last, REACH_DAYS), at),
    hours: hoursOf(tasks, last ?? today),
    arrivals: expectedArrivalViews(rows).filter(({ status }) => status === 'expected'),
    dated: tasks.filter((task) => task.due !== undefined || waitsForDay(task)),
    promises: [...rows.openPromises()].sort(
      (a, b) => Date.parse(a.source.recordedAt) - Date.parse(b.source.recordedAt),
    ),
    findings: [...open].sort((a, b) => b.cost - a.cost).slice(0, MOST.findings),
    openFindings: open.length,
    problems: openProblemViews(rows).slice(0, MOST.problems),
    ready: tasks.filter(({ status }) => status === 'ready'),
    waiting: tasks.filter(({ status }) => status === 'waiting').length,
  };
}

/** A day counts up to its end, in the zone of what was said last. */
function instantOf(now: string, said = 'Z'): string {
  return now.length > 10 ? now : `${now}T23:59:59${/(?:Z|[+-]\d\d:?\d\d)$/.exec(said)?.[0] ?? 'Z'}`;
}

const MS_PER_DAY = 86_400_000;

function daysBefore(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00Z`) - days * MS_PER_DAY).toISOString().slice(0, 10);
}

function lastTalk(rows: ProjectRows, date: string, today: string) {
  const memoIds = rows.where('memos', 'day', date).map(({ id }) => id);
  return { date, daysAgo: daysBetween(date, today), memoIds };
}

/** Memos of the days from `from` on, the latest first. */
function memosFrom(rows: ProjectRows, days: readonly string[], from: string): readonly MemoView[] {
  return days
    .filter((date) => date >= from)
    .flatMap((date) => rows.where('memos', 'day', date))
    .sort((a, b) => Date.parse(b.recordedAt) - Date.parse(a.recordedAt))
    .flatMap(({ id }) => memoView(rows, id) ?? []);
}

type Note = Kept<{
  readonly gist: string;
  readonly quote: string;
  readonly span: { readonly start: number };
}>;

const toldIn = (memo: MemoView, { gist, quote, startSeconds }: Note): ToldWork => ({
  gist,
  source: sourceIn(memo, quote, startSeconds),
});

const sourceIn = ({ id, recordedAt }: MemoView, quote: string, startSeconds?: number): Source => ({
  memoId: id,
  recordedAt,
  quote,
  ...(startSeconds === undefined ? {} : { startSeconds }),
});

/** The notes of the latest day that has any of them, last said first. */
function latestDay(memos: readonly MemoView[], notesOf: (memo: MemoView) => readonly Note[]) {
  const kept = (memo: MemoView) => notesOf(memo).filter(({ review }) => review !== 'rejected');
  const first = memos.find((memo) => kept(memo).length > 0);
  if (!first) return [];
  return memos
    .filter(({ recordedAt }) => dayOf(recordedAt) === dayOf(first.recordedAt))
    .flatMap((memo) =>
      [...kept(memo)].sort((a, b) => b.span.start - a.span.start).map((note) => toldIn(memo, note)),
    );
}

/** Work told to be begun, or done in part, that nothing said later ends. Memos come latest first. */
function begunIn(memos: readonly MemoView[]): readonly ToldWork[] {
  const ended: string[] = [];
  const found: ToldWork[] = [];
  for (const memo of memos) {
    for (const { work, isBegun } of workOf(memo)) {
      if (!isBegun) ended.push(work.gist);
      else if (!ended.some((gist) => isEndOf(gist, work.gist))) found.push(work);
    }
  }
  return found;
}

/** What one memo tells of work, from its end to its start: what is met first was said later. */
function workOf(memo: MemoView): readonly { readonly work: ToldWork; readonly isBegun: boolean }[] {
  const told = readBegun(memo.text);
  const isTold = ({ span }: Note) =>
    told.some((one) => span.start >= one.span.start && span.start < one.span.end);
  const begun = told.map(({ quote, span }) => ({
    work: { gist: quote, source: sourceIn(memo, quote, secondsAt(memo, quote)) },
    start: span.start,
    isBegun: true,
  }));
  const done = memo.notes.done
    .filter((note) => note.review !== 'rejected' && !isTold(note))
    .map((note) => ({ work: toldIn(memo, note), start: note.span.start, isBegun: isPartly(note.quote) }));
  return [...begun, ...done].sort((a, b) => b.start - a.start);
}

/** Whether the words of something done come back in what was begun. */
const isEndOf = (done: string, begun: string) => answersGate(gateWords(begun), gateWords(done));

/** Seconds at which the utterance with these words starts; undefined in a text. */
function secondsAt({ utterances = [] }: MemoView, quote: string): number | undefined {
  const head = quote.slice(0, 24);
  return utterances.find(({ text }) => text.includes(head))?.startSeconds;
}

/** Whether one is told with the words of another. */
const isToldIn = ({ source }: ToldWork, other: ToldWork) =>
  source.memoId === other.source.memoId && other.source.quote.includes(source.quote);

function filmedLast(rows: ProjectRows): readonly ToldWork[] {
  return rows
    .all('acts')
    .filter(({ act }) => act === 'filmed')
    .map(({ what, source }) => ({ gist: what, source }))
    .reverse()
    .slice(0, MOST.filmed);
}

/** Clocks started on the last days of which no check tells how long they run. */
function untimed(rows: ProjectRows, from: string, now: string): readonly UntimedClock[] {
  const timed = windowsFrom(rows, from, now)
    .flatMap(({ window, alsoRunning = [] }) => [window, ...alsoRunning])
    .map((window) => window?.startedAt);
  return rows
    .records('clock')
    .filter(({ at }) => dayOf(at) >= from && dayOf(at) <= dayOf(now) && !timed.includes(at))
    .filter(({ act }) => act !== 'used')
    .map(({ product, act, at, source }) => ({ product, act, at, source }))
    .reverse();
}

/** Hours that a task waits for, and those that were over since the last talk. */
function hoursOf(tasks: readonly TaskView[], since: string): WhereView['hours'] {
  return tasks.flatMap((task) =>
    (task.waits ?? [])
      .filter(({ kind, until }) => kind === 'hours' && (until === undefined || dayOf(until) >= since))
      .map((wait) => ({ task, wait })),
  );
}

const waitsForDay = ({ waits = [] }: TaskView) => waits.some(({ kind, isMet }) => kind === 'date' && !isMet);
