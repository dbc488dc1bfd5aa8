/** The history of a figure as a small plot: time runs down, the value across, with the band that is let pass; and in words. */
import { convert } from '../../model/units.ts';
import type { ClaimView, StandingFigure } from '../../model/views.ts';
import { boundedText, figureText, ofThing } from '../../reports/quantity-text.ts';
import { counted } from '../../reports/source-text.ts';
import { allowanceText } from '../../reports/tolerance-text.ts';
import { shortDay } from './words.ts';

/** A value that was said, in the unit of the figure. */
interface Point {
  readonly claim: ClaimView;
  readonly value: number;
}

/** From least to greatest that is let pass. */
interface Band {
  readonly from: number;
  readonly to: number;
}

/** Columns of the plot: with a day before it and a value behind it, it fits the narrowest screen. */
const CELLS = 11;
/** More rows than these are no small plot: the newest are drawn. */
const MOST_ROWS = 14;

/** What is told of the plot before it, and its rows, the oldest first. Neither where fewer than two values were said. */
export interface FigurePlot {
  /** Everything that the drawing shows, for those who hear the screen instead of seeing it. */
  readonly words: readonly string[];
  readonly rows: readonly string[];
}

export function plotOf(figure: StandingFigure): FigurePlot | undefined {
  const points = figure.history.flatMap((claim): Point[] => {
    const value = convert(claim, figure.unit)?.value;
    return value === undefined ? [] : [{ claim, value }];
  });
  if (points.length < 2) return undefined;
  const band = bandOf(figure);
  const drawn = points.slice(-MOST_ROWS);
  return {
    words: [spanWords(points, figure), ...bandWords(points, band, figure)],
    rows: drawnRows(drawn, band),
  };
}

/** What is let pass around the figure that stands; none for readings that are meant to change, or a figure without one. */
function bandOf(figure: StandingFigure): Band | undefined {
  const { tolerance, value, high = value, unit, status } = figure;
  const spread = tolerance && convert({ ...tolerance, value: Math.abs(tolerance.value) }, unit)?.value;
  if (spread === undefined || spread === 0 || status === 'series') return undefined;
  return { from: value - spread, to: high + spread };
}

const dayOf = ({ claim }: Point) => (claim.source ? shortDay(claim.source.recordedAt) : 'no day');
const yearOf = ({ claim }: Point) => claim.source?.recordedAt.slice(0, 4) ?? '';
const dayAndYear = (point: Point) => [dayOf(point), yearOf(point)].filter(Boolean).join(' ');

/** "3 values from Mon 9 Mar 2026 to Thu 12 Mar 2026; least 280 mm on Thu 12 Mar 2026, most 820 mm on …". */
function spanWords(points: readonly Point[], figure: StandingFigure): string {
  const [first, last] = [points[0] as Point, points.at(-1) as Point];
  const [least, most] = endsOf(points);
  const told = ({ claim }: Point) => figureText(ofThing(claim, figure), 'mixed');
  const when =
    dayAndYear(first) === dayAndYear(last)
      ? `on ${dayAndYear(first)}`
      : `from ${dayAndYear(first)} to ${dayAndYear(last)}`;
  const ends =
    least.value === most.value
      ? `all ${told(least)}`
      : `least ${told(least)} on ${dayOf(least)}, most ${told(most)} on ${dayOf(most)}`;
  return `${counted(points.length, 'value')} ${when}: ${ends}`;
}

function endsOf(points: readonly Point[]): readonly [least: Point, most: Point] {
  const [first] = points as readonly [Point, ...Point[]];
  return points.reduce<readonly [Point, Point]>(
    ([least, most], point) => [
      point.value < least.value ? point : least,
      point.value > most.value ? point : most,
    ],
    [first, first],
  );
}

function bandWords(
  points: readonly Point[],
  band: Band | undefined,
  figure: StandingFigure,
): readonly string[] {
  if (!band || !figure.tolerance) return [];
  const outside = points.filter(({ value }) => !isWithin(value, band)).length;
  const share = outside === 0 ? 'none lies outside' : `${outside} of ${points.length} outside`;
  return [`= is let pass, ${allowanceText(figure.tolerance)} either way: ${share}`];
}

/** A hair more, for what arithmetic leaves behind. */
const isWithin = (value: number, { from, to }: Band) => value >= from - 1e-9 && value <= to + 1e-9;

/** `Thu 12 Mar  |o----------==|  280 mm`; `*` is what stands. The year where there are several. */
function drawnRows(points: readonly Point[], band: Band | undefined): readonly string[] {
  const values = points.map(({ value }) => value);
  const [least, most] = [
    Math.min(...values, ...(band ? [band.from] : [])),
    Math.max(...values, ...(band ? [band.to] : [])),
  ];
  const cellOf = (value: number) =>
    most === least ? (CELLS - 1) / 2 : Math.round(((value - least) / (most - least)) * (CELLS - 1));
  const ground = Array.from({ length: CELLS }, (_, cell): string =>
    band && cell >= cellOf(band.from) && cell <= cellOf(band.to) ? '=' : '-',
  );
  const hasYears = new Set(points.map(yearOf)).size > 1;
  const days = points.map((point) => (hasYears ? dayAndYear(point) : dayOf(point)));
  const width = Math.max(...days.map(({ length }) => length));
  return points.map(({ claim, value }, index) => {
    const cells = ground.with(cellOf(value), claim.status === 'standing' ? '*' : 'o').join('');
    return `${(days[index] ?? '').padEnd(width)} |${cells}| ${boundedText(claim)}`;
  });
}
