/** Views of a day, of what is next, and of the days between two dates. Nothing here changes anything. */
import type { FigureNote, Quantity } from '../language/notes.ts';
import { actsOfDay } from './acts-of-day.ts';
import { cautionsFor } from './cautions.ts';
import type { CheckRow, CheckState } from './checks/check-rows.ts';
import { type CheckView, checksOfDay, checkViews, touchedBy, wordsOfFinding } from './checks/check-views.ts';
import { keptForNext, keptOfDay } from './kept/kept-of.ts';
import {
  expectedArrivalViews,
  findingViews,
  memoView,
  openProblemViews,
  problemViews,
  promiseViews,
  viewOfFinding,
} from './project-views.ts';
import { type ClaimRow, dayOf, type ProjectRows } from './rows.ts';
import { openTasksAsOf, openTaskViews, tasksOfDay } from './task-views.ts';
import { convert, difference } from './units.ts';
import type {
  Caution,
  DayView,
  FigureChange,
  FindingView,
  Kept,
  LastTime,
  MemoSource,
  MemoView,
  NextView,
  ProblemView,
  Source,
  SpanView,
  TaskView,
} from './views.ts';

/** Dates with talk, ascending, each in the zone of its own memos. */
export function daysWithTalk(rows: ProjectRows): readonly string[] {
  return rows.daysWithTalk();
}

/** Memos of one date in the order in which they were recorded. */
function memosOf(rows: ProjectRows, date: string): readonly MemoView[] {
  return [...rows.where('memos', 'day', date)]
    .sort((a, b) => Date.parse(a.recordedAt) - Date.parse(b.recordedAt))
    .flatMap((memo) => memoView(rows, memo.id) ?? []);
}

/** One day of talk; nothing when no memo is of that date. */
export function dayView(rows: ProjectRows, date: string): DayView | undefined {
  const memos = memosOf(rows, date);
  if (memos.length === 0) return undefined;
  const tasks = tasksOfDay(rows, date);
  const checks = checksOfDay(rows, date);
  const closedOn = (task: TaskView) => task.closedBy && dayOf(task.closedBy.recordedAt);
  return {
    date,
    memos,
    findings: memos.flatMap(({ id }) => findingViews(rows, { memoId: id })),
    tasksOpened: tasks.filter((task) => dayOf(task.source.recordedAt) === date),
    tasksClosed: tasks.filter((task) => closedOn(task) === date),
    openTasksBefore: tasks.filter(
      (task) => dayOf(task.source.recordedAt) < date && (task.status !== 'done' || closedOn(task) === date),
    ),
    changes: memos.flatMap((memo) => changesOfMemo(rows, memo)),
    acts: actsOfDay(rows, memos),
    kept: keptOfDay(rows, memos),
    checks,
    cautions: cautionsFor([
      ...memos.map((memo) => memo.text),
      ...[...checks.broke, ...checks.holdAgain].flatMap((one) => wordsOfFinding(rows, one)),
    ]),
  };
}

/** Findings that mean a new value took the place of an old one, or would. */
const REPLACING: ReadonlySet<FindingView['kind']> = new Set(['decided', 'remeasured', 'slip']);

/** In a claim's own unit: two ways of saying one size differ by less than any tool can show. */
const SAME = 1e-9;

/** Whether a figure only says an older claim again: the same size, or one within the tolerance that holds. */
function agree(rows: ProjectRows, before: ClaimRow, figure: Quantity): boolean {
  const region = rows.get('project', 'project')?.region;
  const apart = difference(before, figure, region);
  const tolerance = rows.standing(before.slot)?.tolerance;
  const letPass = tolerance && convert(tolerance, before.unit, region)?.value;
  return apart !== undefined && Math.abs(apart) <= (letPass ?? 0) + SAME;
}

/** A likely slip changed nothing: it stands among the clashes alone. */
function isDoubted(rows: ProjectRows, claimId: string): boolean {
  const status = rows.get('claims', claimId)?.status;
  return status === 'doubted' || status === 'rejected';
}

