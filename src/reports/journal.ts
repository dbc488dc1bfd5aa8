/** The page of one day. The same day gives the same bytes. */
import type { DayView, MemoView, ProjectInfo } from '../model/views.ts';
import { subjectOf } from './finding-text.ts';
import { keptSections } from './kept-entries.ts';
import { bullet, escapeMarkdown, page, section } from './markdown.ts';
import {
  actEntry,
  cautionEntry,
  changeEntry,
  decisionEntry,
  findingEntry,
  NO_CAUTION_IS_NOT_SAFE,
  notesOf,
  problemEntry,
  statement,
  taskEntry,
} from './page-notes.ts';
import { clipTime, clock, counted, dayName, duration, memoName, placeOf } from './source-text.ts';

const ACTS = new Set(['made', 'ordered', 'received']);

function talkLength(memos: readonly MemoView[]): string {
  const seconds = memos.reduce((sum, memo) => sum + (memo.source.durationSeconds ?? 0), 0);
  return seconds > 0 ? `, ${duration(seconds)} of talk` : '';
}

/** Whatever was done, and which open task it closed. */
function doneEntries(day: DayView): string[] {
  return notesOf(day.memos, 'done').map(({ note, memo, place }) => {
    const task = day.tasksClosed.find(
      ({ closedBy }) => closedBy?.memoId === memo.id && closedBy.quote === note.quote,
    );
    return bullet(
      statement(note.gist, place),
      task && `closes: ${statement(task.gist, placeOf(task.source))}`,
    );
  });
}

function arrivalEntries(day: DayView): string[] {
  return notesOf(day.memos, 'arrivals').map(({ note, place }) => {
    const when = note.received
      ? 'received'
      : `expected${note.expected ? ` ${note.expected}` : ', no date said'}`;
    return bullet(`${statement(note.item, place)}: ${when}`);
  });
}

function memoEntry(memo: MemoView): string {
  const { source } = memo;
  const length = source.durationSeconds === undefined ? 'text' : duration(source.durationSeconds);
  const dropped = (memo.droppedSpeech ?? []).map(
    (stretch) => `${clipTime(stretch.startSeconds)} to ${clipTime(stretch.endSeconds)}`,
  );
  return bullet(
    `${escapeMarkdown(memoName(memo.id))}: ${escapeMarkdown(source.name)}, ${clock(memo.recordedAt)}, ${length}, ${counted(memo.words, 'word')}${memo.status === 'kept' ? '; kept, not read yet' : ''}`,
    dropped.length > 0 && `left out for want of speech: ${dropped.join(', ')}`,
  );
}

/** The figures part: what changed, what is new, what was only said again. Counts of things are no measure. */
function measured(day: DayView, { units }: ProjectInfo): string[] {
  const of = (kind: DayView['changes'][number]['kind']) =>
    day.changes
      .filter((change) => change.kind === kind && change.figure.dimension !== 'count')
      .map((change) => changeEntry(change, units));
  const parts = [
    ...section(3, 'Changed', of('changed')),
    ...section(3, 'New', of('new')),
    ...section(3, 'Confirmed', of('confirmed')),
  ];
  return section(2, 'Measured', parts);
}

function clashes(day: DayView, { units }: ProjectInfo): string[] {
  const of = (status: 'open' | 'settled') =>
    day.findings
      // Checks have a section of their own, with those that a person's hand broke.
      .filter((finding) => finding.status === status && finding.kind !== 'check')
      .map((finding) => findingEntry(finding, units));
  return section(2, 'Clashes', [...section(3, 'Open', of('open')), ...section(3, 'Settled', of('settled'))]);
}

/** What broke on the day, what is to be measured again since it, and what holds again. */
function checks({ checks: of }: DayView, { units }: ProjectInfo): string[] {
  if (!of) return [];
  const again = of.holdAgain.map((finding) =>
    bullet(`**${escapeMarkdown(subjectOf(finding))}**: ${escapeMarkdown(finding.settledBy?.reason ?? '')}`),
  );
  return section(2, 'Checks', [
    ...section(
      3,
      'Broke',
      of.broke.map((finding) => findingEntry(finding, units)),
    ),
    ...section(
      3,
      'To be measured again',
      (of.stale ?? []).map(({ subject, id, why, ask }) =>
        bullet(
          `**${escapeMarkdown(subject)}**: ${escapeMarkdown(why)} (${escapeMarkdown(id)})`,
          ...ask.map((line) => `next: ${escapeMarkdown(line)}`),
        ),
      ),
    ),
    ...section(3, 'Hold again', again),
  ]);
}

/** Tasks that were open before the day and still are at its end. */
function carriedOver(day: DayView): string[] {
  const closed = new Set(day.tasksClosed.map((task) => task.id));
  return day.openTasksBefore.filter((task) => !closed.has(task.id)).map(taskEntry);
}

/**
 * Returns the journal page of one day as CommonMark. Every fact carries its memo and, for a recording, the offset
 * into it. Empty sections are left out.
 */
export function journalPage(day: DayView, project: ProjectInfo): string {
  const { memos } = day;
  const made = notesOf(memos, 'figures')
    .filter(({ note }) => note.state !== undefined && ACTS.has(note.state))
    .map((entry) => actEntry(entry, project.units));
  const promises = notesOf(memos, 'promises').map(({ note, place }) =>
    bullet(`${statement(note.gist, place)}${note.due ? `; due ${note.due}` : ''}`),
  );
  const body = [
    ...section(2, 'Done', doneEntries(day)),
    ...section(2, 'Decided', notesOf(memos, 'decisions').map(decisionEntry)),
    ...measured(day, project),
    ...clashes(day, project),
    ...checks(day, project),
    ...section(2, 'Made, ordered and received', made),
    ...keptSections(day.kept),
    ...section(2, 'Problems', notesOf(memos, 'problems').map(problemEntry)),
    ...section(2, 'Arrivals', arrivalEntries(day)),
    ...section(2, 'Tasks', [
      ...section(3, 'Opened', day.tasksOpened.map(taskEntry)),
      ...section(
        3,
        'Closed',
        day.tasksClosed.map((task) => closedEntry(task)),
      ),
      ...section(3, 'Carried over', carriedOver(day)),
    ]),
    ...section(2, 'Promises', promises),
    ...section(
      2,
      'Corrections',
      notesOf(memos, 'corrections').map(({ note, place }) => bullet(statement(note.gist, place))),
    ),
    ...section(
      2,
      'Cautions',
      day.cautions.length > 0 ? [NO_CAUTION_IS_NOT_SAFE, '', ...day.cautions.map(cautionEntry)] : [],
    ),
  ];
  return page([
    `# ${dayName(day.date)}: ${escapeMarkdown(project.name)}`,
    '',
    `${counted(memos.length, 'memo')}${talkLength(memos)}.`,
    '',
    ...(body.length > 0 ? body : ['Nothing to note was read.', '']),
    ...section(2, 'Memos', memos.map(memoEntry)),
  ]);
}

function closedEntry(task: DayView['tasksClosed'][number]): string {
  const place = task.closedBy ? `; closed by ${placeOf(task.closedBy)}` : '';
  return bullet(`${statement(task.gist, placeOf(task.source))}${place}`);
}
