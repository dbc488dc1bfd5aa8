/**
 * Chapters of a finished film, from its cut list alone. The rules are those that platforms publish for lists of
 * chapters in a description: the first at 0:00, at least three, ascending, each at least 10 s; where one is broken the
 * whole list is ignored. From a platform's help pages, from memory.
 */

import { shortLine } from '../columns.ts';
import { titleBetween } from '../episode-beats.ts';
import type { Chapter } from '../subtitles/webvtt.ts';
import { sentence } from '../words.ts';
import { type Programme, programmeTime, type Stretch } from './programme.ts';

const LEAST_CHAPTERS = 3;
const LEAST_SECONDS = 10;
/** Longer titles are cut where viewers hover. From a platform's help pages, from memory. */
const TITLE_LENGTH = 49;

export interface FilmChapter {
  /** Programme time in milliseconds. */
  readonly startMs: number;
  readonly title: string;
}

/** A chapter before short ones are joined to their neighbours. */
interface Draft extends FilmChapter {
  /** The person named it in the cut list. */
  readonly isOwn: boolean;
  readonly line: number;
}

export type FilmChapters =
  | { readonly ok: true; readonly chapters: readonly FilmChapter[] }
  | { readonly ok: false; readonly faults: readonly string[] };

/** Seconds as a list of chapters shows them. */
const shownSeconds = (ms: number) => Math.floor(ms / 1000);
const isLong = (fromMs: number, toMs: number) => shownSeconds(toMs) - shownSeconds(fromMs) >= LEAST_SECONDS;

/** What a stretch is called: by the person, else by what is told in it. */
function draftOf({ cut, memo, startMs }: Stretch): Draft | undefined {
  const told = memo && titleBetween(memo, cut.inMs / 1000, cut.outMs / 1000);
  const title = cut.title ?? (told && shortLine(sentence(told), TITLE_LENGTH));
  return title === undefined || title === ''
    ? undefined
    : { startMs, title, isOwn: cut.title !== undefined, line: cut.line };
}

/** Stretches that are called alike, one behind another, are one chapter; one without a name goes with the one before. */
function draftsOf({ stretches }: Programme): readonly Draft[] {
  const drafts: Draft[] = [];
  for (const draft of stretches.map(draftOf)) {
    if (!draft || drafts.at(-1)?.title === draft.title) continue;
    drafts.push(drafts.length === 0 ? { ...draft, startMs: 0 } : draft);
  }
  return drafts;
}

/** Leaves out proposed chapters that are too short: each goes with the one before it, the first with the next. */
function withoutShort(drafts: readonly Draft[], lengthMs: number): readonly Draft[] {
  const kept: Draft[] = [];
  for (const [index, draft] of drafts.entries()) {
    const last = kept.at(-1);
    const endMs = drafts[index + 1]?.startMs ?? lengthMs;
    if (last && !last.isOwn && !isLong(last.startMs, draft.startMs)) {
      kept[kept.length - 1] = { ...draft, startMs: last.startMs };
    } else if (draft.isOwn || last === undefined || isLong(draft.startMs, endMs)) kept.push(draft);
  }
  return kept;
}

/** What breaks the rules, a sentence each; empty when the list will be taken. */
export function chapterFaults(chapters: readonly FilmChapter[], lengthMs: number): readonly string[] {
  const faults: string[] = [];
  if (chapters.length < LEAST_CHAPTERS)
    faults.push(
      `${chapters.length} of at least ${LEAST_CHAPTERS} chapters come of it: name more in a column title`,
    );
  if (chapters[0] && shownSeconds(chapters[0].startMs) !== 0) faults.push('the first chapter is not at 0:00');
  for (const [index, { startMs, title }] of chapters.entries()) {
    const endMs = chapters[index + 1]?.startMs ?? lengthMs;
    if (isLong(startMs, endMs)) continue;
    const seconds = shownSeconds(endMs) - shownSeconds(startMs);
    faults.push(`“${title}” at ${programmeTime(startMs)} lasts ${seconds} s, less than ${LEAST_SECONDS} s`);
  }
  return faults;
}

/** The chapters of a film, or what is wrong with them. */
export function filmChaptersOf(programme: Programme): FilmChapters {
  const drafts = withoutShort(draftsOf(programme), programme.lengthMs);
  const chapters = drafts.map(({ startMs, title }) => ({ startMs, title }));
  const faults = chapterFaults(chapters, programme.lengthMs);
  return faults.length > 0 ? { ok: false, faults } : { ok: true, chapters };
}

/** A line for each chapter, as a description takes them: `0:00 The tank comes out`. */
export function chapterLines(chapters: readonly FilmChapter[]): string {
  return chapters.map(({ startMs, title }) => `${programmeTime(startMs)} ${title}\n`).join('');
}

/** Chapters with their ends, for a WebVTT chapter file. */
export function chapterSpans(chapters: readonly FilmChapter[], { lengthMs }: Programme): readonly Chapter[] {
  return chapters.map(({ startMs, title }, index) => ({
    startMs,
    endMs: chapters[index + 1]?.startMs ?? lengthMs,
    title,
  }));
}
