import type { Attribute, Dimension } from '../notes.ts';
import { backOverFillers, each, onOverFillers, PhraseTable } from '../phrases.ts';
import { BEFORE_BOUND } from '../rules/bound-words.ts';
import { localMoney } from '../rules/money.ts';
import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { tidy, wordAt } from '../rules/rule.ts';
import { EACH_AFTER, SIZE_AFTER, SIZE_NOUNS } from '../rules/size-words.ts';
import { dimensionOfUnit } from '../units/read-unit.ts';
import { saidBefore } from '../units/said-before.ts';
import { type Kind, kindOf, usualUnit } from '../units/spoken-of.ts';
import { speaksOf } from '../units/surroundings.ts';

/** How surely the words about a bare number make it a quantity. */
type Grade = 'sure' | 'likely' | 'none';

interface Evidence {
  readonly grade: Grade;
  readonly why: string;
  readonly attribute?: Attribute;
}

/** Words directly before a bare number that state a value. */
const STATES_VALUE = new PhraseTable<Grade>([
  ...each<Grade>(
    'sure',
    "wants to be, needs to be, want to be, need to be, has to be, have to be, had to be, got to be, gotta be, gonna be, going to be, ought to be, oughta be, oughta, should be, must be, supposed to be, to be, 'll be, will be, comes out at, came out at, come out at, works out at, worked out at, works out to, worked out to, comes to, came to, measures, measured, measuring, make it, made it, makes it, making it, making that, makes that, get it to, reads, read, reading, i get, i got, cut to, cut it to, cut at, cut them to, cut it at, cut them at, trimmed to, trim to, planed to, planed down to, ripped to, ripped down to, sanded to, milled to, turned to, turned down to, bored to, bored out to, drilled to, opened out to, down to, it to, them to, that to, those to, back to, out to, set at, set to, setting it at, going with, go with, went with, gone for, going for, settled on, finished at, finish at, ends up at, ended up at, ended up, end up at, stands at, sits at, comes in at, came in at, up at, marked at, mark it at, mark at, spaced at, spacing of, spaced, pitched at, lopped, taken off, took off, take off, takes off, leaves, leaving, left me, leaves me, less, minus, plus, times, divided by, another, every, the opening plus, a gap of, gap of, a depth of, a width of, a height of, a length of, a diameter of, a radius of, a thickness of, an overhang of, a rise of, a fall of, an offset of, depth of, width of, height of, length of, diameter of, radius of, thickness of, overhang of, clearance of, headroom of, call it, specified at, calls for, called for, says, said, shows, shown as, drawn at, drawn as, dimension of, dimensioned at, given as",
  ),
  ...each<Grade>(
    'likely',
    "'s, 're, is, are, was, were, be, at, it 's, that 's, so, to, of, in, with, or, and, than, have, has, having, takes, take, wants, want, needs, need, got, get, gets, hit, hits, does, do, turns, same, same as, the, a, an, that, this, on, run, goes, go, going, went, up, just, only, exactly, now, still, even, stays at, stay at, good for, like, another, by, for, around, into, off, over, under, above, below",
  ),
]);

