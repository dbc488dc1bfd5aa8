/** Numbers that a weighing gave: on a weighbridge, a hoist's own scale, a load cell. Common practice, no source. */
import type { Amount, Room } from '../../rules/rule.ts';
import { wordAt } from '../../rules/rule.ts';
import { SIZE_AFTER } from '../../rules/size-words.ts';
import type { Token } from '../../tokens.ts';
import { readUnit } from '../../units/read-unit.ts';
import type { Meaning } from './lengths.ts';
import { close, REMEMBERED } from './neighbours.ts';

/** How far back a weighing is looked for, in tokens and in sentences. */
const BACK = 40;
const SENTENCES = 3;

const WHOSE =
  /^(?:the|a|my|our|his|her|own|bathroom|hoist|crane|cattle|truck|yard|luggage|fish|kitchen|beam|platform|hanging|spring|digital|post|scrap|feed|mill|public|freight|parcel|pallet|coal|stock|vet|farm)$/;
const NO_SCALE = /^(?:model|models|drawing|drawings|plan|map|that|it|of|down|up|'s|on|off)$/;
const WEIGHED = /^(?:weighbridge|weighbridges|weighed|weighing|dynamometer|steelyard)$/;

/** "the hoist's own scale", "the weighbridge", "a load cell"; no scale of a drawing and none on a pipe. */
function weighsHere(room: Room, at: number): boolean {
  const word = wordAt(room, at);
  if (WEIGHED.test(word)) return true;
  if (word === 'cell') return wordAt(room, at - 1) === 'load';
  if (word === 'bridge') return wordAt(room, at - 1) === 'weigh';
  if (word !== 'scale' && word !== 'scales') return false;
  if (NO_SCALE.test(wordAt(room, at + 1)) && word === 'scale') return false;
  return WHOSE.test(wordAt(room, at - 1)) || wordAt(room, at - 1) === "'s" || word === 'scales';
}

/** Where a memo tells of weighings; kept beside its tokens, which every bare number of it asks about. */
const WEIGHINGS = new WeakMap<readonly Token[], readonly number[]>();

function weighingsOf(room: Room): readonly number[] {
  const known = WEIGHINGS.get(room.tokens);
  if (known) return known;
  const places = room.tokens.flatMap((_, at) => (weighsHere(room, at) ? [at] : []));
  WEIGHINGS.set(room.tokens, places);
  return places;
}

/** Token of the weighing that this number may come from. */
function weighingBefore(room: Room, amount: Amount): number | undefined {
  const places = weighingsOf(room);
  let [low, high] = [0, places.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((places[middle] ?? 0) < amount.from) low = middle + 1;
    else high = middle;
  }
  const at = places[low - 1];
  if (at === undefined || amount.from - at > BACK) return undefined;
  const apart = (room.tokens[amount.from]?.sentence ?? 0) - (room.tokens[at]?.sentence ?? 0);
  return apart > SENTENCES ? undefined : at;
}

const ON_A_SCALE = /^(?:scale|scales|weighbridge|hook|cell)$/;

/** "212 on the bathroom scale", "728 on the hoist scale". */
function onTheScale(room: Room, amount: Amount): boolean {
  if (!/^(?:on|by|over|off)$/.test(wordAt(room, amount.to))) return false;
  return [2, 3, 4].some(
    (step) =>
      ON_A_SCALE.test(wordAt(room, amount.to + step)) &&
      /^(?:the|a|my|our|his|her)$/.test(wordAt(room, amount.to + 1)),
  );
}

const WHERE_IT_STOOD =
  /^(?:on|over|up|all|the|bare|empty|full|laden|unladen|loaded|dry|wet|gross|with|without|as|altogether|total|in|and|so|which|that|but|of)$/;
const AXLES =
  /^(?:back|front|rear|axle|axles|wheel|wheels|hook|nose|tongue|lot|it|own|scale|scales|cradle|all|whole)$/;

/** Whether the number stands as the reading of a weighing: it closes its part, or the load is told behind it. */
function readsAsLoad(room: Room, amount: Amount): boolean {
  const next = wordAt(room, amount.to);
  if (/^(?:|[.,;:!?])$/.test(next)) return true;
  if (!WHERE_IT_STOOD.test(next) || SIZE_AFTER.startingAt(room.tokens, amount.to)) return false;
  if (/^(?:on|over|in|of)$/.test(next))
    return [1, 2, 3].some((step) => AXLES.test(wordAt(room, amount.to + step)));
  return next !== 'the' || AXLES.test(wordAt(room, amount.to + 1));
}

/** Words before a number, since the weighing, that end what it tells of. */
const OTHER_TALK =
  /^(?:long|height|width|length|depth|thickness|diameter|radius|planed|trimmed|sanded|plank|planks|board|boards|door|shelf|wide|high|deep|thick|cut|sawn|drilled|bolt|bolts|hole|screw|screws|gap|every|centres|centers|hours|days|minutes|apart|ordered|bought|paid|costs?|price)$/;

function unitOf(room: Room, amount: Amount, out: readonly Amount[]): string {
  // Vehicles and boats in decimals are told in tonnes.
  const inTonnes = Boolean(amount.number.decimals) && amount.value < 60 && room.house !== 'us';
  const isLike = (value: number) => close(value, amount.value, inTonnes ? 2 : 8);
  const said = out.slice(-REMEMBERED).findLast((other) => other.dimension === 'mass' && isLike(other.value));
  if (said?.unit) return said.unit;
  const known = (room.context.knownFigures ?? []).findLast(
    ({ unit, value }) => /^(?:kg|lb|t)$/.test(unit) && isLike(value),
  );
  if (known) return known.unit;
  if (inTonnes) return 't';
  return room.house === 'us' ? 'lb' : 'kg';
}

/** A bare number as the reading of a weighing that was told of before it, or is behind it. */
export function asWeighing(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (amount.number.fraction && amount.number.denominator !== 2) return undefined;
  const dimension = 'mass' as const;
  const why = 'what a weighing gave';
  if (onTheScale(room, amount))
    return { value: amount.value, unit: unitOf(room, amount, out), dimension, why };
  const at = weighingBefore(room, amount);
  if (at === undefined || !readsAsLoad(room, amount)) return undefined;
  if (SIZE_AFTER.startingAt(room.tokens, amount.to) || readUnit(room.tokens, amount.to)) return undefined;
  for (let between = at + 1; between < amount.from; between++)
    if (OTHER_TALK.test(wordAt(room, between)) && wordAt(room, between + 1) !== 'of') return undefined;
  // What was told since by another measure ends the weighing; what was told in its unit has ended it too.
  const since = out.findLast(({ from }) => from > at);
  if (since && since.dimension !== 'mass' && since.role !== 'count') return undefined;
  if (since && !since.unitAssumed && !close(since.value, amount.value, 6)) return undefined;
  const unit = unitOf(room, amount, out);
  const least = unit === 't' ? 0.1 : 20;
  return amount.value >= least ? { value: amount.value, unit, dimension, why } : undefined;
}

const CLOSES = /^(?:|[.,;!?])$/;
const AGAIN = /^(?:mass|power|current|charge|volume|pressure|energy|voltage|torque)$/;

/** "It's not 21 kilos, it's bigger. 31.": the right number in a sentence of its own, in the unit of the wrong one. */
export function putRight(room: Room, amount: Amount): Meaning | undefined {
  const sentence = room.tokens[amount.from]?.sentence ?? 0;
  const opens = room.tokens[amount.from - 1]?.sentence !== sentence;
  if (!opens || !CLOSES.test(wordAt(room, amount.to)) || amount.number.fraction) return undefined;
  for (let at = amount.from - 1; at >= amount.from - 16 && room.tokens[at]?.sentence === sentence - 1; at--) {
    const unit = room.tokens[at]?.kind === 'word' ? readUnit(room.tokens, at) : undefined;
    if (!unit?.dimension || !AGAIN.test(unit.dimension)) continue;
    const denied = room.tokens
      .slice(Math.max(0, at - 8), amount.from)
      .some(
        ({ word, sentence: own }) =>
          own === sentence - 1 &&
          /^(?:not|no|isn't|wasn't|wrong|more|bigger|heavier|less|lighter|typo)$/.test(word),
      );
    if (!denied) return undefined;
    const { dimension } = unit;
    return { value: amount.value, unit: unit.key, dimension, why: 'puts right what was told before' };
  }
  return undefined;
}
