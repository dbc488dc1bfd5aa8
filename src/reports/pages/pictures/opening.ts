/** A panel at its opening, to scale: the face that goes ahead, turned as it has to be, within the clear opening. */

import type { InputRead } from '../../../model/checks/check-rows.ts';
import type { CheckView } from '../../../model/checks/check-views.ts';
import { fitsInto } from '../../../model/checks/rectangles.ts';
import { stateText } from '../../check-words.ts';
import { quantityText } from '../../quantity-text.ts';
import { anchorOf } from '../file-names.ts';
import { html, type Part } from '../html.ts';
import { at, label, line, niceStep, picture, rectangle } from './picture.ts';

/** Everything is drawn in this unit. */
const UNIT = 'mm';
const WIDTH = 720;
const PLOT = { x: 130, y: 40, width: 460, height: 330 };
const HEIGHT = 440;

/** A section p x q, turned by an angle about the middle of the opening. Sizes in millimetres. */
interface Section {
  readonly words: string;
  readonly p: number;
  readonly q: number;
  readonly degrees: number;
  /** How far it sticks out at this angle. */
  readonly over: number;
  readonly goes: boolean;
}

interface Opening {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** A picture for each opening on the way; nothing for other checks, or where a size is missing. */
export function openingPictures(check: CheckView): Part {
  if (check.check !== 'panel through opening') return undefined;
  const of = (name: string) => check.inputs.filter((input) => input.name === name);
  const worst = (name: string, side: 'low' | 'high') => of(name).map((input) => sizeOf(input, side));
  const [length] = worst('panel length', 'high');
  const [width] = worst('panel width', 'high');
  const [thickness] = worst('thickness', 'high');
  const widths = of('opening width');
  const heights = worst('opening height', 'low');
  if (length === undefined || width === undefined || thickness === undefined) return undefined;
  const stands = worst('fittings', 'high').reduce((sum: number, one) => sum + (one ?? 0), 0);
  const round = 2 * (worst('gap', 'high')[0] ?? 0);
  const where = check.options['fittings add to'] ?? 'thickness';
  const extra = (size: string) => round + (where === size || where === 'all three' ? stands : 0);
  const box = {
    length: length + extra('length'),
    width: width + extra('width'),
    thickness: thickness + extra('thickness'),
  };
  return widths.map((input, index) => {
    const [w, h] = [sizeOf(input, 'low'), heights[index]];
    if (w === undefined || h === undefined || w <= 0 || h <= 0) return undefined;
    return drawn(check, { name: nameOf(input, index), width: w, height: h }, box, index, stands + round > 0);
  });
}

const IN_MM: Readonly<Record<string, number>> = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 };

function sizeOf({ range }: InputRead, side: 'low' | 'high'): number | undefined {
  const unit = range && IN_MM[range.unit];
  return range === undefined || unit === undefined ? undefined : range[side] * unit;
}

/** By the figure of its width; by its number where that was given as a plain size. */
function nameOf({ reads }: InputRead, index: number): string {
  const [only] = reads;
  return only ? only.name.replace(/ width$/, '') : `opening ${index + 1}`;
}

interface Box {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}

/** The three faces that can go ahead; of those the one that goes through, upright rather than turned, else the nearest. */
function bestSection({ length, width, thickness }: Box, opening: Opening): Section {
  const ways: readonly (readonly [string, number, number])[] = [
    ['lengthways', width, thickness],
    ['sideways', length, thickness],
    ['face first', length, width],
  ];
  const tried = ways.map(([words, p, q]) => turned(words, p, q, opening));
  return tried.reduce((best, one) => (isBetter(one, best) ? one : best));
}

/** Of two sections the one that goes; of two that do not, the nearer one. The first way that goes is the one the check names. */
function isBetter(one: Section, best: Section): boolean {
  if (one.goes !== best.goes) return one.goes;
  return !one.goes && one.over < best.over;
}

/** Degrees between the angles that are tried first; about the best of them finer ones follow, down to a thousandth. */
const COARSE = 0.5;
const FINE = 0.001;
/** In millimetres: less than any of it is floating noise. */
const NOUGHT = 1e-6;

/** A section turned so that it goes through, or is nearest to it: level and upright where that does. */
function turned(words: string, p: number, q: number, opening: Opening): Section {
  const { width, height } = opening;
  const over = (degrees: number) => {
    const angle = (degrees * Math.PI) / 180;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    return Math.max(p * c + q * s - width, p * s + q * c - height);
  };
  const straight = [0, 90].find((degrees) => over(degrees) <= NOUGHT);
  const degrees = straight ?? nearest(over);
  return { words, p, q, degrees, over: over(degrees), goes: fitsInto({ width: p, height: q }, opening) };
}

