import { each, PhraseTable } from '../../phrases.ts';
import type { Amount, Room } from '../../rules/rule.ts';
import { tidy, wordAt } from '../../rules/rule.ts';
import { kindOf } from '../../units/spoken-of.ts';
import { followsOn, namedAfterPause } from './contrast.ts';
import { type Meaning, placeOf } from './lengths.ts';

/** How many figures back are looked at: further off nothing is leaned on, and a long memo stays quick. */
export const REMEMBERED = 200;

/** The amount with a spoken or settled unit that stands last before this one, in the same or the sentence before. */
export function lastWithUnit(
  room: Room,
  out: readonly Amount[],
  amount: Amount,
  sentences: number,
): Amount | undefined {
  for (let index = out.length - 1; index >= Math.max(0, out.length - REMEMBERED); index--) {
    const candidate = out[index];
    // A mix or a fall lends nothing to the number behind it.
    if (!candidate?.unit || candidate.role === 'count' || candidate.unit === '1') continue;
    const apart = (room.tokens[amount.from]?.sentence ?? 0) - (room.tokens[candidate.from]?.sentence ?? 0);
    return apart <= sentences ? candidate : undefined;
  }
  return undefined;
}

const PRONOUN = /^(?:it|that|they|this|these|those|she)$/;
export const close = (a: number, b: number, factor: number) => a / b <= factor && b / a <= factor;

/** "76 wide" after "114 centimetre long": a unit that was said carries on through the sizes of one thing. */
export function carriedOn(amount: Amount, last: Amount): Meaning | undefined {
  if (!last.unit || (last.unitAssumed && last.unit !== 'cm') || !/^(?:cm|m|ft|yd)$/.test(last.unit))
    return undefined;
  if (!close(amount.value, last.value, 5) || (last.unit !== 'cm' && amount.value >= 30)) return undefined;
  return { value: amount.value, unit: last.unit, dimension: 'length', why: 'the unit of the size before it' };
}

/** "After four hours, no more than forty eight": the ends of a stretch of time lie far apart. */
const farthest = (amount: Amount, last: Amount) => (last.dimension === 'time' && amount.boundSaid ? 15 : 5);

/** "at 21 per cent and I want under 18", "six thou at the front, two at the back", "in at 30 psi, out at 50". */
export function parallelTo(room: Room, amount: Amount, last: Amount | undefined): Meaning | undefined {
  if (!last?.unit || !last.dimension || !close(amount.value, last.value, farthest(amount, last)))
    return undefined;
  // "63 percent of the height, so that comes to 265": more than the whole is no share of it.
  if (last.unit === '%' && last.value <= 100 && amount.value > 100) return undefined;
  // "In 24 hours at 15": how warm, and not how long.
  if (last.dimension === 'time' && wordAt(room, amount.from - 1) === 'at') return undefined;
  if (followsOn(room, amount, last) || alongside(room, amount, last))
    return {
      value: amount.value,
      unit: last.unit,
      dimension: last.dimension,
      why: 'the unit of its like before it',
    };
  // "It's eleven metres to the water and another four to the bottom".
  if (
    /^(?:m|ft|yd)$/.test(last.unit) &&
    !last.unitAssumed &&
    wordAt(room, amount.from - 1) === 'another' &&
    amount.value < 40
  )
    return {
      value: amount.value,
      unit: last.unit,
      dimension: 'length',
      why: 'more of the same, in its unit',
    };
  // "The gap I want at four thou, it's at eleven": nobody goes from thousandths to millimetres in a breath.
  if (last.unit === 'thou' && !last.unitAssumed && subjectIsPronoun(room, amount))
    return { value: amount.value, unit: 'thou', dimension: 'length', why: 'thousandths, as just before' };
  const kind = kindOf(room, amount);
  const named = kind !== undefined && kind.distance <= 2 && kind.dimension !== last.dimension;
  const elided = last.dimension !== 'length' && !named && leftOut(room, amount);
  if (!elided && (last.dimension === 'money' || last.unitAssumed)) return undefined;
  const same = (a: number, b: number, words: RegExp) =>
    wordAt(room, a) === wordAt(room, b) && words.test(wordAt(room, a));
  const sameAfter = same(amount.to, last.to, /^(?:at|on|in|for|off|from|a|each)$/);
  const sameBefore = same(
    amount.from - 1,
    last.from - 1,
    /^(?:at|to|on|in|below|above|under|over|draws|holds)$/,
  );
  // "92 degrees to port and 90 to starboard".
  const turned = last.dimension === 'angle' && same(amount.to, last.to, /^to$/);
  const bounded = amount.boundSaid && amount.bound !== 'about';
  // "the fresh tank's 180 litres, the grey's a ninety".
  const another = /^(?:an?|another)$/.test(wordAt(room, amount.from - 1));
  const more = wordAt(room, amount.to) === 'more';
  const sameThing =
    subjectIsPronoun(room, amount) ||
    bounded ||
    sameAfter ||
    sameBefore ||
    another ||
    more ||
    elided ||
    turned;
  // "Twelve thou, anything over ten is worn out", "ran four metres and the book says no more than three".
  const edge = bounded && !last.unitAssumed && close(amount.value, last.value, 2);
  if (last.dimension === 'length' ? !sameAfter && !edge : !sameThing) return undefined;
  if (last.dimension === 'length' && /^(?:m|ft|yd|km)$/.test(last.unit) && !edge) return undefined;
  const why = 'the unit of the figure before it';
  return { value: amount.value, unit: last.unit, dimension: last.dimension, why };
}

