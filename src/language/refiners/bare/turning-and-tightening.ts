/** Turns of a motor told behind its power, and torques told again of the fastenings that were tightened before. */
import { isPlural, isTradeNoun } from '../../lexicon/trade-nouns.ts';
import type { Amount, Room } from '../../rules/rule.ts';
import { wordAt } from '../../rules/rule.ts';
import { dimensionOfUnit } from '../../units/read-unit.ts';
import { saidBefore } from '../../units/said-before.ts';
import { kindOf } from '../../units/spoken-of.ts';
import type { Meaning } from './lengths.ts';
import { close, lastWithUnit, REMEMBERED } from './neighbours.ts';

const TURNS =
  /^(?:motor|motors|engine|spindle|shaft|countershaft|blower|fan|pump|lathe|grinder|saw|planer|thicknesser|mixer|compressor|drill|winch)$/;
/** What a motor of three phases is wired for: told bare behind its power it is a voltage. Common practice, no source. */
const MAINS: ReadonlySet<number> = new Set([380, 400, 415, 440, 460, 480, 575, 690]);
/** Rated turns of motors and engines a minute. Common practice, no source. */
const [SLOWEST, FASTEST] = [300, 36000];
/** Tokens back from a number to the machine that it is told of. */
const REACH = 14;

function machineBefore(room: Room, { from }: Amount): boolean {
  const sentence = room.tokens[from]?.sentence;
  for (let at = from - 1; at >= from - REACH && room.tokens[at]?.sentence === sentence; at--)
    if (TURNS.test(wordAt(room, at))) return true;
  return false;
}

const ends = (room: Room, at: number) => /^(?:|[.,;:!?]|and|but|so|or|now)$/.test(wordAt(room, at));

/** "The motor is one horse, seventeen twenty five": what it turns at, behind its power. */
export function asRatedTurns(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const { value, number, from, to } = amount;
  if (!Number.isInteger(value) || number.fraction || value < SLOWEST || value > FASTEST) return undefined;
  const power = lastWithUnit(room, out, amount, 0);
  if (power?.dimension !== 'power' || power.unitAssumed || !ends(room, to)) return undefined;
  const between = room.tokens.slice(power.to, from).map(({ word }) => word);
  if (between.length > 2 || !between.every((word) => /^(?:,|at|motor|engine|and)$/.test(word)))
    return undefined;
  const isNamed = machineBefore(room, amount) || between.some((word) => TURNS.test(word));
  // "Motor and fitting, one horse, 1200 quid all in": priced, and not turned.
  if (!isNamed || kindOf(room, amount)?.dimension === 'money') return undefined;
  if (MAINS.has(value) && !between.includes('at'))
    return { value, unit: 'V', dimension: 'voltage', why: 'the voltage of a motor, behind its power' };
  return { value, unit: 'rpm', dimension: 'speed', why: 'turns of a machine, behind its power' };
}

const FASTENING = /^(?:bolts?|nuts?|studs?|screws?|capscrews?|setscrews?|fastenings?|fasteners?|caps?|head)$/;
const PASS = /^(?:pass|passes|go|stage|round|time|pull|turn)$/;
const WHICH = /^(?:first|second|third|fourth|last|final|next)$/;
/** How far a torque told again, or that of the next pass, may be from the one before. */
const [AGAIN_BY, PASS_BY] = [1.6, 3];

/** "Sixty five on the head bolts": the fastening stands behind its number. */
function fasteningBehind(room: Room, { from, to }: Amount): boolean {
  if (!/^(?:on|for)$/.test(wordAt(room, to))) return false;
  const isSaidFirst = /^(?:|[.,;:!?]|and|but|now|then|later|so|at|to|says|'s)$/.test(wordAt(room, from - 1));
  const opens = room.tokens[from - 1]?.sentence !== room.tokens[from]?.sentence;
  return (isSaidFirst || opens) && [2, 3, 4].some((step) => FASTENING.test(wordAt(room, to + step)));
}

/** "Head bolts again, sixty five this time". */
function fasteningAgain(room: Room, { from, to }: Amount): boolean {
  const behind = wordAt(room, to) === 'this' && /^(?:time|go|round)$/.test(wordAt(room, to + 1));
  if (!behind && !ends(room, to)) return false;
  const before = wordAt(room, from - 1) === ',' ? from - 2 : from - 1;
  return (
    wordAt(room, before) === 'again' && [1, 2].some((step) => FASTENING.test(wordAt(room, before - step)))
  );
}

/** "Second pass, fifty", "third pass to sixty five": the next pull of bolts that are tightened in steps. */
function nextPass(room: Room, { from, to }: Amount): boolean {
  if (!ends(room, to)) return false;
  const at = /^(?:,|at|to)$/.test(wordAt(room, from - 1)) ? from - 2 : from - 1;
  return PASS.test(wordAt(room, at)) && WHICH.test(wordAt(room, at - 1));
}

/** "Sixty five bolts". */
const countsThings = (room: Room, at: number) => isTradeNoun(wordAt(room, at)) && isPlural(wordAt(room, at));

/** A torque told again of fastenings whose torque was told before, or of the next pass over them. */
export function asTorqueAgain(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const { value, number, to } = amount;
  if (number.fraction || value < 2 || value > 900 || countsThings(room, to)) return undefined;
  const isPass = nextPass(room, amount);
  if (!isPass && !fasteningBehind(room, amount) && !fasteningAgain(room, amount)) return undefined;
  const by = isPass ? PASS_BY : AGAIN_BY;
  const last = out.slice(-REMEMBERED).findLast((other) => other.dimension === 'torque' && !other.unitAssumed);
  const before = isPass ? undefined : saidBefore(room, amount);
  const known = before && dimensionOfUnit(before.unit) === 'torque' ? before.unit : undefined;
  const unit = last?.unit !== undefined && close(value, last.value, by) ? last.unit : known;
  return unit === undefined
    ? undefined
    : { value, unit, dimension: 'torque', why: 'the torque that its fastenings had before, told again' };
}