/** The angle from 0 to 90 degrees at which least sticks out. */
function nearest(over: (degrees: number) => number): number {
  let best = 0;
  const look = (degrees: number) => {
    if (degrees >= 0 && degrees <= 90 && over(degrees) < over(best)) best = degrees;
  };
  for (let degrees = 0; degrees <= 90; degrees += COARSE) look(degrees);
  for (let step = COARSE / 2; step > FINE; step /= 2) {
    const middle = best;
    look(middle - step);
    look(middle + step);
  }
  return best;
}

function drawn(check: CheckView, opening: Opening, box: Box, index: number, isWider: boolean): Part {
  const section = bestSection(box, opening);
  const { goes } = section;
  const angle = (section.degrees * Math.PI) / 180;
  const reach = {
    width: section.p * Math.cos(angle) + section.q * Math.sin(angle),
    height: section.p * Math.sin(angle) + section.q * Math.cos(angle),
  };
  const scale = Math.min(
    PLOT.width / Math.max(opening.width, reach.width),
    PLOT.height / Math.max(opening.height, reach.height),
  );
  const middle = { x: PLOT.x + PLOT.width / 2, y: PLOT.y + PLOT.height / 2 };
  const hole = {
    x: middle.x - (opening.width * scale) / 2,
    y: middle.y - (opening.height * scale) / 2,
    width: opening.width * scale,
    height: opening.height * scale,
  };
  const size = (value: number) => quantityText({ value: Math.round(value * 10) / 10, unit: UNIT });
  const turn =
    section.degrees === 0
      ? 'level'
      : section.degrees === 90
        ? 'upright'
        : `turned by ${Math.round(section.degrees)}°`;
  const told = `${size(section.p)} x ${size(section.q)}, carried ${section.words}, ${turn}`;
  const title = `${check.subject}: at the ${opening.name}`;
  return picture({
    id: `opening-${anchorOf(check.id)}-${index + 1}`,
    title,
    description: `The opening is ${size(opening.width)} wide and ${size(opening.height)} high. The panel's section is ${told}. ${goes ? 'It goes through.' : 'It does not go through; it is drawn as near to going as it comes.'} ${check.why}.`,
    width: WIDTH,
    height: HEIGHT,
    body: [
      rectangle(hole, 'hole'),
      turnedBox(section, scale, middle, goes ? 'panel' : 'panel stuck'),
      measure(hole, size),
      scaleBar(scale, size),
      label(
        { x: PLOT.x, y: 22 },
        `${opening.name}: ${goes ? 'it goes through' : 'it does not go through'}`,
        goes ? 'strong calm' : 'strong alarm',
      ),
    ],
    caption: html`To scale, at the worst of the tolerances: the panel large, the opening small. Section ${told}${isWider && ', with its fittings and the room to keep'}. The check ${stateText(check.state)}.`,
  });

  function measure(
    frame: { x: number; y: number; width: number; height: number },
    say: (value: number) => string,
  ): Part {
    const below = frame.y + frame.height + 18;
    const left = frame.x - 16;
    return [
      line({ x: frame.x, y: below }, { x: frame.x + frame.width, y: below }, 'thin'),
      line({ x: frame.x, y: below - 5 }, { x: frame.x, y: below + 5 }, 'thin'),
      line({ x: frame.x + frame.width, y: below - 5 }, { x: frame.x + frame.width, y: below + 5 }, 'thin'),
      label({ x: frame.x + frame.width / 2, y: below + 20 }, say(opening.width), 'middle'),
      line({ x: left, y: frame.y }, { x: left, y: frame.y + frame.height }, 'thin'),
      line({ x: left - 5, y: frame.y }, { x: left + 5, y: frame.y }, 'thin'),
      line({ x: left - 5, y: frame.y + frame.height }, { x: left + 5, y: frame.y + frame.height }, 'thin'),
      label({ x: left - 10, y: frame.y + frame.height / 2 + 5 }, say(opening.height), 'end'),
    ];
  }
}

function turnedBox(
  { p, q, degrees }: Section,
  scale: number,
  middle: { x: number; y: number },
  look: string,
): Part {
  const [w, h] = [p * scale, q * scale];
  return html`<rect class="${look}" x="${at(middle.x - w / 2)}" y="${at(middle.y - h / 2)}" width="${at(w)}" height="${at(h)}" transform="rotate(${at(-degrees)} ${at(middle.x)} ${at(middle.y)})"/>\n`;
}

function scaleBar(scale: number, size: (value: number) => string): Part {
  const step = niceStep(PLOT.width / scale, 5);
  const from = { x: WIDTH - 20 - step * scale, y: HEIGHT - 14 };
  return [
    line(from, { x: WIDTH - 20, y: from.y }, 'ink'),
    line({ x: from.x, y: from.y - 5 }, { x: from.x, y: from.y + 5 }, 'ink'),
    line({ x: WIDTH - 20, y: from.y - 5 }, { x: WIDTH - 20, y: from.y + 5 }, 'ink'),
    label({ x: from.x - 8, y: from.y + 5 }, size(step), 'end small faint'),
  ];
}
