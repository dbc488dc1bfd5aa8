/** Figures that an episode shows: which still hold, and which earlier ones it must put right. */
import type { HouseUnits } from '../language/notes.ts';
import type { ClaimView, FindingView, MemoView, SpanView, StandingFigure } from '../model/views.ts';
import { clipMark, clipOf } from './episode-beats.ts';
import { subjectOf } from './finding-text.ts';
import { bullet, escapeMarkdown, quoted } from './markdown.ts';
import { notesOf, statement, tells } from './page-notes.ts';
import { figureText, ofThing, quantityText } from './quantity-text.ts';
import { dayOf, placeOf } from './source-text.ts';

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

function isCorrection(finding: FindingView, span: SpanView): boolean {
  const said = finding.was.source;
  // What has no number on either side was told no figure.
  if (!said || finding.was.unit === '') return false;
  const changed = finding.kind === 'decided' || finding.kind === 'remeasured';
  const chosen = finding.settledBy?.choice === 'take-new' || finding.settledBy?.choice === 'correct';
  return (changed || chosen) && dayOf(said.recordedAt) < span.from;
}

/** What viewers were told before these days and is different now, and what the speaker put right aloud. */
export function correctionEntries(span: SpanView, units: HouseUnits): string[] {
  const findings = span.days.flatMap((day) => day.findings).filter((finding) => isCorrection(finding, span));
  const memos = span.days.flatMap((day) => day.memos);
  return [
    ...[...findings].sort(byWeight).map((finding) => {
      const { was, now } = finding;
      const said = was.source ? `, ${quoted(was.source.quote)}` : '';
      const day = was.source ? ` on ${dayOf(was.source.recordedAt)}` : '';
      return bullet(
        `${escapeMarkdown(subjectOf(finding))}: said ${figureText(ofThing(was, finding), units)} (${placeOf(was.source)}${day}${said}), now ${figureText(ofThing(now, finding), units)} (${placeOf(now.source)})`,
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

/** Figures that changed and were said on record both times: the pair can be cut together. */
export function beforeAfterEntries(span: SpanView): string[] {
  const memos = span.days.flatMap((day) => day.memos);
  const clip = (memoId: string, startSeconds: number) => {
    const memo = memos.find(({ id }) => id === memoId);
    return memo
      ? clipMark(clipOf(memo, { startSeconds }))
      : ` [${escapeMarkdown(placeOf({ memoId, startSeconds }))}]`;
  };
  return span.days
    .flatMap((day) => day.changes)
    .flatMap(({ kind, figure, memoId, old }) => {
      const before = old?.source;
      if (kind !== 'changed' || before?.startSeconds === undefined || figure.startSeconds === undefined)
        return [];
      const from = `${quoted(before.quote)}${clip(before.memoId, before.startSeconds)}`;
      const to = `${quoted(figure.quote)}${clip(memoId, figure.startSeconds)}`;
      return [bullet(`${escapeMarkdown(subjectOf(figure))}: ${from}, then ${to}`)];
    });
}
