import { PLURAL_NUMBERS } from '../numbers/number-words.ts';
import { readNumber } from '../numbers/read-number.ts';
import { afterHyphen } from '../numbers/spoken.ts';
import { readUnit } from '../units/read-unit.ts';
import type { AmountRule, Room } from './rule.ts';
import { amountOf, tidy, wordAt } from './rule.ts';

const INCHES = { key: 'in', dimension: 'length' } as const;

/** End of the inches' own unit, when it is said: "7 foot 4 inches", 7'4". */
function inchesEnd(room: Room, at: number): number {
  const unit = readUnit(room.tokens, at);
  if (unit?.key === 'in') return unit.to;
  // A prime pair after a fraction: 7' 4 1/2".
  return room.tokens[at]?.word === '"' && !room.tokens[at]?.spaced ? at + 1 : at;
}

/** Nouns in the plural after the second number make it a count of them: "eight feet two boards". */
function countsSomething(room: Room, at: number): boolean {
  const word = wordAt(room, at);
  return (
    /^\p{L}{3,}s$/u.test(word) &&
    !/^(?:across|this|is|was|has|plus|minus|centres|centers|inches|less)$/.test(word)
  );
}

/** "7 foot 4", "four foot 2 and 3/8", "8 feet, six inches", 7'4", "five foot nothing": one length in inches. */
export const feetAndInches: AmountRule = {
  name: '<feet> foot <inches>',
  atNumber: true,
  read(room, at) {
    const { tokens } = room;
    const article = wordAt(room, at) === 'a' && wordAt(room, at + 1) === 'foot';
    const feet = article ? undefined : readNumber(tokens, at);
    if (!feet && !article) return undefined;
    const unit = readUnit(tokens, feet?.to ?? at + 1);
    if (unit?.key !== 'ft') return undefined;
    const next = wordAt(room, unit.to);
    if (next === 'nothing' || next === 'zero') {
      const value = tidy((feet?.value ?? 1) * 12);
      const number = feet ?? { from: at, to: at + 1, value: 1, form: 'words' as const };
      return {
        amount: amountOf('<feet> foot nothing', number, { from: at, to: unit.to + 1 }, value, INCHES),
      };
    }
    const joined = next === 'and' || next === ',';
    const inches = readNumber(tokens, afterHyphen(tokens, joined ? unit.to + 1 : unit.to));
    if (!inches || inches.value >= 12 || inches.loose) return undefined;
    const to = inchesEnd(room, inches.to);
    const said = to > inches.to;
    // "eight foot and three boards", "ten foot, two of them": only spoken inches or a fraction join across these.
    if (joined && !said && !(inches.fraction && next === 'and')) return undefined;
    if (!said && (readUnit(tokens, inches.to) || countsSomething(room, inches.to))) return undefined;
    // "three foot and a half" is half a foot.
    if (next === 'and' && inches.fraction && !said && inches.value < 1) return undefined;
    const value = tidy((feet?.value ?? 1) * 12 + inches.value);
    const number = { from: at, to: inches.to, value, form: inches.form, fraction: inches.fraction ?? false };
    return { amount: amountOf(this.name, number, { from: at, to }, value, INCHES) };
  },
};

/** Words before a bare "twenty-nine six" that put it in the place of a value. */
const VALUE_BEFORE =
  /^(?:'s|'re|is|are|was|were|at|to|be|of|measures|measured|measure|reads|read|says|said|makes|made|gives|came|comes|out|stands|stood|only|just|about|nearly|maybe|my|that|it|up|a|the|than|over|under|,|:|)$/;
const VALUE_AFTER =
  /^(?:|[.,;:!?]|wide|high|long|deep|tall|across|clear|overall|by|x|between|from|to|up|at|on|in|and|but|so|inside|outside|post|wall|door|doors|opening|ceiling|ceilings|headroom|before|now|so|then|again|after|when|for|with|not|is|high)$/;

/** Sizes behind a value at the head of a sentence: there it needs a word of size, or a part of an inch. */
const SIZED_AFTER = /^(?:wide|high|long|deep|tall|across|clear|overall|shut|open|even|square)$/;
/** Regions where a mixed house tells its larger sizes in feet and inches. Common practice, no source. */
const FEET_IN_A_MIXED_HOUSE = /^(?:US|CA)$/;

