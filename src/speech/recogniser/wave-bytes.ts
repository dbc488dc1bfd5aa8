import { waveHeader } from '../microphone/wave-header.ts';

/** A piece of sound as a WAV file of 16 bit, with silence behind it up to `leastSamples`. */
export function waveBytes(samples: Float32Array, leastSamples = 0): Uint8Array {
  const length = Math.max(samples.length, Math.ceil(leastSamples));
  const header = waveHeader('', length);
  const bytes = new Uint8Array(header.length + 2 * length);
  bytes.set(header);
  const view = new DataView(bytes.buffer, header.length);
  samples.forEach((sample, at) => {
    view.setInt16(2 * at, Math.round(Math.max(-1, Math.min(1, sample)) * 32_767), true);
  });
  return bytes;
}
