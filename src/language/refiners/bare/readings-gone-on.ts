/** "The ground's at 24 percent. It's got to be below 18": a reading that goes on in the unit it was told in. */
import { type Amount, type Room, wordAt } from '../../rules/rule.ts';
import { evidenceAfter } from './evidence.ts';
import type { Meaning } from './lengths.ts';
import { close } from './neighbours.ts';

/** What changes by itself and is read again, so that people leave its unit away the second time. */
const READ_AGAIN = /^(?:ratio|temperature|pressure|voltage|current)$/;
/** What a reading is when it is read again, or what it should be. */
const MOST_TIMES = 2.5;

const SUBJECT = /^(?:it|that|they|these|those)$/;
/** All that may stand between the subject and its number: whatever else is said may be about another thing. */
const ON_THE_WAY =
  /^(?:'s|'re|'ve|'ll|is|are|was|were|be|been|got|get|gets|getting|has|have|had|to|must|needs?|wants?|should|will|would|can|went|goes|go|gone|came|comes?|coming|dropped|drops|fell|falls|climbed|climbs|rose|rises|reads?|reading|says|said|shows|showed|sits|stays|stayed|stood|hit|hits|now|still|only|just|about|around|nearly|under|below|above|over|past|at|least|most|no|more|less|than|down|up|back|well|not|today|yesterday|morning|this|in|the)$/;
const AFTER =
  /^(?:|[.,;:!?]|and|so|but|before|by|now|today|yesterday|this|when|already|again|if|or|first|for|until|till|then|last|overnight|tonight|with|without|instead|really|anyway)$/;
/** How many words may stand between the subject and the number. */
const WAY = 8;

/** The unit of the last figure where nothing but a pronoun and a verb lead to the number. */
export function goesOn(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const last = out.at(-1);
  if (!last?.unit || !last.dimension || last.unitAssumed || !READ_AGAIN.test(last.dimension))
    return undefined;
  if (amount.number.fraction || !close(last.value, amount.value, MOST_TIMES)) return undefined;
  const apart = (room.tokens[amount.from]?.sentence ?? 0) - (room.tokens[last.from]?.sentence ?? 0);
  if (apart > 1 || !AFTER.test(wordAt(room, amount.to)) || evidenceAfter(room, amount)) return undefined;
  const subject = subjectOf(room, amount.from);
  // In one sentence the subject comes after the figure that it goes on from.
  if (subject === undefined || subject < last.to) return undefined;
  const { unit, dimension } = last;
  return { value: amount.value, unit, dimension, why: 'a reading goes on in its unit' };
}

/** The pronoun that the number is said of, where it opens its clause. */
function subjectOf(room: Room, from: number): number | undefined {
  const sentence = room.tokens[from]?.sentence;
  for (let at = from - 1; at >= from - WAY && room.tokens[at]?.sentence === sentence; at--) {
    const word = wordAt(room, at);
    if (SUBJECT.test(word))
      return /^(?:|[.,;:!?—–-]|and|but|so|until|till|once|when|if|because|'cause|cos)$/.test(opener(room, at))
        ? at
        : undefined;
    if (!ON_THE_WAY.test(word)) return undefined;
  }
  return undefined;
}

/** The word before the subject, or nothing where a sentence begins with it. */
const opener = (room: Room, at: number) =>
  room.tokens[at - 1]?.sentence === room.tokens[at]?.sentence ? wordAt(room, at - 1) : '';
