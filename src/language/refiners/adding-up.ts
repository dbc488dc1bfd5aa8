import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';
import { SIZE_AFTER } from '../rules/size-words.ts';

const TOTAL = /^(?:comes|total|totals|totalling|makes|altogether|adds|sum|grand|tot|totted|that's|all)$/;

/** True when the amount is said as the outcome of a sum: "comes to 2,137 pounds". */
function isTotal(room: Room, amount: Amount): boolean {
  const sentence = room.tokens[amount.from]?.sentence;
  for (let index = amount.from - 1; index > amount.from - 5; index--) {
    const token = room.tokens[index];
    if (token?.sentence !== sentence) return false;
    if (token && TOTAL.test(token.word)) return true;
  }
  return wordAt(room, amount.to) === 'all' && /^(?:told|in)$/.test(wordAt(room, amount.to + 1));
}

/** Bare numbers before a total that make up most of it; a stray number or two are no parts. */
function partsOf(room: Room, amounts: readonly Amount[], total: number, value: number): readonly number[] {
  const parts: number[] = [];
  let sum = 0;
  for (let part = total - 1; part >= 0; part--) {
    const amount = amounts[part];
    if (!amount || amount.unit || amount.group || SIZE_AFTER.startingAt(room.tokens, amount.to)) break;
    if (sum + amount.value > value * 1.01) break;
    sum += amount.value;
    // "call it 160" adds to the sum and is a guess all the same.
    if (wordAt(room, amount.from - 1) !== 'it' || wordAt(room, amount.from - 2) !== 'call') parts.push(part);
  }
  return sum >= value / 2 ? parts : [];
}

/** "Hull, 1,180. Motor, 610. Comes to 2,137 pounds": the parts of a sum take the unit of its total. */
export const addingUp: Refiner = {
  name: 'parts of a sum take the unit of the total',
  refine(amounts, room) {
    const out = [...amounts];
    out.forEach((total, index) => {
      if (!total.unit || total.dimension === 'length' || total.role === 'count' || !isTotal(room, total))
        return;
      const parts = partsOf(room, out, index, total.value);
      for (const part of parts) {
        const amount = out[part];
        if (!amount) continue;
        out[part] = {
          ...amount,
          unit: total.unit,
          ...(total.dimension ? { dimension: total.dimension } : {}),
          unitAssumed: true,
        };
        room.note({
          ...amount,
          stage: 'refine',
          rule: addingUp.name,
          outcome: 'merged',
          why: `part of a total in ${total.unit}`,
        });
      }
    });
    return out;
  },
};
