/** What an episode tells around its beats: the goal and whether it was reached, where things were, setback, shots, promises. */
import type { ProblemView, PromiseView, SpanView, TaskView, ToldWork } from '../model/views.ts';
import { type Beat, clipMark, clipOf, type Line, shownBy } from './episode-beats.ts';
import { hiddenWords } from './kept-words.ts';
import { bullet, escapeMarkdown, quoted, section } from './markdown.ts';
import { notesOf, oldestFirst, promiseEntry, statement, taskEntry, tells } from './page-notes.ts';
import { dayName, dayOf, memoName, placeOf } from './source-text.ts';
import { taskDetails } from './task-list.ts';
import { sentence } from './words.ts';

/** So many goals an episode has. Common practice, no source. */
export const MOST_GOALS = 3;

interface Goal {
  readonly task: TaskView;
  readonly reached: boolean;
}

interface Goals {
  /** What the last outline named as next, or what was open when the span began. */
  readonly set: readonly Goal[];
  /** Other tasks from before the span that it closed. */
  readonly besides: readonly Goal[];
}

/** What the span set out to do: what was next when it began, else the first tasks it opened. */
function goalsOf(span: SpanView): Goals {
  const closed = new Map(span.days.flatMap((day) => day.tasksClosed.map((task) => [task.id, task])));
  const [first] = span.days;
  const open = first?.openTasksBefore ?? [];
  const next = span.last?.ready ?? [];
  const named = next.length > 0 ? next : open.length > 0 ? open : (first?.tasksOpened ?? []);
  // The task as it stood when it was closed knows what closed it.
  const goal = (task: TaskView): Goal => ({
    task: closed.get(task.id) ?? task,
    reached: closed.has(task.id),
  });
  const set = named.slice(0, MOST_GOALS).map(goal);
  const seen = new Set(set.map(({ task }) => task.id));
  return {
    set,
    besides: open
      .filter(({ id }) => closed.has(id) && !seen.has(id))
      .slice(0, 2 * MOST_GOALS)
      .map(goal),
  };
}

function goalEntry({ task, reached }: Goal, span: SpanView): string {
  const waiting = span.next.waiting.find(({ id }) => id === task.id);
  const still = waiting
    ? `not reached; ${escapeMarkdown(taskDetails(waiting)[0] ?? 'it waits')}`
    : 'not reached';
  return bullet(
    `${statement(task.gist, placeOf(task.source))}: ${reached ? `reached (${escapeMarkdown(placeOf(task.closedBy))})` : still}`,
  );
}

/** The goal of the span and what came of it; then what was reached besides. */
export function goalLines(span: SpanView): string[] {
  const { set, besides } = goalsOf(span);
  return section(2, 'Goal, and whether it was reached', [
    ...set.map((goal) => goalEntry(goal, span)),
    ...(besides.length > 0
      ? [
          '',
          ...section(
            3,
            'Reached besides',
            besides.map((goal) => goalEntry(goal, span)),
          ),
        ]
      : []),
  ]);
}

/** "Flue fitted (memo 2); step stripped (memo 3)". */
const joinedGists = (some: readonly (ToldWork | TaskView)[]) =>
  some.map(({ gist, source }) => statement(gist, placeOf(source))).join('; ');

/** Where viewers were left: the last day with talk, what it said was next, what it waited for, what was promised. */
export function recapEntries(span: SpanView): string[] {
  const { last } = span;
  const promised = span.promises.filter(
    ({ source, keptBy }) =>
      dayOf(source.recordedAt) < span.from && !(keptBy && dayOf(keptBy.recordedAt) < span.from),
  );
  return [
    ...(last && last.done.length > 0
      ? [bullet(`last time, on ${dayName(last.date)}: ${joinedGists(last.done.slice(0, MOST_GOALS))}`)]
      : []),
    ...(last && last.ready.length > 0
      ? [bullet(`next was to be: ${joinedGists(last.ready.slice(0, MOST_GOALS))}`)]
      : []),
    ...(last && last.waiting.length > 0
      ? [bullet(`held up then: ${joinedGists(last.waiting.slice(0, MOST_GOALS))}`)]
      : []),
    ...oldestFirst(promised).map(
      ({ gist, source }) =>
        `- promised: ${statement(gist, placeOf(source))}, said on ${dayOf(source.recordedAt)}`,
    ),
  ];
}

/** The moment that went wrong and matters most: one with its cause told, with a clip, or of which much was said. */
function setbackWorth(span: SpanView, problem: ProblemView): number {
  const blocked = span.next.waiting.some(({ gist }) => tells(gist, problem.gist));
  return (problem.cause ? 2 : 0) + (problem.source.startSeconds === undefined ? 0 : 1) + (blocked ? 2 : 0);
}

function endOf({ id, solvedBy }: ProblemView, span: SpanView): string {
  if (solvedBy && dayOf(solvedBy.recordedAt) <= span.to)
    return `put right on ${dayOf(solvedBy.recordedAt)} (${escapeMarkdown(placeOf(solvedBy))})`;
  return (span.next.problems ?? []).some((open) => open.id === id) ? 'still open at the end' : '';
}

