import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';

/** Words that only lead up to it. */
const LEAD = '(?:no|nope|nah|naw|sorry|er|um|uh|oh|oops|whoops|wait|actually|hang on|hold on)';
/** "Scratch that" with nothing behind it: what is to hold instead is not said in the same breath. */
const ORDER = '(?:scratch|strike|forget|ignore) (?:that|that one|that last one|the last one)(?: please)?';
const WHOLE = new RegExp(`^(?:${LEAD} )*${ORDER}$`);
const AT_END = new RegExp(`(?:^| )(${ORDER})$`);
const ONLY_LEAD = new RegExp(`^${LEAD}(?: ${LEAD})*$`);
/** No way of taking back has more words. */
const MOST_WORDS = 12;

/** What a sentence has to say of this, found once for all of its figures. */
interface Sentence {
  /** Where the order at its end begins, as a token. */
  readonly orderAt?: number;
  /** It holds nothing but the order, or but what leads up to one. */
  readonly isOrder: boolean;
  readonly isLead: boolean;
  /** The first token behind it. */
  readonly next: number;
}

/** The sentences of the talk by their number; of a long one only the end is looked at. */
function sentencesOf(room: Room): ReadonlyMap<number, Sentence> {
  const found = new Map<number, Sentence>();
  for (let first = 0; first < room.tokens.length; ) {
    const number = room.tokens[first]?.sentence ?? 0;
    let next = first;
    while (next < room.tokens.length && room.tokens[next]?.sentence === number) next++;
    found.set(number, sentenceAt(room, first, next));
    first = next;
  }
  return found;
}

/** The sentence of the tokens from `first` up to `next`. */
function sentenceAt(room: Room, first: number, next: number): Sentence {
  const places: number[] = [];
  for (let at = next - 1; at >= first && places.length <= MOST_WORDS; at--)
    if (/[\p{L}\p{N}]/u.test(wordAt(room, at))) places.unshift(at);
  const words = places.map((at) => wordAt(room, at)).join(' ');
  const isWhole = places.length <= MOST_WORDS;
  const order = AT_END.exec(words)?.[1];
  const orderAt = order === undefined ? undefined : places.at(-order.split(' ').length);
  return {
    ...(orderAt === undefined ? {} : { orderAt }),
    isOrder: isWhole && WHOLE.test(words),
    isLead: isWhole && ONLY_LEAD.test(words),
    next,
  };
}

/** Whether the sentence that holds the amount is taken back at its own end, or by the one behind it. */
function isTakenBack(room: Room, sentences: ReadonlyMap<number, Sentence>, amount: Amount): boolean {
  const at = (token: number) => sentences.get(room.tokens[token]?.sentence ?? -1);
  // An amount may take the stop of its sentence along.
  const own = at(amount.to - 1);
  if (!own) return false;
  if (own.orderAt !== undefined && own.orderAt >= amount.to) return true;
  const behind = at(own.next);
  // A recogniser may part "No." from "Scratch that."
  return (behind?.isLead ? at(behind.next) : behind)?.isOrder === true;
}

/**
 * "The locker is 18 mm deep. No, scratch that.": the figures of that sentence were never meant. Known gap: tasks and
 * decisions that are taken back so stay ("I need to oil it. Scratch that.").
 */
export const takenBack: Refiner = {
  name: 'taken back in the next breath',
  refine: (amounts, room) => {
    const sentences = sentencesOf(room);
    return amounts.filter((amount) => {
      if (!isTakenBack(room, sentences, amount)) return true;
      room.note({
        ...amount,
        stage: 'refine',
        rule: takenBack.name,
        outcome: 'dropped',
        why: 'taken back: "scratch that"',
      });
      return false;
    });
  },
};
