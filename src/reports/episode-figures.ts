/** Figures that an episode shows: which still hold, and which earlier ones it must put right. */
import type { HouseUnits } from '../language/notes.ts';
import type { ClaimView, FindingView, MemoView, Source, SpanView, StandingFigure } from '../model/views.ts';
import { heardInFilms, type PublishedFilm } from './cut/programme.ts';
import { type BeatFigure, clipMark, clipOf } from './episode-beats.ts';
import { subjectOf } from './finding-text.ts';
import { bullet, escapeMarkdown, quoted } from './markdown.ts';
import { notesOf, statement, tells } from './page-notes.ts';
import { figureText, ofThing, quantityText } from './quantity-text.ts';
import { dayOf, placeOf } from './source-text.ts';
import { sentence } from './words.ts';

export interface Spoken {
  readonly id: string;
  readonly quote: string;
}

export interface Held {
  readonly figure: StandingFigure;
  readonly claim: ClaimView;
}

/** The claim that a spoken figure became, with the figure that stands now. */
export function heldBy(
  spoken: Spoken,
  memoId: string,
  standing: readonly StandingFigure[],
): Held | undefined {
  for (const figure of standing) {
    const claim =
      figure.history.find((entry) => entry.id === spoken.id) ??
      figure.history.find(({ source }) => source?.memoId === memoId && source.quote === spoken.quote);
    if (claim) return { figure, claim };
  }
  return undefined;
}

/** "current", "in doubt: settle it before it is shown", "no longer current: now 915 mm", "not in the model". */
export function standingOf(spoken: Spoken, memoId: string, standing: readonly StandingFigure[]): string {
  const held = heldBy(spoken, memoId, standing);
  if (!held) return 'not in the model';
  const { figure, claim } = held;
  const isCurrent = claim.status === 'standing' || claim.status === 'agrees';
  if (claim.status === 'doubted' || (isCurrent && figure.status === 'in-doubt'))
    return 'in doubt: settle it before it is shown';
  if (claim.status === 'superseded') return `no longer current: now ${quantityText(figure)}`;
  if (claim.status === 'rejected') return 'rejected: do not show it';
  if (claim.status === 'series') return 'one of a series';
  return figure.status === 'stale' ? 'stale: measure it again before it is shown' : 'current';
}

/** Figures heard in these memos that a later one has replaced. */
export function pastFigureEntries(
  memos: readonly MemoView[],
  standing: readonly StandingFigure[],
  units: HouseUnits,
): string[] {
  return notesOf(memos, 'figures').flatMap(({ note, memo, place }) => {
    const held = heldBy(note, memo.id, standing);
    if (held?.claim.status !== 'superseded') return [];
    const clip = clipMark(clipOf(memo, note));
    return [
      bullet(
        `${escapeMarkdown(subjectOf(note))}: ${quoted(note.quote)} (${place})${clip}, now ${figureText(held.figure, units)}`,
      ),
    ];
  });
}

/** Limits first, then what costs most: the corrections that matter for safety and money lead. */
const byWeight = (a: FindingView, b: FindingView) =>
  Number(b.kind === 'limit') - Number(a.kind === 'limit') || b.cost - a.cost;

/** Whether viewers may have heard the older figure before these days: it was spoken on a recording. */
function isCorrection(finding: FindingView, span: SpanView): boolean {
  const said = finding.was.source;
  // What has no number on either side was told no figure; what was only written was heard by nobody.
  if (!said || finding.was.unit === '' || said.startSeconds === undefined) return false;
  const changed = finding.kind === 'decided' || finding.kind === 'remeasured';
  const chosen = finding.settledBy?.choice === 'take-new' || finding.settledBy?.choice === 'correct';
  return (changed || chosen) && dayOf(said.recordedAt) < span.from;
}

/** The clip of a source in the span or before it, "deck.m4a at 02:17"; empty where no recording is known. */
function clipAt(source: Source, span: SpanView): string {
  const memo = span.days.flatMap((day) => day.memos).find(({ id }) => id === source.memoId);
  const recording = memo?.source ?? span.earlier?.[source.memoId];
  if (recording?.kind !== 'recording' || source.startSeconds === undefined) return '';
  return clipMark({ file: recording.name, startSeconds: source.startSeconds });
}

/** That clip, else the memo. */
const whereHeard = (source: Source, span: SpanView) =>
  clipAt(source, span) || ` [${escapeMarkdown(placeOf(source))}]`;

/** "in the film: harbour-week at 0:28"; nothing where no film was named. */
function filmTimes(source: Source | undefined, films: readonly PublishedFilm[]): string | false {
  if (films.length === 0 || !source) return false;
  const heard = heardInFilms(films, source);
  return heard.length > 0
    ? `in the film: ${escapeMarkdown(heard.join('; '))}`
    : 'heard in none of the films that were named';
}

