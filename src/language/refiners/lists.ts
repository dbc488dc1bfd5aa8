import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { tidy, wordAt } from '../rules/rule.ts';
import { SIZE_AFTER } from '../rules/size-words.ts';

/** Token behind an amount and the word of size that stands with it: "1210 wide | by". */
export function afterSizeWord(room: Room, amount: Amount): number {
  return SIZE_AFTER.startingAt(room.tokens, amount.to)?.to ?? amount.to;
}

function joinedBy(room: Room, left: Amount, right: Amount): boolean {
  const at = afterSizeWord(room, left);
  if (at + 1 !== right.from) return false;
  const joint = wordAt(room, at);
  // On the mainland a section is said "sixty on forty" or "sixty times forty".
  if (room.decimalComma && /^(?:on|op|auf|times|mal|maal)$/.test(joint)) {
    return !left.unit && left.value >= 10 && right.value >= 10 && Number.isInteger(left.value);
  }
  return /^(?:by|be|x|×)$/.test(joint);
}

/** Takes a unit from a neighbour in the list. Three figures beside metres may be metres and centimetres. */
export function withUnitOf(amount: Amount, from: Amount): Amount {
  const shared = from.rule === '<feet> foot <inches>' && amount.value <= 24 ? 'ft' : from.unit;
  if (!shared) return amount;
  // "Five eight by two three": feet and inches, both.
  if (from.rule === '<feet> <inches>' && amount.number.splitAfter === 1 && amount.value < 100) {
    const inches = Math.floor(amount.value / 10) * 12 + (amount.value % 10);
    return {
      ...amount,
      value: inches,
      unit: shared,
      ...(from.dimension ? { dimension: from.dimension } : {}),
    };
  }
  const base = { ...amount, unit: shared, ...(from.dimension ? { dimension: from.dimension } : {}) };
  if (shared !== 'm') return base;
  if (amount.number.splitAfter === 1 && amount.value >= 100 && amount.value < 1000) {
    // "4.1 metres by three sixty five" is 3.65 m.
    return { ...base, value: tidy(amount.value / 100), alternatives: [{ value: amount.value, unit: 'mm' }] };
  }
  // "eleven point four metres by nine two" is 9.2 m.
  const tenths = from.number.decimals && amount.number.splitAfter === 1 && amount.value < 100;
  if (tenths && amount.number.form === 'words') return { ...base, value: tidy(amount.value / 10) };
  // "2.4 metres by twelve twenty": nobody says a length of kilometres so.
  if (amount.value >= 100) return { ...base, unit: 'mm' };
  return base;
}

function shareUnits(list: readonly Amount[]): readonly Amount[] {
  const last = [...list].reverse().find((amount) => amount.unit);
  let carry: Amount | undefined;
  return list.map((amount) => {
    if (amount.unit) {
      carry = amount;
      return amount;
    }
    const source = carry ?? last;
    return source ? withUnitOf(amount, source) : amount;
  });
}

/** "85 by 120 centimetres", "600 by 400 by 18", "1210 wide by 1385 high": one group, one unit. */
export const lists: Refiner = {
  name: 'a list joined by "by" shares its unit',
  refine(amounts, room) {
    const out: Amount[] = [];
    let group = 0;
    for (let index = 0; index < amounts.length; ) {
      const list: Amount[] = [];
      let next = index;
      for (; next < amounts.length; next++) {
        const [before, amount] = [list[list.length - 1], amounts[next]];
        if (!amount || (before && !joinedBy(room, before, amount))) break;
        list.push(amount);
      }
      index = next;
      if (list.length < 2) {
        out.push(...list);
        continue;
      }
      const id = group++;
      const shared = shareUnits(list);
      shared.forEach((amount, position) => {
        if (list[position]?.unit !== amount.unit) {
          room.note({
            ...amount,
            stage: 'refine',
            rule: lists.name,
            outcome: 'merged',
            why: `takes ${amount.unit} from its list`,
          });
        }
        out.push({ ...amount, group: { id, position, size: list.length } });
      });
    }
    return out;
  },
};

/** "18 and 25 mil ply", "12, 15 or 18 mil": bare numbers directly before one with its unit. */
export const pairs: Refiner = {
  name: 'numbers joined by "and" or "or" share the unit behind them',
  refine(amounts, room) {
    const out = [...amounts];
    for (let index = out.length - 2; index >= 0; index--) {
      const [amount, next] = [out[index], out[index + 1]];
      if (!amount || !next?.unit || amount.unit || amount.group) continue;
      if (!/^(?:and|or|,)$/.test(wordAt(room, amount.to))) continue;
      const joint =
        wordAt(room, amount.to) === ',' && /^(?:and|or)$/.test(wordAt(room, amount.to + 1)) ? 2 : 1;
      if (amount.to + joint !== next.from || next.article) continue;
      if (wordAt(room, amount.to) === ',' && joint === 1 && !nextIsListed(room, next)) continue;
      // "Nothing under ten, and four hours between coats": two things told, and no list of three.
      if (joint === 2 && wordAt(room, amount.from - 1) !== ',') continue;
      const ratio = next.value / amount.value;
      if (ratio > 8 || ratio < 1 / 8) continue;
      if (amount.value < 4 && Number.isInteger(amount.value) && next.dimension === 'time') continue;
      out[index] = withUnitOf(amount, next);
      room.note({
        ...amount,
        stage: 'refine',
        rule: pairs.name,
        outcome: 'merged',
        why: `takes ${next.unit} from its neighbour`,
      });
    }
    return out;
  },
};

function nextIsListed(room: Room, next: Amount): boolean {
  return /^(?:and|or)$/.test(wordAt(room, next.to));
}
