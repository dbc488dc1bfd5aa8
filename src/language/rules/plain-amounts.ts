import { FRACTION_SIGNS, PLURAL_NUMBERS } from '../numbers/number-words.ts';
import { readNumber } from '../numbers/read-number.ts';
import { readUnit } from '../units/read-unit.ts';
import type { AmountRule } from './rule.ts';
import { amountOf, wordAt } from './rule.ts';

/** "760 mil", "twelve inches", "18mm", "2 and 5/8 inch", "40 amp". */
export const numberAndUnit: AmountRule = {
  name: '<number> <unit>',
  read(room, at) {
    const number = readNumber(room.tokens, at, room.decimalComma);
    const unit = number && readUnit(room.tokens, number.to);
    if (!number || !unit) return undefined;
    return { amount: amountOf(this.name, number, { from: at, to: unit.to }, number.value, unit) };
  },
};

/** "two eighteens": that many of one size. */
export const countOfSize: AmountRule = {
  name: '<count> <size>s',
  read(room, at) {
    const count = readNumber(room.tokens, at);
    if (!count || count.value > 20 || !Number.isInteger(count.value)) return undefined;
    const word = wordAt(room, count.to);
    const size = PLURAL_NUMBERS.get(word) ?? (/^\d+s$/.test(word) ? Number.parseInt(word, 10) : undefined);
    if (!size || size < 5) return undefined;
    const number = { from: count.to, to: count.to + 1, value: size, form: 'words' as const };
    return { amount: amountOf(this.name, number, { from: at, to: count.to + 1 }, size) };
  },
};

/** "the tens", "in eighteens": a size said as a thing. */
export const sizeAsThing: AmountRule = {
  name: 'the <size>s',
  read(room, at) {
    const size = PLURAL_NUMBERS.get(wordAt(room, at));
    if (!size || size < 5) return undefined;
    if (!/^(?:the|those|these|in|into)$/.test(wordAt(room, at - 1))) return undefined;
    const number = { from: at, to: at + 1, value: size, form: 'words' as const };
    return { amount: amountOf(this.name, number, { from: at, to: at + 1 }, size) };
  },
};

/** A number alone. What it means is settled by its neighbours, or it is dropped. */
export const numberAlone: AmountRule = {
  name: '<number>',
  read(room, at) {
    const token = room.tokens[at];
    const number = readNumber(room.tokens, at, room.decimalComma);
    if (!number || !token) return undefined;
    const sign = FRACTION_SIGNS.has(token.text);
    if (number.value === 1 && !number.fraction && token.kind !== 'number') {
      return { skip: { to: number.to, why: '"one" stands for a thing' } };
    }
    if (number.loose && !sign) return { skip: { to: number.to, why: 'a couple of things' } };
    return { amount: amountOf(this.name, number, { from: at, to: number.to }, number.value) };
  },
};
