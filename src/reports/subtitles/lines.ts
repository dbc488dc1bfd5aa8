/** Spoken words as lines of a subtitle. */
import { oneLine } from '../words.ts';

/**
 * Two lines: Ivarsson and Carroll, Code of Good Subtitling Practice (1998), from memory. 42 characters a line: common
 * practice, no source.
 */
export const LINE_LENGTH = 42;

/** Length in characters as people count them, not in units of UTF-16. */
export const lengthOf = (text: string): number => [...text].length;

/** The words of a text; one that is longer than a line comes in pieces. */
export function wordsOf(text: string): readonly string[] {
  return oneLine(text)
    .split(' ')
    .filter(Boolean)
    .flatMap((word) => {
      const characters = [...word];
      if (characters.length <= LINE_LENGTH) return [word];
      const pieces: string[] = [];
      for (let at = 0; at < characters.length; at += LINE_LENGTH)
        pieces.push(characters.slice(at, at + LINE_LENGTH).join(''));
      return pieces;
    });
}

/** Words that belong to the one behind them. */
const LEANS_ON_THE_NEXT = /(?:^| )(?:an?|the|of|to|with|and|or|in|on|at|for|by|from|my|is|was)$/i;

/** What speaks against breaking a line here, in characters: lines of unlike length, a break inside a phrase. */
function breakCost(first: string, second: string): number {
  const place = /[.,;:?!]$/.test(first) ? -10 : LEANS_ON_THE_NEXT.test(first) ? 12 : 0;
  return Math.abs(lengthOf(first) - lengthOf(second)) + place;
}

/** Words on one line, or on two of like length, better after a comma; nothing where they need a third. */
export function linesOf(words: readonly string[]): readonly string[] | undefined {
  const whole = words.join(' ');
  if (lengthOf(whole) <= LINE_LENGTH) return whole === '' ? [] : [whole];
  let best: readonly [string, string] | undefined;
  for (let at = 1; at < words.length; at++) {
    const [first, second] = [words.slice(0, at).join(' '), words.slice(at).join(' ')] as const;
    if (lengthOf(first) > LINE_LENGTH) break;
    if (lengthOf(second) > LINE_LENGTH) continue;
    if (best === undefined || breakCost(first, second) < breakCost(...best)) best = [first, second];
  }
  return best;
}
