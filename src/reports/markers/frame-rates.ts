/** Frame rates as editors know them, and times exact to the frame. */

/** Frames a second as a fraction: 24000/1001 is what is called 23.976. */
export interface FrameRate {
  readonly numerator: number;
  readonly denominator: number;
}

/** Rates of film and video; those over 1001 come from colour television in 525 lines. Common practice, no source. */
const STANDARD: readonly FrameRate[] = [24, 25, 30, 48, 50, 60, 100, 120].flatMap((whole) => [
  { numerator: whole, denominator: 1 },
  ...(whole % 25 === 0 ? [] : [{ numerator: whole * 1000, denominator: 1001 }]),
]);

/** Half of the way between a whole rate and its 1000/1001. */
const NEAR = 0.0005;

export const rateOf = ({ numerator, denominator }: FrameRate): number => numerator / denominator;

/** The standard rate that a measured or written one means (23.98, 29.97); nothing where it is near none. */
export function standardRate(framesPerSecond: number): FrameRate | undefined {
  return STANDARD.find((rate) => Math.abs(framesPerSecond / rateOf(rate) - 1) < NEAR);
}

/** A rate as it is: the standard one where it is near one, else to the thousandth of a frame. */
export function measuredRate(framesPerSecond: number): FrameRate {
  return (
    standardRate(framesPerSecond) ?? {
      numerator: Math.max(1, Math.round(framesPerSecond * 1000)),
      denominator: 1000,
    }
  );
}

/** Reads a rate as a person writes it: `25`, `29.97`, `24000/1001`. */
export function readRate(text: string): FrameRate | undefined {
  const fraction = /^(\d{1,6})\/(\d{1,4})$/.exec(text);
  const value = fraction
    ? Number(fraction[1]) / Number(fraction[2])
    : /^\d{1,3}(\.\d{1,6})?$/.test(text)
      ? Number(text)
      : 0;
  return value >= 1 && value <= 1000 ? measuredRate(value) : undefined;
}

/**
 * The frame that is seen at a time, from 0. A time that stands on the edge of a frame, rounded to the microsecond, is
 * that frame and not the one before it.
 */
export function frameAt(seconds: number, { numerator, denominator }: FrameRate): number {
  const microseconds = BigInt(Math.max(0, Math.round(seconds * 1e6)) + 1);
  return Number((microseconds * BigInt(numerator)) / (BigInt(denominator) * 1_000_000n));
}
