/** Sound with stretches of it made silent. */
import { SAMPLE_RATE } from './recogniser/sample-rate.ts';

/** In seconds from the beginning. */
interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The same pieces, with nothing but silence in the stretches; what the generator returns is passed on. */
export async function* silencing<R>(
  pieces: AsyncGenerator<Float32Array, R>,
  stretches: readonly Stretch[],
): AsyncGenerator<Float32Array, R> {
  let at = 0;
  try {
    for (let next = await pieces.next(); ; next = await pieces.next()) {
      if (next.done) return next.value;
      const piece = stretches.length === 0 ? next.value : next.value.slice();
      for (const { from, to } of stretches)
        piece.fill(
          0,
          place(from * SAMPLE_RATE - at, piece.length),
          place(to * SAMPLE_RATE - at, piece.length),
        );
      at += piece.length;
      yield piece;
    }
  } finally {
    await pieces.return(undefined as R);
  }
}

const place = (sample: number, length: number) => Math.min(length, Math.max(0, Math.round(sample)));
