import { each, PhraseTable } from '../phrases.ts';
import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';
import { afterSizeWord } from './lists.ts';

const TOLERANCE = new PhraseTable<true>(
  each(
    true,
    'give or take, plus or minus, plus minus, plus and minus, plus / minus, + / -, + or -, ±, + -, with a tolerance of, tolerance of, to within, accurate to, within',
  ),
);
const EITHER_WAY = new PhraseTable<true>(each(true, 'either way, each way, up or down, plus or minus'));

/** Skips one comma and words like "say" before the spread. */
function spreadStart(room: Room, at: number): number {
  let index = at;
  while (/^(?:,|say|about|maybe|like|er|um|another)$/.test(wordAt(room, index))) index++;
  return index;
}

function toleranceAfter(
  room: Room,
  amount: Amount,
): { readonly from: number; readonly spread: number } | undefined {
  const ends = [amount.to, afterSizeWord(room, amount)];
  for (const end of ends) {
    const at = wordAt(room, end) === ',' ? end + 1 : end;
    const hit = TOLERANCE.startingAt(room.tokens, at);
    if (hit) return { from: hit.from, spread: spreadStart(room, hit.to) };
  }
  // "420 centres, give or take thirty": other words may stand between, up to the comma.
  for (let index = amount.to; index < amount.to + 6; index++) {
    if (wordAt(room, index) !== ',') continue;
    const hit = TOLERANCE.startingAt(room.tokens, index + 1);
    return hit ? { from: hit.from, spread: spreadStart(room, hit.to) } : undefined;
  }
  return undefined;
}

/** Reads a spoken tolerance into the figure before it. A bare spread takes that figure's unit. */
export const tolerances: Refiner = {
  name: '<figure> give or take <amount>',
  refine(amounts, room) {
    const out: Amount[] = [];
    for (let index = 0; index < amounts.length; index++) {
      const [amount, next] = [amounts[index], amounts[index + 1]];
      if (!amount) continue;
      const tolerance = toleranceAfter(room, amount);
      const loose = tolerance && next?.from !== tolerance.spread;
      if (!tolerance || !next || loose) {
        const eitherWay = next && spreadBefore(room, amount, next);
        out.push(eitherWay ? withSpread(amount, next, room) : amount);
        if (eitherWay) index++;
        continue;
      }
      const within = wordAt(room, tolerance.from) === 'within';
      if (within && !EITHER_WAY.startingAt(room.tokens, next.to)) {
        out.push(amount);
        continue;
      }
      out.push(withSpread(amount, next, room));
      index++;
    }
    return out;
  },
};

/** "40 mil, one either way". */
function spreadBefore(room: Room, amount: Amount, next: Amount): boolean {
  const comma = wordAt(room, amount.to) === ',' && amount.to + 1 === next.from;
  return comma && EITHER_WAY.startingAt(room.tokens, next.to) !== undefined;
}

function withSpread(amount: Amount, spread: Amount, room: Room): Amount {
  const either = EITHER_WAY.startingAt(room.tokens, spread.to);
  const unit = spread.unit ?? amount.unit;
  room.note({
    ...spread,
    stage: 'refine',
    rule: tolerances.name,
    outcome: 'merged',
    why: 'a spread of the figure before it',
  });
  return {
    ...amount,
    quoteTo: either?.to ?? spread.quoteTo,
    plusMinus: spread.value,
    ...(unit ? { plusMinusUnit: unit } : {}),
  };
}
