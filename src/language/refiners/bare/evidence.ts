import { isPlural, isTradeNoun, kindsOf } from '../../lexicon/trade-nouns.ts';
import type { Attribute } from '../../notes.ts';
import { readNumber } from '../../numbers/read-number.ts';
import { backOverFillers, each, onOverFillers, PhraseTable } from '../../phrases.ts';
import { BEFORE_BOUND } from '../../rules/bound-words.ts';
import type { Amount, Room } from '../../rules/rule.ts';
import { wordAt } from '../../rules/rule.ts';
import { comesOutOf, EACH_AFTER, SIZE_AFTER, SIZE_NOUNS } from '../../rules/size-words.ts';

/** How surely the words about a bare number make it a quantity. */
type Grade = 'sure' | 'likely' | 'none';

export interface Evidence {
  readonly grade: Grade;
  readonly why: string;
  readonly attribute?: Attribute;
}

/** Words directly before a bare number that state a value. */
const STATES_VALUE = new PhraseTable<Grade>([
  ...each<Grade>(
    'sure',
    "wants to be, needs to be, want to be, need to be, has to be, have to be, had to be, got to be, gotta be, gonna be, going to be, ought to be, oughta be, oughta, should be, must be, supposed to be, should have been, should 've been, shoulda been, ought to have been, needed to be, wanted to be, meant to be, was meant to be, to be, 'll be, will be, comes out at, came out at, come out at, works out at, worked out at, works out to, worked out to, comes to, came to, measures, measured, measuring, make it, made it, makes it, making it, making that, makes that, get it to, reads, read, reading, i get, i got, cut to, cut it to, cut at, cut them to, cut it at, cut them at, trimmed to, trim to, planed to, planed down to, ripped to, ripped down to, sanded to, milled to, turned to, turned down to, bored to, bored out to, drilled to, opened out to, down to, it to, them to, that to, those to, back to, out to, set at, set to, setting it at, going with, go with, went with, gone for, going for, settled on, finished at, finish at, ends up at, ended up at, ended up, end up at, stands at, sits at, comes in at, came in at, up at, marked at, mark it at, mark at, spaced at, spacing of, spaced, pitched at, lopped, drops, dropped, falls, fell, rises, rose, sags, sagged, bows, bowed, dips, dipped, leans, weighs, draws, pulls, holds, overhangs, projects, protrudes, sticks out, sticks in, sticks up, hangs over, hangs down, proud by, out by, short by, over by, under by, down by, up by, bigger by, smaller by, too wide by, too long by, too high by, too deep by, too thick by, too short by, too narrow by, too low by, too thin by, too big by, too small by, too tight by, out of plumb by, out of square by, out of level by, out of true by, out of line by, taken off, took off, take off, takes off, gives me, giving me, gives us, that gives, leaves us, leaves, leaving, left me, leaves me, less, minus, plus, times, divided by, another, every, the opening plus, a gap of, gap of, a depth of, a width of, a height of, a length of, a diameter of, a radius of, a thickness of, an overhang of, a rise of, a fall of, an offset of, depth of, width of, height of, length of, diameter of, radius of, thickness of, overhang of, clearance of, headroom of, call it, specified at, calls for, called for, says, said, shows, shown as, drawn at, drawn as, dimension of, dimensioned at, given as",
  ),
  ...each<Grade>(
    'likely',
    "i make, i made, we make, gave him, gave her, gave them, offered him, paid him, 's, 're, is, are, was, were, be, at, it 's, that 's, so, to, of, in, with, or, and, than, have, has, having, takes, take, wants, want, needs, need, got, get, gets, hit, hits, does, do, turns, same, same as, the, a, an, that, this, on, run, goes, go, going, went, up, just, only, exactly, now, still, even, stays at, stay at, good for, like, another, by, for, around, into, off, over, under, above, below",
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
  // "Five of nine": a part of a number.
  if (readNumber(room.tokens, amount.to + 1)) return false;
  if (/^(?:it|that)$/.test(stuff.word)) return (amount.number.decimals ?? 0) > 0 || amount.value >= 100;
  return !/^(?:the|my|our|his|her|their|its|it|them|these|those|us|you|that|this|what|which|all|course|any|each|every)$/.test(
    stuff.word,
  );
}

/** "One point nine of room behind it": how much room there is. */
const ofRoom = (room: Room, amount: Amount): boolean =>
  wordAt(room, amount.to) === 'of' &&
  /^(?:room|space|clearance|headroom|daylight|air|play|slack)$/.test(wordAt(room, amount.to + 1));

const DATUM_AFTER = new PhraseTable<true>(
  each(
    true,
    'in front, off the, off a, off any, off each, off my, off that, up from, down from, back from, in from, out from, above the, below the, below ground, below grade, underground, in the ground, into the ground, from the, to the top, to the underside, to the centre, to the center, to the bottom, to the edge, to the floor, to the ceiling, to the middle, to the face, to the outside, to the inside, under the, over the top, inside, outside, at the widest, at the narrowest, at the front, at the back, at the top, at the bottom, at one end, at each end, at the far end, at the near end, at the door, at the turn, on the nose, even, bang on, dead, dead on, on the button, on the dot, spot on, on the high side, on the low side, on the tall side, flat, on deck, at the waterline, floor to ceiling, inside to inside, outside to outside, face to face, end to end, side to side, all told, in total, all in, in all, finished, rough, on the drawing, on the tape, on the flat, between the, between centres',
  ),
);

/** What goods are priced by: "165 a yard", "eleven fifty a piece", "sixty for the lot". */
export const PRICED_BY = new PhraseTable<true>(
  each(
    true,
    'a sheet, a bag, a yard, an hour, a week, a visit, a head, a pop, a piece, a day, a load, a tin, a box, a roll, a bottle, a length, a board, a plank, a pair, a go, a cube, a tonne, a ton, a pallet, per sheet, per bag, per day, per load, the roll, the metre, the bottle, the load, the tonne, the drum, the pallet, a metre, per metre, a bundle, the bundle, the pair, the lot, for the lot, for the pair, for the job, for the tin, for the sheet, all in for, cash, plus vat, plus tax, plus shipping, plus delivery, plus postage, plus freight, with shipping, with delivery, with postage, with freight, including shipping, including delivery, including postage, delivered',
  ),
);

/** "Another fifteen off", "take six off it": so much is taken away. */
function takenOff(room: Room, amount: Amount): boolean {
  if (wordAt(room, amount.to) !== 'off' || amount.number.loose) return false;
  const it = /^(?:it|them|this|that|each|both|here|there)$/.test(wordAt(room, amount.to + 1)) ? 2 : 1;
  return ends(room, amount.to + it) && TAKES.some((back) => TAKING.test(wordAt(room, amount.from - back)));
}
const TAKES = [1, 2, 3];
const TAKING =
  /^(?:take|takes|took|taking|needs|need|wants|want|plane|planed|shave|shaved|trim|trimmed|cut|sand|sanded|mill|milled|skim|skimmed)$/;

/** Words of comparison behind a number: "twenty more", "ten less than the bed", "five longer". */
const COMPARED =
  /^(?:more|less|longer|shorter|wider|narrower|higher|lower|taller|deeper|shallower|thicker|thinner|bigger|smaller|closer|further|farther|low)$/;

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
  // "Thirty two's what the old builder had."
  if (/^(?:'s|is|was)$/.test(first) && second === 'what') return amount.value >= 10;
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
export const SHEET_STUFF =
  /^(?:ply|plywood|shutterply|marine|mdf|osb|chipboard|hardboard|plasterboard|drywall|polystyrene|foam|insulation|celotex|glass|perspex|acrylic|polycarbonate|plate|sheet|ally|aluminium|aluminum|steel|stainless|birch|larch|oak|pine|ash|teak|mahogany|iroko|meranti|spruce|cork|rubber|batten|battens|box|tube|rod|bar|copper|conduit|pipe|duct|ducting|flue|hose|spiral|downpipe|liner)$/;

/** The reason of a number that is told of each of several things. */
export const SO_MUCH_EACH = 'so much on each';
export const ON_A_MEASURE = 'where it is weighed or metered';

const MEASURED_ON = new PhraseTable<true>(
  each(
    true,
    'on the scales, on the scale, on the hook, on the weighbridge, on the bathroom scales, on the luggage scales, on the crane scales, on the load cell, on the meter, on the damp meter, on the moisture meter',
  ),
);

export function evidenceAfter(room: Room, amount: Amount): Evidence | undefined {
  if (PRICED_BY.startingAt(room.tokens, amount.to)) return { grade: 'sure', why: 'what goods are priced by' };
  if (MEASURED_ON.startingAt(room.tokens, amount.to)) return { grade: 'sure', why: ON_A_MEASURE };
  if (takenOff(room, amount)) return { grade: 'sure', why: 'so much taken off', attribute: 'offset' };
  if (compared(room, amount)) return { grade: 'sure', why: `"${wordAt(room, amount.to)}" behind it` };
  if (isShy(room, amount)) return { grade: 'sure', why: '"shy" behind it', attribute: 'offset' };
  if (putUp(room, amount)) return { grade: 'sure', why: '"up" behind it', attribute: 'height' };
  if (buried(room, amount)) return { grade: 'sure', why: '"down" behind it', attribute: 'depth' };
  if (valueFirst(room, amount)) return { grade: 'sure', why: 'the value said first' };
  const at = onOverFillers(room.tokens, amount.to);
  const size = SIZE_AFTER.startingAt(room.tokens, at);
  if (size) return { grade: 'sure', why: `"${wordAt(room, size.from)}" behind it`, attribute: size.meaning };
  if (EACH_AFTER.startingAt(room.tokens, at)) return { grade: 'sure', why: SO_MUCH_EACH };
  // "Four shelves at 610 out of a sheet"; "I get four out of a sheet" counts.
  if (wordAt(room, amount.from - 1) === 'at' && comesOutOf(room.tokens, at))
    return { grade: 'sure', why: 'a size that is cut out of stock' };
  if (faceToFace(room, at)) return { grade: 'sure', why: 'a place it is measured from' };
  const flatOut = wordAt(room, at) === 'flat' && wordAt(room, at + 1) === 'out';
  if (!flatOut && DATUM_AFTER.startingAt(room.tokens, at))
    return { grade: 'sure', why: 'a place it is measured from' };
  if (roomTo(room, amount)) return { grade: 'sure', why: 'room to do something', attribute: 'clearance' };
  if (roomLeft(room, amount)) return { grade: 'sure', why: 'room at a place', attribute: 'clearance' };
  if (ofRoom(room, amount)) return { grade: 'sure', why: 'room at a place', attribute: 'clearance' };
  if (ofStuff(room, amount)) return { grade: 'sure', why: `of ${wordAt(room, amount.to + 1)}` };
  return undefined;
}

const PLACE_AFTER =
  /^(?:behind|beneath|underneath|above|below|beside|between|beyond|before|round|around|overhead|either|each|both|on|at|in|over|under)$/;
const PLACE_ENDS =
  /^(?:it|them|that|this|those|these|him|her|the|a|an|my|our|each|either|both|side|end|top|front|back|there|here|)$/;

/** Room that there is at a place: "I've only got 250 behind it", "there's 40 left above the door", "70 to spare". */
function roomLeft(room: Room, amount: Amount): boolean {
  // "Three behind me" and "two left": people and tins.
  if (amount.value < 10 || !isHad(room, amount)) return false;
  let at = amount.to;
  const spare = /^(?:left|spare|free|clear|over)$/.test(wordAt(room, at));
  if (wordAt(room, at) === 'to' && /^(?:spare|play)$/.test(wordAt(room, at + 1))) return true;
  if (/^(?:left|spare|free|clear)$/.test(wordAt(room, at))) at++;
  const place = wordAt(room, at);
  if (/^(?:behind|beneath|underneath|overhead|above|below)$/.test(place) && ends(room, at + 1)) return true;
  if (!PLACE_AFTER.test(place) || !PLACE_ENDS.test(wordAt(room, at + 1))) return false;
  return spare || !/^(?:on|at|in|over|under|before|round|around)$/.test(place);
}

const MOVES =
  /^(?:walk|stand|squeeze|crawl|climb|duck|sit|kneel|lie|sleep|turn|swing|pass|step|slide|reach|stretch|shuffle|wriggle|get)$/;
const THROUGH = /^(?:through|past|under|in|up|by|between|down|into|out|on|round|around|over|along)$/;

/** "Nine hundred to walk through", "560 to squeeze past": room for the body. "Forty to get through" counts. */
function roomTo(room: Room, amount: Amount): boolean {
  const isMetres = amount.value < 6 && (amount.number.decimals ?? 0) > 0;
  if ((amount.value < 100 && !isMetres) || wordAt(room, amount.to) !== 'to') return false;
  const move = wordAt(room, amount.to + 1);
  return MOVES.test(move) && (THROUGH.test(wordAt(room, amount.to + 2)) || ends(room, amount.to + 2));
}

/** Whether it is something had: "I've got", "there's only", "leaves us". */
function isHad(room: Room, amount: Amount): boolean {
  for (let back = 1; back <= 5; back++) {
    const word = wordAt(room, amount.from - back);
    if (
      /^(?:got|have|has|had|having|'ve|'s|is|leaves|leave|leaving|left|gives|give|giving|find|found|needs|need|wants)$/.test(
        word,
      )
    )
      return true;
    if (
      !/^(?:only|just|about|maybe|barely|bare|a|good|around|roughly|still|me|us|you|exactly|now|like)$/.test(
        word,
      )
    )
      return false;
  }
  return false;
}

/** "The lid is 4 shy", "the door is 3 shy of the frame": so much is missing. "900 shy" hedges. */
const isShy = (room: Room, amount: Amount): boolean =>
  wordAt(room, amount.to) === 'shy' &&
  amount.value < MOST_SHY &&
  (ends(room, amount.to + 1) || wordAt(room, amount.to + 1) === 'of') &&
  /^(?:is|'s|are|'re|was|were|about|only|still)$/.test(wordAt(room, amount.from - 1));
const MOST_SHY = 50;

/** "The shelf sits about 900 up", "it's fixed 1200 up": how high something is. */
function putUp(room: Room, amount: Amount): boolean {
  if (wordAt(room, amount.to) !== 'up' || amount.value < 50) return false;
  if (!/^(?:|[.,;:!?]|and|but|so|on|off|from)$/.test(wordAt(room, amount.to + 1))) return false;
  return [1, 2, 3].some((back) =>
    /^(?:sits|sit|sat|goes|hangs|hang|hung|fixed|mounted|put|starts|screwed)$/.test(
      wordAt(room, amount.from - back),
    ),
  );
}

/** "We buried the duct 450 down". */
function buried(room: Room, amount: Amount): boolean {
  if (
    wordAt(room, amount.to) !== 'down' ||
    !/^(?:|[.,;:!?]|and|but|so|in|into)$/.test(wordAt(room, amount.to + 1))
  )
    return false;
  return [1, 2, 3, 4, 5, 6].some((back) =>
    /^(?:bury|buried|burying|dig|dug|digging|sink|sank|sunk|goes|go|went|lies|lie|runs|run|laid|lay)$/.test(
      wordAt(room, amount.from - back),
    ),
  );
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
  const measure = measureOf(room, at);
  if (measure) return { grade: 'sure', why: `"${measure.word}" before it`, attribute: measure.attribute };
  let best: Grade = 'none';
  for (let steps = 0; steps < 5; steps++) {
    const noun = SIZE_NOUNS.get(wordAt(room, at - 1));
    // "its own run in four": no length of a run.
    const within = wordAt(room, at) === 'in' && wordAt(room, at - 1) === 'run';
    if (noun && !within)
      return { grade: 'sure', why: `"${wordAt(room, at - 1)}" before it`, attribute: noun };
    const hit = STATES_VALUE.endingAt(room.tokens, at);
    const hedge = BEFORE_BOUND.endingAt(room.tokens, at);
    // "I've ordered another two hundred": more of what was spoken of.
    if (wordAt(room, at - 1) === 'another' && BOUGHT.test(wordAt(room, at - 2))) return undefined;
    if (hit?.meaning === 'sure' && !leavesFew(room, hit.to, amount))
      return { grade: 'sure', why: `after "${spoken(room, hit.from, hit.to)}"` };
    if (hit) best = 'likely';
    const step = hit ?? hedge;
    if (!step) break;
    at = backOverFillers(room.tokens, step.from);
  }
  return best === 'likely' ? { grade: 'likely', why: 'in the place of a value' } : undefined;
}

/** "the spacing in the lounge is", "the gap behind the stove is": a measure, where it is, and the verb. */
function measureOf(
  room: Room,
  at: number,
): { readonly word: string; readonly attribute: Attribute } | undefined {
  const only = /^(?:only|now|just|still|about|only just|exactly)$/.test(wordAt(room, at - 1)) ? at - 1 : at;
  if (!/^(?:'s|is|was|are|were)$/.test(wordAt(room, only - 1))) return undefined;
  for (let index = only - 3; index >= only - 7; index--) {
    const word = wordAt(room, index);
    if (room.tokens[index]?.kind !== 'word' || /^(?:and|but|so|is|was|are|'s|which|that)$/.test(word))
      return undefined;
    const attribute = SIZE_NOUNS.get(word);
    const placed =
      /^(?:of|in|at|under|over|behind|between|above|below|round|around|beside|from|for|inside)$/.test(
        wordAt(room, index + 1),
      );
    if (attribute && word !== 'run' && word !== 'clear') return placed ? { word, attribute } : undefined;
  }
  return undefined;
}

/** "that leaves five": so many of them; "that leaves 1,837 to stand in" measures. */
function leavesFew(room: Room, to: number, amount: Amount): boolean {
  const word = wordAt(room, to - 1);
  const few = Number.isInteger(amount.value) && amount.value < 10 && !amount.number.fraction;
  return few && /^(?:leaves|leaving|me|another|every)$/.test(word);
}

const BOUGHT =
  /^(?:order|ordered|ordering|buy|bought|buying|get|got|getting|need|needs|grab|grabbed|fetch|fetched)$/;

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
  // "1,928" is no year, and what was measured as 1950 before is none at 1934.
  if (/,/.test(room.tokens[amount.from]?.text ?? '') || likeKnown(room, amount)) return false;
  return room.tokens[amount.from]?.kind === 'number' ? amount.value >= 1900 : amount.number.splitAfter === 2;
}

/** "Seven and a half rise", "two thirty rise": what each step of a stair or a ladder climbs. */
const ofStair = (room: Room, amount: Amount): boolean =>
  wordAt(room, amount.to) === 'rise' &&
  (amount.value >= 100 || Boolean(amount.number.fraction)) &&
  !/^(?:over|in|of|to)$/.test(wordAt(room, amount.to + 1));

const YEARS_APART = 0.06;
const likeKnown = (room: Room, { value }: Amount): boolean =>
  (room.context.knownFigures ?? []).some(
    (known) => known.unit === 'mm' && Math.abs(known.value / value - 1) <= YEARS_APART,
  );

/** Words behind a number at the head of a clause without a verb that say where or when it holds. */
const WHERE_IT_HOLDS =
  /^(?:at|in|on|off|from|for|into|through|between|up|aft|forward|now|there|where|floor|wall|every|over|under|along|either|below|above)$/;

/** "Thirty eight hundred at the tip.", "1,020 now", "two hundred into the wall": a size at the head of its clause. */
function headsClause(room: Room, amount: Amount): boolean {
  const before = room.tokens[amount.from - 1];
  const sentence = room.tokens[amount.from]?.sentence;
  const opens = before === undefined || before.sentence !== sentence || /^[,:;]$/.test(before.word);
  if (!opens || !WHERE_IT_HOLDS.test(wordAt(room, amount.to)) || amount.number.loose) return false;
  // "Forty in the first row", "two on the roof" count.
  const { fraction, decimals } = amount.number;
  return (amount.value >= 100 || Boolean(fraction) || Boolean(decimals)) && !likeYear(room, amount);
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

/**
 * "Treads are thirty two thick and the risers eighteen": the verb and the size are left out with the next thing. A
 * number of things would stand before them.
 */
function nextOfPair(room: Room, amount: Amount): boolean {
  if (!ends(room, amount.to) || amount.number.loose) return false;
  const thing = wordAt(room, amount.from - 1);
  if (!isTradeNoun(thing) || !/^(?:the|my)$/.test(wordAt(room, amount.from - 2))) return false;
  if (wordAt(room, amount.from - 3) !== 'and') return false;
  const size = wordAt(room, amount.from - 4);
  return SIZE_BEFORE.has(size);
}

const PARTS_OF_A_TAPE: ReadonlySet<number> = new Set([2, 4, 8, 10, 16, 32, 64, 100, 1000]);

/** "fourteen tonne, one four", "fifty, five oh": the number once more, so that it is heard right. */
function spelledAgain(room: Room, amount: Amount): boolean {
  if (amount.number.form !== 'words' || amount.to - amount.from < 2 || amount.value > 99) return false;
  // "Six point oh five" is no number said over.
  if (amount.number.decimals) return false;
  if (!DIGIT.test(wordAt(room, amount.from)) || !DIGIT.test(wordAt(room, amount.to - 1))) return false;
  return ends(room, amount.to) && /^[,.:-]$/.test(wordAt(room, amount.from - 1));
}
const DIGIT = /^(?:one|two|three|four|five|six|seven|eight|nine|oh|zero|nought)$/;

const GRITS: ReadonlySet<number> = new Set([
  40, 60, 80, 100, 120, 150, 180, 220, 240, 320, 400, 600, 800, 1000, 1200, 2000,
]);

/** "Sanded it 80, 120, then 240": how fine the paper is. Common practice, no source. */
function isGrit(room: Room, amount: Amount): boolean {
  if (!GRITS.has(amount.value)) return false;
  if (
    !/^(?:it|with|at|to|through|,|then|and|up|in|from|a|by|them|go|goes|went|the)$/.test(
      wordAt(room, amount.from - 1),
    )
  )
    return false;
  const sentence = room.tokens[amount.from]?.sentence;
  for (let index = amount.from - 1; index >= amount.from - 10; index--) {
    const token = room.tokens[index];
    if (!token || token.sentence !== sentence) return false;
    if (/^(?:sand|sanded|sanding|sandpaper|paper|papered|flatted|flatting|grit|abrasive)$/.test(token.word))
      return true;
  }
  return false;
}

/** A sign that is no punctuation belongs to the number and makes it something unknown: "100 ₡". */
const unknownSign = (room: Room, at: number) =>
  room.tokens[at]?.kind === 'mark' && !/^[.,;:!?…()[\]{}'"&/+*–—-]+$/.test(wordAt(room, at));

/** "Ordered 250 from the Germans": how many, and no distance from anything. */
const isOrderedFrom = (room: Room, { from, to, number }: Amount): boolean =>
  !number.fraction &&
  /^(?:from|off)$/.test(wordAt(room, to)) &&
  /^(?:order|ordered|ordering|buy|bought|buying|reserved|booked)$/.test(wordAt(room, from - 1));

/** "One in ten's a dud": how often, where a fall of one in ten is read as a ratio before. */
const oneInSoMany = (room: Room, { from, number }: Amount): boolean =>
  !number.fraction && wordAt(room, from - 1) === 'in' && /^(?:one|1|two|three)$/.test(wordAt(room, from - 2));

/** "Bag and a half of concrete", "a sheet and a half": where no number and no unit stands before it. */
const thingAndAHalf = (room: Room, { from, value }: Amount): boolean =>
  value === 0.5 && wordAt(room, from - 1) === 'and' && /^\p{L}{3,}$/u.test(wordAt(room, from - 2));

/** "A three and a half lime", "five lime": how hard it sets. Hydraulic limes are graded so; common practice. */
const ofLime = (room: Room, { to, value }: Amount): boolean =>
  (value === 2 || value === 3.5 || value === 5) && wordAt(room, to) === 'lime';

/** "4 16 4", "six twelve six" beside glass: the layers of a sealed unit, run together by their digits. */
const glazingMakeUp = (room: Room, { from, to }: Amount): boolean =>
  to - from >= 3 &&
  wordAt(room, from) === wordAt(room, to - 1) &&
  room.tokens
    .slice(Math.max(0, from - 6), to + 6)
    .some(({ word }) => /^(?:glazed|glazing|glass|units?|panes?|sealed)$/.test(word));

export function evidenceOf(room: Room, amount: Amount): Evidence {
  const glued = room.tokens[amount.to]?.spaced === false && room.tokens[amount.to]?.kind === 'word';
  if (glued && room.tokens[amount.from]?.kind === 'number') return { grade: 'none', why: 'part of a name' };
  if (isOrderedFrom(room, amount)) return { grade: 'none', why: 'so many of them were ordered' };
  if (oneInSoMany(room, amount)) return { grade: 'none', why: 'one of so many' };
  if (thingAndAHalf(room, amount)) return { grade: 'none', why: 'a half more of a thing' };
  if (/^turns?$/.test(wordAt(room, amount.to))) return { grade: 'none', why: 'so many turns' };
  if (ofLime(room, amount)) return { grade: 'none', why: 'the strength of a lime' };
  if (glazingMakeUp(room, amount)) return { grade: 'none', why: 'glass, cavity and glass of a unit' };
  if (unknownSign(room, amount.to)) return { grade: 'none', why: 'an unknown sign behind it' };
  const after = evidenceAfter(room, amount);
  if (after) return after;
  if (spelledAgain(room, amount)) return { grade: 'none', why: 'said again digit by digit' };
  if (amount.number.fraction && !PARTS_OF_A_TAPE.has(amount.number.denominator ?? 2) && amount.value < 1)
    return { grade: 'none', why: 'a part of something' };
  if (isGrit(room, amount)) return { grade: 'none', why: 'a grit of paper' };
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
  if (wordAt(room, amount.to) === 'again' && ends(room, amount.to + 1))
    return { grade: 'likely', why: '"again" behind it' };
  if (nextOfPair(room, amount)) return { grade: 'sure', why: 'the same size of the next thing' };
  if (standsAlone(room, amount)) return { grade: 'likely', why: 'said by itself' };
  if (ofStair(room, amount)) return { grade: 'sure', why: '"rise" behind it', attribute: 'height' };
  if (headsClause(room, amount)) return { grade: 'sure', why: 'a size at the head of its clause' };
  if (amount.number.fraction && (amount.number.denominator ?? 0) >= 4)
    return { grade: 'likely', why: 'a fraction of an inch' };
  return { grade: 'none', why: 'no unit, no word of size and no place of a value' };
}

/** One thing that is told by its bore or its size across. */
const roundThing = (word: string): boolean => {
  const kinds = kindsOf([word]);
  return !isPlural(word) && (kinds.has('hole') || kinds.has('pipe') || kinds.has('round'));
};

/** "so 905 people", "in 22 boards" were counts already; "to two hundred miles" has a unit. What is left: a noun. */
export function followedByThing(room: Room, amount: Amount): boolean {
  const article = /^(?:a|an|the|that|this|same)$/.test(wordAt(room, amount.from - 1));
  if (article) return false;
  const next = room.tokens[amount.to];
  // "It needs a hundred and twenty five hole": the article is of the hole.
  if (wordAt(room, amount.from) === 'a' && roundThing(wordAt(room, amount.to))) return false;
  if (next?.kind !== 'word' || ends(room, amount.to)) return false;
  return !/^(?:so|and|but|or|now|then|because|since|for|to|with|on|in|at|not|which|that|when|if|until|till|as|by|from|of|instead|again|after|before|once|today|tonight|tomorrow|yesterday|is|was|too|over|right|there|here|flat|good|give|plus|minus|less|than|either|max|min|'s|i|it|we|he|she|they|you|what|where|while|though|like|even|still|yet|already|mid|across|around|through|between|under|into|per|each|all|this|bang|dead|exactly|yeah|yep|yes|aye|ok|okay|mate|mates|lads|folks|love|innit|eh|huh|hey|tops|ish|anyway|anyways|altogether|overall|maybe|probably|roughly|thereabouts|oh|um|uh|er|up|down|out|back|along|proud)$/.test(
    next.word,
  );
}
