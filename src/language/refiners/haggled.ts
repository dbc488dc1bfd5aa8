import { localMoney } from '../rules/money.ts';
import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';

const OFFERS =
  /^(?:said|says|asked|asks|wanted|wants|offered|offers|started|opened|countered|came|went|bid)$/;
const AGREED = /^(?:settled|agreed|shook|met|closed|landed|split|ended|meeting|settling|compromised)$/;
/** How far one offer may be from another. */
const APART = 3;

const verbBefore = (room: Room, amount: Amount, verb: RegExp) =>
  [1, 2, 3].some((back) => verb.test(wordAt(room, amount.from - back)));

function isPlain(amount: Amount | undefined, other: Amount): amount is Amount {
  if (!amount || amount.group || amount.number.fraction || amount.value < 5) return false;
  if (amount.unit && amount.dimension !== 'money') return false;
  return amount.value / other.value <= APART && other.value / amount.value <= APART;
}

/** "The yard said 310, I said 260, we settled on 290": what was agreed is the price, what was offered is none. */
export const haggled: Refiner = {
  name: 'a price that was agreed',
  refine(amounts, room) {
    const out: (Amount | undefined)[] = [...amounts];
    amounts.forEach((agreed, index) => {
      if (!isPlain(agreed, agreed) || !verbBefore(room, agreed, AGREED)) return;
      const sentence = room.tokens[agreed.from]?.sentence ?? 0;
      const offers: number[] = [];
      for (let at = index - 1; at >= Math.max(0, index - 4); at--) {
        const offer = amounts[at];
        if (!isPlain(offer, agreed) || sentence - (room.tokens[offer.from]?.sentence ?? 0) > 1) break;
        if (!verbBefore(room, offer, OFFERS)) break;
        offers.push(at);
      }
      if (offers.length < 2) return;
      for (const at of offers) {
        const offer = amounts[at] as Amount;
        room.note({
          ...offer,
          stage: 'refine',
          rule: haggled.name,
          outcome: 'dropped',
          why: 'offered, and not agreed',
        });
        out[at] = undefined;
      }
      out[index] = {
        ...agreed,
        unit: agreed.unit ?? localMoney(room.region),
        dimension: 'money',
        unitAssumed: agreed.unit === undefined,
      };
    });
    return out.flatMap((amount) => amount ?? []);
  },
};
