/** One figure at length: why it stands, what it comes from, what hangs on it, its history, limits and checks. */
import type { CheckView } from '../../model/checks/check-views.ts';
import { nameStems } from '../../model/names.ts';
import { convert } from '../../model/units.ts';
import type { ClaimView, LimitView, StandingFigure } from '../../model/views.ts';
import { stateText } from '../../reports/check-words.ts';
import { inOrder } from '../../reports/checks-text.ts';
import { subjectOf } from '../../reports/finding-text.ts';
import { boundedText, figureText, ofThing } from '../../reports/quantity-text.ts';
import { placeOf } from '../../reports/source-text.ts';
import { toleranceText } from '../../reports/tolerance-text.ts';
import { oneLine } from '../../reports/words.ts';
import { ageOf, bothUnits, doubtOf, figureKey, openedFigure } from './figure-rows.ts';
import type { TextLine } from './page-lines.ts';
import type { FigureBook, ScreenState } from './screen-state.ts';
import { shortDay } from './words.ts';

/** Every line of the opened figure; none when it does not stand any more. */
export function figureLines(state: ScreenState): readonly TextLine[] {
  const figure = openedFigure(state);
  const { book } = state;
  if (!figure || !book) return [];
  const today = state.data.next.date;
  return [
    { text: `${subjectOf(figure)}: ${bothUnits(figure)}`, heading: true },
    ...standing(figure, today),
    ...section('comes from', origin(figure, book, today)),
    ...section(
      'hangs on it',
      branches(figure, today, (one) => dependentsOf(one, book)),
    ),
    ...section('history', historyLines(figure, today)),
    ...section('limits', limitLines(figure, state, book)),
    ...section('checks', checkLines(figure, book)),
  ];
}

function section(title: string, lines: readonly string[]): readonly TextLine[] {
  if (lines.length === 0) return [];
  return [{ text: '' }, { text: title, heading: true }, ...lines.map((text) => ({ text: `  ${text}` }))];
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

/** As formulas, checks and dependents name a figure. */
const nameOf = ({ item, attribute }: StandingFigure) => `${item} ${attribute}`;

const dependentsOf = ({ dependents }: StandingFigure, { figures }: FigureBook) =>
  figures.filter((one) => dependents.includes(nameOf(one)));

const readBy = (figure: StandingFigure, { figures }: FigureBook) =>
  figures.filter(({ dependents }) => dependents.includes(nameOf(figure)));

function origin(figure: StandingFigure, book: FigureBook, today: string): readonly string[] {
  if (!figure.formula) return [];
  return [
    `= ${oneLine(figure.formula)}`,
    ...branches(figure, today, (one) => (one.formula ? readBy(one, book) : [])),
  ];
}

/** Deeper than this nobody reads on; each figure on the way can be opened by itself. */
const DEEPEST = 5;

/** The figures that `next` leads to, each with those behind it set in; one that was shown is not shown twice. */
function branches(
  from: StandingFigure,
  today: string,
  next: (figure: StandingFigure) => readonly StandingFigure[],
): readonly string[] {
  const shown = new Set([figureKey(from)]);
  const walk = (figure: StandingFigure, depth: number): readonly string[] =>
    next(figure).flatMap((one) => {
      if (shown.has(figureKey(one))) return [];
      shown.add(figureKey(one));
      const words = [bothUnits(one), doubtOf(one), ageOf(one, today)].filter(Boolean).join(', ');
      const deeper = depth < DEEPEST ? walk(one, depth + 1) : [];
      return [`${'  '.repeat(depth)}${subjectOf(one)}: ${words}`, ...deeper];
    });
  return walk(from, 0);
}

/** Newest first: the value with its place between the least and the greatest, then where it was said. */
function historyLines(figure: StandingFigure, today: string): readonly string[] {
  const values = figure.history.map((claim) => convert(claim, figure.unit)?.value);
  const known = values.filter((value) => value !== undefined);
  const [least, greatest] = [Math.min(...known), Math.max(...known)];
  return figure.history
    .map((claim, index) => {
      const value = values[index];
      const mark = value === undefined || least === greatest ? '' : markText(value, least, greatest);
      return claimLines(claim, mark, today);
    })
    .reverse()
    .flat();
}

/** Marks between the two ends of a plot. */
const MARKS = 11;

/** `|---o-------|`: where a value lies between the least and the greatest. */
function markText(value: number, least: number, greatest: number): string {
  const place = Math.round(((value - least) / (greatest - least)) * (MARKS - 1));
  return `|${'-'.repeat(place)}o${'-'.repeat(MARKS - 1 - place)}|  `;
}

function claimLines(claim: ClaimView, mark: string, today: string): readonly string[] {
  const words = [claim.state ?? '', claim.status].filter(Boolean).join(', ');
  const { source } = claim;
  const when = source ? shortDay(source.recordedAt).padEnd(10) : 'not spoken';
  const quote = source?.quote ? `  "${oneLine(source.quote)}"` : '';
  return [
    `${when}  ${mark}${figureText(claim, 'mixed')}  ${words}`,
    ...(source ? [`  ${placeOf(source)}, ${ageOf(claim, today)}${quote}`] : []),
  ];
}

/** Limits of the thing itself, those stated for its kind, and those that it breaks. */
function limitLines(
  figure: StandingFigure,
  { data }: ScreenState,
  { limits }: FigureBook,
): readonly string[] {
  const broken = (limit: LimitView) =>
    data.findings.filter(
      ({ kind, was }) =>
        kind === 'limit' &&
        was.source?.memoId === limit.source.memoId &&
        was.source.quote === limit.source.quote &&
        [limit.value, limit.high].includes(was.value),
    );
  return limits.flatMap((limit) => {
    const breaches = broken(limit);
    const isBroken = breaches.some((one) => one.item === figure.item && one.attribute === figure.attribute);
    const isOwn = limit.item === figure.item && limit.attribute === figure.attribute;
    if (!isBroken && !isOwn && !isStatedFor(limit, figure)) return [];
    const about = limit.about && limit.about !== limit.item ? ` for ${oneLine(limit.about)}` : '';
    const { source } = limit;
    return [
      `${subjectOf(limit)}: ${figureText(limit, 'mixed')}${about}`,
      ...breaches.map((one) => `  BROKEN by ${subjectOf(one)}, ${boundedText(ofThing(one.now, one))}`),
      ...(breaches.length === 0 ? ['  nothing known breaks it'] : []),
      `  ${placeOf(source)}, ${ageOf(limit, data.next.date)}${source.quote ? `  "${oneLine(source.quote)}"` : ''}`,
    ];
  });
}

/** "Tanks and panels" is stated for the fresh water tank, of the same measure. */
function isStatedFor(limit: LimitView, figure: StandingFigure): boolean {
  if (limit.about === '' || limit.attribute !== figure.attribute) return false;
  const kinds = nameStems(limit.about);
  return nameStems(figure.item).some((stem) => kinds.includes(stem));
}

/** Checks that read the figure, those that break first. */
function checkLines(figure: StandingFigure, { checks }: FigureBook): readonly string[] {
  const reads = (check: CheckView) =>
    check.inputs.some((input) => input.reads.some(({ name }) => name === nameOf(figure)));
  return inOrder(checks.filter(reads)).flatMap((check) => [
    `${loud(check)}: ${oneLine(check.subject)}`,
    `  ${oneLine(check.why)}`,
  ]);
}

function loud({ state }: CheckView): string {
  return state === 'broken' ? stateText(state).toUpperCase() : stateText(state);
}
