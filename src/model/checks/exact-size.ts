/** Sizes as exact rationals, where a float would decide a whole number wrongly. */
import Fraction from 'fraction.js';

/**
 * A size in metres as the rational it was said as. Twelve decimals hold every sixty-fourth of an inch exactly (1/64 in
 * is 0.000396875 m) and drop what adding and taking away in floats leaves behind.
 */
export const exactSize = (metres: number): Fraction => new Fraction(metres.toFixed(12));

/** The whole number of a range that must be one ("four shelves"); undefined when it is none or not exactly known. */
export function wholeNumber(range: { readonly low: number; readonly high: number }): number | undefined {
  const [low, high] = [range.low, range.high].map((end) => Number(end.toFixed(9)));
  return low === high && Number.isInteger(low) ? low : undefined;
}
