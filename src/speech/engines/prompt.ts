/** What a recogniser that takes a prompt is told to expect: the project's own names of things. Pure. */

/** The window for a prompt is 224 tokens; a word of the trade takes two or three. */
const LONGEST_PROMPT = 480;

/** The names, latest first, as many as fit; empty where there are none. */
export function promptOf(words: readonly string[]): string {
  const plain = words.map((word) => word.replace(/[\p{Cc}\s]+/gu, ' ').trim()).filter((word) => word !== '');
  const fits: string[] = [];
  let length = 0;
  for (const word of new Set(plain)) {
    length += word.length + 2;
    if (length > LONGEST_PROMPT) break;
    fits.push(word);
  }
  // What stands last weighs most: the latest names.
  return fits.length === 0 ? '' : `${fits.reverse().join(', ')}.`;
}
