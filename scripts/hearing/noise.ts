/** Noise of a place of work, made from numbers: the same seed gives the same noise. */

export const NOISES = ['brown', 'hum', 'saw'] as const;
export type Noise = (typeof NOISES)[number];

/** Noise at so many decibels below the speech. */
export interface NoiseLevel {
  readonly noise: Noise;
  readonly decibels: number;
}

const RATE = 16_000;

/** Numbers between 0 and 1, the same for the same seed (mulberry32). */
function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Noise of the given length in samples at 16 kHz; its level is set when it is mixed. */
export function makeNoise(noise: Noise, length: number, seed = 1): Float32Array {
  const random = numbersFrom(seed);
  const white = () => random() * 2 - 1;
  const sound = new Float32Array(length);
  if (noise === 'brown') {
    let level = 0;
    for (let at = 0; at < length; at++) sound[at] = level = (level + 0.02 * white()) / 1.02;
  } else if (noise === 'hum') {
    // Mains at 50 Hz with the overtones of a transformer.
    for (let at = 0; at < length; at++) {
      const turn = (2 * Math.PI * 50 * at) / RATE;
      sound[at] =
        Math.sin(turn) + 0.6 * Math.sin(2 * turn) + 0.4 * Math.sin(4 * turn) + 0.2 * Math.sin(6 * turn);
    }
  } else {
    // A circular saw: teeth at 780 Hz with their overtones, air, and a load that comes and goes.
    for (let at = 0; at < length; at++) {
      const seconds = at / RATE;
      const load = 0.7 + 0.3 * Math.sin(2 * Math.PI * 0.4 * seconds);
      const phase = (seconds * (780 + 20 * load)) % 1;
      sound[at] = load * ((2 * phase - 1) * 0.6 + 0.5 * white());
    }
  }
  return sound;
}

/** Mean power of the parts with speech in them: frames of 20 ms within 30 dB of the loudest. */
function speechPower(sound: Float32Array): number {
  const frame = RATE / 50;
  const powers: number[] = [];
  for (let from = 0; from + frame <= sound.length; from += frame) {
    let sum = 0;
    for (let at = from; at < from + frame; at++) sum += (sound[at] ?? 0) ** 2;
    powers.push(sum / frame);
  }
  const loudest = Math.max(1e-12, ...powers.slice(0, 100_000));
  const loud = powers.filter((power) => power > loudest / 1000);
  return loud.reduce((sum, power) => sum + power, 0) / Math.max(1, loud.length);
}

/** Speech with noise so many decibels below it. */
export function withNoise(speech: Float32Array, { noise, decibels }: NoiseLevel): Float32Array {
  const noisy = makeNoise(noise, speech.length);
  let power = 0;
  for (const sample of noisy) power += sample ** 2;
  power /= Math.max(1, noisy.length);
  const gain = Math.sqrt(speechPower(speech) / 10 ** (decibels / 10) / power);
  return speech.map((sample, at) => sample + gain * (noisy[at] ?? 0));
}
