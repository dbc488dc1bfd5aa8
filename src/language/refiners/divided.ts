import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';

/** "A hundred and one over thirteen, that's seven and a bit": in so many parts, and no bound. */
function divides(room: Room, whole: Amount, parts: Amount): boolean {
  if (wordAt(room, whole.to) !== 'over' || whole.to + 1 !== parts.from) return false;
  if (parts.unit || !Number.isInteger(parts.value) || parts.value < 2 || parts.number.fraction) return false;
  const comma = wordAt(room, parts.to) === ',' ? 1 : 0;
  return /^(?:that|that's|so|which|comes|makes|gives|is|'s|equals|works)$/.test(
    wordAt(room, parts.to + comma),
  );
}

export const divided: Refiner = {
  name: 'a size shared out',
  refine(amounts, room) {
    return amounts.filter((amount, index) => {
      const whole = amounts[index - 1];
      if (!whole || !divides(room, whole, amount)) return true;
      const why = 'how many parts it is shared in';
      room.note({ ...amount, stage: 'refine', rule: divided.name, outcome: 'dropped', why });
      return false;
    });
  },
};
