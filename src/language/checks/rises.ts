/**
 * Reads what a slope of a known angle rises or runs to: "the roof's at 35 degrees and the run is 1200, how much does it
 * rise". Two of its sizes without an angle are another sum.
 */
import { figuresIn, type Line } from '../kept/scene.ts';
import type { CheckNote, FigureNote } from '../notes.ts';
import { linesNear, wordsAround } from './figure-names.ts';
import { type CheckScene, checkNote, figuresOf, input, written } from './spoken-check.ts';

/** Somebody wants the other two sizes. */
const ASKED =
  / (?:how (?:high|far|much|long|tall)|what(?: is|'s| does| do|'ll| will)?|work out|give me|need to know|tell me|so it (?:rises|goes up|climbs)|which makes|that makes) (?:\S+ ){0,7}?(?:rises?|goings?|run|runs|reach|reaches|height|high|up|climbs?|long|length|rafters?|far|out|drop|drops|fall|falls) /;
/** "Pitches at 30 degrees over a run of 1100": the sum is what is told with. */
const OVER =
  / (?:pitch(?:es|ed)?|slopes?|rises?|leans?|climbs?|falls?|angle) (?:\S+ ){0,4}?# (?:degrees? )?over (?:a (?:run|span|base|going) of )?(?:#) /;
const SLOPES =
  / (?:roof|rafter|rafters|pitch|pitched|pitches|slope|slopes|sloped|stairs?|stairway|steps|ladder|gangway|gangplank|ramp|companionway|rake|rakes|raked|lean|leans|leaning|hip|ridge|brace|strut|gable|angle) /;
const NOT = / (?:was|were|n't|not|never|if|unless) /;

/** What a length is, by the words around it. */
const RUN_BEFORE =
  / (?:run|going|over|base|span|out|along the (?:floor|ground|flat)|level|horizontal)(?: (?:is|of|'s|are|about|a|the|it|by))* $/;
const RUN_AFTER = /^ # (?:of )?(?:run|going|out|along the (?:floor|ground|flat)|level|on the flat|across) /;
const RISE_BEFORE = / (?:rise|rises|up|climbs?|height|gains?)(?: (?:is|of|'s|are|about|a|the|it|by))* $/;
const RISE_AFTER = /^ # (?:of )?(?:rise|high|up|tall|of height) /;

/** The slope of which one sentence asks the sizes. */
export function riseIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const near = linesNear(scene, line, 1, 0);
  const told = near.findLast((one) => anglesOf(scene, one).length > 0);
  if (!told) return [];
  if (!(ASKED.test(line.words) || OVER.test(line.words)) || NOT.test(line.words)) return [];
  const [angle, more] = anglesOf(scene, told);
  if (!angle || more || !near.some(({ words }) => SLOPES.test(words))) return [];
  const own = figuresOf(scene, told, 'length');
  const at = own.length > 0 ? told : line;
  const lengths = own.length > 0 ? own : figuresOf(scene, line, 'length');
  const [size, other] = lengths;
  if (!size || other) return [];
  const of = size.item === 'unnamed' ? undefined : size.item;
  const inputs = [input('angle', written(angle)), input(sideOf(scene, at, size), written(size), of)];
  return [checkNote(scene, line, { check: 'rise and run', inputs })];
}

const anglesOf = (scene: CheckScene, line: Line): readonly FigureNote[] =>
  figuresIn(scene, line).filter(({ dimension, value }) => dimension === 'angle' && value > 0 && value < 90);

function sideOf(scene: CheckScene, line: Line, figure: FigureNote): 'run' | 'rise' | 'slope length' {
  const [before, from] = wordsAround(scene, line, figure);
  if (RUN_BEFORE.test(` ${before}`) || RUN_AFTER.test(from)) return 'run';
  if (RISE_BEFORE.test(` ${before}`) || RISE_AFTER.test(from)) return 'rise';
  return 'slope length';
}
