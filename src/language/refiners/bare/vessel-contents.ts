/** Bare numbers that tell what a tank or another vessel holds. */
import { type Amount, type Room, wordAt } from '../../rules/rule.ts';
import { usualUnit } from '../../units/spoken-of.ts';
import { evidenceAfter } from './evidence.ts';
import type { Meaning } from './lengths.ts';

const VESSELS =
  /^(?:tank|tanks|cistern|bladder|drum|drums|barrel|barrels|bucket|buckets|sump|boiler|cylinder|bowser|jerrycan|jerrycans|butt)$/;

/** "The tank holds ninety": what goes into a vessel. */
export function asContents(room: Room, amount: Amount): Meaning | undefined {
  const verb = [1, 2].find((back) =>
    /^(?:holds|held|hold|takes|took)$/.test(wordAt(room, amount.from - back)),
  );
  if (amount.number.fraction || evidenceAfter(room, amount)) return undefined;
  if (inTank(room, amount)) {
    const litres = usualUnit(room, 'volume', amount.value);
    if (litres) return { value: amount.value, unit: litres, dimension: 'volume', why: 'what is in a tank' };
  }
  if (verb === undefined) return vesselOf(room, amount);
  const subject =
    [1, 2, 3].some((back) => VESSELS.test(wordAt(room, amount.from - verb - back))) ||
    placedVessel(room, amount.from - verb);
  const unit = usualUnit(room, 'volume', amount.value);
  if (!subject || !unit) return undefined;
  return { value: amount.value, unit, dimension: 'volume', why: 'what a vessel holds' };
}

/** "The tank in the loft holds 230", "the drum under the bench": the vessel, where it is, and the verb at `verb`. */
const placedVessel = (room: Room, verb: number): boolean =>
  [3, 4, 5].some(
    (back) =>
      /^(?:in|on|under|behind|over|at|by)$/.test(wordAt(room, verb - back)) &&
      VESSELS.test(wordAt(room, verb - back - 1)),
  );

/** "I've got ninety in the diesel tank": so much of what the tank is for. */
function inTank(room: Room, amount: Amount): boolean {
  if (amount.value < 10 || wordAt(room, amount.to) !== 'in') return false;
  if (!/^(?:the|my|each|our)$/.test(wordAt(room, amount.to + 1))) return false;
  const at = [2, 3, 4].find((step) =>
    /^(?:tank|tanks|bladder|cistern)$/.test(wordAt(room, amount.to + step)),
  );
  return (
    at !== undefined &&
    /^(?:got|have|'ve|has|is|'s|put|only|about|left|another)$/.test(wordAt(room, amount.from - 1))
  );
}

/** Tanks of boats and vans: "the fresh tank's 90, the grey's 60". Larger bare numbers are lengths. */
function vesselOf(room: Room, amount: Amount): Meaning | undefined {
  const be = /^(?:'s|is|was)$/.test(wordAt(room, amount.from - 1))
    ? 1
    : /^(?:'s|is|was)$/.test(wordAt(room, amount.from - 2)) && wordAt(room, amount.from - 1) === 'a'
      ? 2
      : 0;
  const thing = wordAt(room, amount.from - 1 - be);
  const water = /^(?:fresh|grey|gray|black|waste|diesel|water|fuel|header|holding)$/;
  const tank = /^tanks?$/.test(thing) && water.test(wordAt(room, amount.from - 2 - be));
  const fellow = be === 1 && /^(?:fresh|grey|gray|black)$/.test(thing);
  if (be === 0 || !(tank || fellow) || amount.value < 15 || amount.value > 320) return undefined;
  const unit = usualUnit(room, 'volume', amount.value);
  return unit ? { value: amount.value, unit, dimension: 'volume', why: 'what a tank holds' } : undefined;
}
