import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';

const TRAVELLED =
  /^(?:drove|driven|driving|towed|towing|hauled|hauling|trailered|sailed|rode|walked|cycled|fetched|collected)$/;
const farther = ({ unit }: Amount) => unit === 'km' || unit === 'mi';

/** Whether somebody is told to have gone that far, or to see it before him. */
function onTheRoad(room: Room, amount: Amount): boolean {
  if (wordAt(room, amount.to) === 'of' && /^\p{L}{3,}$/u.test(wordAt(room, amount.to + 1))) return true;
  const sentence = room.tokens[amount.from]?.sentence;
  for (let index = amount.from - 1; index >= amount.from - 8; index--) {
    const token = room.tokens[index];
    if (token?.sentence !== sentence) return false;
    if (TRAVELLED.test(token?.word ?? '')) return true;
  }
  return false;
}

/** "drove 600 miles in two days", "20 kilometres of gravel": the road to the build, not the build. */
export const journeys: Refiner = {
  name: 'the way there, not the build',
  refine(amounts, room) {
    return amounts.filter((amount) => {
      if (!farther(amount) || !onTheRoad(room, amount)) return true;
      const why = 'a distance on the road';
      room.note({ ...amount, stage: 'refine', rule: journeys.name, outcome: 'dropped', why });
      return false;
    });
  },
};
