/** Bare numbers in the unit that their thing, or the same number, was told in before. */
import { isPlural, isTradeNoun, singular } from '../../lexicon/trade-nouns.ts';
import { type Amount, type Room, wordAt } from '../../rules/rule.ts';
import { dimensionOfUnit } from '../../units/read-unit.ts';
import type { SaidBefore } from '../../units/said-before.ts';
import type { Meaning } from './lengths.ts';
import { close } from './neighbours.ts';
import { sizedAfter } from './sized-after.ts';

/** "Disc still says one oh five oh": a number that was said of something before and of nothing by length. */
export function saidAgain(room: Room, amount: Amount): Meaning | undefined {
  if (amount.value < 100 || sizeNamed(room, amount)) return undefined;
  const same = (room.context.knownFigures ?? []).filter((figure) => figure.value === amount.value);
  const unit = same[same.length - 1]?.unit;
  const dimension = unit && dimensionOfUnit(unit);
  if (!unit || !dimension || same.some((figure) => figure.unit !== unit)) return undefined;
  if (/^(?:length|money|time)$/.test(dimension)) return undefined;
  return { value: amount.value, unit, dimension, why: 'the unit that the number had before' };
}

/** "The height less the top, 850": a size is named before the number in its sentence. */
function sizeNamed(room: Room, { from }: Amount): boolean {
  const sentence = room.tokens[from]?.sentence;
  for (let at = from - 1; at >= from - 8 && room.tokens[at]?.sentence === sentence; at--)
    if (/^(?:height|width|length|depth|thickness|opening|gap|diameter|radius)$/.test(wordAt(room, at)))
      return true;
  return false;
}

const SUBJECT_REACH = 5;

/** The trade nouns that stand shortly before a number, in its sentence. */
function nounsBefore(room: Room, { from }: Amount): readonly string[] {
  const nouns: string[] = [];
  const sentence = room.tokens[from]?.sentence;
  for (let k = from - 1; k >= from - SUBJECT_REACH && room.tokens[k]?.sentence === sentence; k--)
    if (isTradeNoun(wordAt(room, k))) nouns.push(singular(wordAt(room, k)));
  return nouns;
}

/** How many figures of the memo are looked back over for the same thing. */
const SAID_ABOVE = 40;

/** "The fridge pulls 4.5 amps ... With the lid shut the fridge is at 4": said of the same thing earlier in the memo. */
export function saidAbove(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (sizedAfter(room, amount)) return undefined;
  const nouns = nounsBefore(room, amount);
  if (nouns.length === 0) return undefined;
  for (let k = out.length - 1; k >= Math.max(0, out.length - SAID_ABOVE); k--) {
    const other = out[k] as Amount;
    if (
      !other.unit ||
      !other.dimension ||
      other.unitAssumed ||
      /^(?:length|time|money|count)$/.test(other.dimension)
    )
      continue;
    if (
      !close(other.value, amount.value, 1.6) ||
      !nounsBefore(room, other).some((noun) => nouns.includes(noun))
    )
      continue;
    return {
      value: amount.value,
      unit: other.unit,
      dimension: other.dimension,
      why: 'the unit that its thing was said in above',
    };
  }
  return undefined;
}

/** "The saw draws 3 kW ... the saw blade's 315": another thing is named nearer than the one of the old figure. */
export function ofAnother(room: Room, amount: Amount, { at, unit }: SaidBefore): boolean {
  if (at === undefined || at >= amount.from || unit === 'mm2') return false;
  for (let k = at + 1; k < amount.from; k++)
    // "The winch stays at three hundred" is no rigging.
    if (isTradeNoun(wordAt(room, k)) && /^(?:'s|is|are|was|were|,|:)$/.test(wordAt(room, k + 1))) return true;
  return false;
}

/** "I've got sixty five head bolts": so many of them, whatever their torque is. */
export function counts(room: Room, { value, from, to, number }: Amount): boolean {
  if (!Number.isInteger(value) || number.fraction) return false;
  const isHad = [1, 2].some((back) =>
    /^(?:have|'ve|got|has|bought|need|needs|want|ordered)$/.test(wordAt(room, from - back)),
  );
  return (
    isHad && [0, 1].some((step) => isTradeNoun(wordAt(room, to + step)) && isPlural(wordAt(room, to + step)))
  );
}
