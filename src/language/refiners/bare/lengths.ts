import type { Attribute, Dimension } from '../../notes.ts';
import type { Amount, Room } from '../../rules/rule.ts';
import { EACH_AFTER } from '../../rules/size-words.ts';
import { speaksOf } from '../../units/surroundings.ts';

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

/** Unit that bare lengths of this memo take: the house's, or the one that the memo keeps using. */
function houseUnit(room: Room, amounts: readonly Amount[], value: number): 'mm' | 'cm' | 'in' {
  if (room.house === 'us') return 'in';
  const counts = unitsSaid(amounts);
  const said = (units: readonly string[]) => units.reduce((sum, unit) => sum + (counts.get(unit) ?? 0), 0);
  if (room.house === 'mixed' && said(['in', 'ft']) > said(['mm', 'cm', 'm'])) return 'in';
  const between = value >= THIN_TO && value < MILLIMETRES_FROM;
  return between && centimetreHouse(room, amounts) ? 'cm' : 'mm';
}

/**
 * In a house that speaks of centimetres too, thin things and all numbers of three big figures are millimetres.
 * Common practice, no source.
 */
const THIN_TO = 30;
const MILLIMETRES_FROM = 200;
const SURE_MILLIMETRES = 300;

/** Kept beside the list: every bare number of a memo asks. */
const CENTIMETRE_HOUSES = new WeakMap<readonly Amount[], boolean>();

/**
 * Where centimetres are spoken, a bare number may be one. A house that leaves millimetres unsaid gives itself away
 * by bare numbers of three and four figures, in this memo or before it.
 */
function centimetreHouse(room: Room, amounts: readonly Amount[]): boolean {
  const known = CENTIMETRE_HOUSES.get(amounts);
  if (known !== undefined) return known;
  const speaks = speaksOfCentimetres(room, amounts);
  CENTIMETRE_HOUSES.set(amounts, speaks);
  return speaks;
}

function speaksOfCentimetres(room: Room, amounts: readonly Amount[]): boolean {
  let [centimetres, millimetres] = [0, 0];
  for (const { unit, unitAssumed, value, role } of amounts) {
    if (unit === 'cm' && !unitAssumed) centimetres++;
    else if (!unit && role === 'figure' && value >= SURE_MILLIMETRES) millimetres++;
  }
  for (const { unit, value } of room.context.knownFigures ?? []) {
    if (unit === 'cm') centimetres++;
    else if (unit === 'mm' && value >= SURE_MILLIMETRES) millimetres++;
  }
  return centimetres > millimetres;
}

const LONG_SIZE: ReadonlySet<Attribute> = new Set(['width', 'height', 'length', 'clearance', 'size']);

/** In a millimetre house, decimals and small numbers of long things are metres: "4.74 long", "trimmed to 3.04". */
function metres(room: Room, amount: Amount, attribute: Attribute | undefined): boolean {
  const { decimals = 0 } = amount.number;
  if (amount.value >= 30 || amount.number.fraction) return false;
  if (speaksOf(room, 'machining', amount.from, amount.to, 12)) return false;
  if (decimals >= 2) return amount.value >= 0.3;
  if (attribute && !LONG_SIZE.has(attribute)) return false;
  if (decimals === 1)
    return (
      amount.value >= 1 &&
      amount.value < (attribute ? 13 : 10) &&
      !EACH_AFTER.startingAt(room.tokens, amount.to)
    );
  return attribute !== undefined && attribute !== 'clearance' && amount.value < 10 && amount.value >= 2;
}

/** Parts that inch tapes are marked in; tenths and hundredths are of the house unit. */
export const TAPE_PARTS: ReadonlySet<number> = new Set([4, 8, 16, 32, 64]);

export function asLength(
  room: Room,
  amount: Amount,
  amounts: readonly Amount[],
  attribute: Attribute | undefined,
): Meaning {
  const house = houseUnit(room, amounts, amount.value);
  const inches = house !== 'in' && amount.number.fraction && TAPE_PARTS.has(amount.number.denominator ?? 0);
  if (inches) return length(amount, 'in', 'a fraction of a kind that only inches have');
  if (house === 'mm' && metres(room, amount, attribute)) {
    return {
      ...length(amount, 'm', 'too small for millimetres here'),
      alternatives: [{ value: amount.value, unit: 'mm' }],
    };
  }
  return length(amount, house, 'the unit of the house');
}

const length = (amount: Amount, unit: string, why: string): Meaning => ({
  value: amount.value,
  unit,
  dimension: 'length',
  why,
});
