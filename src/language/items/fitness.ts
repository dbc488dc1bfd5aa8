/** Which kinds of thing can carry which figures, and the size that a bare number of a thing usually gives. */
import type { NounKind } from '../lexicon/trade-nouns.ts';
import type { Attribute, Dimension } from '../notes.ts';
import { wordTable } from '../word-table.ts';

type Weights = Readonly<Partial<Record<NounKind, number>>>;

/** Common practice, no source: +1 usual carrier, 0 possible, -1 unlikely. Kinds not named take `otherwise`. */
const CARRIERS: Readonly<Partial<Record<Dimension, Weights & { readonly otherwise: number }>>> = {
  length: {
    otherwise: 0.4,
    material: -0.3,
    ground: -0.7,
    region: -0.7,
    liquid: -1,
    air: -0.5,
    electric: -0.4,
    coating: -0.6,
    tool: -0.7,
    machine: 0.1,
  },
  area: { cable: 1, space: 0.8, sheet: 0.5, round: -0.5, otherwise: 0 },
  mass: {
    machine: 1,
    vessel: 1,
    appliance: 1,
    assembly: 0.7,
    container: 0.5,
    round: 0.3,
    material: 0.4,
    coating: 0.6,
    part: 0.4,
    sheet: 0.2,
    opening: -0.8,
    hole: -1,
    cable: -0.3,
    space: -0.6,
    air: -1,
    ground: -1,
    tool: -0.3,
    otherwise: 0.1,
  },
  temperature: { air: 1, space: 0.8, coating: 0.9, liquid: 0.7, appliance: 0, vessel: 0.2, otherwise: -0.4 },
  time: { coating: 1, liquid: 0, machine: 0.1, electric: 0, otherwise: -0.2 },
  volume: {
    container: 1,
    liquid: 1,
    coating: 0.8,
    machine: 0.5,
    appliance: 0.2,
    space: 0.2,
    otherwise: -0.6,
  },
  voltage: { electric: 1, machine: 0.6, appliance: 0.5, cable: 0.5, tool: -0.2, otherwise: -0.8 },
  current: { electric: 1, machine: 0.7, appliance: 0.7, cable: 0.4, otherwise: -0.8 },
  charge: { electric: 1, otherwise: -0.7 },
  power: { machine: 1, appliance: 1, electric: 0.9, otherwise: -0.6 },
  energy: { electric: 1, appliance: 0.4, otherwise: -0.6 },
  pressure: {
    round: 0.7,
    pipe: 0.8,
    container: 0.8,
    machine: 0.6,
    liquid: 0.3,
    joist: -0.8,
    timber: -0.8,
    sheet: -0.6,
    otherwise: -0.3,
  },
  torque: { fastener: 1, round: 0.3, part: 0, joist: 0, otherwise: -0.2 },
  frequency: { machine: 1, round: 1, electric: 0.2, tool: 0, otherwise: -0.6 },
  speed: { machine: 0.8, vessel: 1, round: 0.5, air: 0.5, otherwise: -0.5 },
  ratio: {
    air: 0.9,
    coating: 0.6,
    material: 0.6,
    joist: 0.5,
    sheet: 0.4,
    timber: 0.5,
    assembly: 0.3,
    otherwise: 0,
  },
  money: { tool: -0.3, otherwise: 0.2 },
};

/** Sizes in millimetres that things of a kind have; outside them a length is of something else. */
const SIZE_RANGE: Readonly<Partial<Record<NounKind, readonly [number, number]>>> = {
  vessel: [1200, 60_000],
  space: [500, 30_000],
  assembly: [5, 12_000],
  machine: [80, 6000],
  appliance: [80, 3000],
  opening: [60, 8000],
  sheet: [0.05, 6000],
  material: [0.5, 7000],
  fastener: [2, 700],
  hole: [1, 800],
  coating: [0.02, 30],
  pipe: [4, 20_000],
  cable: [50, 200_000],
  joist: [15, 14_000],
  timber: [4, 14_000],
  container: [30, 4000],
};

/** 0 when things of these kinds come in this length, less when none of them do. */
export function sizeFit(kinds: ReadonlySet<NounKind>, millimetres: number): number {
  if (kinds.size === 0 || !(millimetres > 0)) return 0;
  for (const kind of kinds) {
    const range = SIZE_RANGE[kind];
    if (!range || (millimetres >= range[0] && millimetres <= range[1])) return 0;
  }
  return -0.8;
}

const NEVER: ReadonlySet<NounKind> = new Set(['person', 'time', 'abstract']);

/** How well a thing of these kinds carries a figure of this dimension: 1 usual, 0 unknown, -2 never. */
export function fitness(kinds: ReadonlySet<NounKind>, dimension: Dimension): number {
  if (kinds.size === 0) return 0;
  const weights = CARRIERS[dimension];
  let best = -2;
  for (const kind of kinds) {
    const weight = NEVER.has(kind)
      ? -2
      : kind === 'measure'
        ? 0.2
        : (weights?.[kind] ?? weights?.otherwise ?? 0);
    if (weight > best) best = weight;
  }
  return best;
}

