import type { Amount, Refiner } from '../rules/rule.ts';
import { findTakenBack } from '../taken-back.ts';
import { withUnitOf } from './lists.ts';

interface Tokens {
  readonly from: number;
  readonly to: number;
}

const isIn = (amount: Amount, { from, to }: Tokens) => amount.to > from && amount.to <= to;

const fits = (first: Amount, second: Amount) =>
  !first.unit || !second.unit || first.unit === second.unit || first.dimension === second.dimension;

/**
 * "The locker is 18 mm deep. No, scratch that.": the figures of that sentence were never meant. "..., 80": the number
 * stands where the last one stood.
 */
export const takenBack: Refiner = {
  name: 'taken back in the next breath',
  refine: (amounts, room) => {
    const dropped = new Set<Amount>();
    const put = new Map<Amount, Amount>();
    for (const { tokens, numberPut } of findTakenBack(room.tokens)) {
      const said = amounts.filter((amount) => isIn(amount, tokens));
      const right = numberPut && amounts.find((amount) => isIn(amount, numberPut));
      if (!numberPut) for (const amount of said) dropped.add(amount);
      const slip = right && said.findLast((amount) => fits(amount, right));
      // What was put right in the same breath stands in its place already.
      if (!right || !slip || right.standsFor) continue;
      dropped.add(slip);
      const whole = right.unit || !slip.unit ? right : withUnitOf(right, slip);
      put.set(right, { ...whole, standsFor: slip.standsFor ?? { from: slip.from, to: slip.to } });
    }
    for (const amount of dropped)
      room.note({
        ...amount,
        stage: 'refine',
        rule: takenBack.name,
        outcome: 'dropped',
        why: 'taken back: "scratch that"',
      });
    return amounts.filter((amount) => !dropped.has(amount)).map((amount) => put.get(amount) ?? amount);
  },
};
