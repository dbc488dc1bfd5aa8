/** Two sizes that belong together: "2440 by 1220", of a third one behind them only the first two. */
import type { Line } from '../kept/scene.ts';
import type { FigureNote } from '../notes.ts';
import { type CheckScene, figuresOf, wordOfFigure, wordsOf } from './spoken-check.ts';

export interface SizePair {
  readonly first: FigureNote;
  readonly second: FigureNote;
  /** Words that stand for the two. */
  readonly from: number;
  readonly to: number;
}

/** The pairs of a line, in order of speech. */
export function sizePairs(scene: CheckScene, line: Line): readonly SizePair[] {
  const lengths = figuresOf(scene, line, 'length');
  const pairs: SizePair[] = [];
  for (const [index, second] of lengths.entries()) {
    const first = lengths[index - 1];
    if (!first || pairs.at(-1)?.second === first) continue;
    const [from, to] = [wordOfFigure(scene, first), wordOfFigure(scene, second)];
    if (from >= 0 && /^(?:by|x|by about)$/.test(wordsOf(scene, from + 1, to)))
      pairs.push({ first, second, from, to });
  }
  return pairs;
}
