/** What may be off a figure, in words, with what a worst case does not count. */
import type { StandingFigure, Tolerance } from '../model/views.ts';
import { amountText, quantityText } from './quantity-text.ts';
import { oneLine } from './words.ts';

const FROM: Readonly<Record<Tolerance['from'], string>> = {
  said: 'said',
  project: 'project',
  precision: 'how finely it was said',
  formula: 'worst case',
};

/** The amount alone. What follows from how finely a figure was said has two figures: "2.3 mm", not "2.288 mm". */
export function allowanceText({ value, unit, from }: Tolerance): string {
  if (from !== 'precision') return amountText({ value, unit });
  return quantityText({ value: Number(Math.abs(value).toPrecision(2)), unit });
}

/** "1 mm (worst case)", "2 mm (said)", "2.3 mm (how finely it was said)". */
export function worstCaseText(tolerance: Tolerance): string {
  return `${allowanceText(tolerance)} (${FROM[tolerance.from]})`;
}

/** "0.27 mm (root-sum-square of its parts)"; undefined where it says nothing more than the worst case. */
export function rootSumSquareText({ rootSumSquare, unit }: Tolerance): string | undefined {
  if (rootSumSquare === undefined) return undefined;
  return `${amountText({ value: rootSumSquare, unit })} (root-sum-square of its parts)`;
}

/** "without shelf depth, lip width: no tolerance was stated for them"; undefined where every part counts. */
export function leftOutText({ leftOut = [] }: Tolerance): string | undefined {
  if (leftOut.length === 0) return undefined;
  const them = leftOut.length === 1 ? 'it' : 'them';
  return `without ${leftOut.map(oneLine).join(', ')}: no tolerance was stated for ${them}`;
}

/** All of it in a line: "1 mm (worst case), without shelf depth: no tolerance was stated for it". */
export function toleranceText(tolerance: NonNullable<StandingFigure['tolerance']>): string {
  return [worstCaseText(tolerance), rootSumSquareText(tolerance), leftOutText(tolerance)]
    .filter((words) => words !== undefined)
    .join(', ');
}
