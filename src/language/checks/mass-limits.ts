/**
 * Reads the most that everything may weigh: "all of it has to stay under 400 kilos", "the payload is 620". What one
 * thing may weigh is a limit on it, and no sum.
 */
import type { Line } from '../kept/scene.ts';
import type { CheckNote, FigureNote } from '../notes.ts';
import { type CheckScene, checkNote, figuresOf, input, wordOfFigure, written } from './spoken-check.ts';

const WHOLE =
  / (?:it all|all of (?:it|this|that)|everything|the (?:whole )?(?:lot|build|conversion|fit-out|fitout|fit out|thing)|all (?:in|up|told|together)|altogether|in total|all the (?:kit|furniture|gear|ballast|stuff|batteries and tanks)|between them|fully loaded|loaded up) /;
/** Names of a most that is one by itself. */
const LIMITS =
  / (?:payload|weight limit|weight allowance|weight budget|gross weight|gross vehicle weight|gvw|gvm|max weight|maximum weight|plated weight|mam|mtplm) (?:is|'s|of|was|left is|works out at|comes to|:|,)? ?#/;
/** What is left to use of it, and what all of it may come to. */
const TO_USE =
  / (?:got|have|'ve|only|leaves (?:me|us)|gives (?:me|us)) # (?:left )?(?:to (?:play with|use up)|for (?:everything|(?:the|this) whole (?:lot|build|conversion|fit-out|thing|job)))(?= )/;
/** What is left of it, or was weighed, is no limit. */
const NO_LIMIT = / (?:already|so far|weighed|weighbridge|used|leaves|left over|if|would|might|could have) /;

/** The limit on the whole weight that one sentence gives. */
export function massLimitIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const figures = line.asks || NO_LIMIT.test(line.words) ? [] : figuresOf(scene, line, 'mass');
  const limit = figures.find((figure) => isWhole(scene, line, figure));
  if (!limit) return [];
  // No part is named: the check takes everything that has a weight, and what gets one later.
  return [checkNote(scene, line, { check: 'running mass', inputs: [input('limit', written(limit))] })];
}

function isWhole(scene: CheckScene, line: Line, figure: FigureNote): boolean {
  if (figure.bound === 'at-most') return WHOLE.test(line.words);
  if (figure.bound !== 'exact') return false;
  const at = line.starts[wordOfFigure(scene, figure) - line.first];
  return [LIMITS, TO_USE].some((way) => {
    const found = way.exec(line.words);
    return found !== null && at === found.index + found[0].indexOf('#');
  });
}
