/** What may be off a figure, in words, with what a worst case does not count. */
import type { StandingFigure, Tolerance } from '../model/views.ts';
import { amountText } from './quantity-text.ts';
import { oneLine } from './words.ts';

/** "1 mm (worst case)", "2 mm (said)". */
export function worstCaseText(tolerance: Tolerance): string {
  return `${amountText(tolerance)} (${tolerance.from === 'formula' ? 'worst case' : tolerance.from})`;
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
