/** What a figure comes from and what hangs on it, by formulas: as a picture, and as lists with links. */
import type { StandingFigure } from '../../../model/views.ts';
import { shortLine } from '../../columns.ts';
import { subjectOf } from '../../finding-text.ts';
import { boundedText } from '../../quantity-text.ts';
import { counted } from '../../source-text.ts';
import { block, bothSystems, type Desk, standing, subject } from '../fragments.ts';
import { type Html, html, type Part } from '../html.ts';
import type { Relations } from '../relations.ts';
import { nameOfFigure } from '../site-map.ts';
import { at, label, picture, rectangle } from './picture.ts';

/** Farther away nobody reads on; each figure on the way has a page of its own. */
const DEEPEST = 4;
const MOST_DRAWN = 24;
const BOX = { width: 222, height: 50, across: 48, down: 16 };

type Way = (figure: StandingFigure) => readonly StandingFigure[];

export function hangsOn(desk: Desk, figure: StandingFigure, anchor: string, relations: Relations): Part {
  const { comesFrom: from, hangOn: on } = relations;
  if (from(figure).length === 0 && on(figure).length === 0) return undefined;
  return block(3, 'What hangs on what', [
    drawn(figure, anchor, from, on),
    branch(desk, 'Comes from', figure, from),
    branch(desk, 'Hangs on it', figure, on),
  ]);
}

function branch(desk: Desk, title: string, figure: StandingFigure, way: Way): Part {
  const shown = new Set([figure]);
  const walk = (one: StandingFigure, depth: number): Part => {
    const next = way(one).filter((other) => !shown.has(other));
    for (const other of next) shown.add(other);
    if (next.length === 0) return undefined;
    return html`<ul>${next.map(
      (other): Html =>
        html`<li>${subject(desk, other)}: ${bothSystems(other)}${other.status !== 'stands' && html`, ${standing(other)}`}${depth < DEEPEST && walk(other, depth + 1)}</li>\n`,
    )}</ul>\n`;
  };
  const list = walk(figure, 1);
  return list && html`<div class="branch"><p>${title}:</p>${list}</div>\n`;
}

/** Figures by how many formulas lie between: fewer than nought before it, more behind it. The farthest way counts. */
function columnsOf(figure: StandingFigure, from: Way, on: Way): ReadonlyMap<StandingFigure, number> {
  const placed = new Map([[figure, 0]]);
  for (const [way, side] of [
    [from, -1],
    [on, 1],
  ] as const) {
    let edge = [figure];
    for (let depth = 1; depth <= DEEPEST && edge.length > 0; depth++) {
      const next = edge.flatMap(way);
      edge = [];
      for (const one of next) {
        const known = placed.get(one);
        // What stands on the other side already closes a circle: it stays where it is.
        if (known === undefined ? placed.size >= MOST_DRAWN : known * side <= 0) continue;
        placed.set(one, depth * side);
        edge.push(one);
      }
    }
  }
  return placed;
}

function drawn(figure: StandingFigure, anchor: string, from: Way, on: Way): Part {
  const placed = columnsOf(figure, from, on);
  const columns = [...new Set(placed.values())].sort((a, b) => a - b);
  const inColumn = (column: number) => [...placed].filter(([, own]) => own === column).map(([one]) => one);
  const rows = Math.max(...columns.map((column) => inColumn(column).length));
  const height = rows * (BOX.height + BOX.down) + BOX.down;
  const spots = new Map<StandingFigure, Spot>();
  columns.forEach((column, index) => {
    const some = inColumn(column);
    const used = some.length * (BOX.height + BOX.down) - BOX.down;
    some.forEach((one, row) => {
      spots.set(one, {
        x: 4 + index * (BOX.width + BOX.across),
        y: (height - used) / 2 + row * (BOX.height + BOX.down),
      });
    });
  });
  const edges = [...placed].flatMap(([one, column]) =>
    on(one)
      .filter((other) => (placed.get(other) ?? column) > column)
      .map((other) => [one, other] as const),
  );
  const title = `${subjectOf(figure)}: what hangs on what`;
  return picture({
    id: `hangs-${anchor}`,
    title,
    description: `${counted(placed.size, 'figure')}. ${edges.map(([a, b]) => `${nameOfFigure(b)} comes from ${nameOfFigure(a)}`).join('; ')}.`,
    width: columns.length * (BOX.width + BOX.across) - BOX.across + 8,
    height,
    body: [
      edges.map(([a, b]) => edge(spots.get(a), spots.get(b))),
      [...placed.keys()].map((one) => node(one, spots.get(one), figure)),
    ],
    caption:
      'From left to right: what is on the right is worked out from what is on the left. A broken frame: in doubt or stale.',
  });
}

type Spot = { readonly x: number; readonly y: number };

function edge(a: Spot | undefined, b: Spot | undefined): Part {
  if (!a || !b) return undefined;
  const [x1, y1, x2, y2] = [a.x + BOX.width, a.y + BOX.height / 2, b.x, b.y + BOX.height / 2];
  const bend = Math.max((x2 - x1) / 2, 20);
  return html`<path class="thin" d="M${at(x1)} ${at(y1)}C${at(x1 + bend)} ${at(y1)} ${at(x2 - bend)} ${at(y2)} ${at(x2 - 7)} ${at(y2)}"/><path class="tip" d="M${at(x2)} ${at(y2)}l-9 -5v10z"/>\n`;
}

const BOX_WORDS = 27;

function node(figure: StandingFigure, spot: Spot | undefined, own: StandingFigure): Part {
  if (!spot) return undefined;
  const isOpen = figure.status === 'in-doubt' || figure.status === 'stale';
  const look = `${figure === own ? 'own' : 'box'}${isOpen ? ' broken' : ''}`;
  const value = `${boundedText(figure)}${isOpen ? `, ${figure.status === 'stale' ? 'stale' : 'in doubt'}` : ''}`;
  return [
    rectangle({ ...spot, width: BOX.width, height: BOX.height }, look),
    label({ x: spot.x + 10, y: spot.y + 20 }, shortLine(subjectOf(figure), BOX_WORDS), 'small'),
    label({ x: spot.x + 10, y: spot.y + 40 }, shortLine(value, BOX_WORDS), 'strong'),
  ];
}
