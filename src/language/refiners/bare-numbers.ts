import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { tidy, wordAt } from '../rules/rule.ts';
import { saidBefore } from '../units/said-before.ts';
import { asAskedFor, asOrdered } from './bare/asked-and-had.ts';
import { contrasted } from './bare/contrast.ts';
import { type Evidence, evidenceOf, followedByThing, SHEET_STUFF } from './bare/evidence.ts';
import { asPlainHeat, warmElsewhere } from './bare/heat.ts';
import { otherKind } from './bare/kinds.ts';
import { asLength, type Meaning } from './bare/lengths.ts';
import {
  asAddition,
  asCapacity,
  asHundredths,
  asMultiple,
  asPutIn,
  asTenths,
  asTotal,
  carriedOn,
  close,
  lastWithUnit,
  likeTheLast,
  measuredAgainst,
  pairedInMetres,
  parallelTo,
  REMEMBERED,
  readOff,
  unitBehind,
} from './bare/neighbours.ts';
import { asPitch } from './bare/pitches.ts';
import { asPaidInAll } from './bare/prices.ts';
import { goesOn } from './bare/readings-gone-on.ts';
import { asBeside } from './bare/told-beside.ts';
import { asRatedTurns, asTorqueAgain } from './bare/turning-and-tightening.ts';
import { asWeighing, putRight } from './bare/weighing.ts';
import { asCarried, asLoad } from './bare/weights.ts';

/** Longest bare length that is believed, by unit; beyond it the number is of another kind. */
const BELIEVED: Readonly<Record<string, number>> = { in: 480, mm: 30000, cm: 3000, m: 100, ft: 200 };

function meaningOf(
  room: Room,
  amount: Amount,
  evidence: Evidence,
  out: readonly Amount[],
  all: readonly Amount[],
): Meaning | undefined {
  const paired = pairedInMetres(room, amount, out);
  if (paired) return paired;
  const sized = evidence.attribute !== undefined || evidence.why === 'a place it is measured from';
  const total =
    asTotal(room, amount, out) ??
    asMultiple(room, amount, out) ??
    asAddition(room, amount, out) ??
    asCapacity(room, amount, out) ??
    asTenths(room, amount, all);
  if (total) return total;
  const here = lastWithUnit(room, out, amount, 0);
  if (sized && here) {
    const carried = evidence.attribute && carriedOn(amount, here);
    if (carried) return carried;
  }
  const warm = warmElsewhere(room, amount, here);
  if (warm) return warm;
  const parallel = sized && here?.dimension !== 'length' ? undefined : parallelTo(room, amount, here);
  if (parallel && parallel.dimension !== 'length' && !sized) return parallel;
  const special = sized
    ? undefined
    : (unitBehind(room, amount, all) ?? readOff(room, amount, out) ?? otherKind(room, amount, evidence, out));
  if (special) return special;
  const metres = saidBefore(room, amount);
  if (metres?.unit === 'm' && metres.value !== amount.value) {
    return { ...metres, dimension: 'length', why: 'metres and hundredths, as its thing was said before' };
  }
  if (parallel && (evidence.attribute === undefined || here?.dimension === 'length')) return parallel;
  const hundredths = asHundredths(room, amount, out);
  if (hundredths) return hundredths;
  const read = asLength(room, amount, all, evidence.attribute, sized);
  if (!sized && amount.value > (BELIEVED[read.unit] ?? Number.POSITIVE_INFINITY)) {
    const last = out
      .slice(-REMEMBERED)
      .findLast(
        (other) => other.dimension && other.dimension !== 'length' && close(other.value, amount.value, 5),
      );
    if (!last?.unit || !last.dimension) return undefined;
    return {
      value: amount.value,
      unit: last.unit,
      dimension: last.dimension,
      why: 'too much for a length; like the figure before',
    };
  }
  return read;
}