/** "Chickens, eleven.", "Visitors, seven.": so many of what is named in the plural. */
const countedBefore = (room: Room, amount: Amount) =>
  amount.value < 13 &&
  Number.isInteger(amount.value) &&
  wordAt(room, amount.from - 1) === ',' &&
  /^\p{L}{3,}[^s'’\W]s$/u.test(wordAt(room, amount.from - 2));

/** A thing named and its value, said as a note: "Hull, 1,180." "Motor, 610." */
function namedBefore(room: Room, amount: Amount): boolean {
  if (
    wordAt(room, amount.from - 1) !== ',' &&
    wordAt(room, amount.from - 1) !== ':' &&
    wordAt(room, amount.from - 1) !== '-'
  )
    return false;
  const sentence = room.tokens[amount.from]?.sentence;
  let words = 0;
  for (let index = amount.from - 2; room.tokens[index]?.sentence === sentence && index >= 0; index--) {
    if (room.tokens[index]?.kind !== 'word' || ++words > 5) return false;
  }
  return words > 0 && ends(room, amount.to);
}

const ends = (room: Room, at: number) => /^(?:[.,;:!?]|\.+|…|)$/.test(wordAt(room, at));

function aloneInSentence(room: Room, amount: Amount): boolean {
  const token = room.tokens[amount.from];
  const before = room.tokens[amount.from - 1];
  return (!before || before.sentence !== token?.sentence) && ends(room, amount.to);
}

/** "330 of brick", "fifty of clear air": a measure of some stuff, not a part of a number of things. */
function ofStuff(room: Room, amount: Amount): boolean {
  if (wordAt(room, amount.to) !== 'of') return false;
  const stuff = room.tokens[amount.to + 1];
  if (stuff?.kind !== 'word') return false;
  return !/^(?:the|my|our|his|her|their|its|it|them|these|those|us|you|that|this|what|which|all|course|any|each|every)$/.test(
    stuff.word,
  );
}

const DATUM_AFTER = new PhraseTable<true>(
  each(
    true,
    'off the, off a, off any, off each, off my, off that, up from, down from, back from, in from, out from, above the, below the, from the, to the top, to the underside, to the centre, to the center, to the bottom, to the edge, to the floor, to the ceiling, to the middle, to the face, to the outside, to the inside, under the, over the top, inside, outside, at the widest, at the narrowest, at the front, at the back, at the top, at the bottom, at one end, at each end, at the far end, at the near end, at the door, at the turn, on the nose, even, bang on, dead, dead on, on the button, on the dot, spot on, on the high side, on the low side, on the tall side, flat, on deck, at the waterline, floor to ceiling, inside to inside, outside to outside, face to face, end to end, side to side, all told, in total, all in, in all, finished, rough, on the drawing, on the tape, on the flat, between the, between centres',
  ),
);

/** What goods are priced by: "165 a yard", "eleven fifty a piece", "sixty for the lot". */
const PRICED_BY = new PhraseTable<true>(
  each(
    true,
    'a sheet, a bag, a yard, a pop, a piece, a day, a load, a tin, a box, a roll, a bottle, a length, a board, a plank, a pair, a go, a cube, a tonne, a ton, a pallet, per sheet, per bag, per day, per load, the pair, the lot, for the lot, for the pair, for the job, for the tin, for the sheet, all in for, cash, plus vat, plus tax, plus shipping, plus delivery',
  ),
);

/** Words of comparison behind a number: "twenty more", "ten less than the bed", "five longer". */
const COMPARED =
  /^(?:more|less|longer|shorter|wider|narrower|higher|lower|taller|deeper|shallower|thicker|thinner|bigger|smaller|closer|further|farther)$/;

function compared(room: Room, amount: Amount): boolean {
  const word = wordAt(room, amount.to);
  if (!COMPARED.test(word)) return false;
  // "twenty more to do" counts; "twenty more." and "twenty less than the bed" measure.
  if (!/^(?:more|less)$/.test(word)) return true;
  return amount.value >= 10 && /^(?:|[.,;]|than|then)$/.test(wordAt(room, amount.to + 1));
}

const PRONOUN_AFTER = /^(?:it|that|he|she|they)$/;
const BE_AFTER = /^(?:'s|is|was|'ll|will|must|should|has|shall)$/;

/** "four fifty it is", "1772 must he be", "seven fifty-four the treads should be": the value said first. */
function valueFirst(room: Room, amount: Amount): boolean {
  const [first, second] = [wordAt(room, amount.to), wordAt(room, amount.to + 1)];
  if (PRONOUN_AFTER.test(first) && BE_AFTER.test(second)) return true;
  if (/^(?:must|should)$/.test(first) && PRONOUN_AFTER.test(second)) return true;
  if (!/^(?:the|my|those|these)$/.test(first)) return false;
  return [2, 3, 4].some(
    (step) =>
      /^(?:should|must|ought)$/.test(wordAt(room, amount.to + step)) &&
      [1, 2].some((on) => wordAt(room, amount.to + step + on) === 'be'),
  );
}

/** Stuff that comes in thicknesses, so that a bare number before it is one: "eighteen ply", "thirty polystyrene". */
const SHEET_STUFF =
  /^(?:ply|plywood|shutterply|marine|mdf|osb|chipboard|hardboard|plasterboard|drywall|polystyrene|foam|insulation|celotex|glass|perspex|acrylic|polycarbonate|plate|sheet|ally|aluminium|aluminum|steel|stainless|birch|larch|oak|pine|ash|teak|mahogany|iroko|meranti|spruce|cork|rubber|batten|battens|box|tube|rod|bar|copper|conduit)$/;

function evidenceAfter(room: Room, amount: Amount): Evidence | undefined {
  if (PRICED_BY.startingAt(room.tokens, amount.to)) return { grade: 'sure', why: 'what goods are priced by' };
  if (compared(room, amount)) return { grade: 'sure', why: `"${wordAt(room, amount.to)}" behind it` };
  if (valueFirst(room, amount)) return { grade: 'sure', why: 'the value said first' };
  const at = onOverFillers(room.tokens, amount.to);
  const size = SIZE_AFTER.startingAt(room.tokens, at);
  if (size) return { grade: 'sure', why: `"${wordAt(room, size.from)}" behind it`, attribute: size.meaning };
  if (EACH_AFTER.startingAt(room.tokens, at)) return { grade: 'sure', why: 'so much on each' };
  if (faceToFace(room, at)) return { grade: 'sure', why: 'a place it is measured from' };
  if (DATUM_AFTER.startingAt(room.tokens, at)) return { grade: 'sure', why: 'a place it is measured from' };
  if (ofStuff(room, amount)) return { grade: 'sure', why: `of ${wordAt(room, amount.to + 1)}` };
  return undefined;
}

/** "wall to wall", "bumper to bumper", "heart to heart": one place twice. */
function faceToFace(room: Room, at: number): boolean {
  return (
    wordAt(room, at + 1) === 'to' &&
    /^\p{L}{3,}$/u.test(wordAt(room, at)) &&
    wordAt(room, at) === wordAt(room, at + 2)
  );
}

/** Words of size before the number, as they are said on the mainland: "the board is long 240, thick 18". */
const SIZE_BEFORE: ReadonlyMap<string, Attribute> = new Map([
  ['wide', 'width'],
  ['broad', 'width'],
  ['high', 'height'],
  ['tall', 'height'],
  ['long', 'length'],
  ['deep', 'depth'],
  ['thick', 'thickness'],
]);

function evidenceBefore(room: Room, amount: Amount): Evidence | undefined {
  let at = backOverFillers(room.tokens, amount.from);
  const said = SIZE_BEFORE.get(wordAt(room, at - 1));
  if (said && ends(room, amount.to))
    return { grade: 'sure', why: `"${wordAt(room, at - 1)}" before it`, attribute: said };
  if (faceToFace(room, at - 3)) return { grade: 'sure', why: 'between two places' };
  let best: Grade = 'none';
  for (let steps = 0; steps < 5; steps++) {
    const noun = SIZE_NOUNS.get(wordAt(room, at - 1));
    if (noun) return { grade: 'sure', why: `"${wordAt(room, at - 1)}" before it`, attribute: noun };
    const hit = STATES_VALUE.endingAt(room.tokens, at);
    const hedge = BEFORE_BOUND.endingAt(room.tokens, at);
    if (hit?.meaning === 'sure' && !leavesFew(room, hit.to, amount))
      return { grade: 'sure', why: `after "${spoken(room, hit.from, hit.to)}"` };
    if (hit) best = 'likely';
    const step = hit ?? hedge;
    if (!step) break;
    at = backOverFillers(room.tokens, step.from);
  }
  return best === 'likely' ? { grade: 'likely', why: 'in the place of a value' } : undefined;
}

/** "that leaves five": so many of them; "that leaves 1,837 to stand in" measures. */
function leavesFew(room: Room, to: number, amount: Amount): boolean {
  const few = Number.isInteger(amount.value) && amount.value < 10 && !amount.number.fraction;
  return few && /^(?:leaves|leaving|me|another|every)$/.test(wordAt(room, to - 1));
}

const spoken = (room: Room, from: number, to: number) =>
  room.tokens
    .slice(from, to)
    .map((token) => token.word)
    .join(' ');

/** Words before a number that count or name and so ask for a noun behind it, or belong to talk. */
const COUNTS_BEFORE =
  /^(?:have|'ve|has|had|all|of|page|number|route|episode|about|some|another|other|and|or|than|than|every|am|'m|i|you|we|they|he|who|year|only|like|me|us|him|them|age|aged|no|not|number|day|days|week)$/;

/** "1945", "nineteen ninety-six": by itself a year as likely as a length. */
function likeYear(room: Room, amount: Amount): boolean {
  if (amount.value < 1850 || amount.value > 2035 || !Number.isInteger(amount.value)) return false;
  return room.tokens[amount.from]?.kind === 'number' ? amount.value >= 1900 : amount.number.splitAfter === 2;
}

/** ", 898, square as", "bored 22,", "lapped a hundred and fifteen, like I said": nothing is counted behind it. */
function standsAlone(room: Room, amount: Amount): boolean {
  const next = room.tokens[amount.to];
  const closed = ends(room, amount.to) || (next?.kind === 'word' && !followedByThing(room, amount));
  if (!closed || likeYear(room, amount)) return false;
  const before = room.tokens[amount.from - 1];
  if (!before) return false;
  if (before.kind === 'mark') return /^[,:-]$/.test(before.word) && ends(room, amount.to);
  return before.kind === 'word' && !COUNTS_BEFORE.test(before.word) && !/\d/.test(before.word);
}

/** A sign that is no punctuation belongs to the number and makes it something unknown: "100 ₡". */
const unknownSign = (room: Room, at: number) =>
  room.tokens[at]?.kind === 'mark' && !/^[.,;:!?…()[\]{}'"&/+*–—-]+$/.test(wordAt(room, at));

function evidenceOf(room: Room, amount: Amount): Evidence {
  const glued = room.tokens[amount.to]?.spaced === false && room.tokens[amount.to]?.kind === 'word';
  if (glued && room.tokens[amount.from]?.kind === 'number') return { grade: 'none', why: 'part of a name' };
  if (unknownSign(room, amount.to)) return { grade: 'none', why: 'an unknown sign behind it' };
  const after = evidenceAfter(room, amount);
  if (after) return after;
  if (amount.plusMinus !== undefined) return { grade: 'sure', why: 'it has a tolerance' };
  if (amount.group) return { grade: 'sure', why: 'it stands in a list of sizes' };
  const before = evidenceBefore(room, amount);
  if (before?.grade === 'sure') return before;
  if (amount.boundSaid && amount.bound !== 'about') return { grade: 'sure', why: 'it has a bound' };
  if (countedBefore(room, amount)) return { grade: 'none', why: 'so many of them' };
  if (namedBefore(room, amount)) return { grade: 'sure', why: 'a thing and its value' };
  if (amount.high !== undefined) return before ?? { grade: 'likely', why: 'a range' };
  if (before) return before;
  if (aloneInSentence(room, amount)) return { grade: 'likely', why: 'a sentence of its own' };
  if (amount.rule === '<count> <size>s' || amount.rule === 'the <size>s')
    return { grade: 'likely', why: 'a size said as a thing' };
  if (SHEET_STUFF.test(wordAt(room, amount.to)) && amount.value >= 3)
    return { grade: 'likely', why: `so much of ${wordAt(room, amount.to)}` };
  if (standsAlone(room, amount)) return { grade: 'likely', why: 'said by itself' };
  if (amount.number.fraction && (amount.number.denominator ?? 0) >= 4)
    return { grade: 'likely', why: 'a fraction of an inch' };
  return { grade: 'none', why: 'no unit, no word of size and no place of a value' };
}

interface Meaning {
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

/** How many figures back are looked at: further off nothing is leaned on, and a long memo stays quick. */
const REMEMBERED = 200;

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

/**
 * Where centimetres are spoken, a bare number may be one. A house that leaves millimetres unsaid gives itself away
 * by bare numbers of three and four figures, in this memo or before it.
 */
function centimetreHouse(room: Room, amounts: readonly Amount[]): boolean {
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
const TAPE_PARTS: ReadonlySet<number> = new Set([4, 8, 16, 32, 64]);

function asLength(
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

/** The amount with a spoken or settled unit that stands last before this one, in the same or the sentence before. */
function lastWithUnit(
  room: Room,
  out: readonly Amount[],
  amount: Amount,
  sentences: number,
): Amount | undefined {
  for (let index = out.length - 1; index >= 0; index--) {
    const candidate = out[index];
    if (!candidate?.unit || candidate.role === 'count') continue;
    const apart = (room.tokens[amount.from]?.sentence ?? 0) - (room.tokens[candidate.from]?.sentence ?? 0);
    return apart <= sentences ? candidate : undefined;
  }
  return undefined;
}

const PRONOUN = /^(?:it|that|they|this|these|those|she)$/;
const close = (a: number, b: number, factor: number) => a / b <= factor && b / a <= factor;

/** "76 wide" after "114 centimetre long": a unit that was said carries on through the sizes of one thing. */
function carriedOn(amount: Amount, last: Amount): Meaning | undefined {
  if (!last.unit || last.unitAssumed || !/^(?:cm|m|ft|yd)$/.test(last.unit)) return undefined;
  if (!close(amount.value, last.value, 5) || (last.unit !== 'cm' && amount.value >= 30)) return undefined;
  return { value: amount.value, unit: last.unit, dimension: 'length', why: 'the unit of the size before it' };
}

/** "at 21 per cent and I want under 18", "six thou at the front, two at the back", "in at 30 psi, out at 50". */
function parallelTo(room: Room, amount: Amount, last: Amount | undefined): Meaning | undefined {
  if (!last?.unit || !last.dimension || last.dimension === 'money' || last.unitAssumed) return undefined;
  if (!close(amount.value, last.value, 5)) return undefined;
  const same = (a: number, b: number, words: RegExp) =>
    wordAt(room, a) === wordAt(room, b) && words.test(wordAt(room, a));
  const sameAfter = same(amount.to, last.to, /^(?:at|on|in|for|off|from|a|each)$/);
  const sameBefore = same(
    amount.from - 1,
    last.from - 1,
    /^(?:at|to|on|in|below|above|under|over|draws|holds)$/,
  );
  const bounded = amount.boundSaid && amount.bound !== 'about';
  // "the fresh tank's 180 litres, the grey's a ninety".
  const another = /^an?$/.test(wordAt(room, amount.from - 1));
  const sameThing = subjectIsPronoun(room, amount) || bounded || sameAfter || sameBefore || another;
  if (last.dimension === 'length' ? !sameAfter : !sameThing) return undefined;
  if (last.dimension === 'length' && /^(?:m|ft|yd|km)$/.test(last.unit)) return undefined;
  const why = 'the unit of the figure before it';
  return { value: amount.value, unit: last.unit, dimension: last.dimension, why };
}

function subjectIsPronoun(room: Room, amount: Amount): boolean {
  for (let index = amount.from - 1; index > amount.from - 7; index--) {
    const word = wordAt(room, index);
    if (PRONOUN.test(word)) return true;
    if (/^[.;:!?]$/.test(word)) return false;
  }
  return false;
}

const HERE_AFTER = new PhraseTable<true>(
  each(
    true,
    'in here, in there, outside, out there, this morning, last night, overnight, right now, in the shop, in the shed, in the garage, in the workshop, in the barn, in the sun, in the shade, under this tarp, today, tonight, first thing, at night, by noon, out here, degrees',
  ),
);
const HEAT_SUBJECT = /^(?:it|outside|inside|thermometer|temperature|temp|shop|shed|workshop|room|air)$/;

function asHeat(room: Room, amount: Amount): Meaning | undefined {
  if (amount.value < -30 || amount.value > 130 || amount.number.fraction) return undefined;
  const unit = room.region === 'US' || (room.region === '' && room.house === 'us') ? 'degF' : 'degC';
  // "It was seventy one. In here, so it kicked off": a recogniser's full stop.
  const stop = /^[.,]$/.test(wordAt(room, amount.to)) ? amount.to + 1 : amount.to;
  const here = HERE_AFTER.startingAt(room.tokens, stop) !== undefined;
  const subject = [2, 3, 4].some((back) => HEAT_SUBJECT.test(wordAt(room, amount.from - back)));
  const warm = speaksOf(room, 'heat', amount.from, amount.to, 14);
  const verb =
    /^(?:'s|was|is|hit|hits|got|gets|gone|to|at|now|still|only|dropped|below|above|under|over|than|finally|nearly|about|up|down|be|minus|negative)$/.test(
      wordAt(room, amount.from - 1),
    );
  // "the second coat goes on if it's above ten".
  const forecast =
    /^(?:above|over|below|under)$/.test(wordAt(room, amount.from - 1)) &&
    /^(?:'s|is|gets|stays|goes)$/.test(wordAt(room, amount.from - 2)) &&
    wordAt(room, amount.from - 3) === 'it' &&
    amount.value < 60 &&
    speaksOf(room, 'process', amount.from, amount.to, 14);
  if (forecast) return { value: amount.value, unit, dimension: 'temperature', why: 'how warm it must be' };
  if (!verb || !((here && (subject || warm)) || (warm && subject && !evidenceAfter(room, amount))))
    return undefined;
  return { value: amount.value, unit, dimension: 'temperature', why: 'how warm it is somewhere' };
}

const TURNS =
  /^(?:countershaft|spindle|shaft|motor|engine|pulley|fan|blade|blower|impeller|prop|propeller|chuck|cutter|grinder|wheel|drum|rotor|headstock|lathe|router|drill)$/;

/** "so the countershaft does 475", "566 on the rev counter". */
function asTurning(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (amount.value < 20) return undefined;
  const around = (at: number) => wordAt(room, at) === 'flat' && wordAt(room, at + 1) === 'out';
  const flatOut = [...Array(9).keys()].some((step) => around(amount.from - step) || around(amount.to + step));
  const known = out.slice(-REMEMBERED).some((other) => other.unit === 'rpm');
  if (amount.value >= 100 && flatOut && (known || amount.value <= 6000)) {
    return { value: amount.value, unit: 'rpm', dimension: 'speed', why: 'turns of a shaft, flat out' };
  }
  const verb = /^(?:does|do|turns|turn|spins|at|of)$/.test(wordAt(room, amount.from - 1));
  const subject = [2, 3, 4].some((back) => TURNS.test(wordAt(room, amount.from - back)));
  const revs = [...Array(26).keys()].some((back) => {
    const token = room.tokens[amount.from - 1 - back];
    return (
      token?.sentence === room.tokens[amount.from]?.sentence &&
      /^(?:rev|revs|rpm|tach|tacho|tachometer)$/.test(token?.word ?? '')
    );
  });
  const runs = /^(?:does|turns|spins)$/.test(wordAt(room, amount.from - 1)) && subject;
  if (!runs && !revs) return undefined;
  if (!verb && !revs) return undefined;
  return { value: amount.value, unit: 'rpm', dimension: 'speed', why: 'turns of a shaft' };
}

/** Tyres are spoken of in pounds or bar without the unit. Common practice, no source. */
function asPressure(room: Room, amount: Amount): Meaning | undefined {
  const subject = [...Array(5).keys()].some((back) =>
    /^(?:tyre|tyres|tire|tires)$/.test(wordAt(room, amount.from - 2 - back)),
  );
  if (!subject || amount.value > 150 || evidenceAfter(room, amount)) return undefined;
  const psi = amount.value > 8;
  return {
    value: amount.value,
    unit: psi ? 'psi' : 'bar',
    dimension: 'pressure',
    why: 'how hard tyres are pumped',
  };
}

function asWeight(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const weighs = [1, 2, 3].some((back) =>
    /^(?:weigh|weighs|weighed|weighing|weight)$/.test(wordAt(room, amount.from - back)),
  );
  const scale =
    speaksOf(room, 'weight', amount.from, amount.to, 12) &&
    amount.value >= 20 &&
    subjectIsPronoun(room, amount);
  if ((!weighs && !scale) || evidenceAfter(room, amount)) return undefined;
  const usual = out.slice(-REMEMBERED).findLast((other) => other.dimension === 'mass')?.unit;
  const unit = usual ?? (room.house === 'us' ? 'lb' : 'kg');
  return { value: amount.value, unit, dimension: 'mass', why: 'what something weighs' };
}

/** What the nearest telling word says that a bare number measures, in the unit that was said last for it. */
function asKind(
  room: Room,
  amount: Amount,
  kind: Kind | undefined,
  out: readonly Amount[],
): Meaning | undefined {
  if (!kind || evidenceAfter(room, amount) || amount.number.fraction) return undefined;
  const last = out.slice(-REMEMBERED).findLast((other) => other.dimension === kind.dimension && other.unit);
  const money = kind.dimension === 'money' ? localMoney(room.region) : undefined;
  const unit =
    last?.unit && close(last.value, amount.value, 6)
      ? last.unit
      : (money ?? usualUnit(room, kind.dimension, amount.value));
  return unit ? { value: amount.value, unit, dimension: kind.dimension, why: kind.why } : undefined;
}

/** Longest bare length that is believed, by unit; beyond it the number is of another kind. */
const BELIEVED: Readonly<Record<string, number>> = { in: 480, mm: 30000, cm: 3000, m: 100, ft: 200 };

/** "330 all told" after three of 110 amp hours: a total is in the unit of its parts. */
function asTotal(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
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

/** "Disc still says one oh five oh": a number that was said of something before and of nothing by length. */
function saidAgain(room: Room, amount: Amount): Meaning | undefined {
  if (amount.value < 100) return undefined;
  const same = (room.context.knownFigures ?? []).filter((figure) => figure.value === amount.value);
  const unit = same[same.length - 1]?.unit;
  const dimension = unit && dimensionOfUnit(unit);
  if (!unit || !dimension || same.some((figure) => figure.unit !== unit)) return undefined;
  if (/^(?:length|money|time)$/.test(dimension)) return undefined;
  return { value: amount.value, unit, dimension, why: 'the unit that the number had before' };
}

/** A measure other than a length, told by its thing, by words about it or by what was said before. */
function otherKind(
  room: Room,
  amount: Amount,
  evidence: Evidence,
  out: readonly Amount[],
): Meaning | undefined {
  const heat = asHeat(room, amount);
  if (heat) return heat;
  const tape = amount.number.fraction && TAPE_PARTS.has(amount.number.denominator ?? 0);
  const before = evidence.grade === 'none' || tape ? undefined : saidBefore(room, amount);
  const thing = before && dimensionOfUnit(before.unit);
  if (before && thing && thing !== 'length') {
    return { ...before, dimension: thing, why: 'the unit that its thing was said in before' };
  }
  const again = evidence.grade === 'none' || tape ? undefined : saidAgain(room, amount);
  if (again) return again;
  return (
    asPrice(room, amount) ??
    asKind(room, amount, kindOf(room, amount), out) ??
    asPressure(room, amount) ??
    asTurning(room, amount, out) ??
    asWeight(room, amount, out) ??
    wiring(room, amount, out)
  );
}

function asPrice(room: Room, amount: Amount): Meaning | undefined {
  if (!PRICED_BY.startingAt(room.tokens, amount.to) || amount.number.fraction) return undefined;
  const why = 'what goods are priced by';
  return { value: amount.value, unit: localMoney(room.region), dimension: 'money', why };
}

function meaningOf(
  room: Room,
  amount: Amount,
  evidence: Evidence,
  out: readonly Amount[],
  all: readonly Amount[],
): Meaning | undefined {
  const sized = evidence.attribute !== undefined || evidence.why === 'a place it is measured from';
  const total = asTotal(room, amount, out);
  if (total) return total;
  const here = lastWithUnit(room, out, amount, 0);
  if (sized && here) {
    const carried = evidence.attribute && carriedOn(amount, here);
    if (carried) return carried;
  }
  const parallel = sized && here?.dimension !== 'length' ? undefined : parallelTo(room, amount, here);
  if (parallel && parallel.dimension !== 'length' && !sized) return parallel;
  const special = sized ? undefined : otherKind(room, amount, evidence, out);
  if (special) return special;
  const metres = saidBefore(room, amount);
  if (metres?.unit === 'm' && metres.value !== amount.value) {
    return { ...metres, dimension: 'length', why: 'metres and hundredths, as its thing was said before' };
  }
  if (parallel && (evidence.attribute === undefined || here?.dimension === 'length')) return parallel;
  const read = asLength(room, amount, all, evidence.attribute);
  if (!sized && amount.value > (BELIEVED[read.unit] ?? Number.POSITIVE_INFINITY)) {
    const last = out
      .slice(-REMEMBERED)
      .findLast(
        (other) => other.dimension && other.dimension !== 'length' && close(other.value, amount.value, 5),
      );
    if (!last?.unit || !last.dimension) return undefined;
    return {
      value: amount.value,
      unit: last.unit,
      dimension: last.dimension,
      why: 'too much for a length; like the figure before',
    };
  }
  return read;
}

const CABLE_SIZES = new Set([1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70]);

/** "the heater gets its own run in four": after a cable's size, the next one needs no unit. */
function wiring(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const cable = out
    .slice(-REMEMBERED)
    .some(
      (other) =>
        other.unit === 'mm2' &&
        Math.abs((room.tokens[other.from]?.sentence ?? 0) - (room.tokens[amount.from]?.sentence ?? 0)) <= 1,
    );
  const said = wordAt(room, amount.from - 1) === 'in' || !Number.isInteger(amount.value);
  if (!cable || !CABLE_SIZES.has(amount.value) || !said) return undefined;
  return { value: amount.value, unit: 'mm2', dimension: 'area', why: 'the size of another cable' };
}

/** "bottom plate's 10 mil, the sides are 6": like the length that was said before it in the sentence. */
function likeTheLast(room: Room, amount: Amount, out: readonly Amount[]): boolean {
  const last = lastWithUnit(room, out, amount, 0);
  const be = /^(?:'s|is|are|was|be|at|to)$/.test(wordAt(room, amount.from - 1));
  return be && last?.unit === 'mm' && !last.unitAssumed && close(last.value, amount.value, 3);
}

/** Small whole numbers are mostly counts; they need more than a likely place. */
function tooWeak(
  room: Room,
  amount: Amount,
  evidence: Evidence,
  meaning: Meaning | undefined,
  out: readonly Amount[],
): boolean {
  if (evidence.grade === 'none') return true;
  if (evidence.grade === 'sure') return false;
  const whole = Number.isInteger(amount.value) && !amount.number.fraction;
  if (meaning && meaning.dimension !== 'length') return false;
  if (!whole)
    return amount.value === 0.5 || amount.value === 0.25
      ? !/^(?:at|to|is|'s)$/.test(wordAt(room, amount.from - 1))
      : false;
  if (SHEET_STUFF.test(wordAt(room, amount.to)) && amount.value >= 3) return false;
  if (evidence.why === 'said by itself' && amount.value < 20) return true;
  return (amount.value < 10 && !likeTheLast(room, amount, out)) || followedByThing(room, amount);
}

/** "so 905 people", "in 22 boards" were counts already; "to two hundred miles" has a unit. What is left: a noun. */
function followedByThing(room: Room, amount: Amount): boolean {
  const article = /^(?:a|an|the|that|this|same)$/.test(wordAt(room, amount.from - 1));
  if (article) return false;
  const next = room.tokens[amount.to];
  if (next?.kind !== 'word' || ends(room, amount.to)) return false;
  return !/^(?:so|and|but|or|now|then|because|since|for|to|with|on|in|at|not|which|that|when|if|until|till|as|by|from|of|instead|again|after|before|once|today|is|was|too|over|right|there|here|flat|good|give|plus|minus|less|than|either|max|min|'s|i|it|we|he|she|they|you|what|where|while|though|like|even|still|yet|already|mid|across|around|through|between|under|into|per|each|all|this|bang|dead|exactly)$/.test(
    next.word,
  );
}

/** Evidence and meaning where the number stands, else where the slip stood that it puts right; no meaning when both are weak. */
function settled(
  room: Room,
  amount: Amount,
  out: readonly Amount[],
  all: readonly Amount[],
): { readonly evidence: Evidence; readonly meaning: Meaning | undefined } {
  const evidence = evidenceOf(room, amount);
  const meaning = meaningOf(room, amount, evidence, out, all);
  if (meaning && !tooWeak(room, amount, evidence, meaning, out)) return { evidence, meaning };
  const { standsFor, ...alone } = amount;
  if (!standsFor) return { evidence, meaning: undefined };
  return settled(room, { ...alone, ...standsFor }, out, all);
}

/** A bare number takes its unit from its neighbours or the house, or it is no quantity. */
export const bareNumbers: Refiner = {
  name: 'a bare number in the place of a size',
  refine(amounts, room) {
    const out: Amount[] = [];
    for (const amount of amounts) {
      if (amount.unit) {
        out.push(amount);
        continue;
      }
      // "Call it nine hundred, I've not had a tape on it": with a unit a hedge, without one a guess.
      const { evidence, meaning } = amount.rough
        ? { evidence: { grade: 'none' as const, why: 'a guess' }, meaning: undefined }
        : settled(room, amount, out, amounts);
      if (!meaning) {
        room.note({
          ...amount,
          stage: 'bare',
          rule: bareNumbers.name,
          outcome: 'dropped',
          why: evidence.why,
        });
        continue;
      }
      room.note({
        ...amount,
        stage: 'bare',
        rule: bareNumbers.name,
        outcome: 'read',
        why: `${evidence.why}; ${meaning.unit}, ${meaning.why}`,
      });
      out.push({
        ...amount,
        value: tidy(meaning.value),
        unit: meaning.unit,
        dimension: meaning.dimension,
        unitAssumed: true,
        ...(meaning.alternatives ? { alternatives: meaning.alternatives } : {}),
        ...(amount.plusMinus !== undefined && !amount.plusMinusUnit ? { plusMinusUnit: meaning.unit } : {}),
      });
    }
    return out;
  },
};
