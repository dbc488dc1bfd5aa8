import type { NumberReading } from '../numbers/number.ts';
import { FRACTION_SIGNS, PLURAL_NUMBERS, TENS_WORDS } from '../numbers/number-words.ts';
import { readNumber } from '../numbers/read-number.ts';
import { CONDUCTOR_SIZES } from '../units/conductor-sizes.ts';
import { readUnit, type UnitMention } from '../units/read-unit.ts';
import { speaksOf } from '../units/surroundings.ts';
import { wordTable } from '../word-table.ts';
import type { AmountRule, Room } from './rule.ts';
import { amountOf, wordAt } from './rule.ts';

/** "760 mil", "twelve inches", "18mm", "2 and 5/8 inch", "40 amp". */
export const numberAndUnit: AmountRule = {
  name: '<number> <unit>',
  atNumber: true,
  read(room, at) {
    const number = readNumber(room.tokens, at, room.decimalComma);
    const unit = number && readUnit(room.tokens, number.to);
    if (!number || !unit) return undefined;
    if (isInwards(room, number, unit) || isPutIn(room, number, unit)) return undefined;
    const value = LARGE_UNIT.test(unit.key) ? settledThousands(number) : number.value;
    return { amount: amountOf(this.name, number, { from: at, to: unit.to }, value, unit) };
  },
};

/** More inches than this are not said in a house of millimetres: "12 in from the end" may be a foot. */
const INCHES_SAID_IN = 24;

/** "40 in from the edge" in a house of millimetres that has no inches: inwards. */
function isInwards(room: Room, number: NumberReading, unit: UnitMention): boolean {
  if (room.house !== 'metric' || number.value <= INCHES_SAID_IN) return false;
  if (wordAt(room, unit.from) !== 'in' || unit.to !== unit.from + 1) return false;
  if (!room.tokens[unit.from]?.spaced || wordAt(room, unit.to) !== 'from') return false;
  return !hasInches(room);
}

const withInches = new WeakMap<Room, boolean>();

