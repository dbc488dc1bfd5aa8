/** Whether words were really spoken: recognisers invent words on noise. Nothing here looks at what the words are. */

/** Fast talk runs at 15 to 20 characters a second; more in one piece was not spoken. */
const MOST_CHARACTERS_PER_SECOND = 25;
/** Slower than any talk, over a stretch long enough to tell. */
const FEWEST_CHARACTERS_PER_SECOND = 1;
const LONG_ENOUGH_SECONDS = 3;
/** Speech stands this far over the background, in decibels. */
const LEAST_RISE = 1.5;
const LOOP_TURNS = 6;
const LONGEST_LOOP_WORDS = 8;

export interface SpeechEvidence {
  readonly text: string;
  /** Length of the sound that was heard. */
  readonly seconds: number;
  /** Of it, found by voice activity. */
  readonly spokenSeconds: number;
  /** Level of the speech over the background, in decibels. */
  readonly rise: number;
}

/** Says why the words are no speech; undefined when nothing speaks against them. */
export function whyNoSpeech({ text, seconds, spokenSeconds, rise }: SpeechEvidence): string | undefined {
  const letters = /[\p{L}\p{N}]/u.test(text);
  if (!letters) return 'no words in it';
  if (isLoop(text)) return 'the same words over and over';
  if (tooFast(text, seconds)) return 'more words than can be spoken in the time';
  if (spokenSeconds > LONG_ENOUGH_SECONDS && text.length / spokenSeconds < FEWEST_CHARACTERS_PER_SECOND) {
    return 'too few words for so long a sound';
  }
  if (rise < LEAST_RISE) return 'no louder than the background';
  return undefined;
}

export function tooFast(text: string, seconds: number): boolean {
  return text.length > 10 && text.length > MOST_CHARACTERS_PER_SECOND * seconds;
}

/** The same run of words, many times in a row, makes up most of the text. */
export function isLoop(text: string): boolean {
  const words = bareWords(text);
  return loopsIn(words).some(({ size, length }) => length >= size * LOOP_TURNS && length > words.length / 2);
}

/** So many turns of three words and more nobody says; of one or two words, "no, no, no", they may be said. */
const LONG_TURNS = 3;
const LONG_TURN_WORDS = 3;

/**
 * Whether the recogniser stuck somewhere in the text: what was spoken behind that place is lost. Less is needed for this
 * than for a loop: what is stuck is heard again, and nothing is dropped for it.
 */
export function isStuck(text: string): boolean {
  return loopsIn(bareWords(text)).some(
    ({ size, length }) => length >= size * (size >= LONG_TURN_WORDS ? LONG_TURNS : LOOP_TURNS),
  );
}

const bareWords = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s]/gu, '')
    .split(/\s+/)
    .filter(Boolean);

/** For each length of a turn, in words, the longest stretch that goes round in it. */
function loopsIn(words: readonly string[]): readonly { readonly size: number; readonly length: number }[] {
  return Array.from({ length: LONGEST_LOOP_WORDS }, (_, k) => {
    const size = k + 1;
    let [same, most] = [0, 0];
    for (let place = size; place < words.length; place++) {
      same = words[place] === words[place - size] ? same + 1 : 0;
      most = Math.max(most, same);
    }
    return { size, length: most + size };
  });
}

const FRAME = 480;

/** Mean level of samples in decibels below full scale. */
export function level(samples: Float32Array): number {
  let sum = 0;
  for (const sample of samples) sum += sample * sample;
  return 10 * Math.log10(sum / Math.max(1, samples.length) + 1e-12);
}

/** Level of the background: the tenth part of the frames that are quietest. */
export function backgroundLevel(samples: Float32Array): number {
  const levels: number[] = [];
  for (let at = 0; at + FRAME <= samples.length; at += FRAME)
    levels.push(level(samples.subarray(at, at + FRAME)));
  levels.sort((a, b) => a - b);
  return levels[Math.floor(levels.length / 10)] ?? -120;
}
