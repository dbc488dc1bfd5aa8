/** A figure's history: each value that was said, in the order of speech, with the tolerance that holds and the limits. */
import type { UnitName } from '../../../language/notes.ts';
import { proportionOf } from '../../../model/falls.ts';
import { convert } from '../../../model/units.ts';
import type { ClaimView, LimitView, StandingFigure } from '../../../model/views.ts';
import { subjectOf } from '../../finding-text.ts';
import { boundedText, ofThing, quantityText } from '../../quantity-text.ts';
import { counted, dayOf } from '../../source-text.ts';
import { allowanceText } from '../../tolerance-text.ts';
import { html, type Part } from '../html.ts';
import { at, hatching, label, line, type Point, picture, rectangle, ticksOf } from './picture.ts';

/** More would be a smear: the latest are drawn, all stand in the table. */
const MOST_POINTS = 24;
const WIDTH = 720;
const PLOT = { left: 92, right: 560, top: 26, bottom: 226 };
const HEIGHT = 276;

interface Told {
  readonly claim: ClaimView;
  readonly value: number;
}

interface Line {
  readonly value: number;
  readonly words: string;
  /** Which side is wrong. */
  readonly wrong: 'above' | 'below';
}

/** Nothing where there is nothing to compare: one value and no limit. */
export function historyPicture(figure: StandingFigure, anchor: string, limits: readonly LimitView[]): Part {
  const all = toldOf(figure);
  const told = all.slice(-MOST_POINTS);
  const lines = limits.flatMap((limit) => linesOf(limit, figure.unit));
  if (told.length === 0 || (told.length === 1 && lines.length === 0)) return undefined;
  const band = bandOf(figure);
  const scale = scaleOf([...told.map(({ value }) => value), ...band, ...lines.map(({ value }) => value)]);
  const title = `${subjectOf(figure)}: what was said of it`;
  return picture({
    id: `history-${anchor}`,
    title,
    description: descriptionOf(figure, told, all.length, lines),
    width: WIDTH,
    height: HEIGHT,
    body: [
      bandParts(figure, band, scale),
      wrongSides(lines, scale),
      axis(scale, figure),
      figure.status === 'series' && seriesLine(told, scale),
      lines.map((one) => limitParts(one, scale)),
      told.map((one, index) => pointParts(one, index, told, scale)),
    ],
    caption: captionOf(told, band.length > 0, lines.length > 0, all.length),
  });
}

/** Every value that was said; and what was worked out, where that stands instead. */
function toldOf(figure: StandingFigure): readonly Told[] {
  const { item, attribute, bound, value, unit } = figure;
  const workedOut: ClaimView = { id: '', item, attribute, bound, value, unit, status: 'standing' };
  const isSaid = figure.formula === undefined || figure.history.some((claim) => claim.status === 'standing');
  const claims = figure.history.length > 0 && isSaid ? figure.history : [...figure.history, workedOut];
  return claims.flatMap((claim) => {
    const size = convert(claim, unit)?.value;
    return size === undefined ? [] : [{ claim, value: size }];
  });
}

function linesOf(limit: LimitView, unit: UnitName): readonly Line[] {
  const to = (value: number) => convert({ value, unit: limit.unit }, unit)?.value;
  const low = to(limit.value);
  const high = limit.high === undefined ? undefined : to(limit.high);
  const words = (bound: string, value: number) => `${bound} ${quantityText({ ...limit, value })}`;
  // A fall of at least one in 60 is at least as steep: the numbers above 60 break it.
  const turned = proportionOf(limit) === 'one-in';
  const below = turned ? 'above' : 'below';
  const above = turned ? 'below' : 'above';
  const lines: Line[] = [];
  if (low !== undefined && limit.bound !== 'at-most')
    lines.push({ value: low, words: words('at least', limit.value), wrong: below });
  if (low !== undefined && limit.bound === 'at-most')
    lines.push({ value: low, words: words('at most', limit.value), wrong: above });
  if (high !== undefined && limit.high !== undefined)
    lines.push({ value: high, words: words('at most', limit.high), wrong: above });
  return lines;
}

/** The two ends of what is let pass about the standing value; none where no tolerance is known. */
function bandOf({ value, high, unit, tolerance }: StandingFigure): readonly number[] {
  const spread = tolerance && convert(tolerance, unit)?.value;
  if (spread === undefined && high === undefined) return [];
  return [value - (spread ?? 0), (high ?? value) + (spread ?? 0)];
}

interface Scale {
  readonly least: number;
  readonly greatest: number;
  readonly y: (value: number) => number;
}

function scaleOf(values: readonly number[]): Scale {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = (high - low || Math.abs(high) || 1) * 0.12;
  const [least, greatest] = [low - room, high + room];
  const height = PLOT.bottom - PLOT.top;
  return { least, greatest, y: (value) => PLOT.bottom - ((value - least) / (greatest - least)) * height };
}

const xOf = (index: number, count: number) => PLOT.left + ((index + 0.5) / count) * (PLOT.right - PLOT.left);

/** A value as this figure is told: a fall of "1 in 40", not of 40. */
const toldLike = ({ item, attribute, unit, source }: StandingFigure, value: number) =>
  quantityText({ ...ofThing({ value, unit }, { item, attribute }), source });

function axis({ least, greatest, y }: Scale, figure: StandingFigure): Part {
  return [
    ticksOf(least, greatest, 4).map((value) => [
      line({ x: PLOT.left, y: y(value) }, { x: PLOT.right, y: y(value) }, 'grid'),
      label({ x: PLOT.left - 10, y: y(value) + 5 }, toldLike(figure, value), 'end faint'),
    ]),
    line({ x: PLOT.left, y: PLOT.bottom }, { x: PLOT.right, y: PLOT.bottom }, 'ink'),
  ];
}

