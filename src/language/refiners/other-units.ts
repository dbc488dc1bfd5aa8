import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';

/** How much of the base unit of its kind each is. Source: SI Brochure and NIST SP 811; gallons by region. */
const IN_BASE: Readonly<Record<string, number>> = {
  mm: 0.001,
  cm: 0.01,
  m: 1,
  in: 0.0254,
  ft: 0.3048,
  yd: 0.9144,
  kg: 1,
  t: 1000,
  lb: 0.45359237,
  L: 1,
};
const METRIC = /^(?:mm|cm|m|kg|t|L)$/;
/** People round when they say a size over in the units that others grew up with. */
const ROUNDED = 0.035;

function inBase({ value, unit }: Amount, region: string): number | undefined {
  if (unit === 'gal') return value * (region === 'US' ? 3.785411784 : 4.54609);
  const factor = IN_BASE[unit ?? ''];
  return factor === undefined ? undefined : value * factor;
}

const isOther = (a: Amount, b: Amount) => METRIC.test(a.unit ?? '') !== METRIC.test(b.unit ?? '');

/** "Nine litres, or two gallon", "by 230, or nine inches if you like": the same once more, in other units. */
function saysOver(room: Room, first: Amount, second: Amount): boolean {
  if (first.dimension !== second.dimension || first.group || second.group || !isOther(first, second))
    return false;
  if (wordAt(room, second.from - 1) !== 'or' || second.from - first.to > 3) return false;
  const [a, b] = [inBase(first, room.region), inBase(second, room.region)];
  return a !== undefined && b !== undefined && Math.abs(a / b - 1) <= ROUNDED;
}

/** A size said over in the units of the other system is one figure. */
export const otherUnits: Refiner = {
  name: 'the same in other units',
  refine(amounts, room) {
    return amounts.filter((amount, index) => {
      const first = amounts[index - 1];
      if (!first || !saysOver(room, first, amount)) return true;
      const why = 'the same once more, in other units';
      room.note({ ...amount, stage: 'refine', rule: otherUnits.name, outcome: 'dropped', why });
      return false;
    });
  },
};
