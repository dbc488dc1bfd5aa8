/** What a bare number measures, other than a length: its thing, words about it, and what was said before tell. */
import { localMoney } from '../../rules/money.ts';
import { type Amount, type Room, wordAt } from '../../rules/rule.ts';
import { dimensionOfUnit } from '../../units/read-unit.ts';
import { saidBefore } from '../../units/said-before.ts';
import { type Kind, kindOf, usualUnit } from '../../units/spoken-of.ts';
import { asBreaker } from './breaker-sizes.ts';
import { asCableNamed, wiring } from './cable-sizes.ts';
import { asDampness, driedTo } from './dampness.ts';
import type { Evidence } from './evidence.ts';
import { asHeat } from './heat.ts';
import { type Meaning, TAPE_PARTS } from './lengths.ts';
import { close, REMEMBERED } from './neighbours.ts';
import { asPressure } from './pressures.ts';
import { asPrice } from './prices.ts';
import { asTurning } from './shaft-speeds.ts';
import { sizedAfter } from './sized-after.ts';
import { counts, ofAnother, saidAbove, saidAgain } from './units-said-before.ts';
import { asContents } from './vessel-contents.ts';
import { asWeight } from './weights.ts';

/** What the nearest telling word says that a bare number measures, in the unit that was said last for it. */
function asKind(
  room: Room,
  amount: Amount,
  kind: Kind | undefined,
  out: readonly Amount[],
): Meaning | undefined {
  if (!kind || sizedAfter(room, amount) || amount.number.fraction) return undefined;
  const last = out.slice(-REMEMBERED).findLast((other) => other.dimension === kind.dimension && other.unit);
  const money = kind.dimension === 'money' ? localMoney(room.region) : undefined;
  const unit =
    last?.unit && close(last.value, amount.value, 6)
      ? last.unit
      : (money ?? usualUnit(room, kind.dimension, amount.value));
  return unit ? { value: amount.value, unit, dimension: kind.dimension, why: kind.why } : undefined;
}

const FIXED = /^(?:screwed|nailed|tacked|stapled|clipped|strapped|bolted|riveted|pinned|pegged|tied)$/;
const CUT =
  /^(?:cut|cutting|sawn|sawing|planed|planing|trimmed|trimming|ripped|docked|shortened|lengthened|bored|drilled|turned|filed|ground|thicknessed)$/;

/** "Screwed every two hundred", "getting cut to 120": a spacing or a size, whatever its thing was told in before. */
function cutOrSpaced(room: Room, amount: Amount): boolean {
  const before = wordAt(room, amount.from - 1);
  if (before === 'every') return !/^(?:minute|minutes|hour|hours|day|days)$/.test(wordAt(room, amount.to));
  if (before === 'at' && FIXED.test(wordAt(room, amount.from - 2))) return amount.value >= 20;
  return before === 'to' && [2, 3, 4].some((back) => CUT.test(wordAt(room, amount.from - back)));
}

/** A measure other than a length, told by its thing, by words about it or by what was said before. */
export function otherKind(
  room: Room,
  amount: Amount,
  evidence: Evidence,
  out: readonly Amount[],
): Meaning | undefined {
  const told = asBreaker(room, amount) ?? asCableNamed(room, amount);
  if (told) return told;
  const heat = asHeat(room, amount, out);
  if (heat) return heat;
  const tape = amount.number.fraction && TAPE_PARTS.has(amount.number.denominator ?? 0);
  if (cutOrSpaced(room, amount)) return undefined;
  const dried = evidence.grade === 'none' ? undefined : driedTo(room, amount, out);
  if (dried) return dried;
  const before = evidence.grade === 'none' || tape ? undefined : saidBefore(room, amount);
  const thing = before && dimensionOfUnit(before.unit);
  if (before && thing && thing !== 'length' && !ofAnother(room, amount, before) && !counts(room, amount)) {
    return { ...before, dimension: thing, why: 'the unit that its thing was said in before' };
  }
  const above = evidence.grade === 'none' || tape ? undefined : saidAbove(room, amount, out);
  if (above) return above;
  const again = evidence.grade === 'none' || tape ? undefined : saidAgain(room, amount);
  if (again) return again;
  return (
    asPrice(room, amount) ??
    asKind(room, amount, kindOf(room, amount), out) ??
    asDampness(room, amount) ??
    asContents(room, amount) ??
    asPressure(room, amount) ??
    asTurning(room, amount, out) ??
    asWeight(room, amount, out) ??
    wiring(room, amount, out)
  );
}
