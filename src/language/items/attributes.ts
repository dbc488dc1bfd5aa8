/** What is measured: from the unit, from the words beside the number, last from what the thing usually is. */
import { kindsOf, singular } from '../lexicon/trade-nouns.ts';
import type { Attribute, Dimension } from '../notes.ts';
import type { Name } from './discourse.ts';
import { usualSize } from './fitness.ts';
import { headOf, isLength } from './naming.ts';
import { ahead, behind, type Parse, tagAt, wordAt } from './parse.ts';

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
export const MEASURE_ATTRIBUTE: Readonly<Record<string, Attribute>> = {
  height: 'height',
  width: 'width',
  breadth: 'width',
  beam: 'width',
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
  lap: 'length',
  overlap: 'length',
  tolerance: 'other',
  moisture: 'ratio',
};

/** Measure words that say nothing of the thing itself: left out of its name. */
export const PLAIN_MEASURE = new Set(
  `height width breadth length depth thickness diameter radius weight mass volume capacity temperature angle pressure torque
  current voltage power speed size span dimension measurement`.split(/\s+/),
);

interface SizeRule {
  readonly name: string;
  readonly attribute: Attribute;
  /** Tested on the words after the number, joined by spaces. */
  readonly after?: RegExp;
  /** Tested on the words before it. */
  readonly before?: RegExp;
}