/** Small whole numbers are mostly counts; they need more than a likely place. */
function tooWeak(
  room: Room,
  amount: Amount,
  evidence: Evidence,
  meaning: Meaning | undefined,
  out: readonly Amount[],
): boolean {
  if (evidence.grade === 'none') return true;
  if (evidence.grade === 'sure') return false;
  const whole = Number.isInteger(amount.value) && !amount.number.fraction;
  if (meaning && meaning.dimension !== 'length') return false;
  if (!whole)
    return amount.value === 0.5 || amount.value === 0.25
      ? !/^(?:at|to|is|'s)$/.test(wordAt(room, amount.from - 1))
      : false;
  const ofSheet = [0, -2, -3].some((at) =>
    SHEET_STUFF.test(wordAt(room, at === 0 ? amount.to : amount.from + at)),
  );
  if (ofSheet && amount.value >= 3) return false;
  if (evidence.why === 'a sentence of its own' && amount.value < 20) return true;
  if (evidence.why === 'said by itself' && amount.value < 20) return !likeTheLast(room, amount, out);
  return (amount.value < 10 && !likeTheLast(room, amount, out)) || followedByThing(room, amount);
}

/** What the words about a number make it wherever it stands, a verb before it or none. */
function plainMeaning(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (amount.group || amount.number.loose) return undefined;
  return (
    goesOn(room, amount, out) ??
    asPlainHeat(room, amount, out) ??
    asPitch(room, amount) ??
    asWeighing(room, amount, out) ??
    asLoad(room, amount, out) ??
    asCarried(room, amount, out) ??
    asRatedTurns(room, amount, out) ??
    asTorqueAgain(room, amount, out) ??
    asPutIn(room, amount, out) ??
    putRight(room, amount) ??
    asPaidInAll(room, amount) ??
    asAskedFor(room, amount, out) ??
    asOrdered(room, amount, out) ??
    measuredAgainst(room, amount, out) ??
    asBeside(room, amount)
  );
}

/** Evidence and meaning where the number stands, else where the slip stood that it puts right; no meaning when both are weak. */
function settled(
  room: Room,
  amount: Amount,
  out: readonly Amount[],
  all: readonly Amount[],
): { readonly evidence: Evidence; readonly meaning: Meaning | undefined } {
  const plain = plainMeaning(room, amount, out);
  if (plain) return { evidence: { grade: 'sure', why: 'told by the words about it' }, meaning: plain };
  const own = evidenceOf(room, amount);
  const evidence =
    own.grade === 'none' || own.grade === 'likely' ? (contrasted(room, amount, out) ?? own) : own;
  const meaning = meaningOf(room, amount, evidence, out, all);
  if (meaning && !tooWeak(room, amount, evidence, meaning, out)) return { evidence, meaning };
  const { standsFor, ...alone } = amount;
  if (!standsFor) return { evidence, meaning: undefined };
  return settled(room, { ...alone, ...standsFor }, out, all);
}

/** "Call it eighteen thirty now": no guess, but what holds from here on. */
const isSettledNow = (room: Room, amount: Amount): boolean =>
  /^(?:now|then|instead)$/.test(wordAt(room, amount.to)) &&
  /^(?:|[.,;!?]|and|so)$/.test(wordAt(room, amount.to + 1));

/** A bare number takes its unit from its neighbours or the house, or it is no quantity. */
export const bareNumbers: Refiner = {
  name: 'a bare number in the place of a size',
  refine(amounts, room) {
    const out: Amount[] = [];
    for (const amount of amounts) {
      if (amount.unit) {
        out.push(amount);
        continue;
      }
      // "Call it nine hundred, I've not had a tape on it": with a unit a hedge, without one a guess.
      const { evidence, meaning } =
        amount.rough && !isSettledNow(room, amount)
          ? { evidence: { grade: 'none' as const, why: 'a guess' }, meaning: undefined }
          : settled(room, amount, out, amounts);
      if (!meaning) {
        room.note({
          ...amount,
          stage: 'bare',
          rule: bareNumbers.name,
          outcome: 'dropped',
          why: evidence.why,
        });
        continue;
      }
      room.note({
        ...amount,
        stage: 'bare',
        rule: bareNumbers.name,
        outcome: 'read',
        why: `${evidence.why}; ${meaning.unit}, ${meaning.why}`,
      });
      out.push({
        ...amount,
        value: tidy(meaning.value),
        unit: meaning.unit,
        dimension: meaning.dimension,
        unitAssumed: true,
        ...(meaning.alternatives ? { alternatives: meaning.alternatives } : {}),
        ...(amount.plusMinus !== undefined && !amount.plusMinusUnit ? { plusMinusUnit: meaning.unit } : {}),
      });
    }
    return out;
  },
};
