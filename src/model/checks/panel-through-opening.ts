import type { Check, Given, Range, Result, Worked } from './check.ts';
import { all, maybe, one, sumOf } from './ranges.ts';
import { fitsInto, largest, type Rectangle } from './rectangles.ts';
import { unpaired } from './room.ts';

/**
 * Whether a panel or box goes through every opening on its way, carried straight with any of its faces ahead and
 * turned about that way as it has to be: its true section, not its diagonal alone.
 * Formula: the section p x q fits a x b when p <= a and q <= b, or by the condition of Carver (see rectangles.ts).
 * Source: J. E. Wetzel, Rectangles in Rectangles, Mathematics Magazine 73(3), 2000, DOI 10.2307/2691523.
 */
export const PANEL_THROUGH_OPENING: Check = {
  name: 'panel through opening',
  says: 'whether a panel or box goes through every opening on its way, and the widest that would',
  formula:
    'section p x q into a x b: p <= a and q <= b, or q <= b and b >= (2pqa + (p^2 - q^2) sqrt(p^2 + q^2 - a^2)) / (p^2 + q^2)',
  source:
    'Carver 1957, in Wetzel, Rectangles in Rectangles, Mathematics Magazine 73(3), 2000, DOI 10.2307/2691523',
  inputs: [
    { name: 'panel length', kind: 'length', says: 'length of the panel or box' },
    { name: 'panel width', kind: 'length', says: 'its width' },
    { name: 'thickness', kind: 'length', says: 'its true thickness, as measured' },
    { name: 'opening width', kind: 'length', says: 'clear width of each opening on the way', many: true },
    {
      name: 'opening height',
      kind: 'length',
      says: 'clear height of each opening, in the same order',
      many: true,
    },
    {
      name: 'fittings',
      kind: 'length',
      says: 'what handles, stubs, hinges stand out by, all told',
      many: true,
      optional: true,
      nought: true,
    },
    {
      name: 'gap',
      kind: 'length',
      says: 'room to keep all round, for hands or a trolley',
      optional: true,
      nought: true,
    },
  ],
  options: [
    {
      name: 'fittings add to',
      says: 'the size that fittings add to',
      of: ['thickness', 'width', 'length', 'all three'],
    },
  ],
  gives: 'widest that passes',
  run: panelOf,
};

interface Box {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}

/** The three ways to carry a box: what goes ahead, and the section that the opening then has to pass. */
const WAYS: readonly { readonly words: string; readonly section: (box: Box) => Rectangle }[] = [
  { words: 'lengthways', section: ({ width, thickness }) => ({ width, height: thickness }) },
  { words: 'sideways', section: ({ length, thickness }) => ({ width: length, height: thickness }) },
  { words: 'face first', section: ({ length, width }) => ({ width: length, height: width }) },
];

/** At the worst, as said, and at the best: the box large and the openings small, and the other way about. */
interface Case {
  readonly box: Box;
  readonly openings: readonly Rectangle[];
}
type Side = keyof Range;
const OTHER: Readonly<Record<Side, Side>> = { low: 'high', mid: 'mid', high: 'low' };

function panelOf(given: Given): Worked {
  const apart = unpaired(given, 'opening width', 'opening height');
  if (apart !== undefined) return { verdict: 'missing', why: apart };
  const worst = caseAt(given, 'low');
  const shut = worst.openings.filter((opening) => wayThrough(worst.box, opening) === undefined);
  const widest = widestThat(given);
  const where = (opening: Rectangle) => nameOf(given, worst.openings.indexOf(opening));
  const why =
    shut.length === 0
      ? `${passWords(worst, where)}${roomTo(given, widest)}`
      : `it does not go through ${shut.map(where).join(', nor through ')}${roomTo(given, widest)}`;
  return {
    verdict: shut.length === 0 ? 'holds' : 'broken',
    why,
    results: widest.range.high < ANY_WIDTH ? [widest] : [],
    notes: notesOn(given, widest),
  };
}

