/** Words that hold a number and a unit and tell nothing of the build. Common practice, no source. */
import { readNumber } from '../numbers/read-number.ts';
import { readUnit } from '../units/read-unit.ts';
import type { AmountRule, NotQuantity, Room } from './rule.ts';
import { wordAt } from './rule.ts';

const near = (room: Room, at: number, reach: number, words: RegExp): boolean => {
  for (let back = 1; back <= reach; back++) {
    if (room.tokens[at - back]?.sentence !== room.tokens[at]?.sentence) return false;
    if (words.test(wordAt(room, at - back))) return true;
  }
  return false;
};

/** "On its own two feet", "before a foot goes on it", "not a foot on that deck": feet that people stand on. */
function feetOfPeople(room: Room, at: number): NotQuantity | undefined {
  const why = 'feet that stand, and no length';
  if (
    /^(?:two|2)$/.test(wordAt(room, at)) &&
    wordAt(room, at + 1) === 'feet' &&
    wordAt(room, at - 1) === 'own'
  )
    return { to: at + 2, why };
  if (wordAt(room, at) !== 'a' || wordAt(room, at + 1) !== 'foot') return undefined;
  const next = wordAt(room, at + 2);
  const steps = /^(?:goes|went|go|steps|lands|treads|touches|sets)$/.test(next);
  const placed =
    /^(?:on|in|through|near|inside)$/.test(next) &&
    near(room, at, 4, /^(?:not|set|sets|setting|put|puts|putting|without|before|nor|never)$/);
  return steps || placed ? { to: at + 2, why } : undefined;
}

const PUB =
  /^(?:buy|buys|buying|bought|owe|owes|owed|stand|stands|stood|fancy|earned|deserve|deserves|sink|sank|down|drink|drank|promised|for|over|after)$/;

/** "Buying him a pint", "I owe you a pint". */
function aPint(room: Room, at: number): NotQuantity | undefined {
  if (wordAt(room, at) !== 'a' || wordAt(room, at + 1) !== 'pint') return undefined;
  if (
    /^(?:of|and|to|per)$/.test(wordAt(room, at + 2)) &&
    !/^(?:beer|bitter|stout|cider|lager|ale)$/.test(wordAt(room, at + 3))
  )
    return undefined;
  return near(room, at, 4, PUB) ? { to: at + 2, why: 'a drink' } : undefined;
}

/** What may stand behind a thousand of money; before anything else a grand thing is meant. */
const BEHIND_MONEY =
  /^(?:|[.,;:!?]|for|and|but|so|all|plus|on|to|with|in|at|a|an|each|off|or|if|it|that|i|he|she|they|now|cash|the|delivered|less|more|worth|before|by|from|is|was|of)$/;

/** "A grand piece of work": no thousand. */
function grandThing(room: Room, at: number): NotQuantity | undefined {
  if (wordAt(room, at) !== 'a' || wordAt(room, at + 1) !== 'grand') return undefined;
  const next = wordAt(room, at + 2);
  if (BEHIND_MONEY.test(next) || readNumber(room.tokens, at + 2)) return undefined;
  return { to: at + 2, why: 'a grand thing, and no money' };
}

/** Words of size behind one millimetre that is written with two l's. */
const SIZE_OF_A_MILL =
  /^(?:thick|off|or|gap|too|out|over|under|each|either|proud|short|shy|more|less|wide|deep|bigger|smaller|per|all|at|a|clear|clearance|tight|loose)$/;

/** "The foot of a mill", "two boards to mill": a building or a deed. */
function aMill(room: Room, at: number): NotQuantity | undefined {
  const next = wordAt(room, at + 2);
  if (wordAt(room, at + 1) !== 'mill' || SIZE_OF_A_MILL.test(next)) return undefined;
  if (next === 'and' && /^(?:a|an|half)$/.test(wordAt(room, at + 3))) return undefined;
  if (/^(?:to|too)$/.test(wordAt(room, at)) && room.tokens[at - 1]?.kind === 'word')
    return { to: at + 2, why: 'a deed, and no millimetres' };
  return wordAt(room, at) === 'a' && !/^(?:by|about|only|within|under|over|than)$/.test(wordAt(room, at - 1))
    ? { to: at + 2, why: 'a mill, and no millimetre' }
    : undefined;
}

const KIND = /^(?:jobs|jobbies|affairs|efforts|gauge|scale)$/;

const withKinds = new WeakMap<Room, boolean>();

/** Whether a text has any word for a kind: most have none, and then no number needs to be read for it. */
function hasKind(room: Room): boolean {
  let found = withKinds.get(room);
  if (found === undefined) {
    found = room.tokens.some((token) => token.kind === 'word' && KIND.test(token.word));
    withKinds.set(room, found);
  }
  return found;
}

/** "One of those 12 volt jobs", "two foot gauge", "fifteen mil scale": a kind of thing, a track or a model. */
function kindOfThing(room: Room, at: number): NotQuantity | undefined {
  const number = hasKind(room) ? readNumber(room.tokens, at) : undefined;
  const unit = number && readUnit(room.tokens, number.to);
  if (!number || !unit) return undefined;
  const hyphen = wordAt(room, unit.to) === '-' ? 1 : 0;
  const word = wordAt(room, unit.to + hyphen);
  if (!KIND.test(word)) return undefined;
  // "A six foot scale rule", "the 12 volt job's done".
  const ofTrack = word === 'gauge' && /^(?:ft|in|mm|mil)$/.test(unit.key);
  const ofModel = word === 'scale' && /^(?:mm|mil|in|ft)$/.test(unit.key);
  const isKind = /s$/.test(word) && near(room, at, 3, /^(?:those|these|them|your|the)$/);
  return ofTrack || ofModel || isKind
    ? { to: unit.to + hyphen + 1, why: `"${word}" makes it a kind of thing` }
    : undefined;
}

/** "In what will one day be a kitchen", "when we get a day": time that nothing is measured by. */
function someDay(room: Room, at: number): NotQuantity | undefined {
  if (wordAt(room, at + 1) !== 'day') return undefined;
  const why = 'some day';
  if (wordAt(room, at) === 'one' && /^(?:be|i|we|she|he|it|they|when|there|,)$/.test(wordAt(room, at + 2)))
    return { to: at + 2, why };
  if (wordAt(room, at) !== 'a' || !/^(?:get|got|had|have|'ve|find|spare|take)$/.test(wordAt(room, at - 1)))
    return undefined;
  return near(room, at, 3, /^(?:i|we|you|he|they)$/) ? { to: at + 2, why: 'a day of work' } : undefined;
}

/** Words that a manner of speaking begins with, kinds of things aside. */
const BEGINS: ReadonlySet<string> = new Set(['a', 'one', 'two', 'to', 'too']);

const MANNERS = [feetOfPeople, aPint, grandThing, aMill, someDay, kindOfThing];

/** Figures of speech, told by the words beside them. */
export const mannersOfSpeaking: AmountRule = {
  name: 'a manner of speaking',
  read(room, at) {
    const token = room.tokens[at];
    if (token?.kind === 'word' && !BEGINS.has(token.word)) {
      const skip = kindOfThing(room, at);
      return skip && { skip };
    }
    for (const manner of MANNERS) {
      const skip = manner(room, at);
      if (skip) return { skip };
    }
    return undefined;
  },
};