/**
 * A figure under the name of its thing and measure: what was heard may be another word for it or a misheard one, and the
 * measure only guessed.
 */
function underItsName(rows: ProjectRows, figure: Kept<FigureNote>): Kept<FigureNote> {
  const claim = rows.claim(figure.id);
  if (!claim) return figure;
  return { ...figure, item: rows.item(claim.itemId)?.name ?? figure.item, attribute: claim.attribute };
}

/** What one memo did to the figures, in the order of speech. */
function changesOfMemo(rows: ProjectRows, memo: MemoView): readonly FigureChange[] {
  const findings = rows.where('findings', 'memoId', memo.id);
  return memo.notes.figures
    .filter((figure) => figure.review !== 'rejected' && !isDoubted(rows, figure.id))
    .map((figure) => underItsName(rows, figure))
    .map((figure) => {
      const slot = rows.claim(figure.id)?.slot;
      // Two figures of one memo may have the same words: only the clash of its own thing and attribute is its own.
      const finding = findings.find(
        (one) =>
          REPLACING.has(one.kind) &&
          (one.slot === undefined || one.slot === slot) &&
          one.now.source?.quote === figure.quote &&
          one.now.value === figure.value,
      );
      if (finding)
        return { kind: 'changed', figure, memoId: memo.id, old: finding.was, findingId: finding.id };
      const before = claimBefore(rows, figure.id);
      if (!before) return { kind: 'new', figure, memoId: memo.id };
      return agree(rows, before, figure)
        ? { kind: 'confirmed', figure, memoId: memo.id, old: before }
        : { kind: 'changed', figure, memoId: memo.id, old: before };
    });
}

/** The last claim on the same thing before this one; a series keeps no old value. */
function claimBefore(rows: ProjectRows, claimId: string): ClaimRow | undefined {
  const claim = rows.claim(claimId);
  if (!claim || claim.status === 'series') return undefined;
  const claims = rows.claimsOf(claim.itemId).filter(({ slot }) => slot === claim.slot);
  const index = claims.findIndex(({ id }) => id === claimId);
  return claims.slice(0, Math.max(0, index)).findLast(({ status }) => status !== 'rejected');
}

/** States in which a check is a question. */
const SAYS_NOTHING: ReadonlySet<CheckState> = new Set(['not-run', 'stale', 'refused']);

/** Questions a day: more would not be answered. Common practice, no source. */
const MOST_QUESTIONS = 5;

/** Snags that were open at the end of a date, latest first: one that was put right later was open then. */
function problemsAsOf(rows: ProjectRows, date: string): readonly ProblemView[] {
  return problemViews(rows)
    .filter(({ source, solvedBy, status }) => {
      if (dayOf(source.recordedAt) > date) return false;
      return status === 'open' || (solvedBy !== undefined && dayOf(solvedBy.recordedAt) > date);
    })
    .reverse();
}

/** Checks whose clock runs and whose times begin or end on a date or after it, as they are at `now`. */
export function windowsFrom(rows: ProjectRows, date: string, now?: string): readonly CheckView[] {
  const isTimed = ({ watches }: CheckRow) => watches.includes('@clock');
  return checkViews(rows, isTimed, now).filter(
    ({ state, window, alsoRunning = [] }) =>
      state !== 'refused' &&
      [window, ...alsoRunning]
        .flatMap((one) => [one?.opens, one?.closes])
        .some((end) => end !== undefined && dayOf(end) >= date),
  );
}

