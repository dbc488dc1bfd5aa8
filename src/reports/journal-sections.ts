/** What a journal tells of one day, section by section. Every entry carries its memo and, for a recording, its offset. */
import type { ActOfDay, DayView, FindingView, MemoView, ProjectInfo, TaskView } from '../model/views.ts';
import { findingHeadline, subjectOf } from './finding-text.ts';
import { keptSections } from './kept-entries.ts';
import { bullet, escapeMarkdown, quoted, section } from './markdown.ts';
import {
  actEntry,
  changeEntry,
  decisionEntry,
  findingEntry,
  notesOf,
  problemEntry,
  statement,
  taskEntry,
} from './page-notes.ts';
import { figureText, ofThing } from './quantity-text.ts';
import { isSettledByTalk } from './settled-words.ts';
import { age, clipTime, clockTime, counted, dayOf, duration, memoName, placeOf } from './source-text.ts';
import { overtaken } from './task-list.ts';
import { oneLine } from './words.ts';

/** Level of a day's own headings: 2 on a page of its own, 3 under the day on a page of many. */
export type Level = 2 | 3;

const below = (level: Level): 3 | 4 => (level === 2 ? 3 : 4);

/** Whatever was done, and which open task it closed. */
function done(day: DayView, level: Level): string[] {
  const entries = notesOf(day.memos, 'done').map(({ note, memo, place }) => {
    const task = day.tasksClosed.find(
      ({ closedBy }) => closedBy?.memoId === memo.id && closedBy.quote === note.quote,
    );
    return bullet(
      statement(note.gist, place),
      task && `closes: ${statement(task.gist, placeOf(task.source))}`,
    );
  });
  return section(level, 'Done', entries);
}

/** The clash that a changed figure is, where the talk itself settled it: it is told with the change. */
export function toldWithChange(day: DayView): ReadonlyMap<string, FindingView> {
  const shown = new Set(
    day.changes.flatMap(({ kind, findingId }) => (kind === 'changed' ? (findingId ?? []) : [])),
  );
  return new Map(
    day.findings
      .filter((one) => one.status === 'settled' && isSettledByTalk(one) && shown.has(one.id))
      .filter(({ consequences }) => consequences.length === 0)
      .map((one) => [one.id, one]),
  );
}

/** What changed, what is new, what was only said again. Counts of things are no measure. */
function measured(day: DayView, { units }: ProjectInfo, level: Level): string[] {
  const settled = toldWithChange(day);
  const of = (kind: DayView['changes'][number]['kind']) =>
    day.changes
      .filter((change) => change.kind === kind && change.figure.dimension !== 'count')
      .map((change) => {
        const clash = settled.get(change.findingId ?? '');
        return changeEntry(change, units, clash && escapeMarkdown(whyChanged(clash)));
      });
  return section(level, 'Measured', [
    ...section(below(level), 'Changed', of('changed')),
    ...section(below(level), 'New', of('new')),
    ...section(below(level), 'Confirmed', of('confirmed')),
  ]);
}

/** "measured anew (m15.c1)", with the reason where it says more. Plain text. */
export function whyChanged(finding: FindingView): string {
  const { id, why } = finding;
  const head = findingHeadline(finding);
  const more = oneLine(why).endsWith(head) ? '' : `: ${oneLine(why)}`;
  return `${head} (${oneLine(id)})${more}`;
}

function clashes(day: DayView, { units }: ProjectInfo, level: Level): string[] {
  const told = toldWithChange(day);
  const of = (status: 'open' | 'settled') =>
    day.findings
      // Checks have a section of their own, with those that a person's hand broke.
      .filter((finding) => finding.status === status && finding.kind !== 'check' && !told.has(finding.id))
      .map((finding) => findingEntry(finding, units));
  return section(level, 'Clashes', [
    ...section(below(level), 'Open', of('open')),
    ...section(below(level), 'Settled', of('settled')),
  ]);
}

