/** Whether degrees are of an angle or of heat: by the words about them, or as the nearest other degrees of the talk. */
import { type Amount, type Room, wordAt } from '../rules/rule.ts';
import { nearestOf } from '../units/surroundings.ts';
import type { Settled } from './settled.ts';

const TURN: Settled = { unit: 'deg', dimension: 'angle', why: 'degrees of an angle' };

function warmthOf(room: Room): Settled {
  const fahrenheit = room.region === 'US' || (room.region === '' && room.house === 'us');
  return {
    unit: fahrenheit ? 'degF' : 'degC',
    dimension: 'temperature',
    why: `degrees of heat, ${fahrenheit ? 'Fahrenheit' : 'Celsius'} here`,
  };
}

/** For a figure, by the token that it begins at: the kind that the words about the nearest other degrees tell. */
export type DegreesTold = ReadonlyMap<number, Settled>;

/** How far apart in tokens two figures may stand, so that one tells what the other is. */
const WITHIN = 60;

/** Finds for each figure in degrees what those about it are told to be; one pass each way. */
export function degreesTold(room: Room, amounts: readonly Amount[]): DegreesTold {
  const inDegrees = amounts.filter(({ unit }) => unit === 'degrees');
  const own = inDegrees.map((amount) => toldByWords(room, amount));
  const told = new Map<number, { readonly kind: Settled; readonly apart: number }>();
  const pass = (order: readonly number[]) => {
    let last: { readonly kind: Settled; readonly from: number } | undefined;
    for (const at of order) {
      const { from } = inDegrees[at] as Amount;
      const apart = last === undefined ? Number.POSITIVE_INFINITY : Math.abs(from - last.from);
      if (last && apart <= WITHIN && apart < (told.get(from)?.apart ?? Number.POSITIVE_INFINITY))
        told.set(from, { kind: last.kind, apart });
      const kind = own[at];
      if (kind) last = { kind, from };
    }
  };
  const order = inDegrees.map((_, at) => at);
  pass(order);
  pass(order.toReversed());
  return new Map([...told].map(([from, { kind }]) => [from, kind]));
}

/** Angles that are said so often that they need no word beside them. */
const isPlainAngle = (value: number) => value === 45 || value === 90 || value === 30 || value === 22.5;

/** Degrees of heat that a workshop, an oven or a resin sees; beyond it an angle is as likely. */
export function settleDegrees(room: Room, amount: Amount, told: DegreesTold): Settled {
  const byWords = toldByWords(room, amount);
  if (byWords) return byWords;
  const { value } = amount;
  const warmth = warmthOf(room);
  const beside = isPlainAngle(value) ? undefined : told.get(amount.from);
  if (!beside && inProcess(room, amount) !== undefined) return warmth;
  const known = beside ?? (isPlainAngle(value) ? undefined : asKnown(room, amount));
  const kind = known ?? (isPlainAngle(value) || value % 1 !== 0 ? TURN : warmth);
  const other = kind.dimension === 'angle' ? warmth : TURN;
  const why = beside ? 'as the degrees beside them' : known ? 'as what is known of it' : 'degrees alone';
  return { ...kind, alternatives: [{ value, unit: other.unit }], why };
}

/** "Beds coming down to eight degrees" where how steep the beds are stands on record already. */
function asKnown(room: Room, { from }: Amount): Settled | undefined {
  const known = room.context.knownFigures ?? [];
  if (!known.some(({ unit }) => unit === 'deg')) return undefined;
  const sentence = room.tokens[from]?.sentence;
  const words = new Set<string>();
  for (let at = from - 1; at > from - KNOWN_BACK && room.tokens[at]?.sentence === sentence; at--)
    words.add(wordAt(room, at));
  const last = known.findLast(
    ({ item, unit }) => /^deg[CF]?$/.test(unit) && words.has(item.toLowerCase().split(' ').at(-1) ?? ''),
  );
  return last?.unit === 'deg' ? TURN : undefined;
}
const KNOWN_BACK = 16;

