/** Words from memos and file names on one line of a page or a terminal. */
import { plainText } from '../plain-text.ts';

/** Plain words on one line: runs of white space become one space. */
export function oneLine(text: string): string {
  return plainText(text).replace(/\s+/g, ' ').trim();
}

/** At most `length` characters of one line; a cut falls between words where it can and shows an ellipsis. */
export function shortLine(text: string, length: number): string {
  const line = oneLine(text);
  const characters = [...line];
  if (characters.length <= length) return line;
  const cut = characters.slice(0, length - 1).join('');
  const space = cut.lastIndexOf(' ');
  return `${(space > length / 2 ? cut.slice(0, space) : cut).trimEnd()}…`;
}

/** First letter as a capital, for a gist that starts an entry. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
