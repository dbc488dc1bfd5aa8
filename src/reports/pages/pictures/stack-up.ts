/** A sum of lengths to scale: each part begins where the one before it ends; what is taken off goes back. */
import type { Quantity, UnitName } from '../../../language/notes.ts';
import type { CheckView } from '../../../model/checks/check-views.ts';
import { convert } from '../../../model/units.ts';
import type { StandingFigure, Tolerance } from '../../../model/views.ts';
import { shortLine } from '../../columns.ts';
import { subjectOf } from '../../finding-text.ts';
import { amountText, quantityText } from '../../quantity-text.ts';
import { counted } from '../../source-text.ts';
import { leftOutText, worstCaseText } from '../../tolerance-text.ts';
import { oneLine } from '../../words.ts';
import { anchorOf } from '../file-names.ts';
import { ageWords, amountInBoth, block, bothSystems, type Desk, linked, place } from '../fragments.ts';
import { type Html, html, type Part } from '../html.ts';
import type { Relations } from '../relations.ts';
import { hatching, label, line, niceStep, picture, rectangle } from './picture.ts';
import { type SumPart, sumParts } from './sum-parts.ts';

const WIDTH = 720;
const PLOT = { left: 250, right: 690 };
const ROW = 34;
const BAR = 20;
/** Names longer than this are cut in the picture; the table has them whole. */
const NAME = 29;
/** More equal pieces are not told apart by strokes. */
const MOST_PIECES = 24;

interface Stack {
  readonly id: string;
  readonly title: string;
  readonly unit: UnitName;
  readonly parts: readonly SumPart[];
  /** As it stands, in the unit: it may have been said beside the sum. */
  readonly total: number;
  readonly totalWords: string;
  readonly spread?: number | undefined;
  /** What it is held against. */
  readonly most?: { readonly words: string; readonly size: number } | undefined;
}

/** The stack-up of a figure whose formula adds lengths up; nothing for any other. */
export function stackUpOfFigure(
  desk: Desk,
  figure: StandingFigure,
  anchor: string,
  { named }: Pick<Relations, 'named'>,
): Part {
  const { formula, unit, dimension, tolerance } = figure;
  if (formula === undefined || dimension !== 'length') return undefined;
  const parts = sumParts(formula, unit, (name) => named(name, figure));
  if (!parts) return undefined;
  const total = parts.reduce((sum, { size, sign }) => sum + size * sign, 0);
  const spread = tolerance && convert(tolerance, unit)?.value;
  return block(3, 'Stack-up', [
    drawn({
      id: `stack-${anchor}`,
      title: `${subjectOf(figure)}: its parts to scale`,
      unit,
      parts,
      total,
      totalWords: quantityText({ value: total, unit }),
      spread,
    }),
    partsTable(desk, parts, unit, { value: total, unit }, tolerance),
  ]);
}

/** The stack-up of a check that adds layers up. */
export function stackUpOfCheck(check: CheckView): Part {
  if (check.check !== 'stack-up') return undefined;
  const layers = check.inputs.filter(({ name, range }) => name === 'layers' && range !== undefined);
  const unit = layers[0]?.range?.unit;
  if (unit === undefined || layers.length < 2) return undefined;
  const parts = layers.flatMap(({ expression, range }): SumPart[] => {
    const size = range && convert({ value: range.mid, unit: range.unit }, unit)?.value;
    if (!size) return [];
    return [{ words: oneLine(expression), size: Math.abs(size), sign: size < 0 ? -1 : 1, count: 1 }];
  });
  const result = check.results.find(({ name }) => name === 'total');
  const limit = check.inputs.find(({ name, range }) => name !== 'layers' && range !== undefined);
  const size = limit?.range && convert({ value: limit.range.mid, unit: limit.range.unit }, unit)?.value;
  const total = parts.reduce((sum, part) => sum + part.size * part.sign, 0);
  return drawn({
    id: `stack-${anchorOf(check.id)}`,
    title: `${check.subject}: its parts to scale`,
    unit,
    parts,
    total,
    totalWords: quantityText({ value: total, unit }),
    spread: result && convert({ value: (result.high - result.low) / 2, unit: result.unit }, unit)?.value,
    ...(limit && size !== undefined ? { most: { words: limit.name, size } } : {}),
  });
}

