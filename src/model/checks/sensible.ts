/**
 * What makes sense for an input of a check. Nought, a negative size, a number that is none and a size beyond anything
 * in a build are slips of the tongue or the finger, and a number worked out from one would be believed.
 */
import type { CheckInput, Range, Say } from './check.ts';

/**
 * Most that a build has of a kind, in its base unit. Common practice, no source: set well above what a house, a boat
 * or a van needs, so that what is beyond it is a slip.
 */
const USUAL_MOST: Readonly<Record<string, number>> = {
  length: 50,
  angle: 360,
  area: 2000,
  volume: 200,
  mass: 50_000,
  // Lead is 11,340 kilograms to the cubic metre.
  density: 12_000,
  voltage: 1000,
  current: 2000,
  charge: 5000,
  power: 200_000,
  energy: 1_000_000,
  pressure: 100_000_000,
  torque: 5000,
  // Five years.
  time: 5 * 365 * 86_400,
  ratio: 10_000,
  frequency: 60_000,
  speed: 100,
  // From -100 to 1,500 degrees, in kelvin: see COLDEST.
  temperature: 1773.15,
  'temperature difference': 1000,
};
const COLDEST = 173.15;

/** The most that makes sense for an input, in the base unit of its kind. */
export const mostOf = (input: CheckInput): number =>
  input.most ?? USUAL_MOST[input.kind] ?? Number.POSITIVE_INFINITY;

/** Why an input makes no sense, in a sentence that offers what may have been meant; undefined when it does. */
export function nonsense(input: CheckInput, range: Range, say: Say): string | undefined {
  const { low, mid, high } = range;
  if (![low, mid, high].every(Number.isFinite)) return 'that is no number';
  const inWords = (base: number) => say(base, input.kind, input.unit);
  const said = inWords(mid);
  if (input.kind === 'temperature' && low < COLDEST) return `${said} is colder than any place to work in`;
  if (!input.anySign) {
    if (mid < 0) return `${said} is less than nothing: ${inWords(-mid)}?`;
    if (mid === 0 && !input.nought) return `${said} is nothing: give its size`;
    if (low < 0 || (low === 0 && !input.nought))
      return `${said} may be nothing at all: its tolerance is as large as itself`;
  }
  if (input.isFall && mid > 0 && mid < FLATTEST) {
    const meant = [10, 100, 1000].map((slip) => mid * slip).filter((share) => share >= LEAST_MEANT);
    const offers = meant.map((share) => `1 in ${Math.round(1 / share)}`);
    return `1 in ${Math.round(1 / mid)} is as good as level${offers.length > 0 ? `: ${orList(offers)}?` : ''}`;
  }
  const most = mostOf(input);
  if (Math.abs(mid) <= most) return undefined;
  const meant = offersFor(mid, most).map(inWords);
  const than = input.most === undefined ? 'anything in a build' : `the ${inWords(most)} that makes sense`;
  return `${said} is more than ${than}${meant.length > 0 ? `: ${orList(meant)}?` : ''}`;
}

/** Flatter than one in a thousand nothing is laid, and nothing drains. Common practice, no source. */
const FLATTEST = 1 / 1000;
/** A fall that somebody may have meant. */
const LEAST_MEANT = 1 / 500;

/** A point in the wrong place by one or two, and a unit a thousand times too large. */
const SLIPS = [10, 100, 1000];

const offersFor = (value: number, most: number): readonly number[] =>
  SLIPS.map((slip) => value / slip).filter((offer) => Math.abs(offer) <= most);

const orList = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')}, or ${words[words.length - 1]}`;
