/** Where a long recording is cut into memos: in a long silence, never near a word. Pure. */

/** So long a silence ends a memo. Talk at work stops for a cut or a look; what comes later is another subject. */
export const LONG_SILENCE_SECONDS = 30;
/** Sound before the newest that was looked through: a word that just begins is not known as one yet. */
const LEAD_SECONDS = 1;
/** No memo is longer: six hours of WAV stay far below what its lengths can state. */
const LONGEST_SECONDS = 6 * 3600;

/** Seconds from the beginning of the recording. */
export interface Course {
  /** Where the memo being recorded begins. */
  readonly partFrom: number;
  /** Looked through by voice activity until here. */
  readonly heardUntil: number;
  /** End of the last talk; undefined while none was found. */
  readonly spokenUntil: number | undefined;
}

/** The place to cut at; undefined while the memo goes on. A memo in which nobody has spoken yet goes on. */
export function placeToCut({ partFrom, heardUntil, spokenUntil }: Course): number | undefined {
  if (heardUntil - partFrom >= LONGEST_SECONDS) return heardUntil - LEAD_SECONDS;
  if (spokenUntil === undefined || spokenUntil <= partFrom) return undefined;
  return heardUntil - spokenUntil >= LONG_SILENCE_SECONDS + LEAD_SECONDS
    ? heardUntil - LEAD_SECONDS
    : undefined;
}
