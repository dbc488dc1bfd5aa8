/**
 * The outline of one episode: what to tell, in which order, with which clip. Every time is an offset into a clip;
 * times in the finished film exist only after the cut and are never guessed here.
 *
 * Shape of an outline: common practice, no source.
 */

import type { ProjectInfo, PromiseView, SpanView, StandingFigure, TaskView } from '../model/views.ts';
import { shortLine } from './columns.ts';
import { type Beat, type BeatFigure, beatsOf, clipMark, clipOf, type Happening } from './episode-beats.ts';
import { beforeAfterEntries, correctionEntries, pastFigureEntries, standingOf } from './episode-figures.ts';
import { findingLine, subjectOf } from './finding-text.ts';
import { bullet, escapeMarkdown, page, quoted, section } from './markdown.ts';
import {
  cautionEntry,
  decisionEntry,
  NO_CAUTION_IS_NOT_SAFE,
  notesOf,
  oldestFirst,
  promiseEntry,
  statement,
  taskEntry,
  tells,
} from './page-notes.ts';
import { clipTime, clock, counted, dayName, dayOf, duration, memoName, placeOf } from './source-text.ts';
import { sentence } from './words.ts';

/** Longer chapter titles are cut where viewers hover. From a platform's help pages, from memory. */
const CHAPTER_TITLE_LENGTH = 49;
const MOST_GOALS = 3;

interface Goal {
  readonly task: TaskView;
  readonly reached: boolean;
}

/** What the span set out to do: tasks open when it began, else the first ones it opened. */
function goalsOf(span: SpanView): readonly Goal[] {
  const closed = new Map(span.days.flatMap((day) => day.tasksClosed.map((task) => [task.id, task])));
  const before = span.days[0]?.openTasksBefore ?? [];
  const tasks = before.length > 0 ? before : (span.days[0]?.tasksOpened ?? []);
  // The task as it stood when it was closed knows what closed it.
  const goals = tasks.map((task) => ({ task: closed.get(task.id) ?? task, reached: closed.has(task.id) }));
  // Reached goals first: an episode is about what happened.
  return [...goals].sort((a, b) => Number(b.reached) - Number(a.reached)).slice(0, MOST_GOALS);
}

const goalEntry = ({ task, reached }: Goal) =>
  bullet(
    `${statement(task.gist, placeOf(task.source))}: ${reached ? `reached (${placeOf(task.closedBy)})` : 'not reached'}`,
  );

/** Where viewers were left: promises and tasks that were open before the span. */
function recapEntries(span: SpanView): string[] {
  const before = span.days[0]?.openTasksBefore ?? [];
  const promised = span.promises.filter((promise) => dayOf(promise.source.recordedAt) < span.from);
  return [
    ...oldestFirst(promised).map(
      (promise) => `- promised: ${statement(promise.gist, placeOf(promise.source))}`,
    ),
    ...before.map((task) => `- was open: ${statement(task.gist, placeOf(task.source))}`),
  ];
}

const HAPPENING: Readonly<Record<Happening['kind'], string>> = {
  done: 'done',
  problem: 'setback',
  decision: 'decided',
  arrival: 'arrived',
};

const happeningEntry = ({ kind, gist, clip }: Happening) =>
  bullet(`${HAPPENING[kind]}: ${escapeMarkdown(gist)}${clipMark(clip)}`);

/** A figure as spoken, with its state and whether it still holds. */
function figureEntry(beat: Beat, figure: BeatFigure, standing: readonly StandingFigure[]): string {
  const state = figure.state ? `, ${figure.state}` : '';
  const { memo } = beat;
  return bullet(
    `${escapeMarkdown(subjectOf(figure))}: ${quoted(figure.quote)}${state}, ${standingOf(figure, memo.id, standing)}${clipMark(clipOf(memo, figure))}`,
  );
}

