/** When a bare number is how warm it is. Common practice, no source. */
import { each, PhraseTable } from '../../phrases.ts';
import type { Amount, Room } from '../../rules/rule.ts';
import { wordAt } from '../../rules/rule.ts';
import { speaksOf } from '../../units/surroundings.ts';
import { evidenceAfter } from './evidence.ts';
import type { Meaning } from './lengths.ts';
import { nearWord } from './neighbours.ts';

const HERE_AFTER = new PhraseTable<true>(
  each(
    true,
    'in here, in there, outside, out there, up there, up here, down there, down here, outdoors, this morning, last night, overnight, right now, in the shop, in the shed, in the garage, in the workshop, in the barn, in the loft, in the attic, in the cabin, in the back, in the sun, in the shade, under this tarp, today, tonight, first thing, at night, at dawn, at noon, at midnight, at breakfast, by noon, by lunch, by midday, out here, in the tent, degrees',
  ),
);
const HEAT_SUBJECT = /^(?:it|outside|inside|thermometer|temperature|temp|shop|shed|workshop|room|air)$/;

const fahrenheitOrNot = (room: Room): 'degC' | 'degF' =>
  room.region === 'US' || (room.region === '' && room.house === 'us') ? 'degF' : 'degC';

/** How warm, told by words that leave no other reading wherever the number stands. */
export function asPlainHeat(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (amount.value > 1500 || amount.number.fraction) return undefined;
  const unit = fahrenheitOrNot(room);
  const why = madeHot(room, amount) ? 'how hot it is made' : plainlyWarm(room, amount, out, unit);
  return why ? { value: amount.value, unit, dimension: 'temperature', why } : undefined;
}

