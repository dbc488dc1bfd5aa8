/**
 * Reads the fall that something has to have, and how steep it may be: "the drain has to fall one in forty over 3
 * metres", "the ramp can't be steeper than one in twelve, it's 300 up over 3600".
 */
import { figuresIn, type Line } from '../kept/scene.ts';
import type { CheckNote, FigureNote } from '../notes.ts';
import { figuresNear, reading, wordsAround } from './figure-names.ts';
import { metres } from './metres.ts';
import { type CheckScene, checkNote, figuresOf, input, written } from './spoken-check.ts';

const FALLS =
  / (?:fall|falls|falling|drop|drops|slope|slopes|drain|drains|grade|gradient|run down|runs down|pitch) /;
const WANTED =
  / (?:has to|have to|has got to|'s got to|'ve got to|got to|must|needs?|wants?|should|ought to|supposed to|at least|minimum|no less than) /;
/** What drops along a cable. */
const VOLTS = / (?:volts?|voltage|amps?|cable) /;
const STEEPER = / (?:no |n't be |[a-z]+n't be |not be |never )?(?:any )?(?:steeper than|more than) /;
/** What there is of it: "I've only got forty", "there's sixty of drop". */
const THERE = / (?:only got|got|have|'ve got|there is|there 's|leaves me|leaves|only have|only) (?:about )?$/;
/** A fall as so much for each measure of the run: "12 mil a metre". */
const PER = /^ # (?:(?:of )?(?:fall|drop) )?(?:a|per|to the|in a|every|for every) (metre|meter|foot|yard) /;
const UNITS: Readonly<Record<string, string>> = { metre: 'm', meter: 'm', foot: 'ft', yard: 'yd' };

/** The fall or the steepness that one sentence asks for. */
export function fallIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  if (line.asks || figuresIn(scene, line).length === 0) return [];
  if (/ (?:if|unless|was|were|had) /.test(line.words)) return [];
  return STEEPER.test(line.words) ? steepestIn(scene, line) : fallWanted(scene, line);
}

function fallWanted(scene: CheckScene, line: Line): readonly CheckNote[] {
  if (!FALLS.test(line.words) || !WANTED.test(line.words) || VOLTS.test(line.words)) return [];
  const lengths = figuresNear(scene, line, 'length').filter(({ limit }) => limit === undefined);
  const fall = oneIn(scene, line) ?? perMeasure(scene, line);
  if (!fall) return [];
  const others = lengths.filter((one) => one !== fall.figure);
  const inLine = (figure: FigureNote) => figure.span.start >= line.start && figure.span.end <= line.end;
  const drop = others.find((one) => inLine(one) && THERE.test(wordsAround(scene, line, one)[0]));
  const isOfIt = (one: FigureNote) => inLine(one) || one.item === fall.figure.item;
  const run = others.find((one) => one !== drop && isOfIt(one) && metres(one) >= LEAST_RUN);
  if (!run) return [];
  const inputs = [
    reading(scene, 'run', run),
    input('fall', fall.expression, fall.figure.item === 'unnamed' ? undefined : fall.figure.item),
    ...(drop ? [reading(scene, 'drop', drop)] : []),
  ];
  return [checkNote(scene, line, { check: 'fall over a run', inputs })];
}

interface Fall {
  readonly figure: FigureNote;
  readonly expression: string;
}

/** "One in forty", "two and a half percent". */
function oneIn(scene: CheckScene, line: Line): Fall | undefined {
  const all = figuresOf(scene, line, 'ratio').concat(figuresOf(scene, line, 'count'));
  for (const figure of all) {
    if (figure.unit === '%' && figure.value < 50) return { figure, expression: written(figure) };
    const said = scene.text.slice(Math.max(0, figure.span.start - 8), figure.span.end);
    const isFall = /\b(?:one|1) in \S*/i.test(said) || figure.dimension === 'ratio';
    if (figure.unit === '1' && isFall && figure.value >= 2)
      return { figure, expression: `1/${figure.value}` };
  }
  return undefined;
}

/** "12 mil a metre", "a quarter inch per foot". */
function perMeasure(scene: CheckScene, line: Line): Fall | undefined {
  for (const figure of figuresOf(scene, line, 'length')) {
    const per = PER.exec(wordsAround(scene, line, figure)[1])?.[1];
    if (per !== undefined) return { figure, expression: `${written(figure)} / (1 ${UNITS[per] ?? 'm'})` };
  }
  return undefined;
}

/** Shorter ones are the drop. */
const LEAST_RUN = 0.3;

const RISE = / (?:rise|rises|up|high|climbs?|of rise|risen) /;

/** "No steeper than one in twelve, it's 300 up over 3600": what is smaller is the rise. */
function steepestIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const steepest = oneIn(scene, line);
  if (!steepest || !/ (?:steep|steeper|ramp|slope|stairs?|gradient|climb|pitch|grade) /.test(line.words))
    return [];
  const lengths = figuresNear(scene, line, 'length').filter((one) => one !== steepest.figure);
  const [first, second] = lengths;
  if (!first || !second || !(RISE.test(line.words) || / (?:over|along|run) /.test(line.words))) return [];
  const [rise, run] = metres(first) <= metres(second) ? [first, second] : [second, first];
  const inputs = [
    reading(scene, 'rise', rise),
    reading(scene, 'run', run),
    input('steepest', steepest.expression),
  ];
  return [checkNote(scene, line, { check: 'slope', inputs })];
}
