/** Bare numbers that are what something weighs. */
import { each, PhraseTable } from '../../phrases.ts';
import { isCarriedBy, isCarrierRatedFor } from '../../rules/carriers.ts';
import { type Amount, type Room, wordAt } from '../../rules/rule.ts';
import { speaksOf } from '../../units/surroundings.ts';
import type { Meaning } from './lengths.ts';
import { REMEMBERED, subjectIsPronoun } from './neighbours.ts';
import { sizedAfter } from './sized-after.ts';

/** The unit of the weight before, else the house's own. */
const unitOfWeight = (room: Room, out: readonly Amount[]) =>
  out.slice(-REMEMBERED).findLast((other) => other.dimension === 'mass')?.unit ??
  (room.house === 'us' ? 'lb' : 'kg');

/** Where something hangs or stands to be weighed. */
const ON_THE_SCALES = new PhraseTable<true>(
  each(
    true,
    'on the scales, on the scale, on the hook, on the weighbridge, on the bathroom scales, on the luggage scales, on the crane scales, on the fish scales, on the load cell',
  ),
);

export function asWeight(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const weighs = [1, 2, 3].some((back) =>
    /^(?:weigh|weighs|weighed|weighing|weight)$/.test(wordAt(room, amount.from - back)),
  );
  const scale =
    speaksOf(room, 'weight', amount.from, amount.to, 12) &&
    amount.value >= 20 &&
    subjectIsPronoun(room, amount);
  const scales = ON_THE_SCALES.startingAt(room.tokens, amount.to) !== undefined;
  if ((!weighs && !scale && !scales) || sizedAfter(room, amount)) return undefined;
  const unit = unitOfWeight(room, out);
  return { value: amount.value, unit, dimension: 'mass', why: 'what something weighs' };
}

/** "Plate says fifteen hundred gross", "750 tare": what a vehicle or a boat may weigh, or weighs. */
const AS_LOADED = /^(?:gross|tare|laden|unladen)$/;
const CLOSES = /^(?:|[.,;:!?]|and|so|but|for|with|on)$/;

/** "So that's 480 to play with". */
const isSpare = (room: Room, { from, to }: Amount): boolean =>
  /^(?:'s|is|leaves|have|'ve|got)$/.test(wordAt(room, from - 1)) &&
  ((wordAt(room, to) === 'to' && /^(?:play|spare|go|work)$/.test(wordAt(room, to + 1))) ||
    /^(?:spare|left)$/.test(wordAt(room, to)));

/** A mass told by the word behind it, and what is left of a mass in the same breath: "so that leaves eight twenty". */
export function asLoad(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (sizedAfter(room, amount) && !isSpare(room, amount)) return undefined;
  const last = out.at(-1);
  const isLoaded = AS_LOADED.test(wordAt(room, amount.to)) && CLOSES.test(wordAt(room, amount.to + 1));
  const isLeft =
    last?.dimension === 'mass' &&
    room.tokens[last.from]?.sentence === room.tokens[amount.from]?.sentence &&
    amount.value < last.value &&
    amount.value >= last.value / 20 &&
    ((CLOSES.test(wordAt(room, amount.to)) &&
      [1, 2].some((back) => /^(?:leaves|leaving)$/.test(wordAt(room, amount.from - back)))) ||
      isSpare(room, amount));
  if (!isLoaded && !isLeft) return undefined;
  const unit = unitOfWeight(room, out);
  return {
    value: amount.value,
    unit,
    dimension: 'mass',
    why: isLoaded ? 'how it is loaded' : 'what a load leaves',
  };
}

/** Less than this is said with its unit: "the jack takes two" of tonnes. */
const LEAST_CARRIED = 20;

/** "The winch is good for 450", "the shelf takes 80": what may be hung from a thing or stood on it. */
export function asCarried(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (amount.value < LEAST_CARRIED || sizedAfter(room, amount)) return undefined;
  if (!/^(?:|[.,;:!?]|and|so|but|each|tops|max|maximum|at|all|easy|easily)$/.test(wordAt(room, amount.to)))
    return undefined;
  if (!isCarriedBy(room, amount) && !isCarrierRatedFor(room, amount)) return undefined;
  const unit = unitOfWeight(room, out);
  return { value: amount.value, unit, dimension: 'mass', why: 'what a thing carries' };
}