function nextOf(
  rows: ProjectRows,
  date: string,
  open: readonly TaskView[],
  problems: readonly ProblemView[],
): NextView {
  const kept = keptForNext(rows, open);
  const checks = rows.all('checks').filter(({ active }) => active);
  // No more are asked about in a day, and none is worked out for nothing.
  const unsure = checks.filter(({ last }) => SAYS_NOTHING.has(last.state)).slice(0, MOST_QUESTIONS);
  return {
    date,
    ready: open.filter((task) => task.status === 'ready'),
    waiting: open.filter((task) => task.status === 'waiting'),
    problems,
    arrivals: expectedArrivalViews(rows),
    promises: rows.openPromises(),
    questions: rows.questions(MOST_QUESTIONS).map((finding) => viewOfFinding(rows, finding)),
    kept,
    checks: checkViews(rows, ({ id }) => unsure.some((one) => one.id === id)),
    windows: windowsFrom(rows, date),
    cautions: cautionsFor([
      ...open.map(wordsOfTask),
      // What is behind a panel may hurt whoever goes through it.
      ...kept.behindWork.flatMap(({ there }) => there.map(({ what }) => what)),
      ...checks.filter(({ last }) => last.state !== 'holds').flatMap(({ check }) => touchedBy(check)),
    ]),
  };
}

/** What hazards open tasks touch, each once. */
export function cautionsOfTasks(tasks: readonly TaskView[]): readonly Caution[] {
  return cautionsFor(tasks.filter(({ status }) => status !== 'done').map(wordsOfTask));
}

const wordsOfTask = (task: TaskView) => `${task.gist}\n${task.source.quote}`;

/** What is open now. `now` is an ISO 8601 day or instant: days are counted to it. */
export function nextView(rows: ProjectRows, now: string): NextView {
  return nextOf(rows, dayOf(now), openTaskViews(rows, now), openProblemViews(rows));
}

/** The days from `from` to `to`, both included, what was before them, and what was open at the end of them. */
export function spanView(rows: ProjectRows, from: string, to: string): SpanView {
  const withTalk = daysWithTalk(rows);
  const days = withTalk
    .filter((date) => date >= from && date <= to)
    .flatMap((date) => dayView(rows, date) ?? []);
  const before = withTalk.findLast((date) => date < from);
  const promises = promiseViews(rows).filter((promise) => dayOf(promise.source.recordedAt) <= to);
  const problems = problemsOfSpan(rows, from, to);
  const isIn = (source: Source | undefined) => source !== undefined && dayOf(source.recordedAt) >= from;
  return {
    from,
    to,
    days,
    promises,
    next: nextOf(rows, to, openTasksAsOf(rows, to), problemsAsOf(rows, to)),
    ...(before === undefined ? {} : { last: lastTime(rows, before) }),
    problems,
    earlier: recordingsOf(
      rows,
      [
        ...days.flatMap((day) => day.changes.map(({ old }) => old?.source)),
        ...days.flatMap((day) => day.findings.map(({ was }) => was.source)),
        ...promises
          .filter(({ status, keptBy }) => status === 'open' || isIn(keptBy))
          .map(({ source }) => source),
      ].filter((source) => source !== undefined && !isIn(source)),
    ),
  };
}

/** The recordings that these sources are of, by memo; written memos are left out. */
function recordingsOf(
  rows: ProjectRows,
  sources: readonly (Source | undefined)[],
): Record<string, MemoSource> {
  const ids = [...new Set(sources.flatMap((source) => source?.memoId ?? []))];
  return Object.fromEntries(
    ids.flatMap((id) => {
      const source = rows.get('memos', id)?.source;
      return source?.kind === 'recording' ? [[id, source] as const] : [];
    }),
  );
}

/** Where things stood at the end of a day with talk. */
function lastTime(rows: ProjectRows, date: string): LastTime {
  const open = openTasksAsOf(rows, date);
  const done = memosOf(rows, date).flatMap(({ id, recordedAt, notes }) =>
    notes.done
      .filter((note) => note.review !== 'rejected')
      .map(({ gist, quote, startSeconds }) => {
        const at = startSeconds === undefined ? {} : { startSeconds };
        return { gist, source: { memoId: id, recordedAt, quote, ...at } };
      }),
  );
  return {
    date,
    done,
    ready: open.filter(({ status }) => status === 'ready'),
    waiting: open.filter(({ status }) => status === 'waiting'),
  };
}

function problemsOfSpan(rows: ProjectRows, from: string, to: string): readonly ProblemView[] {
  return problemViews(rows).filter(({ source }) => {
    const day = dayOf(source.recordedAt);
    return day >= from && day <= to;
  });
}
