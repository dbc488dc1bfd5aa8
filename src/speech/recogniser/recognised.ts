/** What a recogniser makes of one piece of sound, whatever model is behind it. */
import type { HeardDoubt } from '../../language/heard/heard-doubts.ts';

/** A word with its place in the piece, in seconds. */
export interface TimedWord {
  readonly text: string;
  readonly startSeconds: number;
  readonly endSeconds: number;
}

export interface Recognised {
  readonly text: string;
  /** In order; joined by spaces they are the text. Absent where the model gives no times. */
  readonly words?: readonly TimedWord[];
  /** What the model held to be nearly as likely, by its place in the text; absent where it does not tell. */
  readonly doubts?: readonly HeardDoubt[];
}

/** Hears pieces. A piece that cannot be heard is an error with the reason. */
export interface SoundRecogniser {
  recognise(samples: Float32Array): Promise<Recognised>;
  /** How many pieces it may be given at once; one where it is left out. */
  readonly atOnce?: number;
  /** True where what it used is freed by garbage collection only. */
  readonly leavesMemory?: boolean;
  /** Does once what the first piece would have to wait for; absent where there is nothing of the kind. */
  warmUp?(): Promise<void>;
}

/** Only what is certain: white space, and control characters that no speech holds. Words and numbers stay. */
export function tidy(text: string): string {
  return text
    .replace(/\p{Cc}+/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

/** A part of a word, as models spell: a word begins where a part begins with a space or its stand-in. */
export interface TimedPart {
  readonly text: string;
  readonly startSeconds: number;
  /** Where the model says so; else the next part's beginning counts. */
  readonly endSeconds?: number;
}

const WORD_BEGINS = /^[\s▁]/u;
/** A part without an end lasts no longer than this: a pause may follow. */
const LONGEST_PART_SECONDS = 0.4;

/**
 * Joins parts to the words of `text`. Undefined where they do not spell it: then no time is better than a wrong one.
 */
export function wordsOf(
  text: string,
  parts: readonly TimedPart[],
  lengthSeconds: number,
): readonly TimedWord[] | undefined {
  const words: { text: string; startSeconds: number; endSeconds: number }[] = [];
  let goesOn = false;
  parts.forEach((part, place) => {
    const next = parts[place + 1]?.startSeconds ?? lengthSeconds;
    const end = part.endSeconds ?? Math.min(next, part.startSeconds + LONGEST_PART_SECONDS);
    const last = words.at(-1);
    const spelt = part.text.replace(/@@$/, '').replace(/^▁/u, ' ');
    if (!last || (!goesOn && WORD_BEGINS.test(part.text)))
      words.push({ text: spelt, startSeconds: part.startSeconds, endSeconds: end });
    else {
      last.text += spelt;
      last.endSeconds = Math.max(last.endSeconds, end);
    }
    goesOn = part.text.endsWith('@@');
  });
  const timed = words.map((word) => ({ ...word, text: tidy(word.text) })).filter((word) => word.text !== '');
  const spelt = timed.map((word) => word.text).join(' ');
  if (timed.length === 0 || spelt !== text) return undefined;
  return timed;
}
