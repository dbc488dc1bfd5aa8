/** Bare numbers that are the size of a cable, after another one or a circuit was named. */
import { type Amount, type Room, wordAt } from '../../rules/rule.ts';
import { CONDUCTOR_SIZES } from '../../units/conductor-sizes.ts';
import { evidenceAfter } from './evidence.ts';
import type { Meaning } from './lengths.ts';
import { REMEMBERED } from './neighbours.ts';

const CIRCUITS = /^(?:socket|sockets|lights|lighting|ring|cooker|shower|spur|hob|immersion|radial)$/;
/** Thicker ones are never left to a bare number. */
const isConductor = (value: number) => value >= 1 && value <= 70 && CONDUCTOR_SIZES.has(value);

const CABLE = /^(?:cable|cables|wire|flex)$/;
const CABLE_BACK = 8;

/** "Pulled the cable through as well, two point five": nothing drawn, but its size, where the sentence names a cable. */
export function asCableNamed(room: Room, amount: Amount): Meaning | undefined {
  if (Number.isInteger(amount.value) || !isConductor(amount.value) || !namesCable(room, amount))
    return undefined;
  return { value: amount.value, unit: 'mm2', dimension: 'area', why: 'the size of the cable before it' };
}

const isDrawn = (room: Room, { from }: Amount): boolean =>
  [1, 2, 3].some((back) =>
    /^(?:draws?|drawing|pulls|pulling|carries|carrying)$/.test(wordAt(room, from - back)),
  );

function namesCable(room: Room, amount: Amount): boolean {
  if (room.house === 'us' || evidenceAfter(room, amount) || isDrawn(room, amount)) return false;
  const sentence = room.tokens[amount.from]?.sentence;
  for (let at = amount.from - 1; at >= amount.from - CABLE_BACK; at--) {
    if (room.tokens[at]?.sentence !== sentence || /^(?:drum|reel|hole|gland)$/.test(wordAt(room, at)))
      return false;
    if (CABLE.test(wordAt(room, at))) return true;
  }
  return false;
}

/** "Two and a half three core", "six twin and earth", "sixteen four core". */
const ofCores = (room: Room, at: number): boolean =>
  (/^(?:two|three|four|five|single|2|3|4|5)$/.test(wordAt(room, at)) &&
    /^cores?$/.test(wordAt(room, at + 1))) ||
  (wordAt(room, at) === 'twin' && /^(?:and|&|cable|earth|core)$/.test(wordAt(room, at + 1)));

/** "the heater gets its own run in four": after a cable's size, the next one needs no unit. */
export function wiring(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const cable = out
    .slice(-REMEMBERED)
    .some(
      (other) =>
        other.unit === 'mm2' &&
        Math.abs((room.tokens[other.from]?.sentence ?? 0) - (room.tokens[amount.from]?.sentence ?? 0)) <= 1,
    );
  if (isConductor(amount.value) && ofCores(room, amount.to))
    return { value: amount.value, unit: 'mm2', dimension: 'area', why: 'the size of a cable by its cores' };
  const circuit =
    /^(?:on|in)$/.test(wordAt(room, amount.from - 1)) &&
    CIRCUITS.test(wordAt(room, amount.from - 2)) &&
    (cable || !Number.isInteger(amount.value));
  if (circuit && isConductor(amount.value) && !evidenceAfter(room, amount))
    return { value: amount.value, unit: 'mm2', dimension: 'area', why: 'the cable of a circuit' };
  const said = wordAt(room, amount.from - 1) === 'in' || !Number.isInteger(amount.value);
  if (!cable || !isConductor(amount.value) || !said) return undefined;
  return { value: amount.value, unit: 'mm2', dimension: 'area', why: 'the size of another cable' };
}
