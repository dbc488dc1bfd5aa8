/** Words for what is left or short, said at the worst of the ranges, shared by every check that holds two sizes together. */
import type { Given, Range, Say } from './check.ts';

/** A nanometre: what adding metres in floating numbers may be off by, and nothing that a build could show. */
const NOISE = 1e-9;

/** Whether there is room at the worst. Noise of the arithmetic breaks nothing that is exactly full. */
export const isRoom = (left: Range): boolean => left.low >= -NOISE;

/** "12 mm left at worst (15 mm left as said)"; the part in brackets only where something is uncertain. */
export function roomWords(left: Range, say: Say): string {
  const worst = `${say(Math.abs(quiet(left.low)), 'length')} ${isRoom(left) ? 'left' : 'short'} at worst`;
  if (left.high - left.low < NOISE) return worst;
  const side = left.mid < -NOISE ? 'short' : 'left';
  return `${worst} (${say(Math.abs(quiet(left.mid)), 'length')} ${side} as said)`;
}

const quiet = (value: number): number => (Math.abs(value) < NOISE ? 0 : value);

/** The name behind one range of an input that takes many; its number where no name is known. */
export const labelOf = (given: Given, input: string, index: number): string =>
  given.labels?.get(input)?.[index] || `${input} ${index + 1}`;

/** Whether lists that go together have the same length; the sentence that says which have not. */
export function unpaired(given: Given, first: string, second: string): string | undefined {
  const [one, other] = [first, second].map((name) => given.inputs.get(name)?.length ?? 0);
  return one === other ? undefined : `${one} for ${first} and ${other} for ${second}: give as many of each`;
}

/** The room in the tightest of several places, whichever that turns out to be. */
export const leastOf = (rooms: readonly Range[]): Range => ({
  low: Math.min(...rooms.map(({ low }) => low)),
  mid: Math.min(...rooms.map(({ mid }) => mid)),
  high: Math.min(...rooms.map(({ high }) => high)),
});
