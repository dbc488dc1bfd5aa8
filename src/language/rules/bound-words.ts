import { each, PhraseTable } from '../phrases.ts';

/**
 * What a hedge does: fixes a bound, or points up or down ("over", "wider than") until it is known whether
 * the sentence denies it.
 */
export type BoundCue =
  | 'at-least'
  | 'at-most'
  | 'about'
  | 'above'
  | 'below'
  | 'reaching'
  | 'neutral'
  | 'rough';

const UP =
  'better wider higher longer deeper thicker taller bigger larger greater heavier more warmer hotter faster further farther broader steeper stiffer harder stronger tighter wetter newer brighter fatter'.split(
    ' ',
  );
const DOWN =
  'narrower lower shorter shallower thinner smaller less fewer lighter colder cooler slower closer nearer drier dryer weaker finer cheaper looser'.split(
    ' ',
  );

/** "no lower", "not an ounce over": whether the words behind "no" point up or down. */
export function directionOf(word: string): 'up' | 'down' | undefined {
  if (UP.includes(word) || /^(?:over|more|above|beyond|past)$/.test(word)) return 'up';
  return DOWN.includes(word) || /^(?:under|less|below)$/.test(word) ? 'down' : undefined;
}

const than = (words: readonly string[], meaning: BoundCue): (readonly [string, BoundCue])[] =>
  words.flatMap((word) => [[`${word} than`, meaning] as const, [`${word} then`, meaning] as const]);

/** Phrases directly before a number. */
export const BEFORE_BOUND = new PhraseTable<BoundCue>([
  ...than(UP, 'above'),
  ...than(DOWN, 'below'),
  ...each<BoundCue>(
    'at-least',
    "at least, at the least, at the very least, at a minimum, a minimum of, minimum of, minimum, min, upwards of, not less than, no less than, never less than, nothing less than, no fewer than, not under, not below, never below, never under, as low as, no lower than, wants to clear, has to clear, needs to clear, must clear, got to clear, gotta clear, and up from, minimum is, minimum ’s, minimum 's, min is, has to beat, needs to beat",
  ),
  ...each<BoundCue>(
    'at-most',
    "not to pass, not pass, never pass, can't pass, won't pass, mustn't pass, must not pass, plumb to, level to, true to, flat to, straight to, at most, at the most, at the very most, a maximum of, maximum of, maximum, max, max of, no more than, not more than, never more than, nothing more than, not over, never over, not above, never above, not exceeding, not exceed, must not exceed, never exceed, within, inside, to within, keep within, kept within, a limit of, limit of, limit is, limit 's, limit ’s, limited to, limits it to, limit it to, limits you to, limits me to, limits us to, capped at, cap of, a cap of, ceiling of, no higher than, maximum is, maximum 's, max is, max 's, or under, not past, never past, no greater than, no worse than, as much as, as many as, rated to, rated for, rated at, rated up to, rated, rating is, rating of, rating 's, plated for, plated at, stamped for, stamped at, certified for, certified to, approved for, passed for, good for, good to, safe to, only good for, law says, allowed, only allowed, allowance is, don't exceed, doesn't exceed, can't exceed, won't exceed, mustn't exceed, shouldn't exceed",
  ),
  ...each<BoundCue>(
    'about',
    "plus minus, plus or minus, plus / minus, circa, ca, right at, right around, about, around, roughly, approximately, approx, circa, some, nearly, almost, nigh on, near enough, near as dammit, close to, near to, getting on for, knocking on, pushing, approaching, coming up on, the best part of, best part of, something like, somewhere round, somewhere around, somewhere near, somewhere about, in the region of, region of, of the order of, in the order of, order of, more like, nearer, closer to, nearer to, maybe, perhaps, probably, give or take, ballpark, in the ballpark of, just shy of, shy of, a hair shy of, a touch shy of, just short of, a shade under, a touch under, just under, a hair under, a bit under, a bit less than, a little under, slightly under, a whisker under, a tad under, a smidge under, a gnat 's under, not quite, not far off, not far short of, a touch over, just over, a hair over, a bit over, a bit more than, a little over, slightly over, a shade over, a tad over, a whisker over, a smidge over, just above, just below, slightly above, slightly below, barely over, barely under, a good, a strong, a full, a generous, a fat, a bare, a scant, bare, scant, well-nigh, thereabouts, estimated at, i guess, guessing, i 'd guess, looks like, looks about, eyeballing it at, i reckon",
  ),
  ...each<BoundCue>('rough', 'call it, call it about, call that, make it about, call them'),
  ...each<BoundCue>(
    'above',
    'over, above, north of, past, beyond, in excess of, exceed, exceeds, exceeding, upward of, well over, way over, any over',
  ),
  ...each<BoundCue>(
    'below',
    'under, below, beneath, south of, short of, down below, well under, way under, any under',
  ),
  ...each<BoundCue>('reaching', 'up to, anything up to'),
  ...each<BoundCue>(
    'neutral',
    'exactly, precisely, dead, bang on, spot on, only, just, still, now, even, a, an, the, another, a whole, whole, flat, to, at, of, be, is, are, was, than, as, actually, really, now at, back to, its, their, my, that, this, same, all of, a solid, solid, a straight, it at, it, by, for',
  ),
]);

/** Phrases directly behind an amount, or behind its word of size. */
export const AFTER_BOUND = new PhraseTable<BoundCue>([
  ...each<BoundCue>(
    'at-least',
    'minimum, min, at least, at the least, at the very least, or more, or better, or over, or above, or bigger, or wider, or higher, or longer, or deeper, or thicker, or heavier, or warmer, and up, and upwards, and over, and above, plus, nothing less, no less, never less, as a minimum, at a minimum, or warmer, and not less, and no less, and never less, or nothing',
  ),
  ...each<BoundCue>(
    'at-most',
    "maximum, max, tops, at most, at the most, at the very most, or less, or under, or below, or fewer, or smaller, or thinner, or narrower, or lighter, or cooler, no more, nothing more, never more, and no more, and not more, and never more, as a maximum, at the outside, at a push, and under, and below, at the limit, is the limit, is the max, is the maximum, is my limit, not a gram over, not a mil over, not a millimetre more, not a mil more, is as much as, is as far as, is all i 've got, is all they 're good for, is all it 's good for, is all it 'll take, is all it will take, is all it takes, is all it 'll carry, is all it can take, is all that fits, is all you get, he 's good for, it 's good for, she 's good for, they 're good for, is all they allow, is all it holds",
  ),
  ...each<BoundCue>(
    'about',
    "or so, ish, - ish, odd, - odd, or thereabouts, thereabouts, roughly, nearly, near enough, give or take, more or less, approx, approximately, ballpark, strong, shy, light, heavy, full, bare, scant, and a bit, and a hair, and a tad, and a smidge, and a touch, and change, plus a bit, a bit under, a bit over, a touch under, a touch over, or close to it, at a guess, i guess, if that, i 'd guess, i 'd say, by eye",
  ),
]);

/** Words of denial: "no machine over 400", "don't want anything over 6 foot". */
export const DENIAL =
  /^(?:no|not|never|nothing|nowt|nobody|none|without|neither|nor|nowhere|hardly|avoid|avoids|cannot|refuse|refuses|forbid|forbids|prevent|prevents|stop|stops|ain't|dont|cant|wont|doesnt|didnt|isnt|aint|shouldnt|mustnt|\p{L}+n't)$/u;

/** "anything over 85 degrees and it skins": what lies beyond is the trouble. */
export const WHATEVER = /^(?:anything|anyone|anybody|whatever|everything|any)$/;