/** A bare number as a temperature: told by its place and time, by the work that it bounds, or beside a time of curing. */
export function asHeat(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (amount.value < -30 || amount.value > 130 || amount.number.fraction) return undefined;
  const unit = fahrenheitOrNot(room);
  // "It was seventy one. In here, so it kicked off": a recogniser's full stop.
  const stop = /^[.,]$/.test(wordAt(room, amount.to)) ? amount.to + 1 : amount.to;
  const here = HERE_AFTER.startingAt(room.tokens, stop) !== undefined;
  const subject = [2, 3, 4].some((back) => HEAT_SUBJECT.test(wordAt(room, amount.from - back)));
  const warm = speaksOf(room, 'heat', amount.from, amount.to, 14);
  const verb =
    /^(?:'s|was|is|been|hit|hits|got|gets|gone|to|at|now|still|only|dropped|below|above|under|over|than|finally|nearly|about|up|down|be|minus|negative)$/.test(
      wordAt(room, amount.from - 1),
    );
  // "the second coat goes on if it's above ten".
  const forecast =
    /^(?:above|over|below|under)$/.test(wordAt(room, amount.from - 1)) &&
    /^(?:'s|is|gets|stays|goes)$/.test(wordAt(room, amount.from - 2)) &&
    wordAt(room, amount.from - 3) === 'it' &&
    amount.value < 60 &&
    speaksOf(room, 'process', amount.from, amount.to, 14);
  if (asked(room, amount)) {
    return { value: amount.value, unit, dimension: 'temperature', why: 'how warm it is somewhere' };
  }
  if (atItsTime(room, amount, out)) {
    return {
      value: amount.value,
      unit,
      dimension: 'temperature',
      why: 'how warm it is while that long goes by',
    };
  }
  const pipes = ['flow', 'return'].every((word) => nearWord(room, amount, word));
  if (
    pipes &&
    amount.value >= 15 &&
    amount.value <= 95 &&
    Number.isInteger(amount.value) &&
    !evidenceAfter(room, amount)
  )
    return { value: amount.value, unit, dimension: 'temperature', why: 'flow and return of a heating' };
  if (sitsAt(room, amount))
    return {
      value: amount.value,
      unit,
      dimension: 'temperature',
      why: 'how warm a room or a heating is kept',
    };
  if (workable(room, amount, unit))
    return { value: amount.value, unit, dimension: 'temperature', why: 'how warm it must be for the work' };
  if (forecast) return { value: amount.value, unit, dimension: 'temperature', why: 'how warm it must be' };
  if (!verb || !((here && (subject || warm)) || (warm && subject && !evidenceAfter(room, amount))))
    return undefined;
  return { value: amount.value, unit, dimension: 'temperature', why: 'how warm it is somewhere' };
}

const KEPT_WARM = /^(?:room|cabin|workshop|shop|shed|house|kitchen|bedroom|saloon|bathroom|lounge)$/;
/** Where people are, in degrees Celsius. */
const [CHILLY, SWELTERING] = [3, 35];
/** What goes round in a heating. */
const [TEPID, SCALDING] = [30, 90];

/** "The room's sitting at nineteen", "the flow's set at fifty five": a whole number, and nothing behind it that is a size. */
function sitsAt(room: Room, amount: Amount): boolean {
  const { value, from, to } = amount;
  if (!Number.isInteger(value) || wordAt(room, from - 1) !== 'at') return false;
  if (
    !/^(?:|[.,;:!?]|and|but|with|now|so|today|tonight)$/.test(wordAt(room, to)) ||
    evidenceAfter(room, amount)
  )
    return false;
  const verb = wordAt(room, from - 2);
  const subject = wordAt(room, from - 4);
  const isBe = /^(?:'s|is)$/.test(wordAt(room, from - 3));
  if (!isBe) return false;
  if (/^(?:sitting|sat|hovering|steady|holding)$/.test(verb) && KEPT_WARM.test(subject))
    return value >= CHILLY && value <= SWELTERING;
  return (
    /^(?:set|running|sitting|coming)$/.test(verb) && subject === 'flow' && value >= TEPID && value <= SCALDING
  );
}

const HOTTER = /^(?:hotter|warmer|colder|cooler)$/;
const PUT_TO_HEAT = /^(?:heat|heats|heated|heating|warm|warms|warmed|warming|bake|baked|baking)$/;
const OF_WARMTH =
  /^(?:warm|warmer|cold|colder|hot|hotter|cool|cooler|freezing|chilly|mild|roasting|baking|sweltering|heat|temperature|temp|frost)$/;
const ASIDE =
  /^(?:already|now|still|again|today|tonight|here|there|in|out|up|inside|outside|this|morning|last|night|at|,|:)$/;
const DAY_AFTER =
  /^(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|yesterday|today|overnight|outside)$/;
const AIR_MOST = { degC: 48, degF: 120 } as const;

const said = (room: Room, amount: Amount, back: number) => wordAt(room, amount.from - back);

/** "No hotter than fifty", "heated them to two hundred", "warmed it up to ninety in oil". */
function madeHot(room: Room, amount: Amount): boolean {
  if (said(room, amount, 1) === 'than' && HOTTER.test(said(room, amount, 2))) return true;
  const at = [1, 2, 3].find((back) => said(room, amount, back) === 'to');
  if (at === undefined || amount.value < 30) return false;
  const hedged =
    at === 1 || /^(?:about|around|roughly|nearly|only|maybe|just|over)$/.test(said(room, amount, 1));
  return hedged && [1, 2, 3, 4, 5].some((back) => PUT_TO_HEAT.test(said(room, amount, at + back)));
}

/** "Warmer in here already, fourteen with no stove", "heat in the loft, 41": a word of warmth, a pause, the number. */
function afterWarmth(room: Room, amount: Amount): boolean {
  if (
    !/^[,:]$/.test(said(room, amount, 1)) ||
    !/^(?:|[.,;!?]|in|at|with|by|on|and|outside|inside)$/.test(wordAt(room, amount.to))
  )
    return false;
  const sentence = room.tokens[amount.from]?.sentence;
  for (let back = 2; back <= 6; back++) {
    if (room.tokens[amount.from - back]?.sentence !== sentence) return false;
    // "The gap's cold, four at the top" tells a size.
    if (OF_A_SIZE.test(said(room, amount, back))) return false;
    if (OF_WARMTH.test(said(room, amount, back)))
      return ![1, 2, 3].some((more) => OF_A_SIZE.test(said(room, amount, back + more)));
    if (!ASIDE.test(said(room, amount, back)) && !/^(?:the|a|my)$/.test(said(room, amount, back + 1)))
      return false;
  }
  return false;
}

/** "Held the thermometer under it. Sixty one.": the reading of the sentence before. */
function readOffThermometer(room: Room, amount: Amount): boolean {
  const sentence = room.tokens[amount.from]?.sentence ?? 0;
  if (room.tokens[amount.from - 1]?.sentence === sentence || !/^(?:|[.,!?])$/.test(wordAt(room, amount.to)))
    return false;
  for (let at = amount.from - 1; at >= amount.from - 14 && room.tokens[at]?.sentence === sentence - 1; at--)
    if (/^(?:thermometer|thermocouple|probe)$/.test(wordAt(room, at))) return true;
  return false;
}

/** Whether a phrase is over: a mark, the end, or what goes on with another. */
const ends = (room: Room, at: number): boolean => /^(?:|[.,;:!?]|and|but)$/.test(wordAt(room, at));

const SPEAKS_OF_AIR =
  /^(?:it|'s|is|was|about|around|only|still|just|nearly|degrees|and|but|,|outside|outdoors|inside|indoors|in|out|up|down|here|there|today|this|morning)$/;

/** Whether nothing but talk of the air stands in the sentence before: "14 outside, 19 inside". */
function opensWithHeat(room: Room, from: number): boolean {
  const sentence = room.tokens[from]?.sentence;
  for (let at = from - 1; room.tokens[at]?.sentence === sentence; at--) {
    const word = wordAt(room, at);
    if (from - at > 12) return false;
    if (room.tokens[at]?.kind !== 'number' && !NUMBER_WORD.test(word) && !SPEAKS_OF_AIR.test(word))
      return false;
  }
  return true;
}

/** "Ninety five out there and sixty eight in here", "14 outside, 19 in here": two places, each with its number. */
function inTwoPlaces(room: Room, amount: Amount): boolean {
  const place = HERE_AFTER.startingAt(room.tokens, amount.to);
  if (!place) return false;
  const sentence = room.tokens[amount.from]?.sentence;
  // "The rim is 14 outside and 12 inside" tells sizes.
  const ofAir = opensWithHeat(room, amount.from);
  const isPlace = (at: number) =>
    (/^(?:in|out|up|down)$/.test(wordAt(room, at)) && /^(?:here|there)$/.test(wordAt(room, at + 1))) ||
    (ofAir && /^(?:outside|outdoors|inside|indoors)$/.test(wordAt(room, at)) && ends(room, at + 1));
  if (!isPlace(amount.to)) return false;
  for (let step = 2; step <= 8; step++)
    for (const at of [amount.to + step, amount.from - step])
      if (
        room.tokens[at]?.sentence === sentence &&
        isPlace(at) &&
        wordAt(room, at) !== wordAt(room, amount.to) &&
        (room.tokens[at - 1]?.kind === 'number' || NUMBER_WORD.test(wordAt(room, at - 1)))
      )
        return true;
  return false;
}
const NUMBER_WORD =
  /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\p{L}+teen|\p{L}+ty|hundred)$/u;

/** "It got to sixty two Saturday", "it's been seven outside": the air of a day. */
function ofTheDay(room: Room, amount: Amount, unit: 'degC' | 'degF'): boolean {
  if (amount.value > AIR_MOST[unit] || !DAY_AFTER.test(wordAt(room, amount.to))) return false;
  const verb = said(room, amount, 1) === 'to' ? 2 : 1;
  if (!/^(?:got|hit|reached|touched|been|climbed|fell|dropped)$/.test(said(room, amount, verb))) return false;
  return [1, 2, 3].some((back) =>
    /^(?:it|temperature|mercury|thermometer)$/.test(said(room, amount, verb + back)),
  );
}

/** "It's 22 in here and minus two out", "at minus thirty": below nought, and nothing is taken from anything. */
function belowNought(room: Room, amount: Amount, out: readonly Amount[], unit: 'degC' | 'degF'): boolean {
  if (!/^(?:minus|negative)$/.test(said(room, amount, 1)) || amount.value > AIR_MOST[unit]) return false;
  if (!Number.isInteger(amount.value)) return false;
  const last = out.at(-1);
  const beside =
    last?.dimension === 'temperature' &&
    room.tokens[last.from]?.sentence === room.tokens[amount.from]?.sentence;
  return beside || (FROST_AFTER.test(wordAt(room, amount.to)) && toldOfFrost(room, amount));
}
const FROST_AFTER =
  /^(?:|[.,;!?]|in|out|outside|and|at|last|this|overnight|tonight|again|today|here|there|or|so|when|with|all|by)$/;
/** Before "minus five" these leave nothing that it could be taken from. */
const FROST_SUBJECT = /^(?:it|forecast|temperature|temp|thermometer|mercury|outside|night|weather|they|we)$/;
const FROST =
  /^(?:froze|frozen|freezing|freeze|frost|frosty|ice|icy|cold|colder|overnight|night|morning|outside|winter|snow|thaw|woke|tonight|antifreeze|dawn)$/;
const FROST_REACH = 6;

/** "It went down to minus five", "minus five this morning": said of the air, with nothing that it is taken from. */
function toldOfFrost(room: Room, amount: Amount): boolean {
  const at = amount.from - 1;
  const sentence = room.tokens[at]?.sentence;
  const lead = wordAt(room, at - 1);
  const opens = room.tokens[at - 1]?.sentence !== sentence || /^[,;:]$/.test(lead);
  if (
    !opens &&
    !/^(?:at|to|was|is|'s|be|had|hit|about|around|of|got|nearly|nudging|touched|reached)$/.test(lead)
  )
    return false;
  if (lead === 'at') return true;
  for (let back = at - 1; back >= at - FROST_REACH && room.tokens[back]?.sentence === sentence; back--) {
    const word = wordAt(room, back);
    if (room.tokens[back]?.kind === 'number' || OF_A_SIZE.test(word)) return false;
    if (!opens && FROST_SUBJECT.test(word)) return true;
  }
  return room.tokens
    .slice(Math.max(0, at - FROST_REACH), amount.to + FROST_REACH)
    .some((token) => token.sentence === sentence && FROST.test(token.word));
}

/** How warm, told by words that leave no other reading. */
function plainlyWarm(
  room: Room,
  amount: Amount,
  out: readonly Amount[],
  unit: 'degC' | 'degF',
): string | undefined {
  if (belowNought(room, amount, out, unit)) return 'so much below nought';
  if (afterWarmth(room, amount)) return 'after a word of warmth';
  if (readOffThermometer(room, amount)) return 'read off a thermometer';
  if (amount.value <= AIR_MOST[unit] && inTwoPlaces(room, amount)) return 'how warm it is in two places';
  if (ofTheDay(room, amount, unit)) return 'how warm the day was';
  return sparing(room, amount, unit) ? 'how warm its stuff must be' : undefined;
}

/** How many tokens before a bound the stuff that it is said of may stand. */
const STUFF_BACK = 34;

/**
 * "The epoxy's come. It won't go below fifty five", "the paint's due, nothing under ten": what a product does not
 * stand, with the product in the same sentence or in one of the two before it.
 */
function sparing(room: Room, amount: Amount, unit: 'degC' | 'degF'): boolean {
  const [low, high] = WORKED_IN[unit];
  if (amount.value < low || amount.value > high || !Number.isInteger(amount.value)) return false;
  if (!/^(?:above|over|below|under|beneath)$/.test(said(room, amount, 1)) || evidenceAfter(room, amount))
    return false;
  if (
    !/^(?:|[.,;:!?]|and|so|or|but|either|at|for|till|until|when|if|to|outside|it)$/.test(
      wordAt(room, amount.to),
    )
  )
    return false;
  const sentence = room.tokens[amount.from]?.sentence ?? 0;
  let [isRefused, isStuff] = [false, false];
  for (let at = amount.from - 1; at >= Math.max(0, amount.from - STUFF_BACK); at--) {
    const token = room.tokens[at];
    if (!token || sentence - token.sentence > 2) break;
    if (token.sentence === sentence && OF_A_SIZE.test(token.word)) return false;
    if (token.sentence === sentence && REFUSED.test(token.word) && amount.from - at <= 8) isRefused = true;
    if (NEEDS_WARMTH.test(token.word)) isStuff = true;
  }
  for (let at = amount.to; room.tokens[at]?.sentence === sentence && at < amount.to + 10; at++)
    if (OF_A_SIZE.test(wordAt(room, at))) return false;
  return isRefused && isStuff;
}
/** Words that make a bound one of size, where the stuff may stand a sentence away. */
const OF_A_SIZE =
  /^(?:thick|thickness|thin|gap|gaps|bead|beads|layer|layers|film|deep|depth|crack|cracks|joint|joints|wide|size|long|short|cover|step|lip|hole|holes|through|bend|bends|span|spans|knot|knots|bolt|bolts|screw|screws|shelf|shelves|panel|panels|board|boards|timber)$/;
const REFUSED = /(?:n't$)|^(?:not|nothing|nowt|anything|never|no|cannot|hates|unless|refuses|only|keen)$/;

/** Work that needs warmth or shade: its stuff and what it does. */
const NEEDS_WARMTH =
  /^(?:paint|painting|painted|varnish|varnishing|glue|gluing|glueing|epoxy|resin|laminate|laminating|pour|pouring|cure|cures|curing|kick|kicks|spray|spraying|foam|foaming|mix|mixing|prime|priming|primer|plaster|plastering|render|rendering|limewash|mortar|concrete|lime|sealant|sealer|mastic|putty|membrane|bitumen|goo|goop|stick|sticks|set|sets|harden|hardens|adhesive|topcoat|gelcoat|fibreglass|fiberglass|glass|glassing)$/;
/** Words that make a bound one of size: "no bead under ten", "gaps above three". */
const OF_THICKNESS =
  /^(?:thick|thickness|thin|gap|gaps|bead|beads|layer|layers|film|coat|coats|deep|depth|crack|cracks|joint|joints|wide|size|long|short|cover|step|lip)$/;
/** Warmth that such work is done in. Common practice, no source; the product's own sheet rules. */
const WORKED_IN = { degC: [0, 45], degF: [30, 115] } as const;

/** "Can't glue under ten", "it has to be above twelve to paint": a bound on warmth, told by the work alone. */
function workable(room: Room, amount: Amount, unit: 'degC' | 'degF'): boolean {
  const [low, high] = WORKED_IN[unit];
  if (amount.value < low || amount.value > high || !Number.isInteger(amount.value)) return false;
  if (!/^(?:above|over|below|under|beneath)$/.test(wordAt(room, amount.from - 1))) return false;
  if (evidenceAfter(room, amount)) return false;
  const sentence = room.tokens[amount.from]?.sentence;
  const near = room.tokens
    .slice(Math.max(0, amount.from - 12), amount.to + 8)
    .filter((token) => token.sentence === sentence);
  if (near.some(({ word }) => OF_THICKNESS.test(word))) return false;
  const works = near.some(({ word }) => NEEDS_WARMTH.test(word));
  const bound = near.some(({ word }) =>
    /(?:n't$)|^(?:not|cannot|never|no|till|until|unless|if|when|once|while|must|has|needs|need|wants|want|should|have)$/.test(
      word,
    ),
  );
  return works && bound;
}

/** What a data sheet gives a time for. */
const GOES_BY = [
  'cure',
  'cures',
  'cured',
  'pot',
  'recoat',
  'overcoat',
  'coat',
  'dry',
  'dries',
  'tack',
  'set',
  'sets',
  'life',
  'harden',
  'hardens',
];

/** "Full cure is seven days at twenty", "recoat in four hours at 15": the warmth that a time of curing is given for. */
function atItsTime(room: Room, amount: Amount, out: readonly Amount[]): boolean {
  const last = out.at(-1);
  if (last?.dimension !== 'time' || wordAt(room, amount.from - 1) !== 'at' || amount.value > 100)
    return false;
  // "20 minutes pot life at 25".
  const apart = amount.from - 1 - last.to;
  if (apart > 3 || room.tokens[last.from]?.sentence !== room.tokens[amount.from]?.sentence) return false;
  if (evidenceAfter(room, amount)) return false;
  return GOES_BY.some((word) => nearWord(room, last, word));
}

const WHERE_AND_WHEN =
  'in here,in there,out here,outside,inside,in the shed,in the shop,in the workshop,in the garage,in the barn,tonight,this morning,this evening,last night,yesterday,at dawn,overnight,right now,today'.split(
    ',',
  );
const SAID_OF_AIR = "it 's,its,it is,is it,it was,it got to,it hit,we had,we got,we 're at".split(',');
const INSIDE = new PhraseTable<true>(
  WHERE_AND_WHEN.flatMap((place) => SAID_OF_AIR.map((said) => [`${place} ${said}`, true] as const)),
);
/** "In here it's eight": said of the air before the number. */
function asked(room: Room, amount: Amount): boolean {
  return (
    INSIDE.endingAt(room.tokens, amount.from) !== undefined &&
    amount.value < 120 &&
    /^(?:|[.,;!?]|now|today|and|but|so)$/.test(wordAt(room, amount.to))
  );
}

const ELSEWHERE =
  /^(?:outside|inside|outdoors|indoors|overnight|now|today|in|at|by|under|on|this|last|upstairs|downstairs|below|here|there)$/;

/** "Eleven degrees in the shed, nine outside": how warm it is in another place or at another time. */
export function warmElsewhere(room: Room, amount: Amount, last: Amount | undefined): Meaning | undefined {
  if (last?.dimension !== 'temperature' || !last.unit || amount.number.fraction) return undefined;
  if (!/^(?:,|and|but|only)$/.test(wordAt(room, amount.from - 1)) || !ELSEWHERE.test(wordAt(room, amount.to)))
    return undefined;
  if (Math.abs(amount.value - last.value) > 60) return undefined;
  return {
    value: amount.value,
    unit: last.unit,
    dimension: 'temperature',
    why: 'as warm as that, elsewhere',
  };
}
