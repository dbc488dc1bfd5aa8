/** Finds where to cut sound without cutting a word. */

const FRAME = 160;
/** Frames of the moving mean: 150 ms hold a short pause. */
const BLUR = 15;

/** Index of the quietest place between `from` and `to`. */
export function quietestPlace(samples: Float32Array, from: number, to: number): number {
  const energies: number[] = [];
  for (let at = from; at + FRAME <= to; at += FRAME) {
    let sum = 0;
    for (let i = at; i < at + FRAME; i++) sum += (samples[i] ?? 0) ** 2;
    energies.push(sum);
  }
  // In digital silence many places are equal: the middle of them is furthest from any word.
  let first = energies.length >> 1;
  let last = first;
  let lowest = Number.POSITIVE_INFINITY;
  for (let place = 0; place + BLUR <= energies.length; place++) {
    let sum = 0;
    for (let i = place; i < place + BLUR; i++) sum += energies[i] ?? 0;
    const middle = place + (BLUR >> 1);
    if (sum < lowest) {
      lowest = sum;
      first = middle;
      last = middle;
    } else if (sum === lowest && middle === last + 1) last = middle;
  }
  return from + ((first + last) >> 1) * FRAME;
}
