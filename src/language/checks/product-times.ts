/**
 * Reads what a product's data sheet is said to give: "full cure is seven days at twenty", "recoat after four hours, no
 * more than twenty four", "don't use it under ten degrees". What happened to a coat that is on already is left.
 */
import { productIn } from '../kept/clocks.ts';
import type { Line } from '../kept/scene.ts';
import type { CheckNote, FigureNote, SpokenInput } from '../notes.ts';
import {
  type CheckScene,
  checkNote,
  figuresOf,
  input,
  type Spoken,
  wordOfFigure,
  written,
} from './spoken-check.ts';

/** Told of what was: nothing that a data sheet says. */
const PAST =
  / (?:was|were|had|did|took|cured|recoated|overcoated|dried|left it|been|yesterday|last (?:night|week|time)|this morning|went off|'d|ago|since|so far|already|still|if) /;

const CURE =
  / (?:full cure|cure time|curing time|cures? (?:fully |properly |right )?(?:in|is|takes|after|:|,)|to (?:fully )?cure|fully cured (?:after|in|at)|(?:before|until|till) (?:it|that|this) ?(?:'s|is) (?:fully |properly |really )?(?:cured|hard)|full strength|to cure|hard enough|cure is|cure 's|(?:takes|needs|wants) # to (?:cure|harden|go hard)) /;
/** Dry is not cured, so that it is kept apart. */
const DRY =
  / (?:drying time|touch dry (?:in|after|is)|(?:takes|needs|wants) # to (?:dry|be dry)|(?:before|until|till) (?:it|that|this) ?(?:'s|is) (?:fully |properly |really )?dry) /;
const RECOAT =
  / (?:(?:can|may|must|should) be (?:recoated|re-coated|overcoated|over-coated)|recoat|re-coat|recoating|overcoat|overcoating|over-coat|next coat|second coat|another coat|recoats|coats) /;
const POT = / (?:pot life|pot-life|potlife|working time|work time|open time) /;

/** Before the longest wait. */
const LATEST =
  / (?:no more than|not more than|no later than|not later than|within|before|up to|maximum|max|at most|inside|under|less than|but not past|not past|latest) (?:of |is |'s )?$/;

/** What one sentence says that a product's data sheet gives. */
export function productTimesIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  if (line.asks) return [];
  const warmth = warmthIn(scene, line);
  return [...timesIn(scene, line), ...(warmth ? [warmth] : [])].map((spoken) => {
    const of = productOf(scene, line);
    const inputs = of === undefined ? spoken.inputs : spoken.inputs.map((one) => ({ ...one, of }));
    return checkNote(scene, line, { ...spoken, inputs });
  });
}

/** So many sentences back a product may have been named that a data sheet's figure is of. */
const LOOK_BACK = 4;

/** The product that a sentence is about: named in it, else the last one named shortly before. */
function productOf(scene: CheckScene, line: Line): string | undefined {
  const near = scene.lines.slice(Math.max(0, line.index - LOOK_BACK), line.index + 1);
  return near.map((one) => productIn(scene, one)).findLast((name) => name !== undefined);
}

/** Each kind of time that a sentence gives, with its own figure: "24 hours to dry, pot life is thirty minutes". */
function timesIn(scene: CheckScene, line: Line): readonly Spoken[] {
  const times = figuresOf(scene, line, 'time');
  if (times.length === 0) return [];
  const words = line.words;
  const warmth = sheetWarmth(scene, line);
  const found: Spoken[] = [];
  const pot = PAST.test(words) ? undefined : timeBeside(scene, line, times, POT);
  if (pot) found.push({ check: 'pot life', inputs: [input('time', written(pot)), ...warmth] });
  const others = times.filter((one) => one !== pot);
  if (RECOAT.test(words) && !PAST.test(words.replace(RECOAT, ' '))) {
    const window = windowOf(scene, line, others);
    if (window.length > 0) return [...found, { check: 'recoat window', inputs: [...window, ...warmth] }];
  }
  // "Fully cured after seven days" tells of no coat that is on.
  if (PAST.test(words.replace(CURE, ' ').replace(DRY, ' '))) return found;
  const [check, way] = CURE.test(words) ? (['cure time', CURE] as const) : (['drying time', DRY] as const);
  const time = timeBeside(scene, line, others, way);
  return time ? [...found, { check, inputs: [input('time', written(time)), ...warmth] }] : found;
}

/** The time of what a sentence names: within its words, else the first one after them, else the last one before. */
function timeBeside(
  scene: CheckScene,
  line: Line,
  times: readonly FigureNote[],
  way: RegExp,
): FigureNote | undefined {
  const found = way.exec(line.words);
  if (!found) return undefined;
  const [from, to] = [found.index, found.index + found[0].length];
  const at = (figure: FigureNote) => line.starts[wordOfFigure(scene, figure) - line.first] ?? -1;
  return (
    times.find((one) => at(one) >= from && at(one) < to) ??
    times.find((one) => at(one) >= to) ??
    times.findLast((one) => at(one) < from)
  );
}

/** The temperature that the time is given for: "at twenty", not one that must be passed. */
function sheetWarmth(scene: CheckScene, line: Line): readonly SpokenInput[] {
  const at = figuresOf(scene, line, 'temperature').find(
    (figure) => figure.bound === 'exact' && / at $/.test(before(scene, line, figure)),
  );
  return at ? [input('data sheet temperature', written(at))] : [];
}

/** Words of the line before a figure, with a space at each end. */
function before(scene: CheckScene, line: Line, figure: FigureNote): string {
  return line.words.slice(0, line.starts[wordOfFigure(scene, figure) - line.first] ?? 0);
}

/** Shortest and longest wait, as one range or as two times. */
function windowOf(scene: CheckScene, line: Line, times: readonly FigureNote[]): readonly SpokenInput[] {
  const both = times.find(({ bound, high }) => bound === 'between' && high !== undefined);
  if (both?.high !== undefined) {
    return [
      input('earliest', written(both)),
      input('latest', written({ value: both.high, unit: both.unit })),
    ];
  }
  const isLatest = (figure: FigureNote) =>
    figure.bound === 'at-most' || LATEST.test(before(scene, line, figure));
  const [earliest, latest] = [times.find((figure) => !isLatest(figure)), times.find(isLatest)];
  return [
    ...(earliest ? [input('earliest', written(earliest))] : []),
    ...(latest ? [input('latest', written(latest))] : []),
  ];
}

const USE =
  '(?:use|used|apply|applied|lay|laid|spray|sprayed|put|go|mix|mixed|glue|paint|coat|pour|poured|work|bond|brush|roll|lay up)';
/** What has a data sheet, and what it is printed on. */
const PRODUCT =
  '(?:tin|can|label|sheet|tub|bottle|bag|box|instructions|makers?|manufacturer|supplier|packet|cartridge|bucket|pot|primer|undercoat|topcoat|paint|varnish|lacquer|oil|stain|preservative|epoxy|resin|hardener|gelcoat|glue|adhesive|sealant|mastic|filler|membrane|mortar|grout|screed|plaster|render|foam|coat|lead)';
/** Ways to say the least or most that a product takes. */
const WARMTH: readonly RegExp[] = [
  new RegExp(
    ` (?:do n't|don't|dont|do not|never|ca n't|can't|cannot|must n't|mustn't|must not|should n't|shouldn't|should not|not to be|not) (?:be |get )?${USE} (?:\\S+ ){0,5}#`,
  ),
  new RegExp(
    ` (?:${PRODUCT}|it|they) (?:says?|said|reads?|wants?|needs?|calls for|asks for|recommends?|has to be|must be) (?:\\S+ ){0,8}#`,
  ),
  / (?:wo n't|won't|will not|does n't|doesn't|does not) (?:cure|set|go off|dry|harden|kick|stick|bond|kick off|go)(?: \S+){0,3} #/,
  // "Recoat window is four to twelve hours at twenty, not below eight".
  / (?:recoat|recoating|overcoat|overcoating|pot life|open time|cure|cures|curing|drying|hours|minutes) (?:\S+ ){0,12}(?:not|never|nothing) (?:below|under|above|over) #/,
  new RegExp(` only (?:to be )?${USE} (?:\\S+ ){0,4}#`),
  / (?:no good|no use|useless|hopeless) (?:\S+ ){0,2}#/,
  / (?:minimum|min|maximum|max|lowest|highest) (?:application |working |surface |air |curing |cure |laying )?(?:temperature|temp|temps)(?: is| 's| of|,|:)? #/,
];
const OUTDOORS = / (?:outside|overnight|tonight|today|tomorrow|forecast|last night) /;

function warmthIn(scene: CheckScene, line: Line): Spoken | undefined {
  const figures = figuresOf(scene, line, 'temperature');
  if (figures.length === 0 || OUTDOORS.test(line.words)) return undefined;
  // "Fifty degrees in here and the tin says not below fifty five": the first is the air.
  const figure = figures.find(
    (one) => one.bound !== 'about' && WARMTH.some((way) => way.test(upTo(scene, line, one))),
  );
  if (!figure) return undefined;
  const inputs = boundsOf(figure, before(scene, line, figure));
  const other = inputs.length === 1 ? otherEnd(scene, line, figure) : undefined;
  const all = other ? [...inputs, ...boundsOf(other, '')] : inputs;
  return all.length === 0 ? undefined : { check: 'product temperature', inputs: all };
}

/** "Under ten degrees or over thirty": the bound on the other side. */
const otherEnd = (scene: CheckScene, line: Line, figure: FigureNote) =>
  figuresOf(scene, line, 'temperature').find(
    ({ bound }) => bound !== figure.bound && (bound === 'at-least' || bound === 'at-most'),
  );

const upTo = (scene: CheckScene, line: Line, figure: FigureNote) => `${before(scene, line, figure)}#`;

function boundsOf(figure: FigureNote, words: string): readonly SpokenInput[] {
  if (figure.bound === 'between' && figure.high !== undefined) {
    return [
      input('least', written(figure)),
      input('most', written({ value: figure.high, unit: figure.unit })),
    ];
  }
  if (figure.bound === 'at-least' || / (?:minimum|min|lowest) (?:\S+ ){0,5}$/.test(words))
    return [input('least', written(figure))];
  if (figure.bound === 'at-most' || / (?:maximum|max|highest) (?:\S+ ){0,5}$/.test(words))
    return [input('most', written(figure))];
  return [];
}
