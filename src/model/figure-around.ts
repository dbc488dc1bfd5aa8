/** One figure at length: with its history, what it is worked out from, what hangs on it, its limits and checks. */
import type { Dimension } from '../language/notes.ts';
import { type CheckView, checkViews } from './checks/check-views.ts';
import { listedFigure, standingFigure } from './project-views.ts';
import type { ProjectRows, Slot, StandingRow } from './rows.ts';
import { slotOf } from './rows.ts';
import type { ListedFigure, StandingFigure } from './views.ts';

/** A figure with those behind it: what it is worked out from, or what hangs on it. */
export interface FigureBranch {
  readonly figure: ListedFigure;
  readonly next: readonly FigureBranch[];
}

export interface FigureAround {
  readonly figure: StandingFigure;
  /** Figures that its formula reads, each with those behind it. */
  readonly from: readonly FigureBranch[];
  /** Figures whose formulas read it, likewise. */
  readonly onIt: readonly FigureBranch[];
  /** Checks that read it. */
  readonly checks: readonly CheckView[];
}

/** Which figure is meant: a thing has one of each attribute and kind of quantity. */
export interface FigurePlace {
  readonly item: string;
  readonly attribute: StandingFigure['attribute'];
  readonly dimension: Dimension;
}

/** Deeper than this nobody reads on; each figure on the way can be opened by itself. */
const DEEPEST = 5;
/** No more figures are followed: what half of a build hangs on is not read to its end. */
const MOST = 200;

/** The figure in its place; nothing when it does not stand any more. `now` is the instant that checks are shown for. */
export function figureAround(rows: ProjectRows, place: FigurePlace, now?: string): FigureAround | undefined {
  const row = standingAt(rows, place);
  if (!row) return undefined;
  const figure = standingFigure(rows, row);
  const name = `${figure.item} ${figure.attribute}`;
  return {
    figure,
    from: branches(rows, row.slot, (slot) => rows.formula(slot)?.inputs ?? []),
    onIt: branches(rows, row.slot, (slot) => rows.formulasReading(slot).map((formula) => formula.slot)),
    checks: checkViews(rows, undefined, now).filter(({ inputs }) =>
      inputs.some(({ reads }) => reads.some((read) => read.name === name)),
    ),
  };
}

function standingAt(rows: ProjectRows, { item, attribute, dimension }: FigurePlace): StandingRow | undefined {
  const named = rows.all('items').filter(({ name }) => name === item);
  for (const { id } of named) {
    const row = rows.standing(slotOf(id, attribute, dimension));
    if (row) return row;
  }
  return undefined;
}

/** The figures that `next` leads to; one that was met is not followed twice. */
function branches(
  rows: ProjectRows,
  from: Slot,
  next: (slot: Slot) => readonly Slot[],
): readonly FigureBranch[] {
  const met = new Set([from]);
  const walk = (slot: Slot, depth: number): readonly FigureBranch[] => {
    if (depth > DEEPEST) return [];
    return next(slot).flatMap((one): readonly FigureBranch[] => {
      if (met.has(one) || met.size > MOST) return [];
      met.add(one);
      const row = rows.standing(one);
      return row ? [{ figure: listedFigure(rows, row), next: walk(one, depth + 1) }] : [];
    });
  };
  return walk(from, 1);
}
