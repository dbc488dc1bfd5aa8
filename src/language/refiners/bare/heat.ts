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
    'in here, in there, outside, out there, this morning, last night, overnight, right now, in the shop, in the shed, in the garage, in the workshop, in the barn, in the sun, in the shade, under this tarp, today, tonight, first thing, at night, by noon, by lunch, by midday, out here, in the tent, degrees',
  ),
);
const HEAT_SUBJECT = /^(?:it|outside|inside|thermometer|temperature|temp|shop|shed|workshop|room|air)$/;

/** A bare number as a temperature: told by its place and time, by the work that it bounds, or beside a time of curing. */
export function asHeat(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (amount.value < -30 || amount.value > 130 || amount.number.fraction) return undefined;
  const unit: 'degC' | 'degF' =
    room.region === 'US' || (room.region === '' && room.house === 'us') ? 'degF' : 'degC';
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
  if (workable(room, amount, unit))
    return { value: amount.value, unit, dimension: 'temperature', why: 'how warm it must be for the work' };
  if (forecast) return { value: amount.value, unit, dimension: 'temperature', why: 'how warm it must be' };
  if (!verb || !((here && (subject || warm)) || (warm && subject && !evidenceAfter(room, amount))))
    return undefined;
  return { value: amount.value, unit, dimension: 'temperature', why: 'how warm it is somewhere' };
}

/** Work that needs warmth or shade: its stuff and what it does. */
const NEEDS_WARMTH =
  /^(?:paint|painting|painted|varnish|varnishing|glue|gluing|glueing|epoxy|resin|laminate|laminating|pour|pouring|cure|cures|curing|kick|kicks|spray|spraying|foam|foaming|mix|mixing|prime|priming|primer|plaster|plastering|render|rendering|limewash|mortar|concrete|lime|sealant|set|sets|harden|hardens|adhesive|topcoat|gelcoat|fibreglass|fiberglass|glass|glassing)$/;
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
