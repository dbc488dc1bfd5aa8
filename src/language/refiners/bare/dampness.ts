/** Bare numbers that tell how wet wood is. */
import { kindsOf } from '../../lexicon/trade-nouns.ts';
import { type Amount, type Room, wordAt } from '../../rules/rule.ts';
import { evidenceAfter } from './evidence.ts';
import type { Meaning } from './lengths.ts';
import { close, REMEMBERED } from './neighbours.ts';

/** "The oak's at nineteen on the meter": moisture, as a meter shows it. */
export function asDampness(room: Room, amount: Amount): Meaning | undefined {
  const meter = [1, 2, 3].some(
    (step) => wordAt(room, amount.to + step) === 'meter' && wordAt(room, amount.to) === 'on',
  );
  if (!meter || amount.value < 4 || amount.value > 60 || amount.number.fraction) return undefined;
  const isWood = woodBefore(room, amount);
  return isWood
    ? { value: amount.value, unit: '%', dimension: 'ratio', why: 'read off a moisture meter' }
    : undefined;
}

const DRIES = /^(?:down|got|at|reading|reads|read|still|dried|drying|come|been|hit|gone)$/;
const SHAPED =
  /^(?:planed|thick|thicknessed|cut|sawn|ripped|sanded|milled|wide|long|high|deep|mil|millimetres|inches|inch)$/;
/** How far a reading of wood is from the last one told in percent. */
const DRIES_BY = 1.7;

/** "The ribs are down to seventeen" where wood was told in percent before: how wet it is now. */
export function driedTo(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const { value, number } = amount;
  if (number.fraction || value < 6 || value > 40 || evidenceAfter(room, amount)) return undefined;
  if (!/^(?:|[.,;:!?]|and|so|now|but|today|already)$/.test(wordAt(room, amount.to))) return undefined;
  const told = [...(room.context.knownFigures ?? []), ...out.slice(-REMEMBERED)].filter(
    (other) => other.unit === '%' && other.value >= 6 && other.value <= 40,
  );
  if (!told.some((other) => close(other.value, value, DRIES_BY))) return undefined;
  const sentence = room.tokens[amount.from]?.sentence;
  const before = [1, 2, 3, 4, 5, 6]
    .filter((back) => room.tokens[amount.from - back]?.sentence === sentence)
    .map((back) => wordAt(room, amount.from - back));
  const goesOn = BE.test(before[0] ?? '') && isLast(room, amount, out);
  if (
    (!goesOn && !before.slice(0, 3).some((word) => DRIES.test(word))) ||
    before.some((word) => SHAPED.test(word))
  )
    return undefined;
  const isOfWood =
    woodBefore(room, amount) ||
    before.some((word) => /^(?:ribs?|frames?|boards?|planks?|logs?|sleepers?|posts?)$/.test(word));
  return isOfWood ? { value, unit: '%', dimension: 'ratio', why: 'how wet wood still is' } : undefined;
}

const BE = /^(?:'s|is|are|was|were)$/;

/** "The meter says 16 percent. The rafters were 19": the figure right before was told in percent. */
function isLast(room: Room, amount: Amount, out: readonly Amount[]): boolean {
  const last = out.at(-1);
  if (last?.unit !== '%') return false;
  return (room.tokens[amount.from]?.sentence ?? 0) - (room.tokens[last.from]?.sentence ?? 0) <= 1;
}

/** Whether wood is named shortly before the number. */
function woodBefore(room: Room, amount: Amount): boolean {
  return [...Array(8).keys()].some((back) => {
    const kinds = kindsOf([wordAt(room, amount.from - 1 - back)]);
    return kinds.has('timber') || kinds.has('sheet') || kinds.has('joist') || kinds.has('material');
  });
}
