import type { Attribute, Dimension } from '../../notes.ts';
import type { Amount, Room } from '../../rules/rule.ts';
import { wordAt } from '../../rules/rule.ts';
import { EACH_AFTER } from '../../rules/size-words.ts';
import { saidBefore } from '../../units/said-before.ts';
import { speaksOf } from '../../units/surroundings.ts';
import { knownInMillimetres } from './as-known.ts';
import { asPair, metresByDigits } from './metres-by-digits.ts';
import { type Reach, reachOfThing, roomForBody } from './thing-measured.ts';

export interface Meaning {
  readonly value: number;
  readonly unit: string;
  readonly dimension: Dimension;
  readonly why: string;
  readonly high?: number;
  readonly alternatives?: readonly { readonly value: number; readonly unit: string }[];
}

/** Kept beside the list it counts, which every bare number of a memo asks about. */
const UNITS_SAID = new WeakMap<readonly Amount[], ReadonlyMap<string, number>>();

/** How often each unit was spoken in the memo. */
function unitsSaid(amounts: readonly Amount[]): ReadonlyMap<string, number> {
  const known = UNITS_SAID.get(amounts);
  if (known) return known;
  const counts = new Map<string, number>();
  for (const { unit, unitAssumed } of amounts) {
    if (unit && !unitAssumed) counts.set(unit, (counts.get(unit) ?? 0) + 1);
  }
  UNITS_SAID.set(amounts, counts);
  return counts;
}

/** Regions where a mixed house speaks more of inches. Common practice, no source. */
const INCH_REGIONS = /^(?:US|CA)$/;
/** Whole numbers above these are said in feet, or they are millimetres. */
const INCHES_TO = 60;
const INCHES_TO_IN_AMERICA = 150;
/** Figures looked back over for the unit that was spoken last. */
const LOOK_BACK = 12;

