/**
 * Reads what layers may come to together: "the floor build-up can't be more than 60: 25 of insulation, 18 ply and 4 of
 * cork". What one of them may be is a limit on it.
 */
import { figuresIn, type Line } from '../kept/scene.ts';
import type { CheckNote, FigureNote } from '../notes.ts';
import { reading, wordsAround } from './figure-names.ts';
import { type CheckScene, checkNote, figuresOf, input, wordOfFigure, written } from './spoken-check.ts';

const TOGETHER =
  / (?:build ?up|build-up|buildup|sandwich|stack|stack-up|stackup|layers|all of (?:that|it|them)|together|altogether|plus|in total|the lot|all told|make-up|makeup|all up) /;
/** A word of each of these. */
export const tellsTogether = (word: string): boolean =>
  /^(?:build|build-?up|sandwich|stack|stack-?up|layers|all|together|altogether|plus|total|lot|make-?up)$/.test(
    word,
  );

/** What there is for it: "I've only got 45", "it has to go in 45". */
const ROOM_FOR_IT =
  / (?:only (?:got|have|has)|(?:has|have|'s got|'ve got|got|needs|need) to (?:go|fit|sit|get) (?:in|into|inside|under|within)(?: the| a| that)?) (?:about )?$/;
const MOST_LAYERS = 12;

/** The layers that one sentence holds against a limit. */
export function buildUpIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  if (line.asks || !TOGETHER.test(line.words) || / (?:if|unless) /.test(line.words)) return [];
  const lengths = figuresOf(scene, line, 'length');
  const limit =
    lengths.find(({ bound }) => bound === 'at-most') ??
    lengths.find((one) => ROOM_FOR_IT.test(wordsAround(scene, line, one)[0]));
  if (!limit) return [];
  const layers = layersOf(scene, line, limit);
  if (layers.length < 2) return [];
  const inputs = [
    ...layers.slice(0, MOST_LAYERS).map((one) => reading(scene, 'layers', one)),
    input('limit', written(limit)),
  ];
  return [checkNote(scene, line, { check: 'stack-up', inputs })];
}

/** What it is made of: thicknesses in its sentence, else in the next one, which follows from it. */
function layersOf(scene: CheckScene, line: Line, limit: FigureNote): readonly FigureNote[] {
  const next = scene.lines[line.index + 1];
  const isLayer = (figure: FigureNote) =>
    figure !== limit &&
    figure.dimension === 'length' &&
    figure.value > 0 &&
    /^(?:thickness|height|depth|size)$/.test(figure.attribute);
  const here = figuresIn(scene, line).filter(isLayer);
  const told = here.length > 0 || !next ? here : figuresIn(scene, next).filter(isLayer);
  return told.filter((figure) => wordOfFigure(scene, figure) >= 0);
}