/** What things have that is never left for a length: "the gearbox is 210 kilos and the tail's 55". */
const TOLD_ALIKE = /^(?:mass|power|current|charge|voltage|volume|pressure|energy)$/;

/** The same said of the next thing, in the same sentence and with the unit left out. */
function alongside(room: Room, amount: Amount, last: Amount): boolean {
  if (!TOLD_ALIKE.test(last.dimension ?? '') || last.unitAssumed || amount.number.fraction) return false;
  // "The vessel's set to three bar, relief's at six".
  const kept = last.dimension === 'pressure' && wordAt(room, amount.from - 1) === 'at' ? 2 : 1;
  if (!/^(?:'s|is|are|was|were|weighs|draws|pulls|takes|holds)$/.test(wordAt(room, amount.from - kept)))
    return false;
  // "The welder's fifty by itself".
  const alone =
    wordAt(room, amount.to) === 'by' && /^(?:it|them)sel(?:f|ves)$/.test(wordAt(room, amount.to + 1));
  if (!alone && !/^(?:|[.,;:!?]|and|but|so)$/.test(wordAt(room, amount.to))) return false;
  if (amount.from - last.to > 7) return false;
  if (
    !room.tokens
      .slice(last.to, amount.from)
      .some(({ word }) => /^(?:and|,|but|since|because|cause)$/.test(word))
  )
    return false;
  return room.tokens[last.to - 1]?.sentence === room.tokens[amount.from]?.sentence;
}

/** "Not more than nine metres. I measured eleven.": what is there, in the unit of the limit right before it. */
export function measuredAgainst(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (!/^(?:measured|measure|make)$/.test(wordAt(room, amount.from - 1))) return undefined;
  if (
    !/^(?:i|we)$/.test(wordAt(room, amount.from - 2)) ||
    !/^(?:|[.,;:!?]|so|and|but)$/.test(wordAt(room, amount.to))
  )
    return undefined;
  const last = lastWithUnit(room, out, amount, 1);
  if (!last?.unit || last.dimension !== 'length' || last.unitAssumed || !last.boundSaid) return undefined;
  if (!/^(?:m|ft|yd|cm)$/.test(last.unit) || !close(last.value, amount.value, 1.5)) return undefined;
  return {
    value: amount.value,
    unit: last.unit,
    dimension: 'length',
    why: 'held against a limit, in its unit',
  };
}

/** "3.6 by 3": the second of a pair whose first was told in metres by its decimals. */
export function pairedInMetres(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const last = out.at(-1);
  if (last?.unit !== 'm' || !/^(?:by|x|×)$/.test(wordAt(room, amount.from - 1))) return undefined;
  // "Two four by one two": hundredths that were split in speech are put together elsewhere.
  if (amount.number.splitAfter || last.to !== amount.from - 1 || !close(last.value, amount.value, 4))
    return undefined;
  return {
    value: amount.value,
    unit: 'm',
    dimension: 'length',
    why: 'metres, as the size it is paired with',
  };
}

const SAYS = /^(?:says|said|reads|read|shows|showed|swears|makes)$/;

/** "The seller swore eighty nine kilowatt. The plate says 98.": a like number read off in the next sentence. */
export function readOff(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const decided =
    /^(?:it|that|she)$/.test(wordAt(room, amount.to)) &&
    /^(?:is|was|'ll|will)$/.test(wordAt(room, amount.to + 1));
  const asWhole =
    /^(?:'s|is)$/.test(wordAt(room, amount.to)) &&
    /^(?:all|plenty|enough|what)$/.test(wordAt(room, amount.to + 1));
  if (!SAYS.test(wordAt(room, amount.from - 1)) && !decided && !asWhole) return undefined;
  // "Swapped it for a ten amp. I don't like that. The book says seven and a half.": an aside may stand between.
  const last = lastWithUnit(room, out, amount, SAYS.test(wordAt(room, amount.from - 1)) ? 2 : 1);
  if (!last?.unit || !last.dimension || last.unitAssumed || last.dimension === 'money') return undefined;
  if (last.dimension === 'length' || last.dimension === 'time' || !close(amount.value, last.value, 1.5))
    return undefined;
  return {
    value: amount.value,
    unit: last.unit,
    dimension: last.dimension,
    why: 'read off after the like of it',
  };
}

const OWN = /^(?:ours|mine|yours|theirs|hers|his)$/;
const BE = /^(?:'s|is|are|was|were|be|at|to)$/;
const CHANGES =
  /^(?:climbs?|climbed|drops?|dropped|falls?|fell|rises?|rose|goes|went|got|gets|settles?|settled|shuts?|off|back|up|down|live|gives?|said|says|read|reads|stands|put|by)$/;

/**
 * Words before a bare number that leave its unit to the figure before: "ours is", "it climbs to", "should be",
 * "400 grams of resin to 80 of hardener", ", return".
 */
function leftOut(room: Room, amount: Amount): boolean {
  const [first, second] = [1, 2].map((back) => wordAt(room, amount.from - back));
  if (
    BE.test(first ?? '') &&
    (OWN.test(second ?? '') || CHANGES.test(second ?? '') || /^(?:should|must)$/.test(second ?? ''))
  )
    return true;
  if (first === 'to' && wordAt(room, amount.to) === 'of') return true;
  if (/^(?:with|at)$/.test(first ?? '') && second === 'live') return true;
  if (/^(?:me|us|by)$/.test(first ?? '') && /^(?:gives|gave|giving|leaves|leaving|put)$/.test(second ?? ''))
    return true;
  return namedAfterPause(room, amount) !== undefined;
}

/** "I watched her come on at thirty and cut out at fifteen psi": the unit is said once, at the end. */
export function unitBehind(room: Room, amount: Amount, all: readonly Amount[]): Meaning | undefined {
  const preposition = wordAt(room, amount.from - 1);
  if (!/^(?:at|to|in|on|from|with)$/.test(preposition) || amount.number.fraction) return undefined;
  const next = all[placeOf(all, amount.from) + 1];
  if (
    !next?.unit ||
    !next.dimension ||
    next.unitAssumed ||
    next.dimension === 'length' ||
    next.dimension === 'time'
  )
    return undefined;
  if (next.dimension === 'count' || next.from - amount.to > 8 || wordAt(room, next.from - 1) !== preposition)
    return undefined;
  const joined = room.tokens.slice(amount.to, next.from).some(({ word }) => /^(?:and|,|but)$/.test(word));
  if (!joined || !close(amount.value, next.value, 5)) return undefined;
  return { value: amount.value, unit: next.unit, dimension: next.dimension, why: 'the unit is said behind' };
}

export function subjectIsPronoun(room: Room, amount: Amount): boolean {
  for (let index = amount.from - 1; index > amount.from - 7; index--) {
    const word = wordAt(room, index);
    if (PRONOUN.test(word)) return true;
    if (/^[.;:!?]$/.test(word)) return false;
  }
  return false;
}

/**
 * "four metres twenty one way and three sixty the other", "four forty five" of a ridge of 4.45 m: three figures said
 * as metres and hundredths, where the one before or the thing itself is told so.
 */
export function asHundredths(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (
    amount.number.splitAfter !== 1 ||
    amount.value < 100 ||
    amount.value > 999 ||
    amount.number.form !== 'words'
  )
    return undefined;
  const metres = amount.value / 100;
  const last = lastWithUnit(room, out, amount, 0);
  const told =
    last?.rule === '<metres> metre <rest>' || (last?.unit === 'm' && setAgainst(room, last, amount));
  const alike = told && close(last.value, metres, 2);
  const known = (room.context.knownFigures ?? []).some(({ unit, value }) => unit === 'm' && value === metres);
  if (!alike && !known) return undefined;
  return { value: metres, unit: 'm', dimension: 'length', why: 'metres and hundredths, as before' };
}

/** "two thirty in the middle and only one ninety at the sides": told in one breath, and in the same way. */
function setAgainst(room: Room, last: Amount, amount: Amount): boolean {
  if (last.number.splitAfter !== 1 || amount.from - last.to > 7) return false;
  const light = /^(?:only|just|about|a|nearly)$/.test(wordAt(room, amount.from - 1)) ? 2 : 1;
  return /^(?:and|but|to|against|versus)$/.test(wordAt(room, amount.from - light));
}

/** "330 all told" after three of 110 amp hours: a total is in the unit of its parts. */
export function asTotal(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (!TOTAL_AFTER.startingAt(room.tokens, amount.to)) return undefined;
  const part = lastWithUnit(room, out, amount, 1);
  if (!part?.unit || !part.dimension || part.dimension === 'time' || part.value > amount.value)
    return undefined;
  const dimension = part.dimension;
  return { value: amount.value, unit: part.unit, dimension, why: 'a total in the unit of its parts' };
}
const TOTAL_AFTER = new PhraseTable<true>(
  each(true, 'all told, altogether, in total, in all, all in, total'),
);

/** "bottom plate's 10 mil, the sides are 6": like the length that was said before it in the sentence. */
export function likeTheLast(room: Room, amount: Amount, out: readonly Amount[]): boolean {
  const be = /^(?:'s|is|'re|are|was|be|at|to)$/.test(wordAt(room, amount.from - 1));
  const last = lastWithUnit(room, out, amount, be && pointsBack(room, amount.from - 2) ? 1 : 0);
  const named = namedAfterPause(room, amount) !== undefined;
  return (be || named) && last?.unit === 'mm' && !last.unitAssumed && close(last.value, amount.value, 3);
}

/** "The boards are twelve mil. They're nine in the bathroom.": "it" or "they" at the head of a sentence, of today. */
const pointsBack = (room: Room, at: number): boolean =>
  /^(?:it|they)$/.test(wordAt(room, at)) &&
  /^(?:'s|is|'re|are)$/.test(wordAt(room, at + 1)) &&
  room.tokens[at - 1]?.sentence !== room.tokens[at]?.sentence;

const EACH = /^(?:each|apiece|per|a)$/;
const SUMS_UP = /^(?:so|that's|'s|makes|making|is|be|total|totals|comes|to|,)$/;

/** "The panels are 22 kilos each, so 44": so many times what each of them is. */
export function asMultiple(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (!SUMS_UP.test(wordAt(room, amount.from - 1)) || amount.number.fraction) return undefined;
  const each = lastWithUnit(room, out, amount, 1);
  if (!each?.unit || !each.dimension || each.dimension === 'length' || each.dimension === 'time')
    return undefined;
  if (!EACH.test(wordAt(room, each.to)) || amount.from - each.to > 10) return undefined;
  const times = tidy(amount.value / each.value);
  if (!Number.isInteger(times) || times < 2 || times > 24) return undefined;
  return { value: amount.value, unit: each.unit, dimension: each.dimension, why: 'so many times the one' };
}

const ADDED_UP: ReadonlySet<string> = new Set(['mass', 'power', 'current', 'charge', 'energy']);

/** "Plus the roof box, another 35": added to a load that was told just before. */
export function asAddition(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const more = /^(?:another|further)$/.test(wordAt(room, amount.from - 1));
  if (!more || !/^(?:|[.,;:!?]|and|so|for|with|on)$/.test(wordAt(room, amount.to))) return undefined;
  const last = lastWithUnit(room, out, amount, 1);
  if (!last?.unit || !last.dimension || !ADDED_UP.has(last.dimension) || !close(last.value, amount.value, 10))
    return undefined;
  return {
    value: amount.value,
    unit: last.unit,
    dimension: last.dimension,
    why: 'added to what was told before',
  };
}

/** "Runout's down to eight tenths" where thous are spoken: tenths of a thou. */
export function asTenths(room: Room, amount: Amount, all: readonly Amount[]): Meaning | undefined {
  if (amount.number.denominator !== 10 || amount.value >= 1) return undefined;
  const spoken =
    all.some(({ unit }) => unit === 'thou') ||
    (room.context.knownFigures ?? []).some(({ unit }) => unit === 'thou');
  return spoken
    ? { value: amount.value, unit: 'thou', dimension: 'length', why: 'tenths of a thou' }
    : undefined;
}

/** "It's about 48 kilos and the lift takes 300": what may be put on or in, in the unit of the load. */
export function asCapacity(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const verb = /^(?:only|about|up|to|over)$/.test(wordAt(room, amount.from - 1))
    ? amount.from - 2
    : amount.from - 1;
  if (!/^(?:takes|carries|holds|lifts|bears|handles)$/.test(wordAt(room, verb))) return undefined;
  const load = lastWithUnit(room, out, amount, 0);
  if (!load?.unit || load.dimension !== 'mass' || load.unitAssumed || !close(load.value, amount.value, 20))
    return undefined;
  if (!/^(?:|[.,;:!?]|and|but|so|at|all|easy|easily)$/.test(wordAt(room, amount.to))) return undefined;
  return { value: amount.value, unit: load.unit, dimension: 'mass', why: 'what may be loaded, as the load' };
}

/** "The tank holds 180 litres and I've put 80 in": so much of what a vessel holds. */
export function asPutIn(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (wordAt(room, amount.to) !== 'in') return undefined;
  if (!/^(?:put|poured|tipped|pumped|added)$/.test(wordAt(room, amount.from - 1))) return undefined;
  const held = lastWithUnit(room, out, amount, 0);
  if (!held?.unit || held.dimension !== 'volume' || !close(held.value, amount.value, 20)) return undefined;
  return { value: amount.value, unit: held.unit, dimension: 'volume', why: 'so much is put in, as it holds' };
}

/** Whether a word stands within a few words of the number, in its sentence. */
export function nearWord(room: Room, amount: Amount, word: string): boolean {
  const sentence = room.tokens[amount.from]?.sentence;
  for (let index = amount.from - 8; index < amount.to + 6; index++) {
    const token = room.tokens[index];
    if (token?.sentence === sentence && token?.word === word) return true;
  }
  return false;
}
