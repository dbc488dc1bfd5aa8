import type { Quantity } from '../language/notes.ts';
import { type Evaluation, evaluate } from './evaluate.ts';
import { readFormula } from './formula.ts';
import type { FormulaRow, ModelReader } from './rows.ts';
import { inUnit, unitKind } from './units.ts';

/** Works out what a formula gives now. */
export function workOut(reader: ModelReader, formula: FormulaRow, region?: string): Evaluation {
  const read = readFormula(formula.expression);
  if (!read.ok) return { ok: false, kind: 'unknown', what: read.why };
  return evaluate(
    read.formula,
    (slot) => {
      const row = reader.standing(slot);
      if (!row) return undefined;
      const tolerance = row.tolerance;
      return {
        value: row.value,
        unit: row.unit,
        ...(tolerance ? { tolerance: spanIn(tolerance, row.unit) } : {}),
      };
    },
    region,
  );
}

function spanIn(tolerance: Quantity, unit: string): number {
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