interface Bar {
  readonly from: number;
  readonly to: number;
}

/** Where each part begins and ends, laid one to another. */
function barsOf(parts: readonly SumPart[]): readonly Bar[] {
  let end = 0;
  return parts.map(({ size, sign }) => {
    const from = end;
    end += size * sign;
    return { from, to: end };
  });
}

function drawn(stack: Stack): Html {
  const { id, title, unit, parts, total, totalWords, spread, most } = stack;
  const bars = barsOf(parts);
  const ends = [0, total + (spread ?? 0), most?.size ?? 0, ...bars.flatMap(({ from, to }) => [from, to])];
  const [least, greatest] = [Math.min(...ends), Math.max(...ends)];
  const span = greatest - least || 1;
  const x = (value: number) => PLOT.left + ((value - least) / span) * (PLOT.right - PLOT.left);
  const bottom = 12 + (parts.length + 1) * ROW;
  const height = bottom + 44;
  const spreadWords = spread === undefined || spread === 0 ? '' : ` ± ${amountText({ value: spread, unit })}`;
  return picture({
    id,
    title,
    description: `${counted(parts.length, 'part')}: ${parts.map((part) => partWords(part, unit)).join('; ')}. In all ${totalWords}${spreadWords}${most ? `, held against the ${most.words} of ${quantityText({ value: most.size, unit })}` : ''}.`,
    width: WIDTH,
    height,
    body: [
      line({ x: x(0), y: 6 }, { x: x(0), y: bottom }, 'grid'),
      parts.map((part, index) => barParts(part, bars[index] as Bar, index, x, unit)),
      totalBar(stack, parts.length, x, spreadWords),
      most && [
        line({ x: x(most.size), y: 6 }, { x: x(most.size), y: bottom + 4 }, 'limit'),
        label(
          { x: x(most.size) - 6, y: bottom + 18 },
          `${most.words} ${quantityText({ value: most.size, unit })}`,
          'end alarm small',
        ),
      ],
      scaleBar(span, unit, bottom + 30),
    ],
    caption:
      'To scale. Each part begins where the one before it ends; hatched parts are taken off. The last bar is what they come to.',
  });
}

const partWords = ({ words, size, sign, count }: SumPart, unit: UnitName) =>
  `${sign < 0 ? 'less ' : ''}${words}${isPlain(words) && count === 1 ? '' : `, ${quantityText({ value: size, unit })}`}`;

/** A plain size says itself. */
const isPlain = (words: string) => /^-?[\d.]+ \S+$/.test(words);

function barParts(
  part: SumPart,
  { from, to }: Bar,
  index: number,
  x: (value: number) => number,
  unit: UnitName,
): Part {
  const y = 12 + index * ROW;
  const box = { x: Math.min(x(from), x(to)), y, width: Math.max(Math.abs(x(to) - x(from)), 1), height: BAR };
  const pieces = part.count > 1 && part.count <= MOST_PIECES ? part.count : 1;
  return [
    rectangle(box, part.sign < 0 ? 'less' : 'part'),
    part.sign < 0 && hatching(box, 7),
    Array.from({ length: pieces - 1 }, (_, piece) => {
      const cut = box.x + (box.width * (piece + 1)) / pieces;
      return line({ x: cut, y }, { x: cut, y: y + BAR }, 'paper-line');
    }),
    line({ x: x(to), y: y + BAR }, { x: x(to), y: y + ROW }, 'lead'),
    label({ x: 4, y: y + 15 }, shortLine(`${part.sign < 0 ? '− ' : ''}${part.words}`, NAME), 'small'),
    sizeLabel(box, quantityText({ value: part.size, unit })),
  ];
}

