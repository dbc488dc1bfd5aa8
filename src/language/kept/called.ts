/** Which readers the words of a sentence call: one look at each word spares most sentences most of the patterns. */
import { remembered } from '../../remembered.ts';
import { phraseAt, wordAt } from '../items/parse.ts';
import type { Line, RecordScene } from './scene.ts';

/** Whether a word may be one without which a sentence gives a reader nothing; undefined where no word tells. */
export type CallingWord = ((word: string) => boolean) | undefined;

/** More than any memo has that are not the same. */
const MOST_WORDS = 20_000;

/** Finds which of some readers a line calls: one bit for each, the first the lowest. At most 31 of them. */
export function callers(words: readonly CallingWord[]): (scene: RecordScene, line: Line) => number {
  const bitsWhere = (holds: (called: CallingWord) => boolean) =>
    words.reduce((bits, called, k) => (holds(called) ? bits | (1 << k) : bits), 0);
  const always = bitsWhere((called) => called === undefined);
  const calledBy = remembered(MOST_WORDS, (word) => bitsWhere((called) => called?.(word) ?? false));
  return ({ parse }, line) => {
    // A thing that is named across the cut of a sentence without an end belongs to the part where its name begins.
    const last = phraseAt(parse, line.endWord - 1)?.last ?? line.endWord - 1;
    let bits = always;
    for (let k = line.first; k <= last; k++) bits |= calledBy(wordAt(parse, k));
    return bits;
  };
}
