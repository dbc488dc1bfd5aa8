/** Bare numbers that are set against what is asked for: what there is, or what there should be instead. */
import { type Amount, type Room, wordAt } from '../../rules/rule.ts';
import type { Meaning } from './lengths.ts';
import { close, lastWithUnit } from './neighbours.ts';

const ASKS = /^(?:needs?|wants?|takes|requires?|asks|calls|should|must|need|needed|wanted)$/;
const IS = /^(?:'s|is|are|was|were|'ve|'re|have|has|had|got|get|gives|gave|does|holds|takes|makes)$/;
const CLAUSE_ENDS = /^(?:|[.,;:!?]|and|but|so|now|there|here|left|long|wide|high)$/;
/** Words between what asks and its number: "wants at least 14 metres". */
const LIGHT = /^(?:be|for|at|least|a|an|about|good|to|have|all|of|the|some|around)$/;
/** What is there and what is asked for are of one size: farther apart the number is of something else. */
const APART = 3;
/** Nobody has so many of a thing beside how much room there is. */
const BIG = 100;
/** Tokens from one number to the other. */
const REACH = 9;

/**
 * "It wants 14 metres, the yard's only 12", "the brace is 12 metres, it wants 14": the second number is told in the unit
 * of the first. "The beam is 6 metres and the web is only 8" is left alone: nothing is asked for.
 */
export function asAskedFor(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const last = lastWithUnit(room, out, amount, 0);
  if (!last?.unit || !last.dimension || !isSetAgainst(room, amount, last)) return undefined;
  const why = 'set against what is asked for, in its unit';
  return { value: amount.value, unit: last.unit, dimension: last.dimension, why };
}

const ORDERED = /^(?:order|ordered|ordering|bought|booked|paid|got|have|had)$/;
/** What is ordered by how much of it there is, and not by how large a piece is. */
const BY_THE_LOAD = /^(?:volume|mass|area)$/;
/** Sentences from how much was worked out to how much was ordered. */
const SOON = 2;

/**
 * "I worked it out at five point eight cube. Lucky I ordered the six and a half": so much of the same stuff, in the unit
 * that was said. "I ordered the 18" is a board: it needs a measure by the load shortly before and a like number.
 */
export function asOrdered(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (!/^(?:the|a|another)$/.test(wordAt(room, amount.from - 1))) return undefined;
  if (!ORDERED.test(wordAt(room, amount.from - 2)) || !CLAUSE_ENDS.test(wordAt(room, amount.to)))
    return undefined;
  const last = lastWithUnit(room, out, amount, SOON);
  if (!last?.unit || !last.dimension || last.unitAssumed || !BY_THE_LOAD.test(last.dimension))
    return undefined;
  if (last.unit === 'mm2' || !close(last.value, amount.value, 2)) return undefined;
  return {
    value: amount.value,
    unit: last.unit,
    dimension: last.dimension,
    why: 'ordered by what was worked out',
  };
}

/** Whether a bare number tells what there is beside what was asked for, or what is asked for beside what there is. */
export function isSetAgainst(room: Room, amount: Amount, last: Amount): boolean {
  if (!last.unit || last.role === 'count' || amount.from - last.to > REACH) return false;
  // "Need 450 to the bulkhead, I've 380": big numbers of one unit, though nobody says it.
  if (last.unitAssumed && (amount.value < BIG || last.value < BIG)) return false;
  if (room.tokens[last.from]?.sentence !== room.tokens[amount.from]?.sentence) return false;
  if (!CLAUSE_ENDS.test(wordAt(room, amount.to)) || !close(last.value, amount.value, APART)) return false;
  return isHad(room, amount) ? isAsked(room, last) : isAsked(room, amount) && isTold(room, last);
}

/** "'s only 12", "I've only got 7". */
function isHad(room: Room, amount: Amount): boolean {
  const { from } = amount;
  let at = from - 1;
  if (/^(?:about|got|get)$/.test(wordAt(room, at))) at--;
  if (amount.value >= BIG && /^(?:'ve|have)$/.test(wordAt(room, at)))
    return /^(?:i|we)$/.test(wordAt(room, at - 1));
  if (!/^(?:only|just|barely)$/.test(wordAt(room, at))) return false;
  return IS.test(wordAt(room, at - 1));
}

/** "wants 14", "needs at least 3 metres". */
function isAsked(room: Room, { from }: Amount): boolean {
  let at = from - 1;
  while (LIGHT.test(wordAt(room, at)) && from - at < 5) at--;
  return ASKS.test(wordAt(room, at));
}

/** "is 12 metres". */
const isTold = (room: Room, { from }: Amount): boolean =>
  [1, 2].some((back) => IS.test(wordAt(room, from - back)));