/** The size stands within its bar where there is room, else behind it, else before it. */
function sizeLabel(box: { x: number; y: number; width: number }, words: string): Part {
  const room = words.length * 8 + 10;
  if (box.x + box.width + room < WIDTH)
    return label({ x: box.x + box.width + 7, y: box.y + 15 }, words, 'small');
  return label({ x: box.x - 7, y: box.y + 15 }, words, 'end small');
}

function totalBar(
  { total, totalWords, spread }: Stack,
  rows: number,
  x: (value: number) => number,
  spreadWords: string,
): Part {
  const y = 12 + rows * ROW;
  const box = { x: Math.min(x(0), x(total)), y, width: Math.max(Math.abs(x(total) - x(0)), 1), height: BAR };
  const ends = spread !== undefined && spread > 0 ? [x(total - spread), x(total + spread)] : [];
  return [
    rectangle(box, 'total'),
    ends.length === 2 && [
      line({ x: ends[0] as number, y: y + BAR / 2 }, { x: ends[1] as number, y: y + BAR / 2 }, 'whisker'),
      ends.map((end) => line({ x: end, y: y + 4 }, { x: end, y: y + BAR - 4 }, 'whisker')),
    ],
    label({ x: 4, y: y + 15 }, `in all ${totalWords}${spreadWords}`, 'strong small'),
  ];
}

/** A measure to hold against the bars. */
function scaleBar(span: number, unit: UnitName, y: number): Part {
  const step = niceStep(span, 4);
  const width = (step / span) * (PLOT.right - PLOT.left);
  const from = PLOT.left;
  return [
    line({ x: from, y }, { x: from + width, y }, 'ink'),
    line({ x: from, y: y - 5 }, { x: from, y: y + 5 }, 'ink'),
    line({ x: from + width, y: y - 5 }, { x: from + width, y: y + 5 }, 'ink'),
    label({ x: from + width + 8, y: y + 5 }, quantityText({ value: step, unit }), 'small faint'),
  ];
}

function partsTable(
  desk: Desk,
  parts: readonly SumPart[],
  unit: UnitName,
  total: Quantity,
  tolerance: Tolerance | undefined,
): Html {
  const rows = parts.map(({ words, size, sign, figure }) => {
    const spread = figure?.tolerance ? spreadOfPart(figure.tolerance, tolerance) : '';
    const where = figure?.source
      ? html`${place(desk, figure.source)}, ${ageWords(desk, figure.source)}`
      : figure
        ? 'worked out'
        : 'in the formula';
    const name = figure ? linked(words, desk.links.figure(figure)) : words;
    return html`<tr><th scope="row">${name}</th><td>${sign < 0 ? 'less ' : ''}${bothSystems({ value: size, unit })}</td><td>${spread}</td><td>${where}</td></tr>\n`;
  });
  return html`<div class="wide" tabindex="0" role="group" aria-label="Parts"><table>
<caption>Parts</caption>
<thead><tr><th scope="col">Part</th><th scope="col">Size</th><th scope="col">Tolerance</th><th scope="col">Said</th></tr></thead>
<tbody>
${rows}<tr><th scope="row">in all</th><td>${bothSystems(total)}</td><td>${tolerance !== undefined && toleranceWords(tolerance)}</td><td></td></tr>
</tbody></table></div>
`;
}

/** A part that was only said finely has no tolerance of its own, and does not count where the whole has one. */
function spreadOfPart(own: Tolerance, whole: Tolerance | undefined): string {
  const isLeftOut = own.from === 'precision' && whole?.from === 'formula';
  return `± ${worstCaseText(own)}${isLeftOut ? ', not counted' : ''}`;
}

function toleranceWords(tolerance: Tolerance): string {
  const { from, rootSumSquare, unit } = tolerance;
  const own = from === 'formula' ? `± ${amountInBoth(tolerance)} at worst` : `± ${amountInBoth(tolerance)}`;
  const square =
    rootSumSquare === undefined ? [] : [`± ${amountText({ value: rootSumSquare, unit })} by root-sum-square`];
  const without = leftOutText(tolerance);
  return [own, ...square, ...(without === undefined ? [] : [without])].join(', ');
}
