import type { Amount, Refiner, Room } from '../rules/rule.ts';

/** True when "minus", "negative" or a written sign stands before the number and belongs to it alone. */
function signBefore(room: Room, amount: Amount): boolean {
  const [sign, number] = [room.tokens[amount.from - 1], room.tokens[amount.from]];
  if (/^(?:minus|negative)$/.test(sign?.word ?? '')) return true;
  const before = room.tokens[amount.from - 2];
  const loose = !before || sign?.spaced === true;
  return sign?.word === '-' && number?.spaced === false && loose;
}

/** "minus five degrees", "-5 °C": heat below zero. Lengths are left alone: "the top minus 18". */
export const belowZero: Refiner = {
  name: 'degrees below zero',
  refine(amounts, room) {
    return amounts.map((amount) => {
      if (amount.dimension !== 'temperature' || amount.value <= 0 || !signBefore(room, amount)) return amount;
      room.note({
        ...amount,
        stage: 'refine',
        rule: belowZero.name,
        outcome: 'merged',
        why: 'a sign before it',
      });
      return { ...amount, value: -amount.value, quoteFrom: Math.min(amount.quoteFrom, amount.from - 1) };
    });
  },
};
