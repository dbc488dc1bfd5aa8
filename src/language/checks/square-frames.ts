/**
 * Reads diagonals that were measured to see whether something is square: "the frame's 2400 by 1200 and the diagonals are
 * 2683 and 2687". They are held against its sides.
 */
import { figuresIn, type Line } from '../kept/scene.ts';
import type { CheckNote, FigureNote } from '../notes.ts';
import { linesNear, wordsAround } from './figure-names.ts';
import { metres } from './metres.ts';
import { type CheckScene, checkNote, figuresOf, input, written } from './spoken-check.ts';

const DIAGONALS =
  / (?:diagonals?|corner to corner|corner-to-corner|cross corners?|across (?:the|its) corners|opposite corners) /;
/** A word of each way to name them. */
export const namesDiagonal = (word: string): boolean =>
  /^(?:diagonals?|corners?|corner-to-corner)$/.test(word);

/** How far out it may be: "within two mil", "no more than an eighth out". */
const WITHIN = / (?:within|no more than|not more than|less than|under|inside|at most) $/;
const SQUARE = / (?:out|square|of square|difference|of each other) /;

/** The frame that one sentence gives the diagonals of. */
export function squareFrameIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  if (line.asks || !DIAGONALS.test(line.words)) return [];
  const own = figuresOf(scene, line, 'length');
  const allowed = own.find((one) => {
    const [before, from] = wordsAround(scene, line, one);
    return (WITHIN.test(before) || one.bound === 'at-most') && SQUARE.test(from);
  });
  const told = own.filter((one) => one !== allowed);
  const sides = sidesNear(scene, line, told, allowed);
  const [length, width] = sides;
  const diagonals = told.filter((one) => !sides.includes(one) && isDiagonal(one, sides)).slice(0, 2);
  const [first, second] = diagonals;
  if (!length || !width || !first) return [];
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

/**
 * Two sides of one thing, of which another length of the sentence may be the diagonal: in the sentence itself, else in the
 * ones beside it. "4025 and 4031, it's 3600 by 1800": what is told first is no side for that.
 */
function sidesNear(
  scene: CheckScene,
  line: Line,
  told: readonly FigureNote[],
  allowed: FigureNote | undefined,
): readonly FigureNote[] {
  const fits = (figure: FigureNote) =>
    figure.dimension === 'length' && figure.value > 0 && figure !== allowed;
  const pairs = (figures: readonly FigureNote[]) =>
    figures.slice(1).map((second, index) => [figures[index] as FigureNote, second] as const);
  const hasDiagonal = (pair: readonly FigureNote[]) =>
    told.some((one) => !pair.includes(one) && isDiagonal(one, pair));
  const here = pairs(told.filter(fits)).find(hasDiagonal);
  if (here) return here;
  const beside = linesNear(scene, line, 2, 1)
    .filter((one) => one !== line)
    .flatMap((one) => figuresIn(scene, one))
    .filter((figure) => fits(figure) && figure.attribute !== 'thickness');
  return pairs(beside).find(([a, b]) => a.item === b.item && hasDiagonal([a, b])) ?? [];
}

/** Further off the diagonal of a square corner it is another size, or a slip of the tongue. */
const FURTHEST = 0.06;

/** Longer than either side, shorter than both together, and about what a square corner gives. */
function isDiagonal(one: FigureNote, sides: readonly FigureNote[]): boolean {
  const [a = 0, b = 0] = sides.map(metres);
  const square = Math.hypot(a, b);
  return metres(one) > Math.max(a, b) && Math.abs(metres(one) / square - 1) <= FURTHEST;
}
