/**
 * Times that a product's data sheet gives, carried to another temperature. The data sheet's figure is always one that
 * was given: there is no time of our own for anything.
 */
import type { CheckInput, Given, Range } from './check.ts';
import { isAtLeast } from './noise.ts';
import { maybe, rangeOf } from './ranges.ts';

/** Kelvin over which the rate doubles. */
const DOUBLES_OVER = 10;

/**
 * Seconds at `temperature` of what takes `seconds` at `sheet`, both in kelvin: a rule of thumb, that the rate doubles
 * for every 10 degrees warmer and halves for every 10 cooler.
 * Formula: seconds x 2^((sheet - temperature) / 10). Source: half or double per 10 °C (18 °F), as on
 * https://experts123.com/q/how-does-temperature-variation-effect-epoxy.html
 */
export const timeAt = (seconds: Range, sheet: Range, temperature: Range): Range =>
  rangeOf((time, from, to) => time * 2 ** ((from - to) / DOUBLES_OVER), seconds, sheet, temperature);

export const THUMB_FORMULA = 'time x 2^((data sheet temperature - temperature) / 10 °C)';
export const THUMB_SOURCE =
  'rule of thumb, half or double per 10 °C (18 °F): https://experts123.com/q/how-does-temperature-variation-effect-epoxy.html; the data sheet goes first';

/** What every time window takes beside its times. */
export const WARMTH_INPUTS: readonly CheckInput[] = [
  {
    name: 'data sheet temperature',
    kind: 'temperature',
    says: 'temperature that the data sheet gives the time for',
    optional: true,
  },
  { name: 'temperature', kind: 'temperature', says: 'temperature of the work', optional: true },
  {
    name: 'least temperature',
    kind: 'temperature',
    says: 'least that the product takes, from its data sheet',
    optional: true,
  },
];

export const ELAPSED: CheckInput = {
  name: 'elapsed',
  kind: 'time',
  says: 'time gone since it was put on or mixed',
  optional: true,
  nought: true,
};

export interface Warmth {
  /** Carries a time of the data sheet to the temperature of the work; leaves it where either is not known. */
  readonly carry: (seconds: Range) => Range;
  readonly notes: readonly string[];
  /** Why no time may be worked out: colder than the product takes. */
  readonly tooCold?: string;
}

/** What the temperatures given do to a time. What was not given is said, and nothing stands in for it. */
export function warmthOf(given: Given): Warmth {
  const [sheet, least] = [maybe(given, 'data sheet temperature'), maybe(given, 'least temperature')];
  const temperature = maybe(given, 'temperature');
  const notes: string[] = [];
  const carried = sheet && temperature;
  if (!carried) notes.push(notCarried(sheet, temperature));
  else if (!sameDegree(sheet, temperature)) notes.push(thumbNote(given, sheet, temperature));
  if (!least) notes.push("the product's least temperature was not given, and so not looked at");
  else if (!temperature) notes.push("the work's temperature was not held against the product's least");
  const cold = least && temperature && !isAtLeast(temperature.low, least.high);
  return {
    carry: (seconds) => (carried ? timeAt(seconds, sheet, temperature) : seconds),
    notes,
    ...(cold ? { tooCold: tooCold(given, temperature, least) } : {}),
  };
}

function notCarried(sheet: Range | undefined, temperature: Range | undefined): string {
  if (!sheet && !temperature) return 'no temperatures were given: the time is as the data sheet has it';
  const which = sheet ? 'of the work' : 'that the data sheet gives it for';
  return `the temperature ${which} was not given: the time is as the data sheet has it`;
}

const sameDegree = (left: Range, right: Range): boolean => left.low === right.high && left.high === right.low;

const thumbNote = ({ say }: Given, sheet: Range, temperature: Range): string =>
  `from ${say(sheet.mid, 'temperature')} to ${say(temperature.mid, 'temperature')} by a rule of thumb, half or double per 10 °C: the data sheet goes first`;

function tooCold({ say }: Given, temperature: Range, least: Range): string {
  const [at, floor] = [say(temperature.low, 'temperature'), say(least.high, 'temperature')];
  return `${at} is below the ${floor} that the product takes at least: no time is worked out`;
}
