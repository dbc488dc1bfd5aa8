/** The list of figures: which are found, and a line for each. */
import type { FigurePlace } from '../../model/figure-around.ts';
import type { ListedFigure } from '../../model/views.ts';
import { closed, padded, shortLine, widthOf } from '../../reports/columns.ts';
import { subjectOf } from '../../reports/finding-text.ts';
import { figureText } from '../../reports/quantity-text.ts';
import { age, daysBetween, placeOf } from '../../reports/source-text.ts';
import { oneLine } from '../../reports/words.ts';
import type { FigureBook, ScreenState } from './screen-state.ts';

/** Where a figure stands among all: a thing has one of each attribute and kind of quantity. */
export const placeOfFigure = ({ item, attribute, dimension }: FigurePlace): FigurePlace => ({
  item,
  attribute,
  dimension,
});

export const isSamePlace = (a: FigurePlace, b: FigurePlace) =>
  a.item === b.item && a.attribute === b.attribute && a.dimension === b.dimension;

/** What was last looked for in a list of figures: there may be very many, and each frame asks several times. */
interface Finding {
  /** The name of each, in small letters, a blank before every word. */
  readonly names: readonly string[];
  find: string | undefined;
  found: readonly ListedFigure[];
}
const FINDINGS = new WeakMap<readonly ListedFigure[], Finding>();

/**
 * Figures whose names hold every typed word, or the start of one. Counts of things are no measure: they are shown
 * where their thing is asked for.
 */
export function foundFigures({ book, find }: Pick<ScreenState, 'book' | 'find'>): readonly ListedFigure[] {
  if (!book) return [];
  const { figures } = book;
  let known = FINDINGS.get(figures);
  if (!known) {
    const names = figures.map(({ item, attribute }) => ` ${item} ${attribute}`.toLowerCase());
    known = { names, find: undefined, found: [] };
    FINDINGS.set(figures, known);
  }
  if (known.find !== find) {
    known.found = withWords(figures, known.names, find);
    known.find = find;
  }
  return known.found;
}

function withWords(
  figures: readonly ListedFigure[],
  names: readonly string[],
  find: string,
): readonly ListedFigure[] {
  const words = find
    .toLowerCase()
    .split(/\s+/)
    .filter(Boolean)
    .map((word) => ` ${word}`);
  if (words.length === 0) return figures.filter(({ dimension }) => dimension !== 'count');
  return figures.filter((_, index) => words.every((word) => names[index]?.includes(word)));
}

const DOUBTS: Readonly<Record<ListedFigure['status'], string>> = {
  stands: '',
  'in-doubt': 'IN DOUBT',
  stale: 'STALE',
  series: 'series',
};

/** Loud where a figure is not to be cut to. */
export const doubtOf = ({ status }: Pick<ListedFigure, 'status'>) => DOUBTS[status];

/** A figure in both unit systems. */
export const bothUnits = (figure: ListedFigure) => figureText(figure, 'mixed');

/** "today", "12 days"; nothing for what was never spoken. `today` is YYYY-MM-DD. */
function daysOf({ source }: Pick<ListedFigure, 'source'>, today: string): string {
  if (!source) return '';
  const days = daysBetween(source.recordedAt, today);
  return days <= 0 ? 'today' : age(days);
}

/** "today", "12 days old"; nothing for what was never spoken. `today` is YYYY-MM-DD. */
export function ageOf(figure: Pick<ListedFigure, 'source'>, today: string): string {
  return daysOf(figure, today).replace(/\bdays?$/, '$& old');
}

/** Less of a name says nothing. */
const LEAST_NAME = 8;
/** The sign before the chosen row. */
const MARK = 2;
/** Blanks behind the name, and the sign that something is cut off. */
const BETWEEN = 3;
/** From this width on there is room for columns. */
const WIDE = 70;
/** Columns beside the name, which gets the rest; the same for every row, so that nothing shifts in scrolling. */
const WIDTHS = { value: 28, state: 8, age: 8, source: 10 } as const;
/** Between the columns, and the mark of the chosen row. */
const BLANKS = 6;
const OTHERS = WIDTHS.value + WIDTHS.state + WIDTHS.age + WIDTHS.source + BLANKS;
/** No more is needed for a name on a wide terminal. */
const WIDEST_NAME = 36;

/** One line each; where there is no room for columns, name, doubt and value. */
export function figureRows(
  figures: readonly ListedFigure[],
  today: string,
  columns: number,
): readonly string[] {
  if (columns < WIDE) {
    return figures.map((figure) => {
      const behind = [doubtOf(figure), bothUnits(figure)].filter(Boolean).join('  ');
      // The value as it was said must not be what is cut off; in the other units it may be.
      const said = behind.replace(/ \(≈.*$/, '');
      const room = Math.max(LEAST_NAME, columns - MARK - widthOf(said) - BETWEEN);
      return `${closed(shortLine(subjectOf(figure), room))}  ${behind}`;
    });
  }
  const name = Math.min(WIDEST_NAME, columns - OTHERS);
  return figures.map((figure) =>
    [
      padded(shortLine(subjectOf(figure), name), name),
      padded(bothUnits(figure), WIDTHS.value),
      (doubtOf(figure) || (figure.state ?? '')).padEnd(WIDTHS.state),
      daysOf(figure, today).padEnd(WIDTHS.age),
      figure.source ? placeOf({ memoId: figure.source.memoId }) : 'worked out',
    ].join(' '),
  );
}

/** "41 figures"; after typing how many of them are found, and by what. */
export function findLine(state: ScreenState): string {
  const { book, find } = state;
  if (!book) return 'Reading the figures.';
  const found = foundFigures(state).length;
  const count = `${found} ${found === 1 ? 'figure' : 'figures'}${book.isPart ? ' so far' : ''}`;
  return find.trim() === '' ? count : `${count} with "${oneLine(find)}" (Esc shows all)`;
}

/** The chosen figure in a few phrases: everything that a narrow row leaves out. */
export function figureWords(figure: ListedFigure, today: string): string {
  const { source, state } = figure;
  const told = source
    ? [placeOf(source), ageOf(figure, today), ...(source.quote ? [`"${source.quote}"`] : [])]
    : ['worked out'];
  const words = [bothUnits(figure), doubtOf(figure), state ?? '', ...told].filter(Boolean);
  return oneLine(`${subjectOf(figure)}: ${words.join(', ')}`);
}

/** What is shown where no figure is listed. */
export function noFigure({ book, find }: { readonly book?: FigureBook | undefined; readonly find: string }) {
  if (!book) return '';
  return find.trim() === '' ? 'No figure stands yet.' : 'No figure has these words in its name.';
}
