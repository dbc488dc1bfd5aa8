import type { ReadContext } from '../notes.ts';
import type { Amount, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';
import { dimensionOfUnit } from './read-unit.ts';

/** A figure that stood before this memo, or was said earlier in it, with the words of its thing. */
interface Before {
  readonly value: number;
  readonly unit: string;
}

/** A bare number in the unit of an older figure of its thing. */
export interface SaidBefore {
  readonly unit: string;
  readonly value: number;
  /** The old figure had the same value. */
  readonly exact?: boolean;
  /** Token of the thing that it was said of. */
  readonly at?: number;
}

/** Words of an item's name that other items share too often to tell them apart. */
const COMMON =
  /^(?:new|old|top|bottom|front|back|rear|left|right|side|sides|inside|outside|main|first|second|big|small|one|and|the|with|for|from|over|size|cut|each|floor|wall|long|short)$/;

const stem = (word: string) => word.replace(/(?:'s|ies|es|s)$/, '');

const INDEXES = new WeakMap<ReadContext, ReadonlyMap<string, readonly Before[]>>();

/** Known figures by the words of their things; built once for a memo. */
function knownByWord(context: ReadContext): ReadonlyMap<string, readonly Before[]> {
  const kept = INDEXES.get(context);
  if (kept) return kept;
  const index = new Map<string, Before[]>();
  for (const { item, value, unit } of context.knownFigures ?? []) {
    // Prices and times are said of a thing once; they lend nothing.
    const dimension = dimensionOfUnit(unit);
    if (!dimension || dimension === 'money' || dimension === 'time') continue;
    for (const word of new Set(item.toLowerCase().split(/[^\p{L}]+/u))) {
      if (word.length < 3 || COMMON.test(word)) continue;
      const list = index.get(stem(word)) ?? [];
      list.push({ value, unit });
      index.set(stem(word), list);
    }
  }
  INDEXES.set(context, index);
  return index;
}

/** Unit of an older figure of any thing with just this value, the latest one. */
export function saidOfAnything(room: Room, value: number): string | undefined {
  const known = room.context.knownFigures ?? [];
  for (let index = known.length - 1; index >= 0; index--) {
    if (known[index]?.value === value) return known[index]?.unit;
  }
  return undefined;
}

/** How far one value may be from another and still be said of the same thing. */
const near = (a: number, b: number, factor: number) => a > 0 && b > 0 && a / b <= factor && b / a <= factor;

const BACK = 12;
const ON = 7;

/**
 * The unit that a bare number takes because its thing was measured in it before: "the fuse stays at three hundred"
 * after three hundred amps. The nearest word of a known thing decides; the value must be near the old one.
 * `value` is the number in that unit, when people say hundredths of it: "four twenty" of a room of 4.2 m.
 */
export function saidBefore(room: Room, amount: Amount): SaidBefore | undefined {
  const known = knownByWord(room.context);
  if (known.size === 0) return undefined;
  const sentence = room.tokens[amount.from]?.sentence;
  for (let step = 1; step <= BACK; step++) {
    for (const index of [amount.from - step, step <= ON ? amount.to - 1 + step : -1]) {
      const token = room.tokens[index];
      if (token?.kind !== 'word' || token.sentence !== sentence) continue;
      const found = fitting(amount, known.get(stem(wordAt(room, index))) ?? []);
      if (found) return { ...found, at: index };
    }
  }
  return undefined;
}

function fitting(amount: Amount, known: readonly Before[]): SaidBefore | undefined {
  const exact = known.find((figure) => near(amount.value, figure.value, 1.0001));
  if (exact) return { unit: exact.unit, value: amount.value, exact: true };
  let best: { unit: string; value: number; off: number } | undefined;
  for (const figure of known) {
    const hundredths = figure.unit === 'm' && amount.number.splitAfter === 1 && amount.value >= 100;
    const value = hundredths ? amount.value / 100 : amount.value;
    if (!near(value, figure.value, 1.6)) continue;
    const off = Math.abs(Math.log(value / figure.value));
    if (!best || off < best.off) best = { unit: figure.unit, value, off };
  }
  return best && { unit: best.unit, value: best.value };
}