/** The setback with its moment and its end; the others in a line each. */
export function setbackLines(span: SpanView): string[] {
  const memos = span.days.flatMap((day) => day.memos);
  const views = new Map((span.problems ?? []).map((problem) => [problem.id, problem]));
  const told = notesOf(memos, 'problems').map((one) => ({
    ...one,
    view: views.get(one.note.id) ?? {
      id: one.note.id,
      gist: one.note.gist,
      ...(one.note.cause ? { cause: one.note.cause } : {}),
      status: 'open' as const,
      source: { memoId: one.memo.id, recordedAt: one.memo.recordedAt, quote: one.note.quote },
    },
  }));
  const [main, ...others] = [...told].sort((a, b) => setbackWorth(span, b.view) - setbackWorth(span, a.view));
  if (!main) return [];
  const end = (view: ProblemView) => endOf(view, span);
  return section(2, 'The setback', [
    bullet(
      `${statement(main.note.gist, main.place)}${clipMark(clipOf(main.memo, main.note))}`,
      !tells(main.note.gist, main.note.quote) && `as said: ${quoted(main.note.quote)}`,
      main.note.cause && `cause: ${escapeMarkdown(main.note.cause)}`,
      end(main.view),
    ),
    ...(others.length > 0
      ? [
          '',
          ...section(
            3,
            'Others',
            others.map(({ note, place, view }) =>
              bullet(`${statement(note.gist, place)}${end(view) && `; ${end(view)}`}`),
            ),
          ),
        ]
      : []),
  ]);
}

const TOLD_BY = { sound: 'sound only', text: 'written' } as const;

/** Things that were done or came and are only told, a line for each memo: there may still be time to film them. */
export function missingShots(beats: readonly Beat[]): string[] {
  const shots = beats.flatMap(({ memo, happenings }) => {
    const by = shownBy(memo);
    const unseen = happenings.filter(({ kind }) => kind === 'done' || kind === 'arrival');
    if (by === 'picture' || unseen.length === 0) return [];
    return [
      bullet(
        `${escapeMarkdown(memoName(memo.id))} (${TOLD_BY[by]}): ${unseen.map(({ gist }) => escapeMarkdown(gist)).join('; ')}`,
      ),
    ];
  });
  return section(2, 'Missing shots: told, but no picture of it', shots);
}

/** Dull clips to keep: they show what will be out of sight. */
export function archiveLines(span: SpanView): string[] {
  const entries = span.days.flatMap(({ memos, kept }) =>
    (kept?.hidden ?? []).map((hidden) => {
      const memo = memos.find(({ id }) => id === hidden.source.memoId);
      const clip = memo && shownBy(memo) === 'picture' ? clipMark(clipOf(memo, hidden.source)) : '';
      const isSeen = clip !== '' || hidden.shot !== undefined || hidden.clip !== undefined;
      return bullet(
        `behind the ${escapeMarkdown(hidden.panel)}: ${escapeMarkdown(hiddenWords(hidden))} (${escapeMarkdown(placeOf(hidden.source))})${clip}`,
        !isSeen && 'no picture of it is on record',
      );
    }),
  );
  return section(2, 'For the archive: what goes out of sight', entries);
}

/** Kept in these days, and open ones, oldest first. */
export function promiseLines(span: SpanView): string[] {
  const inSpan = (day: string | undefined) => day !== undefined && day >= span.from && day <= span.to;
  const kept = span.promises.filter(
    (promise) => promise.status === 'kept' && inSpan(promise.keptBy && dayOf(promise.keptBy.recordedAt)),
  );
  // One that was kept later was open at the end of these days.
  const open = span.promises.filter(
    ({ status, keptBy }) => status === 'open' || (keptBy !== undefined && dayOf(keptBy.recordedAt) > span.to),
  );
  const entries = (list: readonly PromiseView[]) => oldestFirst(list).map(promiseEntry);
  return section(2, 'Promises', [
    ...section(3, 'Kept in this episode', entries(kept)),
    ...section(3, 'Open, oldest first', entries(open)),
  ]);
}

export function nextLines({ next }: SpanView): string[] {
  const goals = next.ready.slice(0, MOST_GOALS).map(taskEntry);
  const blocked = next.waiting.slice(0, MOST_GOALS).map(taskEntry);
  return section(2, 'Next time', [...section(3, 'Goal', goals), ...section(3, 'Held up', blocked)]);
}

/** The line to open with: of all lines to keep the best one that can be heard; the earlier one on a tie. */
export function openingLine(beats: readonly Beat[]): Line | undefined {
  const heard = beats.flatMap(({ memo, line }) => (line && shownBy(memo) !== 'text' ? [line] : []));
  return heard.reduce<Line | undefined>(
    (best, line) => (best === undefined || line.worth > best.worth ? line : best),
    undefined,
  );
}

export const openingWords = (line: Line): string => `${quoted(sentence(line.text))}${clipMark(line.clip)}`;
