import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';

/** Words that only lead up to it. */
const LEAD = '(?:no|nope|nah|naw|sorry|er|um|uh|oh|oops|whoops|wait|actually|hang on|hold on)';
/** "Scratch that" with nothing behind it: what is to hold instead is not said in the same breath. */
const ORDER = '(?:scratch|strike|forget|ignore) (?:that|that one|that last one|the last one)(?: please)?';
const WHOLE = new RegExp(`^(?:${LEAD} )*${ORDER}$`);
const AT_END = new RegExp(`(?:^| )${ORDER}$`);
const ONLY_LEAD = new RegExp(`^${LEAD}(?: ${LEAD})*$`);

/** The words of a sentence from a token on, without its marks, and where the next one begins. */
function sentenceFrom(room: Room, from: number): { readonly words: string; readonly next: number } {
  const sentence = room.tokens[from]?.sentence;
  const words: string[] = [];
  let at = from;
  for (; at < room.tokens.length && room.tokens[at]?.sentence === sentence; at++) {
    const word = wordAt(room, at);
    if (/[\p{L}\p{N}]/u.test(word)) words.push(word);
  }
  return { words: words.join(' '), next: at };
}

/** Whether the sentence that holds the amount is taken back at its own end, or by the one behind it. */
function isTakenBack(room: Room, amount: Amount): boolean {
  const own = sentenceFrom(room, amount.to);
  const isSame = room.tokens[amount.to]?.sentence === room.tokens[amount.from]?.sentence;
  if (isSame && AT_END.test(own.words)) return true;
  let { words, next } = sentenceFrom(room, isSame ? own.next : amount.to);
  // A recogniser may part "No." from "Scratch that."
  if (ONLY_LEAD.test(words)) ({ words, next } = sentenceFrom(room, next));
  return WHOLE.test(words);
}

/**
 * "The locker is 18 mm deep. No, scratch that.": the figures of that sentence were never meant. Known gap: tasks and
 * decisions that are taken back so stay ("I need to oil it. Scratch that.").
 */
export const takenBack: Refiner = {
  name: 'taken back in the next breath',
  refine: (amounts, room) =>
    amounts.filter((amount) => {
      if (!isTakenBack(room, amount)) return true;
      room.note({
        ...amount,
        stage: 'refine',
        rule: takenBack.name,
        outcome: 'dropped',
        why: 'taken back: "scratch that"',
      });
      return false;
    }),
};