/** Sizes with fittings and gap: `side` is that of the openings, the box is at the other. */
function caseAt(given: Given, side: Side): Case {
  const of = (name: string) => one(given, name)[OTHER[side]];
  const round = (maybe(given, 'gap')?.[OTHER[side]] ?? 0) * 2;
  const stand = sumOf(all(given, 'fittings'))[OTHER[side]];
  const where = given.options.get('fittings add to') ?? 'thickness';
  const extra = (size: string) => round + (where === size || where === 'all three' ? stand : 0);
  const heights = all(given, 'opening height');
  return {
    box: {
      length: of('panel length') + extra('length'),
      width: of('panel width') + extra('width'),
      thickness: of('thickness') + extra('thickness'),
    },
    openings: all(given, 'opening width').map((width, index) => ({
      width: width[side],
      height: (heights[index] as Range)[side],
    })),
  };
}

const wayThrough = (box: Box, opening: Rectangle) =>
  WAYS.find(({ section }) => fitsInto(section(box), opening))?.words;

const passesAll = ({ box, openings }: Case): boolean =>
  openings.every((opening) => wayThrough(box, opening) !== undefined);

/** Wider than anything that is carried: what passes at this width passes at any, another way round. */
const ANY_WIDTH = 100;

/** The widest panel of this length and thickness that passes, bare, by halving; ANY_WIDTH where width is no matter. */
function widestThat(given: Given): Result {
  const at = (side: Side) => {
    const { box, openings } = caseAt(given, side);
    const added = box.width - one(given, 'panel width')[OTHER[side]];
    const passes = (width: number) => passesAll({ box: { ...box, width: width + added }, openings });
    return largest(passes, ANY_WIDTH);
  };
  return {
    name: 'widest that passes',
    kind: 'length',
    range: { low: at('low'), mid: at('mid'), high: at('high') },
  };
}

function passWords({ box, openings }: Case, where: (opening: Rectangle) => string): string {
  const ways = openings.map((opening) => `${wayThrough(box, opening)} through ${where(opening)}`);
  return `it goes ${ways.join(', ')}`;
}

function roomTo(given: Given, widest: Result): string {
  const { say } = given;
  const { low } = widest.range;
  if (low === ANY_WIDTH) return '';
  if (low === 0) return '; no width of this length and thickness does';
  const left = low - one(given, 'panel width').high;
  const words = `${say(Math.abs(left), 'length')} ${left < 0 ? 'less' : 'more'}`;
  return `; the widest that passes is ${say(low, 'length')}, ${words}`;
}

/** "side hatch (560 mm x 400 mm)" by the figure of its width; its number where that was given as a plain size. */
function nameOf(given: Given, index: number): string {
  const { say } = given;
  const [width, height] = [all(given, 'opening width')[index], all(given, 'opening height')[index]];
  const size = `${say(width?.mid ?? 0, 'length')} x ${say(height?.mid ?? 0, 'length')}`;
  const label = given.labels?.get('opening width')?.[index]?.replace(/ (?:width|size)$/, '');
  return `${label === undefined || label === '' || /^[\d(-]/.test(label) ? `opening ${index + 1}` : label} (${size})`;
}

function notesOn(given: Given, widest: Result): readonly string[] {
  const where = given.options.get('fittings add to') ?? 'thickness';
  return [
    'carried straight through; room to turn before and behind an opening is not looked at',
    given.inputs.has('fittings')
      ? `fittings are counted along the whole ${where === 'all three' ? 'panel, on every side' : `panel, on its ${where}`}, as if one stood everywhere: one that sits in a corner may leave more room`
      : 'no fittings were counted: handles, hinges and stubs take room too',
    ...(widest.range.low < ANY_WIDTH ? [] : ['any width passes at this length and thickness']),
  ];
}