function beatLines(beat: Beat, index: number, standing: readonly StandingFigure[]): string[] {
  const { memo, line } = beat;
  const numbers = beat.figures.filter((figure) => figure.dimension !== 'count');
  return [
    `### ${index + 1}. ${escapeMarkdown(sentence(beat.title))}`,
    '',
    `${escapeMarkdown(memoName(memo.id))}, ${dayName(memo.recordedAt)}, ${escapeMarkdown(memo.source.name)}${memo.source.kind === 'text' ? ': written, no clip' : ''}`,
    '',
    ...beat.happenings.map(happeningEntry),
    ...(line ? [`- line to keep: ${quoted(line.text)}${clipMark(line.clip)}`] : []),
    ...(numbers.length > 0 ? ['', 'On screen:', ''] : []),
    ...numbers.map((figure) => figureEntry(beat, figure, standing)),
    '',
  ];
}

/** The moment that went wrong and matters most: the one with a cause said, else the first. */
function setbackEntries(span: SpanView): string[] {
  const problems = notesOf(
    span.days.flatMap((day) => day.memos),
    'problems',
  );
  const ordered = [...problems].sort((a, b) => Number(Boolean(b.note.cause)) - Number(Boolean(a.note.cause)));
  return ordered.map(({ note, memo, place }) =>
    bullet(
      `${statement(note.gist, place)}${clipMark(clipOf(memo, note))}`,
      !tells(note.gist, note.quote) && `as said: ${quoted(note.quote)}`,
      note.cause && `cause: ${escapeMarkdown(note.cause)}`,
    ),
  );
}

/** Things that were done or came and are only written of, a line for each memo: there is still time to film them. */
function missingShots(beats: readonly Beat[]): string[] {
  return beats
    .filter(({ memo }) => memo.source.kind === 'text')
    .map(({ memo, happenings }) => ({
      memo,
      unseen: happenings.filter(({ kind }) => kind === 'done' || kind === 'arrival'),
    }))
    .filter(({ unseen }) => unseen.length > 0)
    .map(({ memo, unseen }) =>
      bullet(
        `${escapeMarkdown(memoName(memo.id))}: ${unseen.map(({ gist }) => escapeMarkdown(gist)).join('; ')}`,
      ),
    );
}

function openClashes(span: SpanView): string[] {
  return span.days
    .flatMap((day) => day.findings)
    .filter((finding) => finding.status === 'open')
    .sort((a, b) => b.cost - a.cost)
    .map((finding) => bullet(escapeMarkdown(findingLine(finding))));
}

function promiseLines(span: SpanView): string[] {
  const inSpan = (day: string | undefined) => day !== undefined && day >= span.from && day <= span.to;
  const kept = span.promises.filter(
    (promise) => promise.status === 'kept' && inSpan(promise.keptBy && dayOf(promise.keptBy.recordedAt)),
  );
  const open = span.promises.filter((promise) => promise.status === 'open');
  const entries = (list: readonly PromiseView[]) => oldestFirst(list).map(promiseEntry);
  return section(2, 'Promises', [
    ...section(3, 'Kept in this episode', entries(kept)),
    ...section(3, 'Open, oldest first', entries(open)),
  ]);
}

function cautionLines(span: SpanView): string[] {
  const seen = new Map(span.days.flatMap((day) => day.cautions).map((caution) => [caution.id, caution]));
  if (seen.size === 0) return [];
  return section(2, 'Cautions that viewers may copy', [
    NO_CAUTION_IS_NOT_SAFE,
    '',
    ...[...seen.values()].map(cautionEntry),
  ]);
}

function nextLines({ next }: SpanView): string[] {
  const goals = next.ready.slice(0, MOST_GOALS).map(taskEntry);
  const blocked = next.waiting.slice(0, MOST_GOALS).map(taskEntry);
  return section(2, 'Next time', [...section(3, 'Goal', goals), ...section(3, 'Held up', blocked)]);
}

