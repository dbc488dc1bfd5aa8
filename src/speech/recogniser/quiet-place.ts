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
  let best = energies.length >> 1;
  let lowest = Number.POSITIVE_INFINITY;
  for (let place = 0; place + BLUR <= energies.length; place++) {
    let sum = 0;
    for (let i = place; i < place + BLUR; i++) sum += energies[i] ?? 0;
    if (sum < lowest) {
      lowest = sum;
      best = place + (BLUR >> 1);
    }
  }
  return from + best * FRAME;
}
