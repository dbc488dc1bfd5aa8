/** Words from memos and file names on one line of a page or a terminal. */
import { plainText } from '../plain-text.ts';

/** Plain words on one line: runs of white space become one space. */
export function oneLine(text: string): string {
  return plainText(text).replace(/\s+/g, ' ').trim();
}

/** First letter as a capital, for a gist that starts an entry. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