/** Proposed titles only. Stamps come after the cut, from the edit's own in and out points. */
function chapterLines(beats: readonly Beat[]): string[] {
  const titles = beats.map((beat) => shortLine(sentence(beat.title), CHAPTER_TITLE_LENGTH));
  const distinct = [...new Set(titles)].map((title) => bullet(escapeMarkdown(title)));
  return section(2, 'Proposed chapter titles', distinct);
}

function clipLines(span: SpanView): string[] {
  const memos = span.days.flatMap((day) => day.memos).filter((memo) => memo.source.kind === 'recording');
  const toldBy = { given: 'as given', container: 'by the recorder', file: 'by the file' } as const;
  return section(
    2,
    'Clips',
    memos.map(({ source, recordedAt, recordedAtFrom, id, droppedSpeech }) => {
      const length = source.durationSeconds === undefined ? '' : `, ${duration(source.durationSeconds)}`;
      const silent = (droppedSpeech ?? []).map((stretch) => clipTime(stretch.startSeconds));
      return bullet(
        `${escapeMarkdown(source.name)} (${escapeMarkdown(memoName(id))})${length}, recorded ${clock(recordedAt)} ${toldBy[recordedAtFrom]}`,
        silent.length > 0 && `not heard clearly: ${escapeMarkdown(source.name)} at ${silent.join(', ')}`,
      );
    }),
  );
}

/** The beat with most in it names the episode; the earlier one on a tie. */
function workingTitle(beats: readonly Beat[]): string {
  const worth = (beat: Beat) =>
    beat.happenings.reduce((sum, { kind }) => sum + (kind === 'problem' ? 3 : kind === 'arrival' ? 1 : 2), 0);
  const best = beats.reduce<Beat | undefined>(
    (top, beat) => (top === undefined || worth(beat) > worth(top) ? beat : top),
    undefined,
  );
  return best ? sentence(best.title) : 'nothing to show yet';
}

/**
 * Returns the outline of the days of `span` as CommonMark. `standing` are the project's standing figures with their
 * history: they tell which spoken figures no longer hold.
 */
export function episodePage(
  span: SpanView,
  project: ProjectInfo,
  standing: readonly StandingFigure[],
): string {
  const memos = span.days.flatMap((day) => day.memos);
  const beats = beatsOf(memos);
  const goals = goalsOf(span).map(goalEntry);
  const days = span.from === span.to ? dayName(span.from) : `${dayName(span.from)} to ${dayName(span.to)}`;
  return page([
    `# Episode outline: ${escapeMarkdown(project.name)}, ${days}`,
    '',
    `Working title (a proposal): ${escapeMarkdown(workingTitle(beats))}`,
    '',
    `${counted(memos.length, 'memo')} over ${counted(span.days.length, 'day')}. Times are offsets into the clips, not into the film.`,
    '',
    ...section(2, 'Goal, and whether it was reached', goals),
    ...section(2, 'Where we were', recapEntries(span)),
    ...section(
      2,
      'Beats',
      beats.flatMap((beat, index) => beatLines(beat, index, standing)),
    ),
    ...section(2, 'Setbacks', setbackEntries(span)),
    ...section(2, 'Decisions', notesOf(memos, 'decisions').map(decisionEntry)),
    ...section(2, 'Before and after, both on record', beforeAfterEntries(span)),
    ...section(2, 'Missing shots: told, but not filmed', missingShots(beats)),
    ...section(2, 'Open clashes: settle them before the figures are shown', openClashes(span)),
    ...section(2, 'Corrections of earlier figures', correctionEntries(span, project.units)),
    ...section(
      2,
      'Spoken in these clips and no longer current',
      pastFigureEntries(memos, standing, project.units),
    ),
    ...promiseLines(span),
    ...cautionLines(span),
    ...nextLines(span),
    ...chapterLines(beats),
    ...clipLines(span),
  ]);
}