/** How many amounts stand before this one in the memo; they are in the order of speech. */
export function placeOf(amounts: readonly Amount[], from: number): number {
  let [low, high] = [0, amounts.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((amounts[middle]?.from ?? 0) < from) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * In a house of inches and millimetres: the unit that the same number had before; then whole numbers that nobody
 * says in inches; then the unit of a like number spoken shortly before.
 */
function mixedUnit(room: Room, amounts: readonly Amount[], amount: Amount): 'mm' | 'in' | undefined {
  const { value } = amount;
  if (amount.number.fraction && amount.number.denominator !== 2) return undefined;
  const before = amount.group ? undefined : saidBefore(room, amount);
  if (before && (before.unit === 'mm' || before.unit === 'in')) return before.unit;
  const known = (room.context.knownFigures ?? []).filter((figure) => figure.value === value).at(-1)?.unit;
  if (known === 'mm' || known === 'in') return known;
  const whole = Number.isInteger(value);
  if (whole && value > (INCH_REGIONS.test(room.region) ? INCHES_TO_IN_AMERICA : INCHES_TO)) return 'mm';
  const place = placeOf(amounts, amount.from);
  const sentence = room.tokens[amount.from]?.sentence ?? 0;
  for (let index = place - 1; index >= Math.max(0, place - LOOK_BACK); index--) {
    const before = amounts[index];
    if (!before?.unit || before.unitAssumed || sentence - (room.tokens[before.from]?.sentence ?? 0) > 2)
      continue;
    if (before.unit !== 'in' && before.unit !== 'mm' && before.unit !== 'mil') continue;
    if (Math.abs(Math.log(before.value / value)) < Math.log(6)) return before.unit === 'in' ? 'in' : 'mm';
  }
  return undefined;
}

/** Unit that bare lengths of this memo take: the house's, or the one that the memo keeps using. */
function houseUnit(room: Room, amounts: readonly Amount[], amount: Amount): 'mm' | 'cm' | 'in' {
  const { value } = amount;
  if (room.house === 'us') return 'in';
  const mixed = room.house === 'mixed' ? mixedUnit(room, amounts, amount) : undefined;
  if (mixed) return mixed;
  const counts = unitsSaid(amounts);
  const said = (units: readonly string[]) => units.reduce((sum, unit) => sum + (counts.get(unit) ?? 0), 0);
  const inches = said(['in', 'ft']) - said(['mm', 'cm', 'm']);
  // Inches are told in parts, and metres and millimetres in decimals.
  const isDecimal = (amount.number.decimals ?? 0) > 0;
  if (
    room.house === 'mixed' &&
    !isDecimal &&
    (inches > 0 || (inches === 0 && INCH_REGIONS.test(room.region)))
  )
    return 'in';
  const speaks = centimetreHouse(room, amounts);
  if (speaks === 'always') return value >= 3 && value < METRES_FROM ? 'cm' : 'mm';
  return speaks === 'often' && value >= THIN_TO && value < MILLIMETRES_FROM ? 'cm' : 'mm';
}

/**
 * In a house that speaks of centimetres too, thin things and all numbers of three big figures are millimetres; in one
 * that never leaves millimetres unsaid, all lengths of rooms and furniture are centimetres. Common practice, no source.
 */
const THIN_TO = 30;
const MILLIMETRES_FROM = 200;
const METRES_FROM = 700;
const SURE_MILLIMETRES = 300;

type Centimetres = 'always' | 'often' | 'never';

/** Kept beside the list: every bare number of a memo asks. */
const CENTIMETRE_HOUSES = new WeakMap<readonly Amount[], Centimetres>();

/**
 * Where centimetres are spoken, a bare number may be one. A house that leaves millimetres unsaid gives itself away
 * by bare numbers of three and four figures, in this memo or before it.
 */
function centimetreHouse(room: Room, amounts: readonly Amount[]): Centimetres {
  const known = CENTIMETRE_HOUSES.get(amounts);
  if (known !== undefined) return known;
  const speaks = speaksOfCentimetres(room, amounts);
  CENTIMETRE_HOUSES.set(amounts, speaks);
  return speaks;
}

/** A whole number that is said of millimetres alone: nobody has rooms of ten metres in centimetres. */
const bigMillimetres = (value: number) => value >= METRES_FROM && Number.isInteger(value);

function speaksOfCentimetres(room: Room, amounts: readonly Amount[]): Centimetres {
  // On the mainland a room of 476 is as well told in centimetres: only bigger numbers speak against them.
  const sure = room.decimalComma ? METRES_FROM : SURE_MILLIMETRES;
  let [centimetres, millimetres, big] = [0, 0, 0];
  const count = (unit: string | undefined, value: number) => {
    if (unit === 'cm') centimetres++;
    else if (value >= sure) {
      millimetres++;
      if (bigMillimetres(value)) big++;
    }
  };
  for (const { unit, unitAssumed, value, role } of amounts) {
    if (unit === 'cm' && !unitAssumed) count(unit, value);
    else if (!unit && role === 'figure') count(undefined, value);
  }
  for (const { unit, value } of room.context.knownFigures ?? [])
    if (unit === 'cm' || unit === 'mm') count(unit, value);
  if (centimetres <= millimetres + big) return 'never';
  return room.decimalComma && millimetres === 0 ? 'always' : 'often';
}

const LONG_SIZE: ReadonlySet<Attribute> = new Set(['width', 'height', 'length', 'clearance', 'size']);

/** In a millimetre house, decimals and small numbers of long things are metres: "4.74 long", "trimmed to 3.04". */
function metres(
  room: Room,
  amount: Amount,
  attribute: Attribute | undefined,
  amounts: readonly Amount[],
): boolean {
  const { decimals = 0 } = amount.number;
  if (likeMillimetres(room, amount, amounts) || knownInMillimetres(room, amount)) return false;
  if (amount.value >= 30 || amount.number.fraction) return false;
  if (dug(room, amount)) return decimals > 0 && amount.value >= 0.3;
  if (ofSheet(room, amount)) return false;
  if (speaksOf(room, 'machining', amount.from, amount.to, 12)) return false;
  if (speaksOf(room, 'cutting', amount.from, amount.to, 8)) return false;
  if (decimals > 0 && roomForBody(room, amount)) return amount.value >= 0.3;
  const reach = attribute === undefined ? undefined : reachOfThing(room, amount, attribute);
  if (spacedOut(room, amount) && decimals === 1) return amount.value >= 0.6 && amount.value < 6;
  if (reach === 'small' && decimals < 2) return false;
  if (decimals >= 2) return amount.value >= 0.3;
  if (attribute && !LONG_SIZE.has(attribute) && !(decimals === 1 && farPlace(room, amount))) return false;
  // "The key is six square": a room is told in metres with their name.
  if (decimals === 0 && wordAt(room, amount.to) === 'square') return false;
  if (decimals === 1)
    return (
      amount.value >= leastMetres(room, amount, attribute, reach) &&
      amount.value <
        ((reach === 'large' && attribute === 'length') || betweenPlaces(room, amount)
          ? 30
          : mostMetres(room, attribute)) &&
      !EACH_AFTER.startingAt(room.tokens, amount.to)
    );
  return attribute !== undefined && attribute !== 'clearance' && amount.value < 10 && amount.value >= 2;
}

/** Below these a decimal is no part of a metre: a bed may stand half a millimetre high at one end. */
function leastMetres(
  room: Room,
  amount: Amount,
  attribute: Attribute | undefined,
  reach: Reach | undefined,
): number {
  if (farPlace(room, amount)) return 0.3;
  if (reach !== 'large' && reach !== 'middling') return 1;
  return attribute === 'height' ? 0.6 : 0.3;
}

/** Above these a decimal is no room of so many metres. */
const mostMetres = (room: Room, attribute: Attribute | undefined): number =>
  room.house === 'mixed' ? 20 : attribute ? 13 : 10;

/** Stuff that is sold by a thickness of a few millimetres. Common practice, no source. */
const SHEET =
  /^(?:ally|alloy|aluminium|aluminum|steel|stainless|zinc|tin|copper|brass|lead|sheet|skin|skins|cladding|plate|perspex|acrylic|polycarbonate|polycarb|glass)$/;
const OF_SHEET = /^(?:laminated|toughened|tempered|wall|walled|gauge|galvanised|galvanized|corrugated)$/;
const SHEET_BACK = 12;

/** "The skin's one point six ally", "6.4 laminated": a thickness with decimals, and no metres. */
function ofSheet(room: Room, amount: Amount): boolean {
  if (amount.value > 8 || !amount.number.decimals) return false;
  const next = wordAt(room, amount.to);
  if (OF_SHEET.test(next) || SHEET.test(next)) return true;
  if (/^(?:long|wide|high|tall|across|by|metres|from|to|between)$/.test(next)) return false;
  const sentence = room.tokens[amount.from]?.sentence;
  let at = amount.from - 1;
  for (; at >= amount.from - SHEET_BACK && room.tokens[at]?.sentence === sentence; at--) {
    if (/^(?:long|wide|high|tall|length|run|height|width)$/.test(wordAt(room, at))) return false;
    if (SHEET.test(wordAt(room, at))) return true;
  }
  return false;
}

/** What is dug or lies under water: its depths and lengths are told in metres. Common practice, no source. */
const DUG =
  /^(?:trench|trenches|ditch|ditches|pit|pits|well|wells|shaft|shafts|borehole|boreholes|footing|footings|foundation|foundations|soakaway|soakaways|pond|ponds|excavation|cesspit|cellar|cellars|sump|culvert|canal|lock|dock|basin|moat|hold|quarry|bank|riverbank|dyke|posthole|postholes)$/;
const DIGS = /^(?:dug|dig|digging|excavated|augered|went|going)$/;
const REACH_OF_NAMES = 8;

/** "Well, the groove is 2.4 deep", "fits well", "hold it": no thing without a word that points at one. */
const isNamed = (room: Room, at: number): boolean =>
  [1, 2].some((back) =>
    /^(?:the|a|an|my|our|this|that|each|every|its|his|her)$/.test(wordAt(room, at - back)),
  );

/** "The trench is 2.4 deep": a thing of metres is named before the number in its sentence, and it goes deep. */
function dug(room: Room, amount: Amount): boolean {
  const sentence = room.tokens[amount.from]?.sentence;
  const deep = /^(?:deep|down)$/.test(wordAt(room, amount.to)) || wordAt(room, amount.from - 1) === 'down';
  if (deep && (DIGS.test(wordAt(room, amount.from - 1)) || DIGS.test(wordAt(room, amount.from - 2))))
    return true;
  for (let k = amount.from - 1; deep && k >= amount.from - REACH_OF_NAMES; k--) {
    if (room.tokens[k]?.sentence !== sentence) return false;
    const word = wordAt(room, k);
    if (DUG.test(word) && isNamed(room, k)) return true;
    // "The post holes are 0.8 deep", "down 0.9 for the footing"
    if (/^holes?$/.test(word) && /^(?:post|pile|pier|fence|trial|pad)$/.test(wordAt(room, k - 1)))
      return true;
  }
  return false;
}

/** "at 1.2 spacing", "1.8 apart", "2.4 centres": what stands so far from its like. */
const spacedOut = (room: Room, amount: Amount): boolean =>
  /^(?:spacings?|apart|centres|centers)$/.test(wordAt(room, amount.to));

/** "From the road to the gable it's 22.6": the way between two places. */
function betweenPlaces(room: Room, amount: Amount): boolean {
  const sentence = room.tokens[amount.from]?.sentence;
  let to = false;
  for (let k = amount.from - 2; k >= amount.from - 14 && room.tokens[k]?.sentence === sentence; k--) {
    if (wordAt(room, k) === 'to') to = true;
    else if (to && wordAt(room, k) === 'from') return true;
  }
  return false;
}

/** "2.4 above the water", "a draught of 1.1": places and depths that are told in metres. */
function farPlace(room: Room, amount: Amount): boolean {
  const after = wordAt(room, amount.to);
  if (/^(?:above|below|off|from|up|down)$/.test(after))
    return !/^(?:center|centre|square|true)$/.test(wordAt(room, amount.to + 1));
  return [1, 2, 3].some((back) => /^(?:draught|draft|freeboard)$/.test(wordAt(room, amount.from - back)));
}

/** "5.2 millimetres at the bow and 4.1 by the stern": the like of a number that was said in millimetres just before. */
function likeMillimetres(room: Room, amount: Amount, amounts: readonly Amount[]): boolean {
  const before = amounts[placeOf(amounts, amount.from) - 1];
  if (!before || before.unitAssumed || !(before.unit === 'mm' || before.unit === 'mil')) return false;
  if (room.tokens[before.from]?.sentence !== room.tokens[amount.from]?.sentence) return false;
  return before.value / amount.value <= 3 && amount.value / before.value <= 3;
}

/** "Four two wide" is 4.2 m: as millimetres it would be "forty two". */
function digitPair(
  room: Room,
  amount: Amount,
  amounts: readonly Amount[],
  attribute: Attribute | undefined,
  isPlaced: boolean,
): number | undefined {
  // "Sheets are two four by one two": each size of the list is said so.
  const { group } = amount;
  if (group) {
    const pair = asPair(room, amount);
    const isPair = (other: Amount) => other.group?.id !== group.id || asPair(room, other) !== undefined;
    return pair !== undefined && amounts.every(isPair) ? pair : undefined;
  }
  const isLong = attribute === undefined ? isPlaced : LONG_SIZE.has(attribute);
  return metresByDigits(room, amount, amounts, isLong);
}

/** Parts that inch tapes are marked in; tenths and hundredths are of the house unit. */
export const TAPE_PARTS: ReadonlySet<number> = new Set([4, 8, 16, 32, 64]);

export function asLength(
  room: Room,
  amount: Amount,
  amounts: readonly Amount[],
  attribute: Attribute | undefined,
  isPlaced = false,
): Meaning {
  // A thickness is told in millimetres, whatever the rooms are told in.
  const thin =
    attribute === 'thickness' &&
    room.house === 'metric' &&
    (!room.decimalComma || Number.isInteger(amount.value)) &&
    amount.value <= 100;
  const house = thin ? 'mm' : houseUnit(room, amounts, amount);
  const pair = house === 'mm' && digitPair(room, amount, amounts, attribute, isPlaced);
  if (pair) return { ...length(amount, 'm', 'metres, said figure by figure'), value: pair };
  const inches = house !== 'in' && amount.number.fraction && TAPE_PARTS.has(amount.number.denominator ?? 0);
  if (inches) return length(amount, 'in', 'a fraction of a kind that only inches have');
  if (house === 'mm' && metres(room, amount, attribute, amounts)) {
    const inMetres = length(amount, 'm', 'too small for millimetres here');
    // "2.4 high": nothing is so many millimetres high, so that nobody is asked.
    if (attribute === 'height') return inMetres;
    return { ...inMetres, alternatives: [{ value: amount.value, unit: 'mm' }] };
  }
  return length(amount, house, 'the unit of the house');
}

const length = (amount: Amount, unit: string, why: string): Meaning => ({
  value: amount.value,
  unit,
  dimension: 'length',
  why,
});