/** Whether a text names inches or feet anywhere: looked for once, however often it is asked. */
function hasInches(room: Room): boolean {
  let found = withInches.get(room);
  if (found === undefined) {
    found = room.tokens.some(({ word }) => /^(?:inch|inches|"|foot|feet)$/.test(word));
    withInches.set(room, found);
  }
  return found;
}

/** "The tank holds 180 litres and I've put 80 in": into it. */
const isPutIn = (room: Room, number: NumberReading, unit: UnitMention): boolean =>
  wordAt(room, unit.from) === 'in' &&
  unit.to === unit.from + 1 &&
  room.tokens[unit.from]?.spaced === true &&
  /^(?:|[.,;:!?]|so|and|but|already|now)$/.test(wordAt(room, unit.to)) &&
  /^(?:put|poured|tipped|pumped|added|topped|squirted|ladled)$/.test(wordAt(room, number.from - 1));

/** Units that nobody counts in thousands when a building or a boat is meant. */
const LARGE_UNIT = /^(?:m|km|ft|yd|m2|m3|bar|t|ton|kW|kWh|kVA)$/;

/** "2,125 metre" in a house of decimal commas is two metres and a bit, "1.200 litre" twelve hundred litres. */
function settledThousands(number: NumberReading): number {
  return number.alternatives?.[0] ?? number.value;
}

const HUNDREDS = wordTable<number>({ hundred: 100, thousand: 1000 });

/** "hundred mil", "thousand litres": the article swallowed. "A few hundred litres" states no number. */
export const hundredOfUnit: AmountRule = {
  name: 'hundred <unit>',
  read(room, at) {
    const value = HUNDREDS[wordAt(room, at)];
    if (!value || /^(?:few|several|many|odd|some)$/.test(wordAt(room, at - 1))) return undefined;
    const number = { from: at, to: at + 1, value, form: 'words' as const };
    const unit = readUnit(room.tokens, at + 1);
    // "The bearers are hundred by seventy five."
    const section = wordAt(room, at + 1) === 'by' && readNumber(room.tokens, at + 2) !== undefined;
    if (!unit && section && !/^(?:a|by)$/.test(wordAt(room, at - 1)) && !readNumber(room.tokens, at - 1))
      return { amount: amountOf(this.name, number, { from: at, to: at + 1 }, value) };
    if (!unit) return undefined;
    return { amount: amountOf(this.name, number, { from: at, to: unit.to }, value, unit) };
  },
};

/** "forty-odd mil", "sixty-ish kilos": a hedge between number and unit. */
export const roughNumberAndUnit: AmountRule = {
  name: '<number> odd <unit>',
  atNumber: true,
  read(room, at) {
    const number = readNumber(room.tokens, at, room.decimalComma);
    if (!number) return undefined;
    const hyphen = wordAt(room, number.to) === '-' ? number.to + 1 : number.to;
    if (!/^(?:odd|ish|something)$/.test(wordAt(room, hyphen))) return undefined;
    const unit = readUnit(room.tokens, hyphen + 1);
    if (!unit) return undefined;
    const amount = amountOf(this.name, number, { from: at, to: unit.to }, number.value, unit);
    return { amount: { ...amount, bound: 'about', boundSaid: true } };
  },
};

/** A plural word that is counted: "boards", "batteries". */
const PLURAL = /^\p{L}{3,}[^s'’\W]s$/u;

/** Words that end the name of what is counted. */
const NO_NAME =
  /^(?:and|but|or|so|is|'s|are|was|were|has|from|in|on|at|by|for|to|with|off|of|than|either|both|each|wide|high|long|deep|thick|across)$/;

/** What lamps, pumps and batteries are sold for, in volts; common practice. */
const NOMINAL_VOLTS: ReadonlySet<number> = new Set([6, 12, 24, 36, 48]);

/** Where "twenty four" of "twenty four 12 volt lamps" ends: at the last word of the run that does not belong to the volts. */
function pairBefore(room: Room, from: number, to: number): number {
  const tens = TENS_WORDS.has(wordAt(room, to - 2)) && room.tokens[to - 1]?.kind === 'word';
  return tens && to - 2 > from ? to - 2 : to - 1;
}

/**
 * "three 25 mil boards", "two twelve volt batteries": a count runs into the size behind it. Only before a plural,
 * and never behind an article: "the three forty mil gap".
 */
export const countOfUnitSize: AmountRule = {
  name: '<count> <size> <unit> <things>',
  atNumber: true,
  read(room, at) {
    const number = readNumber(room.tokens, at);
    if (!number?.splitAfter || number.fraction || number.decimals) return undefined;
    const unit = readUnit(room.tokens, number.to);
    // Pieces of a length are told apart where numbers are read: "eleven 90 mm lengths" are 1190 long.
    const digits =
      number.to === at + 2 && room.tokens[at + 1]?.kind === 'number' && unit?.dimension !== 'length';
    const supply =
      unit?.key === 'V' && NOMINAL_VOLTS.has(number.value % 100) ? number.value % 100 : undefined;
    if (number.splitAfter !== 1 && !digits && !supply) return undefined;
    if (/^(?:the|a|an|is|'s|at|to|by|x)$/.test(wordAt(room, at - 1))) return undefined;
    const counted = supply && number.splitAfter === 2 ? pairBefore(room, at, number.to) : at + 1;
    const count = readNumber(room.tokens.slice(at, counted), 0);
    if (!count || count.value < 2 || !unit) return undefined;
    const behind = room.tokens.slice(unit.to, unit.to + 3);
    const end = behind.findIndex(({ kind, word }) => kind !== 'word' || NO_NAME.test(word));
    const things = (end < 0 ? behind : behind.slice(0, end)).some(({ word }) => PLURAL.test(word));
    return things ? { skip: { to: counted, why: 'so many of the size behind it' } } : undefined;
  },
};

const ELECTRIC =
  /^(?:electrician|electricians|sparky|sparks|wire|wires|wiring|cable|cables|inverter|fuse|fuses|breaker|battery|batteries|charger|charging|circuit|circuits|amp|amps|crimp|crimped|lugs|leads)$/;
/** How far back the talk of wiring may lie, in tokens and sentences. */
const ELECTRIC_BACK = 40;

/** "Line for the drive is six square": after talk of wiring, in this sentence or one of the two before it. */
function electricBefore(room: Room, at: number): boolean {
  const sentence = room.tokens[at]?.sentence ?? 0;
  for (let index = at - 1; index >= Math.max(0, at - ELECTRIC_BACK); index--) {
    const token = room.tokens[index];
    if (!token || sentence - token.sentence > 2) return false;
    if (ELECTRIC.test(token.word)) return true;
  }
  return false;
}

/** "thirty five square", "two point five squared": a cable by its section, the unit swallowed. */
export const bareSection: AmountRule = {
  name: '<number> squared',
  atNumber: true,
  read(room, at) {
    const number = readNumber(room.tokens, at, room.decimalComma);
    if (!number || number.value > 400 || !/^squared?$/.test(wordAt(room, number.to))) return undefined;
    const isSection = CONDUCTOR_SIZES.has(number.value);
    const isRun = isSection && (wordAt(room, at - 1) === 'in' || electricBefore(room, at));
    if (!isRun && !speaksOf(room, 'cable', at, number.to + 1)) return undefined;
    if (readUnit(room.tokens, number.to + 1)) return undefined;
    const unit = { key: 'mm2', dimension: 'area' } as const;
    return { amount: amountOf(this.name, number, { from: at, to: number.to + 1 }, number.value, unit) };
  },
};

/** "two eighteens": that many of one size. */
export const countOfSize: AmountRule = {
  name: '<count> <size>s',
  atNumber: true,
  read(room, at) {
    const split = tensAndPlural(room, at + 1);
    const count = readNumber(split ? room.tokens.slice(at, at + 1) : room.tokens, split ? 0 : at);
    if (!count || count.value > 20 || !Number.isInteger(count.value)) return undefined;
    if (split) {
      const number = { from: at + 1, to: split.to, value: split.size, form: 'words' as const };
      return { amount: amountOf(this.name, number, { from: at, to: split.to }, split.size) };
    }
    const word = wordAt(room, count.to);
    const size = PLURAL_NUMBERS.get(word) ?? (/^\d+s$/.test(word) ? Number.parseInt(word, 10) : undefined);
    if (!size || size < 5) return undefined;
    const number = { from: count.to, to: count.to + 1, value: size, form: 'words' as const };
    return { amount: amountOf(this.name, number, { from: at, to: count.to + 1 }, size) };
  },
};

/** "the tens", "in eighteens": a size said as a thing. */
export const sizeAsThing: AmountRule = {
  name: 'the <size>s',
  read(room, at) {
    const written = writtenPlural(room, at) ?? tensAndPlural(room, at);
    const size = PLURAL_NUMBERS.get(wordAt(room, at)) ?? written?.size;
    const to = written?.to ?? at + 1;
    if (!size || size < 5) return undefined;
    const isThing = /^(?:the|those|these|in|into)$/.test(wordAt(room, at - 1)) || ofFasteners(room, at, to);
    // "Seventy fives" is no count of fives, whatever stands before it.
    if (!isThing && to - at < 2) return undefined;
    const number = { from: at, to, value: size, form: 'words' as const };
    return { amount: amountOf(this.name, number, { from: at, to }, size) };
  },
};

/** "16s", "135s": the size, and where it ends; the s may stand by itself. */
function writtenPlural(room: Room, at: number): { readonly size: number; readonly to: number } | undefined {
  const [token, next] = [room.tokens[at], room.tokens[at + 1]];
  if (/^\d{1,3}s$/.test(token?.word ?? ''))
    return { size: Number.parseInt(token?.word ?? '', 10), to: at + 1 };
  const isGlued =
    token?.kind === 'number' && /^\d{1,3}$/.test(token.text) && next?.word === 's' && !next.spaced;
  return isGlued ? { size: Number(token.text), to: at + 2 } : undefined;
}

/** "Seventy fives": two words of one size, of which the last is a plural. */
function tensAndPlural(room: Room, at: number): { readonly size: number; readonly to: number } | undefined {
  const tens = TENS_WORDS.get(wordAt(room, at));
  const ones = PLURAL_NUMBERS.get(wordAt(room, at + 1));
  return tens && ones && ones < 10 ? { size: tens + ones, to: at + 2 } : undefined;
}

const FASTENERS = /^(?:bolts?|screws?|nails?|studs?|spikes?|joists?|rafters?|centres|centers)$/;

/** "They go on bolts, sixteens, stainless", "I've come home with 135s": a size said as what comes in it. */
function ofFasteners(room: Room, at: number, to: number): boolean {
  if (!/^(?:,|so|'re|are|with|on|be|to|got|for)$/.test(wordAt(room, at - 1))) return false;
  if (!/^(?:|[.,;!?]|and|with|in|like|done|instead|not)$/.test(wordAt(room, to))) return false;
  const sentence = room.tokens[at]?.sentence ?? 0;
  for (let index = at - 1; index >= Math.max(0, at - 24); index--) {
    const token = room.tokens[index];
    if (!token || sentence - token.sentence > 1) return false;
    if (FASTENERS.test(token.word)) return true;
  }
  return false;
}

/** "give or take one", "one either way": here one is a number. */
function isSpread(room: Room, at: number, to: number): boolean {
  if (wordAt(room, at - 1) === 'take' && wordAt(room, at - 2) === 'or') return true;
  return /^(?:either|each)$/.test(wordAt(room, to)) && wordAt(room, to + 1) === 'way';
}

/** A number alone. What it means is settled by its neighbours, or it is dropped. */
export const numberAlone: AmountRule = {
  name: '<number>',
  atNumber: true,
  read(room, at) {
    const token = room.tokens[at];
    const number = readNumber(room.tokens, at, room.decimalComma);
    if (!number || !token) return undefined;
    const sign = FRACTION_SIGNS.has(token.text);
    const belowZero = /^(?:minus|negative)$/.test(wordAt(room, at - 1)) || isSpread(room, at, number.to);
    if (number.value === 1 && !number.fraction && token.kind !== 'number' && !belowZero) {
      return { skip: { to: number.to, why: '"one" stands for a thing' } };
    }
    if (number.loose && !sign) return { skip: { to: number.to, why: 'a couple of things' } };
    return { amount: amountOf(this.name, number, { from: at, to: number.to }, number.value) };
  },
};