/** True for people, days and matters: nothing that a figure is said of. */
export function isNoThing(kinds: ReadonlySet<NounKind>): boolean {
  if (kinds.size === 0) return false;
  for (const kind of kinds) if (!NEVER.has(kind)) return false;
  return true;
}

const MM = wordTable<number>({
  mm: 1,
  cm: 10,
  m: 1000,
  km: 1e6,
  in: 25.4,
  ft: 304.8,
  yd: 914.4,
  thou: 0.0254,
});

/** A length in millimetres; `NaN` for other units. */
export const inMillimetres = (value: number, unit: string): number => value * (MM[unit] ?? Number.NaN);

/** The size that a bare length of a thing gives when nothing says which; a long bare size is no thickness. */
const USUAL_SIZE: readonly (readonly [NounKind, Attribute, number?, Attribute?, number?, Attribute?])[] = [
  ['hole', 'diameter'],
  ['pipe', 'diameter', 400, 'length'],
  ['round', 'diameter', 900, 'length'],
  ['sheet', 'thickness', 65, 'width', 600, 'length'],
  ['joist', 'depth', 450, 'length'],
  ['opening', 'width'],
  ['appliance', 'width', 1300, 'height'],
  ['machine', 'width'],
  ['fastener', 'diameter', 24, 'length'],
  ['cable', 'length'],
  ['coating', 'thickness'],
  ['material', 'thickness', 100, 'length'],
  ['assembly', 'thickness', 65, 'height'],
  ['timber', 'width', 450, 'length'],
  ['vessel', 'length'],
  ['space', 'length'],
  ['part', 'thickness', 65, 'length'],
];

/** Own usual size of heads whose kind would say otherwise. */
const USUAL_OF_HEAD = wordTable<Attribute>({
  leg: 'length',
  upright: 'length',
  stump: 'length',
  tiller: 'length',
  oar: 'length',
  spar: 'length',
  elbow: 'height',
  vice: 'height',
  bath: 'length',
  bed: 'length',
  boat: 'length',
  ridge: 'height',
  eave: 'height',
  roof: 'height',
  'glazing bar': 'width',
  wool: 'thickness',
  foam: 'thickness',
  insulation: 'thickness',
  batting: 'thickness',
  screed: 'thickness',
  hemp: 'thickness',
  fleece: 'thickness',
  styrofoam: 'thickness',
  polystyrene: 'thickness',
  celotex: 'thickness',
  rockwool: 'thickness',
  batt: 'thickness',
  fibre: 'thickness',
  fiber: 'thickness',
  post: 'length',
  rail: 'length',
  bunk: 'length',
  rise: 'height',
  riser: 'height',
  going: 'depth',
  tread: 'thickness',
  step: 'height',
  bench: 'height',
  table: 'height',
  seat: 'height',
  ceiling: 'height',
  wall: 'thickness',
  sill: 'length',
  cill: 'length',
  lintel: 'length',
  header: 'length',
  plank: 'length',
  batten: 'thickness',
  drawer: 'width',
  cabinet: 'width',
  unit: 'width',
  shelf: 'depth',
  keyway: 'width',
  foot: 'height',
  glide: 'height',
  castor: 'height',
  caster: 'height',
  underside: 'height',
  freeboard: 'height',
  plinth: 'height',
  upstand: 'height',
  seam: 'width',
  joint: 'gap',
  slide: 'clearance',
  'line set': 'length',
  lineset: 'length',
  run: 'length',
  inside: 'width',
  outside: 'width',
  mast: 'length',
  boom: 'length',
  tenon: 'length',
  mortise: 'width',
  slot: 'width',
  groove: 'width',
  dado: 'width',
  rabbet: 'depth',
  rebate: 'depth',
  notch: 'depth',
  recess: 'depth',
  bearing: 'length',
  bead: 'width',
  gutter: 'size',
  slat: 'length',
  carcass: 'height',
  'carcass side': 'height',
  'carcass end': 'height',
  gauge: 'other',
  draught: 'depth',
  draft: 'depth',
  'frost line': 'depth',
  stud: 'size',
  horn: 'offset',
  overhang: 'offset',
  lip: 'height',
  fillet: 'radius',
  chamfer: 'size',
  bevel: 'size',
  kerf: 'width',
  strip: 'width',
  strake: 'width',
  gap: 'gap',
  clearance: 'clearance',
  headroom: 'clearance',
  spacing: 'other',
  seal: 'thickness',
  gasket: 'thickness',
  washer: 'width',
  floor: 'thickness',
  stall: 'width',
  bay: 'width',
  flap: 'width',
  fender: 'width',
  transom: 'width',
  catwalk: 'width',
  landing: 'width',
  aisle: 'width',
  path: 'width',
  walkway: 'width',
  corridor: 'width',
  passage: 'width',
  shutter: 'width',
  'crawl space': 'clearance',
  crawlspace: 'clearance',
  'knee space': 'clearance',
  headspace: 'clearance',
  strap: 'width',
  slab: 'thickness',
  kickboard: 'height',
  faceplate: 'diameter',
  swing: 'diameter',
  dwang: 'other',
  cornice: 'height',
  skirting: 'height',
  pane: 'thickness',
  well: 'width',
  bush: 'diameter',
  bushing: 'diameter',
  journal: 'diameter',
  chuck: 'diameter',
  arbor: 'diameter',
  mandrel: 'diameter',
  grommet: 'diameter',
  vent: 'diameter',
  flue: 'diameter',
  strut: 'length',
  belt: 'length',
  slate: 'length',
  shingle: 'length',
  stock: 'thickness',
  'door frame': 'width',
  'window frame': 'width',
  runout: 'offset',
  wobble: 'offset',
  lap: 'offset',
});