/** "± 2.3 mm"; of falls and mixes both ends, because what is let pass is no fall itself. */
function bandWords(figure: StandingFigure, low: number, high: number): string {
  const { tolerance, unit } = figure;
  if (!tolerance) return 'stands between';
  const to = (value: number) => toldLike(figure, Number(value.toPrecision(3)));
  if (proportionOf(figure) !== undefined) return low === high ? to(low) : `${to(low)} to ${to(high)}`;
  return `± ${allowanceText({ ...tolerance, ...convert(tolerance, unit) })}`;
}

function bandParts(figure: StandingFigure, [low, high]: readonly number[], { y }: Scale): Part {
  if (low === undefined || high === undefined) return undefined;
  const words = bandWords(figure, low, high);
  return [
    rectangle(
      { x: PLOT.left, y: y(high), width: PLOT.right - PLOT.left, height: Math.max(y(low) - y(high), 2) },
      'band',
    ),
    label({ x: PLOT.right + 10, y: (y(low) + y(high)) / 2 + 5 }, words, 'calm'),
  ];
}

function wrongSides(lines: readonly Line[], { y }: Scale): Part {
  return lines.map(({ value, wrong }) => {
    const top = wrong === 'above' ? PLOT.top : y(value);
    const bottom = wrong === 'above' ? y(value) : PLOT.bottom;
    return hatching({ x: PLOT.left, y: top, width: PLOT.right - PLOT.left, height: bottom - top });
  });
}

function limitParts({ value, words, wrong }: Line, { y }: Scale): Part {
  return [
    line({ x: PLOT.left, y: y(value) }, { x: PLOT.right, y: y(value) }, 'limit'),
    label({ x: PLOT.right + 10, y: y(value) + (wrong === 'above' ? -3 : 14) }, words, 'alarm'),
  ];
}

function seriesLine(told: readonly Told[], { y }: Scale): Part {
  const points = told.map(({ value }, index) => `${at(xOf(index, told.length))},${at(y(value))}`).join(' ');
  return html`<polyline class="thin" points="${points}"/>\n`;
}

function pointParts({ claim, value }: Told, index: number, told: readonly Told[], { y }: Scale): Part {
  const point = { x: xOf(index, told.length), y: y(value) };
  const slot = (PLOT.right - PLOT.left) / told.length;
  const shown = slot >= 74 || index === told.length - 1 || index % Math.ceil(74 / slot) === 0;
  const isLow = point.y < PLOT.top + 14;
  return [
    mark(claim, point),
    shown && label({ x: point.x, y: point.y + (isLow ? 24 : -12) }, quantityText(claim), 'middle small'),
    shown &&
      label(
        { x: point.x, y: PLOT.bottom + 20 },
        claim.source ? dayOf(claim.source.recordedAt) : 'worked out',
        'middle small faint',
      ),
    line({ x: point.x, y: PLOT.bottom }, { x: point.x, y: PLOT.bottom + 5 }, 'ink'),
  ];
}

/** States are told apart by shape, never by colour alone. */
function mark({ status }: ClaimView, { x, y }: Point): Part {
  switch (status) {
    case 'standing':
      return html`<circle class="dot" cx="${at(x)}" cy="${at(y)}" r="6.5"/>\n`;
    case 'superseded':
      return html`<circle class="ring" cx="${at(x)}" cy="${at(y)}" r="5.5"/>\n`;
    case 'doubted':
      return html`<path class="doubt" d="M${at(x)} ${at(y - 8)}l8 8l-8 8l-8 -8z"/>\n`;
    case 'rejected':
      return html`<path class="doubt" d="M${at(x - 6)} ${at(y - 6)}l12 12m0 -12l-12 12"/>\n`;
    default:
      return html`<circle class="dot" cx="${at(x)}" cy="${at(y)}" r="4"/>\n`;
  }
}

const MARKS: readonly (readonly [ClaimView['status'], string])[] = [
  ['standing', 'large dot: stands'],
  ['agrees', 'small dot: agrees with it'],
  ['superseded', 'ring: superseded'],
  ['doubted', 'diamond: doubted'],
  ['rejected', 'cross: rejected'],
  ['series', 'small dot: one of a series'],
];

function captionOf(told: readonly Told[], hasBand: boolean, hasLimit: boolean, all: number): string {
  const seen = new Set(told.map(({ claim }) => claim.status));
  const words = [
    ...MARKS.filter(([status]) => seen.has(status)).map(([, one]) => one),
    ...(hasBand ? ['band: what is let pass'] : []),
    ...(hasLimit ? ['hatched: the wrong side of a limit'] : []),
  ].join('; ');
  const some = told.length < all ? ` The latest ${told.length} of ${all} are drawn.` : '';
  return `In the order of speech. ${words.charAt(0).toUpperCase()}${words.slice(1)}.${some}`;
}

function descriptionOf(
  figure: StandingFigure,
  told: readonly Told[],
  all: number,
  lines: readonly Line[],
): string {
  const said = told.map(
    ({ claim }) =>
      `${boundedText(claim)}${claim.source ? ` on ${dayOf(claim.source.recordedAt)}` : ''}, ${claim.status}`,
  );
  return [
    `${counted(all, 'value')} in the order of speech: ${said.join('; ')}.`,
    ...(figure.tolerance ? [`Let pass: ${allowanceText(figure.tolerance)}.`] : []),
    ...lines.map(({ words }) => `Limit: ${words}.`),
  ].join(' ');
}
