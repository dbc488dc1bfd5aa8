/** What is measured: from the unit, from the words beside the number, last from what the thing usually is. */
import { kindsOf, singular } from '../lexicon/trade-nouns.ts';
import type { Attribute, Bound, Dimension } from '../notes.ts';
import { wordTable } from '../word-table.ts';
import type { Name } from './discourse.ts';
import { usualSize } from './fitness.ts';
import { headOf } from './naming.ts';
import { ahead, behind, type Parse, tagAt, wordAt } from './parse.ts';
import { SIZE_RULES } from './size-rules.ts';
import { isSize } from './sizes.ts';

const OF_DIMENSION: Readonly<Partial<Record<Dimension, Attribute>>> = {
  angle: 'angle',
  temperature: 'temperature',
  mass: 'weight',
  volume: 'volume',
  area: 'area',
  voltage: 'voltage',
  current: 'current',
  charge: 'other',
  power: 'power',
  energy: 'other',
  pressure: 'pressure',
  torque: 'torque',
  time: 'time',
  ratio: 'ratio',
  frequency: 'speed',
  speed: 'speed',
  money: 'money',
  count: 'count',
};

/** Nouns that are what is measured: "a fall of 10", "headroom's 41". */
export const MEASURE_ATTRIBUTE = wordTable<Attribute>({
  height: 'height',
  width: 'width',
  breadth: 'width',
  length: 'length',
  depth: 'depth',
  thickness: 'thickness',
  diameter: 'diameter',
  radius: 'radius',
  clearance: 'clearance',
  headroom: 'clearance',
  legroom: 'clearance',
  freeboard: 'height',
  gap: 'gap',
  play: 'clearance',
  slack: 'clearance',
  backlash: 'clearance',
  air: 'gap',
  spacing: 'other',
  pitch: 'other',
  fall: 'offset',
  drop: 'offset',
  rise: 'height',
  offset: 'offset',
  setback: 'offset',
  overhang: 'offset',
  deflection: 'offset',
  sag: 'offset',
  camber: 'offset',
  crown: 'offset',
  twist: 'offset',
  bow: 'offset',
  runout: 'offset',
  alignment: 'offset',
  reveal: 'offset',
  weight: 'weight',
  mass: 'weight',
  load: 'weight',
  payload: 'weight',
  volume: 'volume',
  capacity: 'volume',
  temperature: 'temperature',
  angle: 'angle',
  pressure: 'pressure',
  torque: 'torque',
  current: 'current',
  voltage: 'voltage',
  power: 'power',
  speed: 'speed',
  span: 'length',
  reach: 'length',
  travel: 'length',
  stroke: 'length',
  draught: 'depth',
  draft: 'depth',
  kerf: 'width',
  girth: 'length',
  bearing: 'length',
  lap: 'offset',
  overlap: 'offset',
  gauge: 'other',
  tolerance: 'other',
  moisture: 'ratio',
  damp: 'ratio',
  'floor-to-floor': 'height',
  'floor-to-ceiling': 'height',
  'floor-to-roof': 'height',
  'top-to-bottom': 'height',
  'wall-to-wall': 'width',
  'side-to-side': 'width',
  'end-to-end': 'length',
  'bumper-to-bumper': 'length',
  'front-to-back': 'depth',
  'centre-to-centre': 'other',
  'center-to-center': 'other',
  'face-to-face': 'gap',
  humidity: 'ratio',
});

/** Measure words that say nothing of the thing itself: left out of its name. */
export const PLAIN_MEASURE = new Set(
  `height width breadth length depth thickness diameter radius weight mass volume capacity temperature angle pressure torque
  current voltage power speed size span dimension measurement`.split(/\s+/),
);

/** Levels that a height is counted from. */
const LEVEL =
  /\b(?:ground|floor|flags|deck|waterline|water|dirt|pavement|road|roof|slab|worktop|counter|bench|sole|ceiling|subfloor|screed|keel)\b/;

