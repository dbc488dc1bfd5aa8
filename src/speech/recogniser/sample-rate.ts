/** Hertz, one channel: what voice activity and recogniser take. */
export const SAMPLE_RATE = 16_000;
