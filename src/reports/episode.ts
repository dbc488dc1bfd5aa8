/**
 * The outline of one episode: what to tell, in which order, with which clip. Every time is an offset into a clip;
 * times in the finished film exist only after the cut and are never guessed here.
 *
 * Shape of an outline: common practice, no source.
 */

import type { ProjectInfo, SpanView, StandingFigure } from '../model/views.ts';
import { shortLine } from './columns.ts';
import type { PublishedFilm } from './cut/programme.ts';
import { type Beat, beatsOf, clipMark, type Happening, shownBy } from './episode-beats.ts';
import {
  beforeAfterEntries,
  correctionEntries,
  onScreenEntries,
  pastFigureEntries,
} from './episode-figures.ts';
import {
  archiveLines,
  goalLines,
  missingShots,
  nextLines,
  openingLine,
  openingWords,
  promiseLines,
  recapEntries,
  setbackLines,
} from './episode-story.ts';
import { findingLine } from './finding-text.ts';
import { bullet, escapeMarkdown, page, quoted, section } from './markdown.ts';
import { cautionEntry, decisionEntry, NO_CAUTION_IS_NOT_SAFE, notesOf, tells } from './page-notes.ts';
import { clipTime, clock, counted, dayName, duration, memoName } from './source-text.ts';
import { sentence } from './words.ts';

/** Longer chapter titles are cut where viewers hover. From a platform's help pages, from memory. */
const CHAPTER_TITLE_LENGTH = 49;

const HAPPENING: Readonly<Record<Happening['kind'], string>> = {
  done: 'done',
  problem: 'setback',
  decision: 'decided',
  arrival: 'arrived',
};

/** A cause stands with the setback, and a reason with the decision. */
const happeningEntry = ({ kind, gist, clip, because }: Happening) => {
  const why =
    kind === 'decision' && because !== undefined && !tells(gist, because)
      ? `, because ${escapeMarkdown(because)}`
      : '';
  return bullet(`${HAPPENING[kind]}: ${escapeMarkdown(gist)}${why}${clipMark(clip)}`);
};

const SEEN_BY = { picture: '', sound: ': sound only', text: ': written, no clip' } as const;

function beatLines(
  beat: Beat,
  index: number,
  standing: readonly StandingFigure[],
  { units }: ProjectInfo,
): string[] {
  const { memo, line } = beat;
  const shown = onScreenEntries(memo, beat.figures, standing, units);
  return [
    `### ${index + 1}. ${escapeMarkdown(sentence(beat.title))}`,
    '',
    `${escapeMarkdown(memoName(memo.id))}, ${dayName(memo.recordedAt)}, ${escapeMarkdown(memo.source.name)}${SEEN_BY[shownBy(memo)]}`,
    '',
    ...beat.happenings.map(happeningEntry),
    ...(line ? [`- line to keep: ${quoted(line.text)}${clipMark(line.clip)}`] : []),
    ...(shown.length > 0 ? ['', 'On screen:', '', ...shown] : []),
    '',
  ];
}

function openClashes(span: SpanView): string[] {
  return span.days
    .flatMap((day) => day.findings)
    .filter((finding) => finding.status === 'open')
    .sort((a, b) => b.cost - a.cost)
    .map((finding) => bullet(escapeMarkdown(findingLine(finding))));
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
      const sound = shownBy({ source }) === 'sound' ? ', sound only' : '';
      return bullet(
        `${escapeMarkdown(source.name)} (${escapeMarkdown(memoName(id))})${length}${sound}, recorded ${clock(recordedAt)} ${toldBy[recordedAtFrom]}`,
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
 * history: they tell which spoken figures no longer hold. `films` are those that are out: corrections of what was heard
 * before these days name their times there.
 */
export function episodePage(
  span: SpanView,
  project: ProjectInfo,
  standing: readonly StandingFigure[],
  films: readonly PublishedFilm[] = [],
): string {
  const memos = span.days.flatMap((day) => day.memos);
  const beats = beatsOf(memos);
  const opening = openingLine(beats);
  const days = span.from === span.to ? dayName(span.from) : `${dayName(span.from)} to ${dayName(span.to)}`;
  return page([
    `# Episode outline: ${escapeMarkdown(project.name)}, ${days}`,
    '',
    `Working title (a proposal): ${escapeMarkdown(workingTitle(beats))}`,
    '',
    ...(opening ? [`Line to open with (a proposal): ${openingWords(opening)}`, ''] : []),
    `${counted(memos.length, 'memo')} over ${counted(span.days.length, 'day')}. Times are offsets into the clips, not into the film.`,
    '',
    ...goalLines(span),
    ...section(2, 'Where we were', recapEntries(span)),
    ...section(
      2,
      'Beats',
      beats.flatMap((beat, index) => beatLines(beat, index, standing, project)),
    ),
    ...setbackLines(span),
    ...section(2, 'Decisions', notesOf(memos, 'decisions').map(decisionEntry)),
    ...section(2, 'Before and after, both on record', beforeAfterEntries(span)),
    ...missingShots(beats),
    ...archiveLines(span),
    ...section(2, 'Open clashes: settle them before the figures are shown', openClashes(span)),
    ...section(2, 'Corrections of earlier figures', correctionEntries(span, project.units, films)),
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
