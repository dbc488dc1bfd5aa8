import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';
import { EACH_AFTER, SIZE_AFTER } from '../rules/size-words.ts';

const MARK = /^(?:,|\.+|-|–|…|!|;|:)$/;
/** Words that may stand between a number and the same number once more: "eighteen, sir, eighteen". */
const BETWEEN =
  /^(?:yes|yep|aye|yeah|sir|mate|folks|lads|that's|i|said|say|mind|only|just|not|on|that|it|this|really|it's|honest)$/;
/** How far off the second may stand where it closes its part of the sentence. */
const FAR = 6;
const DIGITS: ReadonlyMap<string, string> = new Map(
  'zero one two three four five six seven eight nine'.split(' ').map((word, digit) => [word, String(digit)]),
);
const NOUGHT = /^(?:oh|o|nought|zero|nil)$/;

const ends = (room: Room, at: number) => /^(?:|[.,;:!?]|\.+|…)$/.test(wordAt(room, at));

/** "three nought", "four five oh": the figures of a number one by one, as they are written. */
function spelled(room: Room, amount: Amount): string | undefined {
  const size = amount.to - amount.from;
  if (size < 2 || size > 5) return undefined;
  let digits = '';
  for (let at = amount.from; at < amount.to; at++) {
    const word = wordAt(room, at);
    const digit = NOUGHT.test(word) ? '0' : DIGITS.get(word);
    if (digit === undefined) return undefined;
    digits += digit;
  }
  return digits;
}

/** Whether only pauses and words that weigh a number stand between two amounts. */
function isPause(room: Room, first: Amount, second: Amount): boolean {
  const gap = room.tokens.slice(first.to, second.from);
  return (
    gap.length > 0 &&
    gap.length <= 4 &&
    gap.some(({ word }) => MARK.test(word)) &&
    gap.every(({ word }) => MARK.test(word) || BETWEEN.test(word))
  );
}

/** "…a seven inch drum, seven inch, off an old one": alone between two pauses, in the same sentence. */
function isAlone(room: Room, first: Amount, second: Amount): boolean {
  return (
    wordAt(room, second.from - 1) === ',' &&
    ends(room, second.to) &&
    second.from - first.to <= FAR &&
    room.tokens[first.from]?.sentence === room.tokens[second.from]?.sentence
  );
}

const fits = (first: Amount, second: Amount) => !first.unit || !second.unit || first.unit === second.unit;

/** Where the second number says the first one over: which of the two is the better told. */
function saidOver(room: Room, first: Amount, second: Amount): 'first' | 'second' | undefined {
  if (first.group || second.group || first.number.loose || first.article) return undefined;
  const near = second.from - first.to <= 4 && ends(room, second.to) && isPause(room, first, second);
  if (near && !second.unit && spelled(room, second) === String(first.number.value)) return 'first';
  if (
    isPause(room, first, second) &&
    spelled(room, first) === String(second.number.value) &&
    first.to - first.from > second.to - second.from - 1 &&
    first.rule !== '<number> <unit>'
  )
    return 'second';
  if (first.number.value !== second.number.value || !fits(first, second)) return undefined;
  // "600, 600, 450" is a row of sizes.
  if (!isPause(room, first, second) && !isAlone(room, first, second)) return undefined;
  // "Four wide, four high": two sizes.
  const sized = SIZE_AFTER.startingAt(room.tokens, second.to) !== undefined;
  if (sized && SIZE_AFTER.startingAt(room.tokens, first.to)) return undefined;
  if (!first.unit && !second.unit && !isAlone(room, first, second) && !ends(room, second.to))
    return sized ? 'second' : undefined;
  return !first.unit && (second.unit || sized) ? 'second' : 'first';
}

const bareRow = (room: Room, amount: Amount | undefined, at: number) =>
  amount !== undefined && !amount.unit && Math.abs(amount.from - at) <= 2 && wordAt(room, at) === ',';

/** "It's seven days, seven", "a thirty litre one, thirty, three nought": a number said over is one figure. */
export const saidAgain: Refiner = {
  name: 'a number said over',
  refine(amounts, room) {
    const out: Amount[] = [];
    for (const [index, amount] of amounts.entries()) {
      const first = out.at(-1);
      const better = first && saidOver(room, first, amount);
      // A row of bare numbers is a row of sizes.
      const isRow =
        better &&
        !first.unit &&
        !amount.unit &&
        (bareRow(room, amounts[index + 1], amount.to) || out.at(-2)?.to === first.from - 1) &&
        spelled(room, amount) === undefined;
      if (!better || isRow) {
        out.push(amount);
        continue;
      }
      const dropped = better === 'first' ? amount : first;
      if (better === 'second') out[out.length - 1] = amount;
      room.note({
        ...dropped,
        stage: 'refine',
        rule: saidAgain.name,
        outcome: 'dropped',
        why: 'the same number once more',
      });
    }
    return out;
  },
};

const SAME = /^(?:same|usual)$/;
const EACH_SO = /^(?:each|a|either|both|all|at|every|per)$/;

/** "Same half inch each end, so 86": the allowance that was told before, and no new figure. */
export const sameAllowance: Refiner = {
  name: 'an allowance told before',
  refine(amounts, room) {
    const known = new Set((room.context.knownFigures ?? []).map(({ value }) => value));
    const seen = new Set<number>();
    return amounts.filter((amount) => {
      const isSame =
        SAME.test(wordAt(room, amount.from - 1)) ||
        (/^an?$/.test(wordAt(room, amount.from)) && SAME.test(wordAt(room, amount.from - 1)));
      const isKnown = seen.has(amount.value) || known.has(amount.value);
      seen.add(amount.value);
      if (!isSame || amount.group || amount.role === 'count') return true;
      const told = EACH_AFTER.startingAt(room.tokens, amount.to) !== undefined;
      if (!isKnown || !(told || EACH_SO.test(wordAt(room, amount.to)))) return true;
      room.note({
        ...amount,
        stage: 'refine',
        rule: sameAllowance.name,
        outcome: 'dropped',
        why: 'the same as was told before',
      });
      return false;
    });
  },
};
