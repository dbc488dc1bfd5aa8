import { each, PhraseTable } from '../phrases.ts';
import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';

/** Openings of a supposition: what follows in the sentence is not so. */
const SUPPOSED = new PhraseTable<string>([
  ...each(
    'supposed, not so',
    "if it was, if it were, if it 'd, if it had, if i was, if i were, if she was, if she were, if he was, if he were, if they were, if they was, if you was, if i 'd, if i had, if we 'd, if we had, if we were, if you 'd, if you had, if they 'd, if they had, if that was, if that were, if he 'd, if she 'd, if only, if there was, if there were, if this was, if this were, had i, what if, suppose, supposing, imagine, let 's say, let ’s say, pretend, even if it was, i wish, in an ideal world, in a perfect world, were it",
  ),
]);

/** Verbs of a supposed outcome: "a monsoon shower would need a 28". */
const SUPPOSED_VERB = /^(?:would|wouldn't|would've|could've|might've|should've)$/;
/** After these the supposition is a polite wish or a plan and counts: "I would like it at 900". */
const WISH = /^(?:like|prefer|rather|say|suggest|recommend|want|go)$/;

/** Words that begin a sentence's next part, where a supposition in front of it ends. */
const NEW_PART = /^(?:but|so|because|anyway|though|except)$/;

const SAY = new PhraseTable<string>(
  each(
    'said for the sake of argument',
    'say, let us say, call it say, say about, say a, call it a, for example, for instance, e.g',
  ),
);

function sentenceStart(room: Room, at: number): number {
  const sentence = room.tokens[at]?.sentence;
  let start = at;
  while (start > 0 && at - start < 40 && room.tokens[start - 1]?.sentence === sentence) start--;
  return start;
}

/** Why the amount is only supposed, or undefined when it is said as so. */
function supposed(room: Room, amount: Amount): string | undefined {
  const start = sentenceStart(room, amount.from);
  for (let index = amount.from - 1; index >= start; index--) {
    const word = wordAt(room, index);
    if (NEW_PART.test(word)) return undefined;
    const hit = SUPPOSED.startingAt(room.tokens, index);
    if (hit) return hit.meaning;
    if (
      SUPPOSED_VERB.test(word) ||
      (word === "'d" && /^(?:need|have|be|want|take)$/.test(wordAt(room, index + 1)))
    ) {
      if (WISH.test(wordAt(room, index + 1)) || !unbrokenTo(room, index, amount.from)) continue;
      if (word === "'d" && !/^(?:be|have)$/.test(wordAt(room, index + 1))) continue;
      return 'what would be, not what is';
    }
  }
  if (supposedThing(room, amount, start)) return 'supposed, not so';
  return suppositionBehind(room, amount);
}

function unbrokenTo(room: Room, from: number, to: number): boolean {
  for (let index = from; index < to; index++) if (/^[,;:.]$/.test(wordAt(room, index))) return false;
  return to - from <= 7;
}

/** "If the ridge was at six metres I'd have a gallery": a thing supposed, and what would be. */
function supposedThing(room: Room, amount: Amount, start: number): boolean {
  let at = amount.from - 1;
  while (at > start && wordAt(room, at) !== 'if') at--;
  if (wordAt(room, at) !== 'if' || amount.from - at > 9) return false;
  const was = [2, 3, 4, 5].some(
    (step) => at + step < amount.from && /^(?:was|were|had|came)$/.test(wordAt(room, at + step)),
  );
  const sentence = room.tokens[amount.from]?.sentence;
  for (
    let index = amount.to;
    was && index < amount.to + 8 && room.tokens[index]?.sentence === sentence;
    index++
  )
    if (/^(?:'d|would|could|wouldn't)$/.test(wordAt(room, index))) return true;
  return false;
}

/** "I'd be at 1.8 if I'd gone deeper": the supposition follows. */
function suppositionBehind(room: Room, amount: Amount): string | undefined {
  const sentence = room.tokens[amount.from]?.sentence;
  if (!/^(?:would|'d|could)$/.test(wordAt(room, amount.from - 3) + wordAt(room, amount.from - 2)))
    return undefined;
  for (let index = amount.to; index < amount.to + 10; index++) {
    if (room.tokens[index]?.sentence !== sentence) return undefined;
    const hit = SUPPOSED.startingAt(room.tokens, index);
    if (hit) return hit.meaning;
  }
  return undefined;
}

/** People outside the build who give advice; their numbers are talk until the speaker takes them up. */
const OUTSIDER =
  /^(?:comments|comment|viewer|viewers|commenter|somebody|someone|everybody|everyone|people|internet|forum)$/;

const SHOULD = /^(?:should|ought|oughta|could|shoulda)$/;
const THINKS = /^(?:thinks|reckons|figures|says|said|told|tells|reckoned|figured|insists)$/;

/** "Paul thinks I should've gone to two hundred", "a fella told me to go 3,600": what another would do. */
function thinksWeShould(room: Room, amount: Amount, start: number): boolean {
  for (let index = Math.max(start, amount.from - 12); index < amount.from; index++) {
    if (!THINKS.test(wordAt(room, index))) continue;
    if (/^(?:i|we|you)$/.test(wordAt(room, index - 1))) continue;
    const [first, second, third] = [1, 2, 3].map((step) => wordAt(room, index + step));
    if (/^(?:i|we|you)$/.test(first ?? '') && SHOULD.test(second ?? '')) return true;
    if (
      /^(?:me|us)$/.test(first ?? '') &&
      second === 'to' &&
      /^(?:go|use|get|buy|make|put|run|try)$/.test(third ?? '')
    )
      return true;
  }
  return false;
}

function advice(room: Room, amount: Amount): boolean {
  const start = sentenceStart(room, amount.from);
  if (thinksWeShould(room, amount, start)) return true;
  let outsider = false;
  for (let index = start; index < amount.from; index++) {
    const word = wordAt(room, index);
    if (OUTSIDER.test(word)) outsider = true;
    if (!outsider) continue;
    if (SHOULD.test(word) && /^(?:i|we|you)$/.test(wordAt(room, index - 1))) return true;
    if (
      /^(?:suggested|suggests|wants|wanted)$/.test(word) &&
      !/^(?:how|what|whether|if|about)$/.test(wordAt(room, index + 1))
    ) {
      return index + 5 >= amount.from;
    }
  }
  return false;
}

/** "if it was 600", "say nine hundred", "would need a 28", a viewer's "you should knock 100 off". */
export const unreal: Refiner = {
  name: 'supposed, or said for the sake of argument',
  refine(amounts, room) {
    return amounts.filter((amount) => {
      const why =
        supposed(room, amount) ??
        sakeOfArgument(room, amount) ??
        (advice(room, amount) ? "somebody's advice, not a figure of the build" : undefined);
      if (!why) return true;
      room.note({ ...amount, stage: 'refine', rule: unreal.name, outcome: 'dropped', why });
      return false;
    });
  },
};

/** "say nine hundred". "I'd say", "they say" and "says" report a figure and are left alone. */
function sakeOfArgument(room: Room, amount: Amount): string | undefined {
  const hit = SAY.endingAt(room.tokens, amount.from);
  if (!hit) return undefined;
  const before = wordAt(room, hit.from - 1);
  if (
    /^(?:'d|i|they|to|would|people|you|instructions|rules|regs|books|calipers|plans|drawings)$/.test(before)
  )
    return undefined;
  if (/s$/.test(before) && before.length > 3) return undefined;
  return hit.meaning;
}
