import { evaluate, type Input } from '../../src/model/evaluate.ts';
import { readFormula } from '../../src/model/formula.ts';
import { inUnit } from '../../src/model/units.ts';

/** Works the text of a formula out over figures by name: its value in a unit, else what was wrong with it, in words. */
export const workedOver =
  (figures: Readonly<Record<string, Input>>) =>
  (text: string, unit: string): number | string => {
    const read = readFormula(text);
    if (!read.ok) return read.why;
    const result = evaluate(read.formula, (name) => figures[name]);
    if (!result.ok) return `${result.kind}: ${result.what}`;
    return inUnit(result.value.exact, unit).valueOf();
  };
