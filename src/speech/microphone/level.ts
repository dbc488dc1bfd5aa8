/** How loud a piece of sound is. Pure; samples are signed 16-bit. */

/** Decibels below full scale. Nothing is quieter than `SILENCE`. */
export interface SoundLevel {
  /** Of the mean power. 0 is that of a full-scale sine, as AES17 has it (from memory). */
  readonly rms: number;
  /** Of the loudest sample. 0 is full scale. */
  readonly peak: number;
}

/** The level of digital silence, one step of 16 bits being at -90. */
export const SILENCE = -96;

const FULL_SCALE = 32_768;
/** A full-scale sine has half the power of a full-scale square. */
const SINE_OVER_SQUARE = 10 * Math.log10(2);

/** Level of `samples`; without samples it is silence. */
export function levelOf(samples: Int16Array): SoundLevel {
  let power = 0;
  let loudest = 0;
  for (const sample of samples) {
    power += sample * sample;
    loudest = Math.max(loudest, Math.abs(sample));
  }
  const mean = power / Math.max(1, samples.length) / FULL_SCALE ** 2;
  return {
    rms: decibels(10 * Math.log10(mean) + SINE_OVER_SQUARE),
    peak: decibels(20 * Math.log10(loudest / FULL_SCALE)),
  };
}

const decibels = (value: number) => Math.max(SILENCE, Math.round(value * 10) / 10);

/** Talk into a microphone at arm's length lies between these. Common practice, no source. */
const METER_FROM = -60;
/** So near to full scale that louder words will be cut off. */
const TOO_LOUD = -1;

/** How many of `cells` of a meter are lit, and a word where the level is no good for hearing. */
export function meter(level: SoundLevel, cells: number): { readonly lit: number; readonly word?: string } {
  const share = (level.peak - METER_FROM) / -METER_FROM;
  const lit = Math.round(Math.min(1, Math.max(0, share)) * cells);
  if (level.peak >= TOO_LOUD) return { lit, word: 'too loud' };
  return level.peak <= SILENCE ? { lit, word: 'no sound' } : { lit };
}
