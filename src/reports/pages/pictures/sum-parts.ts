/** A formula that adds lengths up, as parts with their signs: what a stack-up is drawn from. */
import { type Formula, readFormula } from '../../../model/formula.ts';
import { convert } from '../../../model/units.ts';
import type { StandingFigure } from '../../../model/views.ts';

export interface SumPart {
  /** In the words of the formula: "2 x batten thickness". */
  readonly words: string;
  /** In the unit that was asked for, above nought. */
  readonly size: number;
  readonly sign: 1 | -1;
  /** How many equal ones it is made of. */
  readonly count: number;
  /** What stands behind it, where that is a figure. */
  readonly figure?: StandingFigure;
}

type Term = Omit<SumPart, 'sign'>;

/**
 * The parts of a formula in their order, sizes in `unit`; nothing where it is no sum of two lengths or more, or where
 * one of them is not known.
 */
export function sumParts(
  text: string,
  unit: string,
  figureNamed: (name: string) => StandingFigure | undefined,
): readonly SumPart[] | undefined {
  const reading = readFormula(text);
  if (!reading.ok) return undefined;
  const parts: SumPart[] = [];
  const isSum = gather(reading.formula, 1, parts, (term) => termOf(term, unit, figureNamed));
  return isSum && parts.length > 1 && parts.some(({ figure }) => figure !== undefined) ? parts : undefined;
}

function gather(
  formula: Formula,
  sign: 1 | -1,
  into: SumPart[],
  read: (term: Formula) => Term | undefined,
): boolean {
  const other = sign === 1 ? -1 : 1;
  if (formula.kind === 'sum' || formula.kind === 'difference') {
    const right = formula.kind === 'sum' ? sign : other;
    return gather(formula.left, sign, into, read) && gather(formula.right, right, into, read);
  }
  if (formula.kind === 'minus') return gather(formula.of, other, into, read);
  const term = read(formula);
  if (!term || term.size === 0) return term !== undefined;
  into.push({ ...term, size: Math.abs(term.size), sign: term.size < 0 ? other : sign });
  return true;
}

function termOf(
  formula: Formula,
  unit: string,
  figureNamed: (name: string) => StandingFigure | undefined,
): Term | undefined {
  if (formula.kind === 'number') {
    if (formula.unit === undefined) return undefined;
    const size = convert({ value: formula.value.valueOf(), unit: formula.unit }, unit)?.value;
    return size === undefined
      ? undefined
      : { words: `${formula.value.valueOf()} ${formula.unit}`, size, count: 1 };
  }
  if (formula.kind === 'name') {
    const figure = figureNamed(formula.name);
    const size = figure && convert(figure, unit)?.value;
    return figure === undefined || size === undefined
      ? undefined
      : { words: formula.name, size, count: 1, figure };
  }
  if (formula.kind === 'product' || formula.kind === 'quotient') return scaled(formula, unit, figureNamed);
  return undefined;
}

/** A length times or by a plain number. */
function scaled(
  { kind, left, right }: Extract<Formula, { left: Formula }>,
  unit: string,
  figureNamed: (name: string) => StandingFigure | undefined,
): Term | undefined {
  const plain = (one: Formula) =>
    one.kind === 'number' && one.unit === undefined ? one.value.valueOf() : undefined;
  const [before, after] = [plain(left), plain(right)];
  const of = before !== undefined && kind === 'product' ? right : left;
  const factor = of === right ? before : after;
  if (factor === undefined || factor === 0) return undefined;
  const term = termOf(of, unit, figureNamed);
  if (!term) return undefined;
  const times = kind === 'product' ? factor : 1 / factor;
  const isCount = kind === 'product' && Number.isInteger(factor) && factor > 0;
  return {
    ...term,
    words: kind === 'product' ? `${factor} x ${term.words}` : `${term.words} / ${factor}`,
    size: term.size * times,
    count: isCount ? term.count * factor : 1,
  };
}
