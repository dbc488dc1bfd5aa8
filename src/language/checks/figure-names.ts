/** Figures of a memo as inputs of a check: by name, so that a later memo changes the check, or as the plain size. */
import { figuresIn, type Line } from '../kept/scene.ts';
import type { Attribute, FigureNote, SpokenInput } from '../notes.ts';
import { type CheckScene, input, wordOfFigure, written } from './spoken-check.ts';

/** So many sentences on either side belong to what one sentence asks for. */
const NEAR = 2;

/** The sentences around one, with it. */
export const linesNear = (
  { lines }: CheckScene,
  { index }: Line,
  before = NEAR,
  after = NEAR,
): readonly Line[] => lines.slice(Math.max(0, index - before), index + after + 1);

/** Figures of a line and those beside it, its own first. */
export function figuresNear(
  scene: CheckScene,
  line: Line,
  dimension: FigureNote['dimension'],
): readonly FigureNote[] {
  const others = linesNear(scene, line).filter((one) => one !== line);
  return [line, ...others]
    .flatMap((one) => figuresIn(scene, one))
    .filter((figure) => figure.dimension === dimension && figure.value > 0);
}

/** What is measured is not told by these: the next one said of the thing may be another size. */
const VAGUE: ReadonlySet<Attribute> = new Set(['other', 'size', 'offset', 'diameter', 'clearance', 'gap']);

/**
 * An input that reads a figure: by what it is measured of, where that names one figure of this memo and no bound; else
 * the size as it was said.
 */
export function reading({ figures }: CheckScene, name: string, figure: FigureNote): SpokenInput {
  const { item, attribute, dimension, bound } = figure;
  const alike = figures.filter(
    (one) => one.item === item && one.attribute === attribute && one.dimension === dimension,
  );
  const isNamed = item !== 'unnamed' && !VAGUE.has(attribute);
  if (isNamed && alike.length === 1 && bound === 'exact') return input(name, `${item} ${attribute}`);
  return input(name, written(figure), item === 'unnamed' ? undefined : item);
}

/** Words of a line before a figure, and from it on, each with a space at both ends; the figure is `#`. */
export function wordsAround(
  scene: CheckScene,
  line: Line,
  figure: FigureNote,
): readonly [before: string, from: string] {
  const at = line.starts[wordOfFigure(scene, figure) - line.first] ?? 0;
  return [line.words.slice(0, at), ` ${line.words.slice(at)}`];
}
