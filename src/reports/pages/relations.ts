/** Which figure is worked out from which. Two figures may go by one name: "door opening width", clear and as built. */
import type { StandingFigure } from '../../model/views.ts';
import { grouped } from './grouped.ts';
import { nameOfFigure } from './site-map.ts';

export interface Relations {
  /** Figures that the formula of this one reads. */
  readonly comesFrom: (figure: StandingFigure) => readonly StandingFigure[];
  /** Figures whose formulas read this one. */
  readonly hangOn: (figure: StandingFigure) => readonly StandingFigure[];
  /** What a name in the formula of `reader` stands for. */
  readonly named: (name: string, reader: StandingFigure) => StandingFigure | undefined;
}

/** As the formula names them; what goes by a shorter name there comes last. */
function inFormulaOrder(formula: string, some: readonly StandingFigure[]): readonly StandingFigure[] {
  const words = formula.toLowerCase();
  const place = (one: StandingFigure) => {
    const at = words.indexOf(nameOfFigure(one).toLowerCase());
    return at < 0 ? words.length : at;
  };
  return [...some].sort((a, b) => place(a) - place(b));
}

export function relationsOf(figures: readonly StandingFigure[]): Relations {
  const byName = grouped(figures, nameOfFigure);
  const readers = new Map<string, StandingFigure[]>();
  for (const figure of figures)
    for (const name of figure.dependents) readers.set(name, [...(readers.get(name) ?? []), figure]);
  const comesFrom = (figure: StandingFigure) =>
    figure.formula === undefined
      ? []
      : inFormulaOrder(
          figure.formula,
          (readers.get(nameOfFigure(figure)) ?? []).filter((one) => one !== figure),
        );
  return {
    comesFrom,
    hangOn: (figure) =>
      figure.dependents.flatMap((name) =>
        (byName.get(name) ?? []).filter((one) => one !== figure && one.formula !== undefined),
      ),
    named: (name, reader) =>
      comesFrom(reader).find((one) => nameOfFigure(one) === name) ??
      byName.get(name)?.find((one) => one !== reader),
  };
}
