import type { Quantity } from '../language/notes.ts';
import { baseUnit } from './base-units.ts';
import { type Evaluated, type Evaluation, evaluate } from './evaluate.ts';
import { isFall, shareOfFall } from './falls.ts';
import { readFormula } from './formula.ts';
import { nameOfSlot } from './formulas.ts';
import type { FormulaRow, ModelReader } from './rows.ts';
import { inUnit, unitKind } from './units.ts';
import type { Tolerance } from './views.ts';

/** Works out what a formula gives now. */
export function workOut(
  reader: ModelReader,
  formula: Pick<FormulaRow, 'expression'>,
  region?: string,
): Evaluation {
  const read = readFormula(formula.expression);
  if (!read.ok) return { ok: false, kind: 'unknown', what: read.why };
  return evaluate(
    read.formula,
    (slot) => {
      const row = reader.standing(slot);
      if (!row) return undefined;
      const tolerance = row.tolerance;
      // A fall of one in forty stands as 40; what is reckoned with it wants the share.
      if (isFall(nameOfSlot(reader, slot), row)) return { value: shareOfFall(row.value), unit: row.unit };
      return {
        value: row.value,
        unit: row.unit,
        // How finely a figure was said is no tolerance of the part.
        ...(tolerance && tolerance.from !== 'precision' ? { tolerance: spanIn(tolerance, row.unit) } : {}),
      };
    },
    region,
  );
}

/** The size of a tolerance in another unit of the same kind; nought where the kinds differ. */
export function spanIn(tolerance: Quantity, unit: string): number {
  const [from, to] = [unitKind(tolerance.unit), unitKind(unit)];
  return from && to && from.kind === to.kind ? tolerance.value * from.factor.div(to.factor).valueOf() : 0;
}

/** What a formula gives now, in the unit that its figure was said in; undefined when it cannot be worked out. */
export function workedOut(reader: ModelReader, formula: FormulaRow, region?: string): Quantity | undefined {
  const result = workOut(reader, formula, region);
  const { unit } = formula.was;
  if (!result.ok || unitKind(unit, region)?.kind !== result.value.exact.kind) return undefined;
  return { value: inUnit(result.value.exact, unit, region).valueOf(), unit };
}

/** Independent parts from which root-sum-square says something. Common practice, no source. */
const INDEPENDENT_PARTS = 3;

/** The tolerance that a result has from its inputs, in a unit; undefined when none of them has a stated one. */
export function stackUp(evaluated: Evaluated, unit: string, region?: string): Tolerance | undefined {
  const factor = unitKind(unit, region)?.factor.valueOf();
  if (factor === undefined || evaluated.worstCase === 0) return undefined;
  const rss =
    evaluated.toleranced >= INDEPENDENT_PARTS ? { rootSumSquare: evaluated.rootSumSquare / factor } : {};
  return { value: evaluated.worstCase / factor, unit, from: 'formula', ...rss };
}

/** A result in the unit that is wanted, else in that of its first input, else in the base unit of its kind. */
export function inPlainUnit({ exact, unit: own }: Evaluated, wanted: string, region?: string): Quantity {
  const fits = (unit: string) => unitKind(unit, region)?.kind === exact.kind;
  const unit = [wanted, own].find(fits) ?? baseUnit(exact.kind);
  return fits(unit)
    ? { value: inUnit(exact, unit, region).valueOf(), unit }
    : { value: exact.base.valueOf(), unit };
}