const SIZE_RULES: readonly SizeRule[] = [
  {
    name: 'spacing',
    attribute: 'other',
    after: /^(?:mil |mm )?(?:on |to )?(?:cent(?:re|er)s?\b|oc\b|apart\b|spacings?\b|pitch\b)/,
    before: /\b(?:every|spaced(?: at)?|spacing of|centres(?: of| at| are)?|centers(?: of| at| are)?)$/,
  },
  {
    name: 'gap',
    attribute: 'gap',
    after: /^(?:of )?(?:\w+ )?gap\b/,
    before: /\bgaps? (?:of|is|are|'s|to|at)(?: \w+)?$/,
  },
  { name: 'of air', attribute: 'gap', after: /^of (?:clear )?(?:air|daylight)\b/ },
  {
    name: 'hole',
    attribute: 'diameter',
    after: /^(?:\w+ )?(?:holes?|bores?|drill|dia(?:meter)?|in diameter|round)\b/,
  },
  {
    name: 'headroom',
    attribute: 'clearance',
    after: /^(?:of |more |less )?headroom\b/,
    before: /\bheadroom(?: \w+)? (?:is|'s|comes? to|of|are|now)(?: \w+)?$/,
  },
  {
    name: 'clearance',
    attribute: 'clearance',
    after: /^(?:of )?(?:clearance|play|slack|to spare|backlash)\b/,
    before: /\bclearance (?:is|'s|of|to|at)(?: \w+)?$/,
  },
  {
    name: 'miss by',
    attribute: 'clearance',
    before: /\b(?:miss(?:es)?|clears?) (?:\w+ ){0,4}by(?: a)?(?: good)?$/,
  },
  {
    name: 'has to clear',
    attribute: 'clearance',
    before: /\b(?:has|have|needs?|got|must) (?:to )?clear (?:\w+ ){1,4}by$/,
  },
  { name: 'too', attribute: 'offset', after: /^(?:too|over|under|out)(?: (?:tight|slack))?$/ },
  { name: 'too deep', attribute: 'depth', after: /^(?:too|over) ?deep\b/ },
  { name: 'too long', attribute: 'length', after: /^too (?:long|short)\b/ },
  { name: 'too wide', attribute: 'width', after: /^too (?:wide|narrow|fat)\b/ },
  { name: 'too high', attribute: 'height', after: /^too (?:high|low|tall)\b/ },
  { name: 'too thick', attribute: 'thickness', after: /^too (?:thick|thin)\b/ },
  {
    name: 'wide',
    attribute: 'width',
    after: /^(?:\w+ )?(?:wide|across|in width|width|at the widest|beam)\b/,
    before: /\b(?:wider|narrower|broader) than$/,
  },
  {
    name: 'deep',
    attribute: 'depth',
    after: /^(?:\w+ )?(?:deep|in depth|front to back)\b/,
    before: /\b(?:deeper|shallower) than$/,
  },
  {
    name: 'thick',
    attribute: 'thickness',
    after: /^(?:\w+ )?(?:thick|in thickness|gauge)\b/,
    before: /\b(?:thicker|thinner) than$/,
  },
  {
    name: 'long',
    attribute: 'length',
    after: /^(?:\w+ )?(?:long|in length|end to end|overall|on deck|footers?)\b/,
    before: /\b(?:longer|shorter) than$/,
  },
  {
    name: 'high',
    attribute: 'height',
    after: /^(?:\w+ )?(?:high|tall|in height|floor to floor|floor to ceiling)\b/,
    before: /\b(?:higher|taller|lower) than$/,
  },
  { name: 'radius', attribute: 'radius', after: /^(?:\w+ )?radius\b/, before: /\bradius(?: of)?$/ },
  {
    name: 'overhang',
    attribute: 'offset',
    after:
      /^(?:of )?(?:overhang|hanging over|proud|shy|back|lower|higher|setback|of (?:deflection|sag|fall|drop|camber|rake|crown))\b/,
  },
  { name: 'bearing', attribute: 'length', after: /^(?:of )?(?:bearing|overlap|lap|tail)\b/ },
  {
    name: 'moved by',
    attribute: 'offset',
    before:
      /\b(?:drop(?:ped|ping)?|rais(?:e|ed|ing)|lower(?:ed|ing)?|mov(?:e|ed|ing)|shift(?:ed|ing)?|lift(?:ed|ing)?|jack(?:ed|ing)?) (?:it|that|them|the \w+(?: \w+)?) (?:by |up |down |over )*$/,
  },
  {
    name: 'fall of',
    attribute: 'offset',
    before: /\b(?:fall|drop|slope|rake|sag|camber|bow|twist) (?:of|is|'s)(?: \w+)?$/,
  },
  {
    name: 'level within',
    attribute: 'offset',
    before:
      /\b(?:level|true|flat|square|straight|plumb|inside|within|out by|out of level by|middle's)(?: \w+)? within(?: ,)?(?: what)?(?: ,)?$|\b(?:out|off) by$|\b(?:is|'s|are) within(?: ,)?(?: what)?(?: ,)?$/,
  },
  {
    name: 'each side',
    attribute: 'gap',
    after:
      /^(?:clear |clearance )?(?:(?:on |at )?(?:each|either|both) (?:side|end|way)s?|a side|per side|all (?:a)?round|side)\b/,
  },
];

const VERTICAL =
  /\b(?:ground|floor|deck|waterline|dirt|pavement|road|slab|worktop|counter|bench|sole|ceiling)\b/;

/** "25 deep, no, hang on, 25 and a half": the mended number is of the same size. */
const MENDED =
  /\b(wide|deep|long|high|tall|thick) ,(?:[^.]*?)\b(?:no|sorry|hang on|tell a lie|make that|scratch that|correction|i mean|er|um|wait)\b[^.]*$/;
const MENDED_SIZE: Readonly<Record<string, Attribute>> = {
  wide: 'width',
  deep: 'depth',
  long: 'length',
  high: 'height',
  tall: 'height',
  thick: 'thickness',
};

/** Attribute by the words at the number; `clear` alone is left to the thing (a door's width, a gap, a clearance). */
export function saidAttribute(parse: Parse, at: number, dimension: Dimension): Attribute | undefined {
  if (dimension !== 'length') return OF_DIMENSION[dimension] ?? 'other';
  const mended = MENDED.exec(behind(parse, at, 14));
  if (mended?.[1] && tagAt(parse, at + 1) !== 'dimension') return MENDED_SIZE[mended[1]];
  const after = ahead(parse, at + 1, 5).replace(
    /^(?:now|even|just|only|exactly|bang on|dead|or so|max|minimum|at most|at least) /,
    '',
  );
  const before = behind(parse, at, 7);
  for (const rule of SIZE_RULES) {
    if (rule.after?.test(after)) return rule.attribute;
    if (rule.before?.test(before)) return rule.attribute;
  }
  const offset =
    /^(?:\w+ )?(?:off|from|above|below|in from|up from|down from|back from|to the left|to the right|inboard|outboard|forward of|aft of|abaft|short of|away|shy of)\b(.*)/.exec(
      after,
    );
  if (offset)
    return /^(?:\w+ )?(?:off|above|up from)\b/.test(after) &&
      VERTICAL.test(offset[1] ?? '') &&
      !/\bwall\b/.test(offset[1] ?? '')
      ? 'height'
      : 'offset';
  if (/^to the (?:top|underside|ceiling|ridge|soffit)\b/.test(after)) return 'height';
  return undefined;
}

/** True when the number stands in "x by y" and nothing says which is which. */
export function isPair(parse: Parse, at: number): boolean {
  const joins = (word: string) => word === 'by' || word === 'x' || word === '×' || word === 'times';
  const right = tagAt(parse, at + 1) === 'dimension' ? at + 2 : at + 1;
  const left = tagAt(parse, at - 2) === 'dimension' ? at - 3 : at - 2;
  return (
    (joins(wordAt(parse, right)) && tagAt(parse, right + 1) === 'quantity') ||
    (joins(wordAt(parse, at - 1)) && tagAt(parse, left) === 'quantity')
  );
}

/** The attribute of a bare length: what was said of this thing before, else its usual size. */
export function filledInAttribute(name: Name, clear: boolean, known: ReadonlySet<Attribute>): Attribute {
  const kinds = kindsOf(name);
  if (clear) return kinds.has('opening') ? 'width' : 'clearance';
  const lengths = [...known].filter(isLength);
  const measure = MEASURE_ATTRIBUTE[headOf(name)];
  if (measure) return measure;
  if (lengths.length === 1) return lengths[0] as Attribute;
  const usual = usualSize(name, singular(headOf(name)), kinds);
  if (usual && (lengths.length === 0 || lengths.includes(usual))) return usual;
  return lengths.at(-1) ?? usual ?? 'length';
}