/**
 * What viewers were told before these days and is different now, and what the speaker put right aloud. Of `films` the
 * time at which it is heard in each is named.
 */
export function correctionEntries(
  span: SpanView,
  units: HouseUnits,
  films: readonly PublishedFilm[] = [],
): string[] {
  const findings = span.days.flatMap((day) => day.findings).filter((finding) => isCorrection(finding, span));
  const memos = span.days.flatMap((day) => day.memos);
  return [
    ...[...findings].sort(byWeight).map((finding) => {
      const { was, now } = finding;
      const said = was.source
        ? ` (${escapeMarkdown(placeOf(was.source))} on ${dayOf(was.source.recordedAt)}, ${quoted(was.source.quote)})${clipAt(was.source, span)}`
        : '';
      return bullet(
        `${escapeMarkdown(subjectOf(finding))}: said ${figureText(ofThing(was, finding), units)}${said}, now ${figureText(ofThing(now, finding), units)} (${escapeMarkdown(placeOf(now.source))})`,
        filmTimes(was.source, films),
        `why: ${escapeMarkdown(finding.why)}`,
      );
    }),
    ...notesOf(memos, 'corrections').map(({ note, memo, place }) =>
      bullet(
        `${statement(note.gist, place)}${clipMark(clipOf(memo, note))}`,
        !tells(note.gist, note.quote) && `as said: ${quoted(note.quote)}`,
      ),
    ),
  ];
}

/** Figures that changed and were said on a recording both times: the pair can be cut together. */
function changedPairs(span: SpanView): string[] {
  return span.days.flatMap((day) =>
    day.changes.flatMap(({ kind, figure, memoId, old }) => {
      const before = old?.source;
      if (kind !== 'changed' || before?.startSeconds === undefined || figure.startSeconds === undefined)
        return [];
      const after = { memoId, recordedAt: '', quote: figure.quote, startSeconds: figure.startSeconds };
      const from = `${quoted(before.quote)}${whereHeard(before, span)}`;
      return [
        bullet(
          `${escapeMarkdown(subjectOf(figure))}: ${from}, then ${quoted(figure.quote)}${whereHeard(after, span)}`,
        ),
      ];
    }),
  );
}

/** Snags that were told on a recording, and put right on one. */
function mendedPairs(span: SpanView): string[] {
  return (span.problems ?? []).flatMap(({ gist, source, solvedBy }) => {
    if (source.startSeconds === undefined || solvedBy?.startSeconds === undefined) return [];
    const from = `${quoted(source.quote)}${whereHeard(source, span)}`;
    return [
      bullet(
        `${escapeMarkdown(sentence(gist))}: ${from}, then ${quoted(solvedBy.quote)}${whereHeard(solvedBy, span)}`,
      ),
    ];
  });
}

/** Pairs that are on record both before and after. */
export const beforeAfterEntries = (span: SpanView): string[] => [...mendedPairs(span), ...changedPairs(span)];

/** More would fill the screen. Common practice, no source. */
const MOST_ON_SCREEN = 6;

/** Higher is better to show: what was decided, measured or made before what was only mentioned. */
const SHOWN_FIRST: readonly (string | undefined)[] = [
  'decided',
  'made',
  'ordered',
  'measured',
  'received',
  'target',
];
const worthShowing = ({ state }: BeatFigure) => {
  const place = SHOWN_FIRST.indexOf(state);
  return place < 0 ? SHOWN_FIRST.length : place;
};

/** The figures of a beat to show on screen: the value, the words, the state, and whether it still holds. */
export function onScreenEntries(
  memo: MemoView,
  figures: readonly BeatFigure[],
  standing: readonly StandingFigure[],
  units: HouseUnits,
): string[] {
  const numbers = figures.filter(({ dimension }) => dimension !== 'count');
  const kept = new Set(
    [...numbers].sort((a, b) => worthShowing(a) - worthShowing(b)).slice(0, MOST_ON_SCREEN),
  );
  const rest = numbers.length - kept.size;
  return [
    ...numbers
      .filter((figure) => kept.has(figure))
      .map((figure) => {
        const state = figure.state ? `, ${figure.state}` : '';
        return bullet(
          `${escapeMarkdown(subjectOf(figure))}: ${figureText(figure, units)}, ${quoted(figure.quote)}${state}, ${standingOf(figure, memo.id, standing)}${clipMark(clipOf(memo, figure))}`,
        );
      }),
    ...(rest > 0 ? [bullet(`and ${rest} more in the journal of that day`)] : []),
  ];
}
