import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';
import { SIZE_AFTER } from '../rules/size-words.ts';
import { dimensionOfUnit } from '../units/read-unit.ts';
import { saidBefore, saidOfAnything } from '../units/said-before.ts';

/** Fewest numbers that a list of parts has. */
const FEWEST = 3;

/** Most numbers and counts that are looked at for one sum: longer lists are no weighing up. */
const MOST = 40;

/** "Cabin, 410." "Stove 92,": a bare number that closes its part of the sentence. */
function listed(room: Room, amount: Amount | undefined): amount is Amount {
  if (!amount || amount.unit || amount.group || amount.number.fraction) return false;
  if (SIZE_AFTER.startingAt(room.tokens, amount.to) || amount.value < 2) return false;
  return /^(?:|[.,;:!?]|the|for|and|with|all|bare|empty|on|without|up)$/.test(wordAt(room, amount.to));
}

const near = (room: Room, a: Amount, b: Amount) =>
  (room.tokens[b.from]?.sentence ?? 0) - (room.tokens[a.from]?.sentence ?? 0) <= 3;

/** Words before a number that is the sum of two. */
const SUMS_UP = /^(?:that's|'s|makes|making|is|comes|to|total|altogether|of)$/;

/** Index of the number that is the sum of all the ones before it in the run, or undefined. */
function totalIn(room: Room, run: readonly Amount[]): number | undefined {
  let sum = 0;
  for (let index = 0; index < run.length; index++) {
    const value = run[index]?.value ?? 0;
    const fewest = SUMS_UP.test(wordAt(room, (run[index]?.from ?? 0) - 1)) && value >= 50 ? 2 : FEWEST;
    if (index >= fewest && Math.abs(sum - value) <= value * 0.001) return index;
    sum += value;
  }
  return undefined;
}

/** Unit, no length, that one of the parts had before under its own name. */
function unitOf(room: Room, run: readonly Amount[]): string | undefined {
  for (const amount of run) {
    const before = saidBefore(room, amount);
    const unit = before?.exact ? before.unit : saidOfAnything(room, amount.value);
    const dimension = unit && dimensionOfUnit(unit);
    if (unit && dimension && ADDS_UP.has(dimension)) return unit;
  }
  return weighed(room, run) ? massUnit(room, run) : undefined;
}

/** What is added up without its unit; cable sections, ratios and warmth are not. */
const ADDS_UP: ReadonlySet<string> = new Set([
  'mass',
  'power',
  'current',
  'charge',
  'energy',
  'volume',
  'money',
]);

const OF_WEIGHT =
  /^(?:weigh|weighs|weighed|weighing|weight|weights|bare|unladen|laden|payload|kilo|kilos|kg|pounds|lbs|tonne|tonnes|plate|plated|axle|heavy|heavier|lift|lifts|rated|carries|carry|load|loaded|scales|weighbridge|ballast)$/;
const AROUND = 14;

/** "She was 530 bare. Floor's 58, bed 96": words of weight among the parts or about their sum. */
function weighed(room: Room, run: readonly Amount[]): boolean {
  const [first, last] = [run[0], run[run.length - 1]];
  if (!first || !last) return false;
  return room.tokens
    .slice(Math.max(0, first.from - AROUND), last.to + AROUND)
    .some(({ word }) => OF_WEIGHT.test(word));
}

function massUnit(room: Room, run: readonly Amount[]): string {
  const most = Math.max(...run.map(({ value }) => value));
  const known = (room.context.knownFigures ?? []).findLast(
    ({ unit, value }) => /^(?:kg|lb)$/.test(unit) && value / most < 10 && most / value < 10,
  );
  return known?.unit ?? (room.house === 'us' ? 'lb' : 'kg');
}

/** "Deck, 690. Cabin, 410. Stove, 92. That's eleven ninety two": parts of a sum are of one kind. */
export const weighUps: Refiner = {
  name: 'parts that add up take one unit',
  refine(amounts, room) {
    const out = [...amounts];
    for (let start = 0; start < out.length; start++) {
      const run: { readonly amount: Amount; readonly at: number }[] = [];
      for (let index = start; index < Math.min(out.length, start + MOST); index++) {
        const amount = out[index];
        const last = run[run.length - 1]?.amount;
        // "Four bodies": how many they are is no part of the sum.
        if (amount?.role === 'count' && last) continue;
        if (!listed(room, amount) || (last && !near(room, last, amount))) break;
        run.push({ amount, at: index });
      }
      const parts = run.map(({ amount }) => amount);
      const total = totalIn(room, parts);
      const unit = total === undefined ? undefined : unitOf(room, parts);
      const dimension = unit && dimensionOfUnit(unit);
      if (total === undefined || !unit || !dimension) continue;
      for (const { amount, at } of run.slice(0, total + 1)) {
        out[at] = { ...amount, unit, dimension, unitAssumed: true };
        const why = `adds up with the others in ${unit}`;
        room.note({ ...amount, stage: 'refine', rule: weighUps.name, outcome: 'merged', why });
        start = at;
      }
    }
    return out;
  },
};
