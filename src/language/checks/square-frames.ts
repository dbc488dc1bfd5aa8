/**
 * Reads diagonals that were measured to see whether something is square: "the frame's 2400 by 1200 and the diagonals are
 * 2683 and 2687". They are held against its sides.
 */
import { figuresIn, type Line } from '../kept/scene.ts';
import type { CheckNote, FigureNote } from '../notes.ts';
import { figuresNear, linesNear, wordsAround } from './figure-names.ts';
import { type CheckScene, checkNote, figuresOf, input, written } from './spoken-check.ts';

const DIAGONALS = / (?:diagonals?|corner to corner|cross corners?|across the corners|one way and) /;
/** How far out it may be: "within two mil", "no more than an eighth out". */
const WITHIN = / (?:within|no more than|not more than|less than|under|inside|at most) $/;
const SQUARE = / (?:out|square|of square|difference|of each other) /;
const METRES: Readonly<Record<string, number>> = { m: 1, ft: 0.3048, in: 0.0254, cm: 0.01, mm: 0.001 };
const metres = ({ value, unit }: FigureNote) => value * (METRES[unit] ?? 0);

/** The frame that one sentence gives the diagonals of. */
export function squareFrameIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  if (line.asks || !DIAGONALS.test(line.words)) return [];
  const own = figuresOf(scene, line, 'length');
  const allowed = own.find((one) => {
    const [before, from] = wordsAround(scene, line, one);
    return (WITHIN.test(before) || one.bound === 'at-most') && SQUARE.test(from);
  });
  const at = line.words.search(DIAGONALS);
  const told = own.filter((one) => one !== allowed);
  const diagonals = told.filter((one) => wordsAround(scene, line, one)[0].length > at).slice(0, 2);
  const sides = sidesNear(scene, line, [...diagonals, ...(allowed ? [allowed] : [])]);
  const [length, width] = sides;
  const [first, second] = diagonals;
  if (!length || !width || !first || !isLonger(diagonals, sides)) return [];
  const of = length.item === 'unnamed' ? undefined : length.item;
  const inputs = [
    input('length', written(length), of),
    input('width', written(width), of),
    input('first diagonal', written(first), of),
    ...(second ? [input('second diagonal', written(second), of)] : []),
    ...(allowed ? [input('allowed', written(allowed))] : []),
  ];
  return [checkNote(scene, line, { check: 'diagonal for square', inputs })];
}

/** Two sides of one thing: in the sentence itself, else in the ones beside it. */
function sidesNear(scene: CheckScene, line: Line, not: readonly FigureNote[]): readonly FigureNote[] {
  const fits = (figure: FigureNote) =>
    figure.dimension === 'length' &&
    figure.value > 0 &&
    !not.includes(figure) &&
    figure.attribute !== 'thickness';
  const here = figuresIn(scene, line).filter(fits);
  if (here.length >= 2) return here.slice(0, 2);
  const before = linesNear(scene, line, 2, 1)
    .flatMap((one) => figuresIn(scene, one))
    .filter(fits);
  const item = before.find(
    (one) => before.filter(({ item: other }) => other === one.item).length === 2,
  )?.item;
  return item === undefined
    ? figuresNear(scene, line, 'length').filter(fits).slice(0, 0)
    : before.filter((one) => one.item === item);
}

/** A diagonal is longer than either side, and shorter than both together. */
const isLonger = (diagonals: readonly FigureNote[], sides: readonly FigureNote[]): boolean => {
  const [a = 0, b = 0] = sides.map(metres);
  return diagonals.every((one) => metres(one) > Math.max(a, b) && metres(one) < a + b);
};
