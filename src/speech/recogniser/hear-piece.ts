/** Hears one piece of sound, and its halves where the recogniser stumbles. */
import type { HeardDoubt } from '../../language/heard/heard-doubts.ts';
import { isStuck, tooFast } from './evidence.ts';
import { quietestPlace } from './quiet-place.ts';
import { type Recognised, type TimedWord, tidy } from './recognised.ts';
import { SAMPLE_RATE } from './sample-rate.ts';

/** Text of one run of the recogniser, with its place inside the piece, in samples. */
export interface HeardPart {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** Where the model gives times: in seconds from the piece's beginning. */
  readonly words?: readonly TimedWord[];
  /** Where the model tells: by their place in the text. */
  readonly doubts?: readonly HeardDoubt[];
}

export type Recognise = (samples: Float32Array) => Promise<Recognised>;

const DEEPEST_HALVING = 3;
/** Shorter halves hold no whole words. */
const SHORTEST_HALF = SAMPLE_RATE;

/**
 * Hears `samples`. The recogniser sometimes returns nothing, or loops, on sound that is plainly speech; in halves
 * it hears the same sound well.
 */
export async function hearPiece(
  samples: Float32Array,
  recognise: Recognise,
  offset = 0,
  depth = 0,
): Promise<HeardPart[]> {
  const { text: said, words, doubts } = await recognise(samples);
  const text = tidy(said);
  const stumbled = text === '' || tooFast(text, samples.length / SAMPLE_RATE) || isStuck(text);
  if (!stumbled || depth === DEEPEST_HALVING || samples.length < 2 * SHORTEST_HALF) {
    const timed = words ? { words: later(words, offset / SAMPLE_RATE) } : {};
    return [{ start: offset, end: offset + samples.length, text, ...timed, ...(doubts ? { doubts } : {}) }];
  }
  const cut = quietestPlace(samples, Math.floor(samples.length * 0.3), Math.ceil(samples.length * 0.7));
  const left = await hearPiece(samples.subarray(0, cut), recognise, offset, depth + 1);
  const right = await hearPiece(samples.subarray(cut), recognise, offset + cut, depth + 1);
  return [...left, ...right];
}

/** The same words, so many seconds later. */
export function later(words: readonly TimedWord[], seconds: number): readonly TimedWord[] {
  return words.map(({ text, startSeconds, endSeconds }) => ({
    text,
    startSeconds: startSeconds + seconds,
    endSeconds: endSeconds + seconds,
  }));
}