const FROM_LEVEL =
  /^ (?:the |finished )*(?:ground|floor|flags|slab|concrete|pavement|dirt)(?:$| (?!edge|joists?|boards?|beams?|drain|plate|hatch|up|to)\w| [#,.])/;

/** The adjectives that name a size, as they stand behind a number. */
export const SIZE_OF_ADJECTIVE = wordTable<Attribute>({
  wide: 'width',
  deep: 'depth',
  long: 'length',
  high: 'height',
  tall: 'height',
  thick: 'thickness',
});

/** "25 deep, no, hang on, 25 and a half": the mended number is of the same size. */
const MENDED =
  /\b(wide|deep|long|high|tall|thick) ,(?:[^.]*?)\b(?:no|sorry|hang on|tell a lie|make that|scratch that|correction|i mean|er|um|wait)\b[^.]*$/;

const AWAY =
  /^(?:\w+ )?(?:off|from|above|below|over|in from|up from|down from|back from|to the left|to the right|inboard|outboard|forward of|aft of|abaft|short of|away|shy of)\b(.*)/;

/** A rule of wording that fits a length, and the size it gives. */
export interface FiredRule {
  readonly rule: string;
  readonly attribute: Attribute;
  readonly settles?: true;
}

/** Attribute by the words at the number; `clear` alone is left to the thing (a door's width, a gap, a clearance). */
export function saidAttribute(
  parse: Parse,
  at: number,
  dimension: Dimension,
  bound: Bound,
): Attribute | undefined {
  if (dimension !== 'length') return OF_DIMENSION[dimension] ?? 'other';
  return firedRules(parse, at, bound)[0]?.attribute;
}

/** Every rule of wording that fits the length at a word, in the order of the rules. */
export function firedRules(parse: Parse, at: number, bound: Bound): readonly FiredRule[] {
  const fired: FiredRule[] = [];
  const mended = MENDED.exec(behind(parse, at, 14));
  const mendedSize = mended?.[1] ? SIZE_OF_ADJECTIVE[mended[1]] : undefined;
  if (mendedSize && tagAt(parse, at + 1) !== 'dimension')
    fired.push({ rule: 'mended', attribute: mendedSize });
  const after = ahead(parse, at + 1, 5).replace(
    /^(?:now|even|just|only|exactly|bang on|dead|or so|max|minimum|at most|at least) /,
    '',
  );
  const before = behind(parse, at, 7);
  const measure = goesOnMeasuring(parse, at);
  for (const rule of SIZE_RULES) {
    if (measure && MOVES.has(rule.name)) continue;
    const fits = rule.both
      ? rule.after?.test(after) && rule.before?.test(before)
      : rule.after?.test(after) || rule.before?.test(before);
    if (!fits) continue;
    const isRoom = rule.name === 'between' && bound === 'at-least';
    fired.push({
      rule: rule.name,
      attribute: isRoom ? 'clearance' : rule.attribute,
      ...(rule.settles && bound === 'exact' ? { settles: true } : {}),
    });
  }
  if (measure) fired.push({ rule: 'measure goes on', attribute: measure, settles: true });
  const away = awayAttribute(after, bound);
  if (away) fired.push({ rule: `away ${away}`, attribute: away });
  if (/^to the (?:top|underside|ceiling|ridge|soffit)\b/.test(after))
    fired.push({ rule: 'to the top', attribute: 'height' });
  return fired;
}

/** Rules by which a thing goes up or down to a height. */
const MOVES: ReadonlySet<string> = new Set(['moved to', 'comes down to']);
const CHANGED_TO =
  /\b(width|gap|length|depth|thickness|diameter|spacing|overhang|clearance|radius)\b[^.]*\b(?:it|that) (?:\w+ ){0,3}(?:drops?|dropped|goes|went|go|comes?|came|grows?|grown?|shrinks?|rises?) (?:up |down |out |back )?to(?: about)?$/;

/** "Width between the strings was 850 and it has to drop to 835": what was told of is the width, not a place. */
function goesOnMeasuring(parse: Parse, at: number): Attribute | undefined {
  const told = CHANGED_TO.exec(behind(parse, at, 16));
  return told?.[1] ? MEASURE_ATTRIBUTE[told[1]] : undefined;
}

/** What "14 off the wall", "900 off the floor", "300 above the sink" tell. */
function awayAttribute(after: string, bound: Bound): Attribute | undefined {
  const away = AWAY.exec(after);
  if (!away) return undefined;
  if (/^(?:\w+ )?above\b/.test(after)) return 'height';
  const from = away[1] ?? '';
  if (/^(?:\w+ )?(?:off|up from)\b/.test(after) && LEVEL.test(from) && !/\bwall\b/.test(from))
    return 'height';
  // "The hood hangs 1700 from the ground": as high as if it were off it; "from the floor joist" is beside.
  if (/^from\b/.test(after) && FROM_LEVEL.test(from) && bound === 'exact') return 'height';
  // "at least a metre from anything that sparks" keeps clear; "14 off the wall" says where.
  if (/^(?:\w+ )?(?:from|off)\b/.test(after)) return bound === 'at-least' ? 'clearance' : 'offset';
  return /^(?:\w+ )?(?:above|below|in from|up from|down from|back from|short of|shy of|inboard|outboard|forward|aft)\b/.test(
    after,
  )
    ? 'offset'
    : undefined;
}

/** A length said of a thing before. */
export interface KnownLength {
  readonly attribute: Attribute;
  readonly millimetres: number;
}

/** The word of the other quantity in "x by y", if there is one. */
export function pairedWith(
  parse: Parse,
  at: number,
): { readonly word: number; readonly isFirst: boolean } | undefined {
  const joins = (k: number) => /^(?:by|x|×|times)$/.test(wordAt(parse, k));
  const skip = (k: number, step: 1 | -1) => {
    let j = k;
    while (tagAt(parse, j) === 'dimension' || tagAt(parse, j) === 'comma') j += step;
    return j;
  };
  const right = skip(at + 1, 1);
  if (joins(right) && tagAt(parse, right + 1) === 'quantity') return { word: right + 1, isFirst: true };
  if (!joins(at - 1)) return undefined;
  const left = skip(at - 2, -1);
  return tagAt(parse, left) === 'quantity' ? { word: left, isFirst: false } : undefined;
}

/** What the other of a pair is, when only one is named: 300 deep by 150 is 150 wide. */
export function pairAttribute(other: Attribute | undefined, isOpening: boolean): Attribute {
  if (other === 'width') return isOpening ? 'height' : 'length';
  if (other === 'depth' || other === 'height' || other === 'length' || other === 'thickness') return 'width';
  return 'size';
}

/** A size filled in, and what it was taken from. */
export interface FilledIn {
  readonly attribute: Attribute;
  readonly by: 'said' | 'pair' | 'fellow' | 'spacing' | 'clear' | 'measure' | 'before' | 'usual' | 'nothing';
}

/** The attribute of a bare length: that of a like size said of this thing before, else its usual size. */
export function filledInAttribute(
  name: Name,
  clear: boolean,
  known: readonly KnownLength[],
  millimetres: number,
): FilledIn {
  const kinds = kindsOf(name);
  const head = headOf(name);
  const measure = head === 'bearing' ? undefined : MEASURE_ATTRIBUTE[head];
  if (measure && isSize(measure)) return { attribute: measure, by: 'measure' };
  if (clear)
    return {
      attribute: kinds.has('opening') || head === 'stall' || head === 'bay' ? 'width' : 'clearance',
      by: 'clear',
    };
  const own = known.filter((length) => OWN_SIZES.has(length.attribute));
  const like = likeliest(own.length > 0 || !PLACED.test(name.join(' ')) ? own : known, millimetres);
  if (like) return { attribute: like, by: 'before' };
  const usual = usualSize(name, singular(headOf(name)), kinds, millimetres);
  return usual ? { attribute: usual, by: 'usual' } : { attribute: 'length', by: 'nothing' };
}

/** Sizes of the thing itself, as against where it stands. */
export const OWN_SIZES: ReadonlySet<Attribute> = new Set([
  'height',
  'width',
  'length',
  'depth',
  'thickness',
  'diameter',
  'radius',
  'size',
]);
/** Names of a place or a gap, whose figures are offsets and clearances. */
const PLACED = / (?:from|above|each|all round|between|overhang|lap|gap)\b/;

/** The known size nearest to this one, when it is no further off than a changed mind or a slip of ten would be. */
function likeliest(known: readonly KnownLength[], millimetres: number): Attribute | undefined {
  let best: Attribute | undefined;
  let bestRatio = known.length === 1 ? 4 : 2;
  for (const length of known) {
    const ratio = Math.exp(Math.abs(Math.log(length.millimetres / millimetres)));
    if (ratio <= bestRatio) {
      best = length.attribute;
      bestRatio = ratio;
    }
  }
  return best;
}