/** Things of wood and metal that are never as low or short as this: so small a bare size is a thickness. */
const THIN = 30;
const MADE_UP: readonly NounKind[] = ['assembly', 'sheet', 'timber', 'space', 'vessel'];

/** Boards are thin or long. */
const BOARDS = new Set(['plank', 'board', 'planking', 'decking', 'slat', 'batten', 'floorboard', 'strake']);
const BOARD_THICKNESS_TO = 65;

/** Plates and slabs, whose long sizes are lengths. */
const THICK_WHEN_SMALL = new Set([
  'top',
  'lid',
  'side',
  'end',
  'back',
  'front',
  'bottom',
  'wall',
  'cover',
  'cap',
  'base',
  'step',
]);

const COUNTERS = new Set(['worktop', 'counter', 'countertop', 'benchtop']);
/** As high as a counter less its top; their widths go in other steps. */
const BASE_UNITS = new Set(['unit', 'cabinet', 'cupboard']);
const LINES = new Set([
  'chain',
  'rope',
  'line',
  'warp',
  'halyard',
  'wire',
  'stay',
  'forestay',
  'backstay',
  'lanyard',
  'lifeline',
]);
/** What is fixed to a wall at a height: nobody tells how long a socket is. Smaller sizes are their own. */
const PUT_AT_HEIGHT = new Set([
  'socket',
  'outlet',
  'switch',
  'stopcock',
  'mixer',
  'thermostat',
  'isolator',
  'handrail',
  'sconce',
  'hook',
]);
const PUT_AT_HEIGHT_FROM = 250;
const RIGGED_TO = 14;
const WELL_FROM = 2500;

/** Whether a length told of such a thing behind "at" is how high it is put. */
export const isPutAtHeight = (singularHead: string, millimetres: number): boolean =>
  PUT_AT_HEIGHT.has(singularHead) && millimetres >= PUT_AT_HEIGHT_FROM;

/** Usual size of a thing with this name; `millimetres` tells a board's thickness from its length. */
export function usualSize(
  name: readonly string[],
  singularHead: string,
  kinds: ReadonlySet<NounKind>,
  millimetres: number,
): Attribute | undefined {
  const pair = name.length > 1 ? USUAL_OF_HEAD[`${name.at(-2)} ${singularHead}`] : undefined;
  if (!pair && THICK_WHEN_SMALL.has(singularHead) && millimetres <= 65) return 'thickness';
  if (!pair && BOARDS.has(singularHead) && millimetres <= BOARD_THICKNESS_TO) return 'thickness';
  const own = pair ?? USUAL_OF_HEAD[singularHead];
  if (singularHead === 'door' || singularHead === 'doorway')
    return millimetres > 1800 && millimetres < 2350 ? 'height' : 'width';
  if (COUNTERS.has(singularHead))
    return millimetres <= 65
      ? 'thickness'
      : millimetres < 750
        ? 'depth'
        : millimetres < 1200
          ? 'height'
          : 'length';
  if (BASE_UNITS.has(singularHead) && millimetres >= 840 && millimetres <= 960) return 'height';
  if (isPutAtHeight(singularHead, millimetres)) return 'height';
  // Thicker ones shield a wheel or a saw.
  if (singularHead === 'shroud' && millimetres <= RIGGED_TO) return 'diameter';
  // A well in the ground; one in a floor or a bench is told by its width.
  if (singularHead === 'well' && millimetres > WELL_FROM) return 'depth';
  if (!pair && LINES.has(singularHead)) return millimetres <= 40 ? 'diameter' : 'length';
  if (own === 'thickness' && singularHead === 'wall' && millimetres > 1200) return 'height';
  if (
    (own === 'height' || own === 'length') &&
    millimetres <= THIN &&
    MADE_UP.some((kind) => kinds.has(kind))
  )
    return 'thickness';
  if (own && !(own === 'thickness' && millimetres > 200 && !/wall|floor/.test(singularHead))) return own;
  const usual = USUAL_SIZE.find(([kind]) => kinds.has(kind));
  if (!usual) return undefined;
  const [, size, limit, beyond, farLimit, farBeyond] = usual;
  if (farLimit !== undefined && farBeyond && millimetres > farLimit) return farBeyond;
  return limit !== undefined && beyond && millimetres > limit ? beyond : size;
}
