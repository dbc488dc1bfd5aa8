/** Turns native sound into one unbroken stream at 16 kHz whose clock is the recording's own. */
import type { LinearResampler } from 'sherpa-onnx-node';
import type { NativeSound } from './native-sound.ts';

export const SAMPLE_RATE = 16_000;
/** Below this a jump of the clock is rounding in the container, not a pause. */
const SMALLEST_GAP_SECONDS = 0.25;
/** A longer jump is a broken time stamp, not a pause. */
const LONGEST_GAP_SECONDS = 6 * 3600;

/** Yields pieces of 16 kHz mono. Pauses of the recorder become silence, so that times stay true. */
export async function* steadySound(sound: AsyncIterable<NativeSound>): AsyncGenerator<Float32Array> {
  let resampler: LinearResampler | undefined;
  let rate = 0;
  let clockSeconds = 0;
  for await (const piece of sound) {
    if (piece.sampleRate !== rate) {
      if (resampler) yield* nonEmpty(resampler.flush(new Float32Array()));
      rate = piece.sampleRate;
      resampler = rate === SAMPLE_RATE ? undefined : await makeResampler(rate);
    }
    const gap = piece.startSeconds - clockSeconds;
    const feed = (samples: Float32Array) => (resampler ? resampler.resample(samples) : samples);
    if (gap > SMALLEST_GAP_SECONDS && gap < LONGEST_GAP_SECONDS) {
      for (const silence of silences(Math.round(gap * rate), rate)) yield* nonEmpty(feed(silence));
      clockSeconds = piece.startSeconds;
    }
    yield* nonEmpty(feed(piece.samples));
    clockSeconds += piece.samples.length / rate;
  }
  if (resampler) yield* nonEmpty(resampler.flush(new Float32Array()));
}

async function makeResampler(rate: number): Promise<LinearResampler> {
  const { default: sherpa } = await import('sherpa-onnx-node');
  return new sherpa.LinearResampler(rate, SAMPLE_RATE);
}

function* silences(count: number, longest: number): Generator<Float32Array> {
  for (let left = count; left > 0; left -= longest) yield new Float32Array(Math.min(left, longest));
}

function* nonEmpty(samples: Float32Array): Generator<Float32Array> {
  if (samples.length > 0) yield samples;
}
