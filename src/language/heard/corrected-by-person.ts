import type { ReadContext } from '../notes.ts';
import type { Heard, RepairRule } from './repair.ts';

/** A correction names so many words at most. */
const LONGEST = 5;

type Corrections = ReadonlyMap<string, string>;

/** What was said by the words that were heard; the last correction of the same words holds. */
function correctionsOf({ isHeard, corrections = [] }: ReadContext): Corrections {
  return new Map(isHeard ? corrections.map(({ heard, means }) => [heard, means]) : []);
}

const joined = (words: readonly Heard[]) => words.map(({ lower }) => lower).join(' ');

/** Reads words as the person said that they are to be read, in talk that was heard and not typed. */
export const correctedByPerson: RepairRule = (words, context) => {
  const corrections = correctionsOf(context);
  if (corrections.size === 0) return [];
  return words.flatMap((first, at) => {
    // The longest words first: "play them" before "play".
    for (let length = Math.min(LONGEST, words.length - at); length > 0; length--) {
      const covered = words.slice(at, at + length);
      if (covered.slice(1).some(({ opens }) => opens)) continue;
      const heard = joined(covered);
      const means = corrections.get(heard);
      if (means === undefined) continue;
      if (means === heard) return [];
      const last = covered.at(-1) as Heard;
      return [{ start: first.start, end: last.end, means, why: `you said that "${heard}" is "${means}"` }];
    }
    return [];
  });
};

/** Whether the person said that just these words were heard right. */
export function isSaidRight(words: readonly Heard[], context: ReadContext): boolean {
  const corrections = correctionsOf(context);
  return corrections.size > 0 && corrections.get(joined(words)) === joined(words);
}
