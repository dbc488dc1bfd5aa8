import type { Amount, Room } from '../../rules/rule.ts';
import { wordAt } from '../../rules/rule.ts';
import { SIZE_AFTER } from '../../rules/size-words.ts';
import { type Evidence, SHEET_STUFF } from './evidence.ts';
import { close, lastWithUnit } from './neighbours.ts';

const PLACES =
  /^(?:on|in|at|for|under|over|behind|above|below|across|round|around|along|through|inside|outside|between|by|with|from|front|rear|up)$/;
const JOINS = /^(?:,|and|but|then)$/;

/** Behind the words that say which size: "at the bottom" of "600 wide at the bottom". */
const behind = (room: Room, amount: Amount) => SIZE_AFTER.startingAt(room.tokens, amount.to)?.to ?? amount.to;

/**
 * "25 on the walls, 50 in the roof", "eighty on the lugs, twenty five on the pan bolts": the second half of a
 * contrast leaves out what the first half said, so that its number measures the same.
 */
export function contrasted(room: Room, amount: Amount, out: readonly Amount[]): Evidence | undefined {
  if (amount.number.loose) return undefined;
  const last = lastWithUnit(room, out, amount, 0);
  if (!last || last.dimension === 'time') return undefined;
  if (followsOn(room, amount, last)) return { grade: 'sure', why: 'a like number, held otherwise' };
  const hundredths = last.unit === 'm' && amount.number.splitAfter === 1 && amount.value >= 100;
  if (!close(last.value, hundredths ? amount.value / 100 : amount.value, 5)) return undefined;
  if (!JOINS.test(wordAt(room, amount.from - 1)) || amount.from - last.to > 12) return undefined;
  // "Six mil ply on the sides, nine on the floor": the stuff is said once.
  const stuff = SHEET_STUFF.test(wordAt(room, behind(room, last))) ? 1 : 0;
  const [first, second] = [wordAt(room, behind(room, last) + stuff), wordAt(room, amount.to)];
  // "four metres twenty one way and three sixty the other".
  const other = second === 'the' && wordAt(room, behind(room, amount) + 1) === 'other';
  const placed = other || (PLACES.test(first) && PLACES.test(second));
  if (!placed) return undefined;
  return { grade: 'sure', why: `as "${room.tokens[last.from]?.text ?? ''}" before it` };
}

/** Words that say when or where a second number holds. */
const OTHERWISE =
  /^(?:usable|useable|flat|max|maximum|min|minimum|peak|net|gross|empty|full|wet|dry|loaded|unladen|idle|idling|bare|finished|tops|total|when|once|if|with|without|at|on|in|by|under|over|inside|outside|near|towards|toward|where|before|after)$/;

/**
 * "Purlins at nine hundred, nine hundred and fifty at the ends", "two thousand litres, fifteen hundred usable": a like
 * number directly behind the pause holds somewhere else, or otherwise.
 */
export function followsOn(room: Room, amount: Amount, last: Amount | undefined): boolean {
  if (!last?.unit || last.dimension === 'time' || last.dimension === 'money' || amount.number.loose)
    return false;
  if (behind(room, last) !== amount.from - 1 || wordAt(room, amount.from - 1) !== ',') return false;
  return close(last.value, amount.value, 3) && OTHERWISE.test(wordAt(room, amount.to));
}

const NOT_NAMED =
  /^(?:,|\.|;|:|and|but|or|so|then|is|was|are|were|'s|the|a|an|i|we|you|he|she|they|it|of|to|by|for|with)$/;

/**
 * "five mil plate, baseplate ten", "nuts 45, studs 20": a thing and its number behind a pause, the verb left out.
 * Answers the tokens between the pause and the number.
 */
export function namedAfterPause(room: Room, amount: Amount): number | undefined {
  if (!/^(?:|[.,;:!?]|and|but|so)$/.test(wordAt(room, amount.to))) return undefined;
  for (let words = 0; words < 4; words++) {
    const word = wordAt(room, amount.from - 1 - words);
    if (/^(?:,|;|and)$/.test(word)) return words > 0 ? words : undefined;
    const article = words > 0 && /^(?:the|a|an|my|its|another)$/.test(word);
    if (!article && (NOT_NAMED.test(word) || room.tokens[amount.from - 1 - words]?.kind !== 'word'))
      return undefined;
  }
  return undefined;
}
