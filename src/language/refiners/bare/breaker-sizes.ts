/** Bare numbers that are the breaker a circuit is on. */
import { type Amount, type Room, wordAt } from '../../rules/rule.ts';
import type { Meaning } from './lengths.ts';

/** Ratings that breakers and fuses are sold in, in amperes. Common practice, no source. */
const RATINGS: ReadonlySet<number> = new Set([
  3, 5, 6, 10, 13, 15, 16, 20, 25, 30, 32, 40, 45, 50, 60, 63, 80, 100, 125,
]);
const CIRCUITS =
  /^(?:ring|rings|radial|spur|circuit|circuits|cooker|oven|hob|range|shower|immersion|lights|lighting|sockets|outlets|fridge|freezer|heater|kettle|inverter|charger|pump|compressor|welder|kiln|dryer|boiler|aircon|microwave)$/;

/** "The ring's on a thirty two", "shower on its own forty": how much its breaker lets through. */
export function asBreaker(room: Room, amount: Amount): Meaning | undefined {
  const { value, from, to, number } = amount;
  if (
    !RATINGS.has(value) ||
    number.fraction ||
    !/^(?:|[.,;:!?]|and|but|so|not|now|with)$/.test(wordAt(room, to))
  )
    return undefined;
  let at = from - 1;
  // "on a thirty two", "on its own sixteen".
  if (/^(?:a|an)$/.test(wordAt(room, at))) at--;
  else if (wordAt(room, at) === 'own' && /^(?:its|their|it's)$/.test(wordAt(room, at - 1))) at -= 2;
  else return undefined;
  if (wordAt(room, at) !== 'on') return undefined;
  const sentence = room.tokens[from]?.sentence;
  for (let back = at - 1; back >= at - 6 && room.tokens[back]?.sentence === sentence; back--) {
    if (/^(?:,|and|but|so)$/.test(wordAt(room, back))) return undefined;
    if (CIRCUITS.test(wordAt(room, back)))
      return { value, unit: 'A', dimension: 'current', why: 'the breaker that a circuit is on' };
  }
  return undefined;
}
