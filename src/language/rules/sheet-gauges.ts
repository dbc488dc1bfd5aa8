/** Gauges of sheet that are told without the word. */
import { readNumber } from '../numbers/read-number.ts';
import { readUnit } from '../units/read-unit.ts';
import type { AmountRule, Room } from './rule.ts';
import { wordAt } from './rule.ts';

/** Sheet and wire gauges in use. */
const GAUGES = { from: 6, to: 36 } as const;
/** Sheet that goes by a gauge is no thicker, in millimetres. Common practice, no source. */
const THICKEST_GAUGED = 5;
const IS = /^(?:'s|is|are|was|were|be)$/;
const CLAUSE_ENDS = /^(?:|[.,;:!?]|and|but|so|or|not|on|for|in|which|sheet|plate|steel|ally)$/;
/** How many words back a gauge is still what is spoken of. */
const GAUGE_REACH = 28;

/**
 * "0.9 mm is a 20", "the deck is 18 swg and the sides are 20", "the new sheet's a 22": a gauge of sheet without its word,
 * where one was told just before. "It's a 22", said of a tube, is its size.
 */
export const gaugesAlone: AmountRule = {
  name: 'a gauge without its word',
  atNumber: true,
  read(room, at) {
    const number = readNumber(room.tokens, at);
    if (!number || !isGauge(room, at)) return undefined;
    if (readUnit(room.tokens, number.to) || !CLAUSE_ENDS.test(wordAt(room, number.to))) return undefined;
    const isOne = /^an?$/.test(wordAt(room, at - 1));
    const verb = isOne ? at - 2 : at - 1;
    if (!IS.test(wordAt(room, verb))) return undefined;
    const gauged = isOne ? isThickness(room, verb) || gaugeBefore(room, verb) : setBesideGauge(room, verb);
    return gauged ? { skip: { to: number.to, why: 'a gauge of sheet' } } : undefined;
  },
};

/** Whether the number at a token may be a gauge: "a 210 gauge" is the spacing of battens. */
function isGauge(room: Room, at: number): boolean {
  const number = readNumber(room.tokens, at);
  if (!number || !Number.isInteger(number.value) || number.fraction) return false;
  return number.value >= GAUGES.from && number.value <= GAUGES.to;
}

/** "0.9 mm | is", "0.9 mm, that | is", "1.2 | is": a thickness of sheet is what the gauge is told of. */
function isThickness(room: Room, verb: number): boolean {
  let at = verb;
  if (/^(?:that|which)$/.test(wordAt(room, at - 1))) at -= wordAt(room, at - 2) === ',' ? 2 : 1;
  const hasUnit = /^(?:mm|mil|mils|millimetres?|millimeters?)$/.test(wordAt(room, at - 1));
  const glued = /^(\d+(?:\.\d+)?)mm$/.exec(wordAt(room, at - 1))?.[1];
  const from = hasUnit ? at - 2 : at - 1;
  const value = glued ? Number(glued) : readNumber(room.tokens, from)?.value;
  if (value === undefined || value > THICKEST_GAUGED) return false;
  return hasUnit || glued !== undefined || (!Number.isInteger(value) && gaugeBefore(room, from));
}

/** Whether a gauge was told within some words before, by its word or beside a thickness. */
function gaugeBefore(room: Room, before: number): boolean {
  for (let at = before - 1; at >= Math.max(0, before - GAUGE_REACH); at--) {
    const word = wordAt(room, at);
    if (/^(?:swg|awg|gauge)$/.test(word)) return isGauge(room, at - 1);
    // Beside a thickness; its own number must have a unit, or this would look back for ever.
    const isOne = /^an?$/.test(word) && IS.test(wordAt(room, at - 1));
    if (isOne && /^(?:mm|mil|millimetres?)$/.test(wordAt(room, beforeThat(room, at - 1)))) return true;
  }
  return false;
}

const beforeThat = (room: Room, verb: number): number => {
  if (!/^(?:that|which)$/.test(wordAt(room, verb - 1))) return verb - 1;
  return wordAt(room, verb - 2) === ',' ? verb - 3 : verb - 2;
};

/** "The deck is 18 swg and the sides | are 20": the same told of the next thing in one breath. */
function setBesideGauge(room: Room, verb: number): boolean {
  const { sentence } = room.tokens[verb] ?? {};
  for (let at = verb - 2; at >= verb - 8; at--) {
    if (room.tokens[at]?.sentence !== sentence) return false;
    if (!/^(?:swg|awg|gauge)$/.test(wordAt(room, at))) continue;
    return isGauge(room, at - 1) && /^(?:and|,|but)$/.test(wordAt(room, at + 1));
  }
  return false;
}