function toldByWords(room: Room, amount: Amount): Settled | undefined {
  const { from, to } = amount;
  const next = wordAt(room, to);
  if (
    /^(?:angle|bevel|mitre|miter|pitch|cut|bend|elbow|corner|lean|tilt|off|from|slope|each|either|rake)$/.test(
      next,
    ) ||
    toSide(room, to)
  )
    return TURN;
  if (/^(?:outside|inside|overnight|today|warmer|colder|or)$/.test(next) || inHere(room, to))
    return warmthOf(room);
  if (waitedForWarmth(room, from)) return warmthOf(room);
  if (isSetAt(room, amount) && nearestOf(room, 'heat', from, to) === undefined) return TURN;
  const spoken = nearer(room, from, to);
  const process = inProcess(room, amount);
  if (process !== undefined && process <= CLOSE_BY && (spoken?.apart ?? Number.POSITIVE_INFINITY) > process)
    return warmthOf(room);
  return spoken?.kind ?? toldByTitle(room, from);
}

/** How far off work that takes its time is spoken of. Its words say other things too ("between", "left"): warmth is nearer. */
function inProcess(room: Room, { from, to }: Amount): number | undefined {
  const process = nearestOf(room, 'process', from, to);
  return process === undefined ? undefined : process + FARTHER;
}
const FARTHER = 4;
/** Near enough to tell more than the degrees beside. */
const CLOSE_BY = FARTHER + 4;

/** "The fence is set at 45 degrees": what is set hardens only where warmth is spoken of. */
const isSetAt = (room: Room, { from, value }: Amount) =>
  isPlainAngle(value) && /^(?:at|to)$/.test(wordAt(room, from - 1)) && wordAt(room, from - 2) === 'set';

/** Which of both is spoken of nearer by, in the sentence that the tokens stand in. */
function nearer(room: Room, from: number, to: number): Spoken | undefined {
  const heat = nearestOf(room, 'heat', from, to);
  const angle = nearestOf(room, 'angle', from, to);
  if (heat !== undefined && (angle === undefined || heat <= angle))
    return { kind: warmthOf(room), apart: heat };
  return angle === undefined ? undefined : { kind: TURN, apart: angle };
}

interface Spoken {
  readonly kind: Settled;
  /** In tokens. */
  readonly apart: number;
}

/** Words of a title and its mark. */
const TITLE = 7;

/** "Oh, but the rake. Two degrees": a few words that name what is spoken of next. */
function toldByTitle(room: Room, from: number): Settled | undefined {
  const before = room.tokens[from - 1];
  if (!before || before.sentence === room.tokens[from]?.sentence) return undefined;
  if (room.tokens[from - 1 - TITLE]?.sentence === before.sentence) return undefined;
  return nearer(room, from - 1, from)?.kind;
}

/** "I can't roof it until it's above ten degrees": what is waited for of no thing is the weather. */
function waitedForWarmth(room: Room, at: number): boolean {
  let verb = at - 1;
  if (!PASSES.test(wordAt(room, verb))) return false;
  while (PASSES.test(wordAt(room, verb)) || /^(?:back|well|properly|safely|steady)$/.test(wordAt(room, verb)))
    verb--;
  return (
    /^(?:'s|is|gets?|goes|stays|stopped|comes)$/.test(wordAt(room, verb)) &&
    wordAt(room, verb - 1) === 'it' &&
    /^(?:until|till|til|'til|unless|once|when|if|before)$/.test(wordAt(room, verb - 2))
  );
}
const PASSES = /^(?:above|over|below|under|past|at|least|up|to)$/;

/** "92 degrees to port", "12 to the vertical": towards a side, or counted from a line. */
const toSide = (room: Room, at: number) =>
  wordAt(room, at) === 'to' &&
  /^(?:port|starboard|horizontal|vertical|perpendicular|plumb|level|left|right)$/.test(
    wordAt(room, at + 1) === 'the' ? wordAt(room, at + 2) : wordAt(room, at + 1),
  );

const inHere = (room: Room, at: number) =>
  wordAt(room, at) === 'in' && /^(?:here|there|the)$/.test(wordAt(room, at + 1));
