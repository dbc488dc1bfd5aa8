/** Sound made in the test itself, and its comparison. Samples run from -1 to 1. */

/** A repeatable stand-in for chance: the same seed gives the same noise. */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A tone that climbs from 200 Hz to 1500 Hz: every shift against itself shows. */
export function risingTone(seconds: number, sampleRate: number): Float32Array {
  return Float32Array.from({ length: Math.round(seconds * sampleRate) }, (_, i) => {
    const time = i / sampleRate;
    return 0.5 * Math.sin(2 * Math.PI * (200 * time + (1300 / (2 * seconds)) * time * time));
  });
}

export function whiteNoise(seconds: number, sampleRate: number, loudness = 0.3): Float32Array {
  const next = chance(7);
  return Float32Array.from({ length: Math.round(seconds * sampleRate) }, () => (next() * 2 - 1) * loudness);
}

/** Hammer blows: bursts of noise that die away, a little under one each second. */
export function hammering(seconds: number, sampleRate: number): Float32Array {
  const next = chance(11);
  return Float32Array.from({ length: Math.round(seconds * sampleRate) }, (_, i) => {
    const sinceBlow = (i / sampleRate) % 0.8;
    return (next() * 2 - 1) * 0.9 * Math.exp(-sinceBlow * 25);
  });
}

/** A motor: a low tone with overtones, slowly beating. */
export function motor(seconds: number, sampleRate: number): Float32Array {
  return Float32Array.from({ length: Math.round(seconds * sampleRate) }, (_, i) => {
    const time = i / sampleRate;
    const beat = 0.7 + 0.3 * Math.sin(2 * Math.PI * 1.3 * time);
    return [1, 2, 3, 5].reduce(
      (sum, n) => sum + (0.15 / n) * beat * Math.sin(2 * Math.PI * 90 * n * time),
      0,
    );
  });
}

export function joined(parts: readonly Float32Array[]): Float32Array {
  const whole = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Likeness of two sounds from -1 to 1, at the best shift of at most `shift` samples. */
export function correlation(a: Float32Array, b: Float32Array, shift = 0): number {
  let best = -1;
  for (let lag = -shift; lag <= shift; lag++) best = Math.max(best, correlationAt(a, b, lag));
  return best;
}

function correlationAt(a: Float32Array, b: Float32Array, lag: number): number {
  let ab = 0;
  let aa = 0;
  let bb = 0;
  for (let i = Math.max(0, -lag); i < Math.min(a.length, b.length - lag); i++) {
    const x = a[i] ?? 0;
    const y = b[i + lag] ?? 0;
    ab += x * y;
    aa += x * x;
    bb += y * y;
  }
  return ab / Math.sqrt(aa * bb || 1);
}
