/** What adding and multiplying in floats leaves behind: 562 - 558 - 4 mm is no room short. */
const NOISE = 1e-9;

/** Whether a value is at least another, to within what the arithmetic itself leaves behind. */
export const isAtLeast = (value: number, least: number): boolean =>
  value >= least - NOISE * Math.max(1, Math.abs(value), Math.abs(least));