/** What broke on the day, what is to be measured again since it, and what holds again. */
function checks({ checks: of }: DayView, { units }: ProjectInfo, level: Level): string[] {
  if (!of) return [];
  const again = of.holdAgain.map((finding) =>
    bullet(`**${escapeMarkdown(subjectOf(finding))}**: ${escapeMarkdown(finding.settledBy?.reason ?? '')}`),
  );
  const stale = (of.stale ?? []).map(({ subject, id, why, ask }) =>
    bullet(
      `**${escapeMarkdown(subject)}**: ${escapeMarkdown(why)} (${escapeMarkdown(id)})`,
      ...ask.map((line) => `next: ${escapeMarkdown(line)}`),
    ),
  );
  return section(level, 'Checks', [
    ...section(
      below(level),
      'Broke',
      of.broke.map((finding) => findingEntry(finding, units)),
    ),
    ...section(below(level), 'To be measured again', stale),
    ...section(below(level), 'Hold again', again),
  ]);
}

const ACTS = new Set(['made', 'ordered', 'received']);
/** Goods that are only named get the verb; words that tell of ordering, making or closing in have theirs. */
export const actWords = ({ act, what }: ActOfDay): string =>
  act === 'ordered' && !/\b(?:order|bought|booked|paid|sent|gone)/i.test(what)
    ? `ordered: ${oneLine(what)}`
    : what;

/** "companionway width 620 mm, measured, memo 1 on 2026-03-02, “…”"; of what the same memo said, the size alone. */
function stoodEntry(figure: ActOfDay['against'][number], memoId: string, { units }: ProjectInfo): string {
  const size = `${escapeMarkdown(subjectOf(figure))} ${figureText(ofThing(figure, figure), units)}`;
  const { state, source } = figure;
  if (!source || source.memoId === memoId) return size;
  const place = `${escapeMarkdown(placeOf(source))} on ${dayOf(source.recordedAt)}, ${quoted(source.quote)}`;
  return `${size}${state ? `, ${state}` : ''}, ${place}`;
}

function doneAgainst(act: ActOfDay, project: ProjectInfo): string {
  const { source, against } = act;
  const isOwn = (one: ActOfDay['against'][number]) => one.source?.memoId === source.memoId;
  const own = against.filter(isOwn).map((one) => stoodEntry(one, source.memoId, project));
  const older = against.filter((one) => !isOwn(one)).map((one) => stoodEntry(one, source.memoId, project));
  return bullet(
    statement(actWords(act), placeOf(source)),
    own.length > 0 && `at ${own.join('; ')}`,
    ...older.map((one) => `at ${one}`),
  );
}

/** What was ordered, made or closed in, with the figures that stood for it; then figures that were said to be made so. */
function acts(day: DayView, project: ProjectInfo, level: Level): string[] {
  const told = new Set((day.acts ?? []).flatMap(({ against }) => against.map(({ id }) => id)));
  const before = new Map(
    day.changes.map(({ figure, old, kind }) => [figure.id, kind === 'new' ? undefined : old]),
  );
  const figures = notesOf(day.memos, 'figures').filter(
    ({ note }) => note.state !== undefined && ACTS.has(note.state) && !told.has(note.id),
  );
  const things = new Map<string, typeof figures>();
  for (const one of figures) {
    const key = `${one.memo.id} ${one.note.state} ${oneLine(one.note.item)}`;
    things.set(key, [...(things.get(key) ?? []), one]);
  }
  return section(level, 'Made, ordered and received', [
    ...(day.acts ?? []).map((act) => doneAgainst(act, project)),
    ...[...things.values()].map((some) => actEntry(some, project.units, before)),
  ]);
}

/** Goods with their numbers or sizes stand among what came; they are told once. */
function arrivals(day: DayView, level: Level): string[] {
  const all = notesOf(day.memos, 'arrivals');
  const same = (a: string, b: string) => oneLine(a).toLowerCase() === oneLine(b).toLowerCase();
  const entries = all
    .filter(({ note, memo }) => {
      const isKept = (day.kept?.deliveries ?? []).some(
        ({ act, item, source }) => act === 'received' && source.memoId === memo.id && same(item, note.item),
      );
      const isDated = all.some(
        (other) => other.memo.id === memo.id && other.note.expected && same(other.note.item, note.item),
      );
      return note.received ? !isKept : Boolean(note.expected) || !isDated;
    })
    .map(({ note, place }) => {
      const when = note.received
        ? 'received'
        : `expected${note.expected ? ` ${note.expected}` : ', no date said'}`;
      return bullet(`${statement(note.item, place)}: ${when}`);
    });
  return section(level, 'Arrivals', entries);
}

function promises(day: DayView, level: Level): string[] {
  const entries = notesOf(day.memos, 'promises').map(({ note, place }) =>
    bullet(`${statement(note.gist, place)}${note.due ? `; due ${note.due}` : ''}`),
  );
  return section(level, 'Promises', entries);
}

