// A seeded sample: the same seed picks the same mutants of the same code.

/** Mulberry32, by Tommy Ettinger, public domain: small, and the same on every machine. */
function randomFrom(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** `count` of `all`, each with the same chance, in the order of the draw. */
export function sampleOf(all, count, seed) {
  const random = randomFrom(seed);
  const left = [...all];
  return Array.from({ length: Math.min(count, left.length) }, () => {
    const [one] = left.splice(Math.floor(random() * left.length), 1);
    return one;
  });
}