/** Feet and inches that were said without either word, or undefined: "twenty-nine six", "six eight", "29 6". */
export function bareParts(room: Room, at: number): { feet: number; inches: number; to: number } | undefined {
  const first = readNumber(room.tokens, at);
  if (!first || first.decimals || (first.fraction && first.splitAfter === undefined)) return undefined;
  const whole = Math.floor(first.value);
  if (first.splitAfter === 1 && whole < 100) {
    return { feet: Math.floor(whole / 10), inches: first.value - Math.floor(whole / 10) * 10, to: first.to };
  }
  const rest = first.value % 100;
  if (first.splitAfter !== undefined && rest >= 10 && rest < 12 && whole < 10000) {
    return { feet: Math.floor(whole / 100), inches: rest, to: first.to };
  }
  if (first.splitAfter !== undefined || first.fraction || first.value > 99) return undefined;
  const second = readNumber(room.tokens, first.to);
  if (!second || second.splitAfter || second.value < 1 || second.value >= 12 || second.loose)
    return undefined;
  // "6 11 1/2" is six foot eleven and a half; "six, four" may be two numbers.
  if (first.value < 10 && !second.fraction) return undefined;
  return { feet: first.value, inches: second.value, to: second.to };
}

const NO_LENGTH = /^(?:volts|voltmeter|scaled|scales|weighed|weighs|weighbridge)$/;
const HOW_IT_IS = /^(?:bank|'s|is|are|was|were|at|now|reads|reading|still|back|up|down|only)$/;

/** A box, a cable or a lead of a battery is told in lengths; the battery itself in volts. */
export function isBatteryItself(room: Room, at: number): boolean {
  return /^(?:battery|batteries)$/.test(wordAt(room, at)) && HOW_IT_IS.test(wordAt(room, at + 1));
}

/** "The battery's reading thirteen two", "she scaled at thirteen four": volts, and thousands of pounds. */
function isNoLength(room: Room, at: number): boolean {
  for (let index = at - 1; index >= at - 6; index--) {
    if (room.tokens[index]?.sentence !== room.tokens[at]?.sentence) return false;
    if (NO_LENGTH.test(wordAt(room, index)) || isBatteryItself(room, index)) return true;
  }
  return false;
}

/** Whether the words about two numbers make them one value. */
function isInItsPlace(room: Room, at: number, to: number, isPart: boolean): boolean {
  const [before, after] = [wordAt(room, at - 1), wordAt(room, to)];
  // "Two four by fours" are timbers.
  if (
    /^(?:by|x)$/.test(after) &&
    (PLURAL_NUMBERS.has(wordAt(room, to + 1)) || /s$/.test(wordAt(room, to + 1)))
  )
    return false;
  const opens = at === 0 || room.tokens[at - 1]?.sentence !== room.tokens[at]?.sentence;
  if (opens && (isPart || SIZED_AFTER.test(after))) return VALUE_AFTER.test(after) || SIZED_AFTER.test(after);
  if (!VALUE_BEFORE.test(before) && !/ing?$/.test(before)) return false;
  return VALUE_AFTER.test(after) || SIZED_AFTER.test(after);
}

/** "twenty-nine six between the posts", "the door's six eight": only where people build in feet and inches. */
export const bareFeetAndInches: AmountRule = {
  name: '<feet> <inches>',
  read(room, at) {
    if (room.house === 'metric') return undefined;
    const parts = bareParts(room, at);
    if (!parts || parts.inches < 1 || readUnit(room.tokens, parts.to)) return undefined;
    const isPart = parts.inches % 1 !== 0 && parts.feet > 0;
    if (room.house === 'mixed' && !isPart && !(FEET_IN_A_MIXED_HOUSE.test(room.region) && parts.feet >= 3))
      return undefined;
    if (isNoLength(room, at) || !isInItsPlace(room, at, parts.to, isPart)) return undefined;
    const value = tidy(parts.feet * 12 + parts.inches);
    const number = { from: at, to: parts.to, value, form: 'words' as const };
    return { amount: amountOf(this.name, number, { from: at, to: parts.to }, value, INCHES) };
  },
};