/** More would bury the day; all of them stand on the next steps. Common practice, no source. */
export const MOST_CARRIED = 12;

function carriedEntry(task: TaskView): string {
  const { gist, source, due, carriedDays, before, overtakenBy } = task;
  const late = due ? `; due ${due}` : '';
  const missed =
    before && overtakenBy ? `; to be done before: ${escapeMarkdown(before)}${overtaken(task)}` : '';
  return bullet(
    `${statement(gist, placeOf(source))}${late}${missed}${carriedDays > 0 ? `; carried over ${age(carriedDays)}` : ''}`,
  );
}

/** Tasks that were open before the day and still are at its end: words, date and age, without what they wait for. */
export function carriedOver(day: DayView): string[] {
  const closed = new Set(day.tasksClosed.map((task) => task.id));
  const carried = day.openTasksBefore.filter((task) => !closed.has(task.id));
  // First what may have been left out for good.
  const open = [
    ...carried.filter(({ overtakenBy }) => overtakenBy),
    ...carried.filter(({ overtakenBy }) => !overtakenBy),
  ];
  const rest = open.length - MOST_CARRIED;
  return [
    ...open.slice(0, MOST_CARRIED).map(carriedEntry),
    ...(rest > 0 ? [bullet(`and ${counted(rest, 'more', 'more')}: see the next steps`)] : []),
  ];
}

function closedEntry(task: TaskView): string {
  const place = task.closedBy ? `; closed by ${placeOf(task.closedBy)}` : '';
  return bullet(`${statement(task.gist, placeOf(task.source))}${place}`);
}

function tasks(day: DayView, level: Level, isLast: boolean): string[] {
  return section(level, 'Tasks', [
    ...section(below(level), 'Opened', day.tasksOpened.map(taskEntry)),
    ...section(below(level), 'Closed', day.tasksClosed.map(closedEntry)),
    ...(isLast ? section(below(level), 'Carried over', carriedOver(day)) : []),
  ]);
}

function memoEntry(memo: MemoView): string {
  const { source } = memo;
  const length = source.durationSeconds === undefined ? 'text' : duration(source.durationSeconds);
  const dropped = (memo.droppedSpeech ?? []).map(
    (stretch) => `${clipTime(stretch.startSeconds)} to ${clipTime(stretch.endSeconds)}`,
  );
  return bullet(
    `${escapeMarkdown(memoName(memo.id))}: ${escapeMarkdown(source.name)}, ${clockTime(memo.recordedAt)}, ${length}, ${counted(memo.words, 'word')}${memo.status === 'kept' ? '; kept, not read yet' : ''}`,
    dropped.length > 0 && `left out for want of speech: ${dropped.join(', ')}`,
  );
}

/** Everything of one day but its cautions. Empty sections are left out; the memos are always there. */
export function daySections(day: DayView, project: ProjectInfo, level: Level, isLast: boolean): string[] {
  const { memos } = day;
  const told = [
    ...done(day, level),
    ...section(level, 'Decided', notesOf(memos, 'decisions').map(decisionEntry)),
    ...measured(day, project, level),
    ...clashes(day, project, level),
    ...checks(day, project, level),
    ...acts(day, project, level),
    ...keptSections(day.kept, level),
    ...section(level, 'Problems', notesOf(memos, 'problems').map(problemEntry)),
    ...arrivals(day, level),
    ...tasks(day, level, isLast),
    ...promises(day, level),
    ...section(
      level,
      'Corrections',
      notesOf(memos, 'corrections').map(({ note, place }) => bullet(statement(note.gist, place))),
    ),
  ];
  return told.length > 0 ? told : ['Nothing to note was read.', ''];
}

/** The memos of a day with their lengths. */
export function memoSection({ memos }: DayView, level: Level): string[] {
  return section(level, 'Memos', memos.map(memoEntry));
}

/** "2 memos, 23 s of talk." */
export function memoTotal(memos: readonly MemoView[], days?: number): string {
  const seconds = memos.reduce((sum, memo) => sum + (memo.source.durationSeconds ?? 0), 0);
  const over = days === undefined ? '' : ` on ${counted(days, 'day')}`;
  return `${counted(memos.length, 'memo')}${over}${seconds > 0 ? `, ${duration(seconds)} of talk` : ''}.`;
}
