/** Turns "heard so far" into progress a person can read. */
import type { TakeProgress } from './transcript.ts';

/** Earlier guesses of the time that is left are noise. */
const FIRST_GUESS_SECONDS = 1;

export interface TakeTally {
  /** `words` of the latest utterance, where there was one. */
  heardUntil(seconds: number, words?: string): void;
  heardAll(): void;
}

/** A length of 0 means that the file states none: then the fraction stays at 0 until the end. */
export function startTally(
  durationSeconds: number,
  onProgress: ((progress: TakeProgress) => void) | undefined,
  clock: () => number = () => performance.now() / 1000,
): TakeTally {
  let words: string | undefined;
  let firstSound: number | undefined;
  const tell = (fraction: number, remaining: { remainingSeconds?: number }) => {
    const heard =
      words === undefined ? { stage: 'listening' as const } : { stage: 'transcribing' as const, words };
    onProgress?.({ ...heard, fraction, ...remaining });
  };
  onProgress?.({ stage: 'decoding', fraction: 0 });
  return {
    heardUntil(seconds, latest) {
      words = latest ?? words;
      const now = clock();
      firstSound ??= now;
      const fraction = durationSeconds > 0 ? Math.min(1, seconds / durationSeconds) : 0;
      const elapsed = now - firstSound;
      const known = fraction > 0 && elapsed >= FIRST_GUESS_SECONDS;
      tell(fraction, known ? { remainingSeconds: (elapsed / fraction) * (1 - fraction) } : {});
    },
    heardAll: () => tell(1, { remainingSeconds: 0 }),
  };
}
