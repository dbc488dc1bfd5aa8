/** Arithmetic on ranges: intervals in, intervals out, for functions that only rise or only fall with each input. */
import type { Given, Range } from './check.ts';

/** A quantity known exactly. */
export const exactRange = (value: number): Range => ({ low: value, mid: value, high: value });

/** A quantity that may be off by `spread` to either side. */
export const rangeAbout = (mid: number, spread: number): Range => ({
  low: mid - spread,
  mid,
  high: mid + spread,
});

export const sumOf = (parts: readonly Range[]): Range => ({
  low: parts.reduce((sum, part) => sum + part.low, 0),
  mid: parts.reduce((sum, part) => sum + part.mid, 0),
  high: parts.reduce((sum, part) => sum + part.high, 0),
});

export const less = (from: Range, part: Range): Range => ({
  low: from.low - part.high,
  mid: from.mid - part.mid,
  high: from.high - part.low,
});

export const times = (range: Range, factor: number): Range => {
  const ends = [range.low * factor, range.high * factor];
  return { low: Math.min(...ends), mid: range.mid * factor, high: Math.max(...ends) };
};

/**
 * The range of `f` over all ends of its inputs. Right for an `f` that is monotone in each input over the ranges, which
 * every caller must know of its `f`; inputs are at most a handful, since ends are tried in all combinations.
 */
export function rangeOf(f: (...values: number[]) => number, ...inputs: readonly Range[]): Range {
  let corners: number[][] = [[]];
  for (const { low, high } of inputs) {
    const ends = low === high ? [low] : [low, high];
    corners = corners.flatMap((corner) => ends.map((end) => [...corner, end]));
  }
  const values = corners.map((corner) => f(...corner));
  const mid = f(...inputs.map((input) => input.mid));
  return { low: Math.min(mid, ...values), mid, high: Math.max(mid, ...values) };
}

/** The one range of an input that must be there. Throws where a check forgot to name the input: a bug. */
export function one(given: Given, name: string): Range {
  const range = given.inputs.get(name)?.[0];
  if (!range) throw new Error(`check input ${name} was not given`);
  return range;
}

/** All ranges of an input that takes many; empty when it was not given. */
export const all = (given: Given, name: string): readonly Range[] => given.inputs.get(name) ?? [];

/** The range of an input that may be left out. */
export const maybe = (given: Given, name: string): Range | undefined => given.inputs.get(name)?.[0];
