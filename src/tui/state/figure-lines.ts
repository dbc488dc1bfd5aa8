/** One figure at length: why it stands, what it comes from, what hangs on it, its history, limits and checks. */
import type { CheckView } from '../../model/checks/check-views.ts';
import type { FigureAround, FigureBranch } from '../../model/figure-around.ts';
import { nameStems } from '../../model/names.ts';
import type { ClaimView, FindingView, LimitView, StandingFigure } from '../../model/views.ts';
import { stateText } from '../../reports/check-words.ts';
import { inOrder } from '../../reports/checks-text.ts';
import { subjectOf } from '../../reports/finding-text.ts';
import { boundedText, figureText, ofThing } from '../../reports/quantity-text.ts';
import { placeOf } from '../../reports/source-text.ts';
import { toleranceText } from '../../reports/tolerance-text.ts';
import { oneLine } from '../../reports/words.ts';
import { plotOf } from './figure-plot.ts';
import { ageOf, bothUnits, doubtOf } from './figure-rows.ts';
import type { TextLine } from './page-lines.ts';
import type { ScreenState } from './screen-state.ts';
import { shortDay } from './words.ts';

/** Every line of the opened figure; none when it does not stand any more. */
export function figureLines(state: ScreenState): readonly TextLine[] {
  const { opened } = state;
  if (!opened || opened.around === null) return [];
  const { listed, around } = opened;
  const today = state.data.next.date;
  const head = { text: `${subjectOf(listed)}: ${bothUnits(listed)}`, heading: true };
  if (!around) return [head];
  const { figure } = around;
  return [
    head,
    ...standing(figure, today),
    ...section('comes from', origin(around, today)),
    ...section('hangs on it', branchLines(around.onIt, today)),
    ...section('history', historyLines(figure, today)),
    ...section('limits', limitLines(figure, state, opened.limits)),
    ...section('checks', checkLines(around.checks)),
  ];
}

function section(title: string, lines: readonly string[]): readonly TextLine[] {
  if (lines.length === 0) return [];
  return [
    { text: '' },
    { text: title, heading: true },
    ...lines.map((text) => ({ text: text === '' ? '' : `  ${text}` })),
  ];
}

function standing(figure: StandingFigure, today: string): readonly TextLine[] {
  const { source, state, tolerance, rule } = figure;
  const doubt = doubtOf(figure);
  const rows: [string, string][] = [
    ['state', [doubt || 'stands', state ?? ''].filter(Boolean).join(', ')],
    ['said', source ? `${placeOf(source)}, ${ageOf(figure, today)}` : 'worked out, never spoken'],
    ['rule', rule],
  ];
  if (tolerance) rows.push(['within', toleranceText(tolerance)]);
  return rows.map(([label, text]) => ({ text: `  ${label.padEnd(8)} ${oneLine(text)}` }));
}

function origin({ figure, from }: FigureAround, today: string): readonly string[] {
  if (!figure.formula) return [];
  return [`= ${oneLine(figure.formula)}`, ...branchLines(from, today)];
}

/** A tree: each figure with those behind it set in under it. */
function branchLines(branches: readonly FigureBranch[], today: string, before = ''): readonly string[] {
  return branches.flatMap(({ figure, next }, index) => {
    const isLast = index === branches.length - 1;
    const words = [bothUnits(figure), doubtOf(figure), ageOf(figure, today)].filter(Boolean).join(', ');
    return [
      `${before}${isLast ? '└ ' : '├ '}${subjectOf(figure)}: ${words}`,
      ...branchLines(next, today, `${before}${isLast ? '  ' : '│ '}`),
    ];
  });
}

/** The plot, then each value, newest first, with where it was said. */
function historyLines(figure: StandingFigure, today: string): readonly string[] {
  const plot = plotOf(figure);
  const drawn = plot ? [...plot.words, '', ...plot.rows, ''] : [];
  return [...drawn, ...[...figure.history].reverse().flatMap((claim) => claimLines(claim, today))];
}

function claimLines(claim: ClaimView, today: string): readonly string[] {
  const words = [claim.state ?? '', claim.status].filter(Boolean).join(', ');
  const { source } = claim;
  const when = source ? shortDay(source.recordedAt).padEnd(10) : 'not spoken';
  const quote = source?.quote ? `  "${oneLine(source.quote)}"` : '';
  return [
    `${when}  ${figureText(claim, 'mixed')}  ${words}`,
    ...(source ? [`  ${placeOf(source)}, ${ageOf(claim, today)}${quote}`] : []),
  ];
}

/** Limits of the thing itself, those stated for its kind, and those that it breaks. */
function limitLines(
  figure: StandingFigure,
  { data }: ScreenState,
  limits: readonly LimitView[],
): readonly string[] {
  return limits.flatMap((limit) => {
    const breaches = breachesOf(limit, data.findings);
    const isBroken = breaches.some((one) => one.item === figure.item && one.attribute === figure.attribute);
    const isOwn = limit.item === figure.item && limit.attribute === figure.attribute;
    if (!isBroken && !isOwn && !isStatedFor(limit, figure)) return [];
    return limitWords(limit, breaches, data.next.date);
  });
}

/** Findings that say that this limit is broken. */
export function breachesOf(limit: LimitView, findings: readonly FindingView[]): readonly FindingView[] {
  return findings.filter(
    ({ kind, was }) =>
      kind === 'limit' &&
      was.source?.memoId === limit.source.memoId &&
      was.source.quote === limit.source.quote &&
      [limit.value, limit.high].includes(was.value),
  );
}

/** A limit, what breaks it, and where it was said. */
export function limitWords(
  limit: LimitView,
  breaches: readonly FindingView[],
  today: string,
): readonly string[] {
  const about = limit.about && limit.about !== limit.item ? ` for ${oneLine(limit.about)}` : '';
  const { source } = limit;
  return [
    `${subjectOf(limit)}: ${figureText(limit, 'mixed')}${about}`,
    ...breaches.map((one) => `  BROKEN by ${subjectOf(one)}, ${boundedText(ofThing(one.now, one))}`),
    ...(breaches.length === 0 ? ['  nothing known breaks it'] : []),
    `  ${placeOf(source)}, ${ageOf(limit, today)}${source.quote ? `  "${oneLine(source.quote)}"` : ''}`,
  ];
}

/** "Tanks and panels" is stated for the fresh water tank, of the same measure. */
function isStatedFor(limit: LimitView, figure: StandingFigure): boolean {
  if (limit.about === '' || limit.attribute !== figure.attribute) return false;
  const kinds = nameStems(limit.about);
  return nameStems(figure.item).some((stem) => kinds.includes(stem));
}

/** Checks with what they say, those that break first. */
export function checkLines(checks: readonly CheckView[]): readonly string[] {
  return inOrder(checks).flatMap((check) => [
    `${loud(check)}: ${oneLine(check.subject)}`,
    `  ${oneLine(check.why)}`,
  ]);
}

function loud({ state }: CheckView): string {
  return state === 'broken' ? stateText(state).toUpperCase() : stateText(state);
}
