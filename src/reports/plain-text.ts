/** Text from memos and file names, made safe to stand on a terminal or in a page. */

/** Bidirectional overrides and isolates can show one thing and mean another. */
const DIRECTION_MARKS = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;
// biome-ignore lint/suspicious/noControlCharactersInRegex: finding them is the purpose
const CONTROLS = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/g;
const LONE_SURROGATES = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** A control character as a picture that does nothing: ESC becomes "␛". */
function picture(control: string): string {
  const code = control.charCodeAt(0);
  if (code < 0x20) return String.fromCharCode(0x2400 + code);
  return code === 0x7f ? '\u2421' : '\ufffd';
}

/**
 * Returns `text` with every control character shown as a picture, so that no escape sequence acts on a terminal.
 * Line feeds and tabs stay; carriage return with line feed becomes a line feed.
 */
export function plainText(text: string): string {
  return text
    .replace(/\r\n/g, '\n')
    .replace(CONTROLS, picture)
    .replace(DIRECTION_MARKS, '\ufffd')
    .replace(/[\u2028\u2029]/g, '\n')
    .replace(LONE_SURROGATES, '\ufffd');
}

/** `plainText` on one line: runs of white space become one space. */
export function oneLine(text: string): string {
  return plainText(text).replace(/\s+/g, ' ').trim();
}

/** At most `length` characters of one line; a cut is shown by an ellipsis. */
export function shortLine(text: string, length: number): string {
  const line = oneLine(text);
  const characters = [...line];
  if (characters.length <= length) return line;
  const cut = characters.slice(0, length - 1).join('');
  const space = cut.lastIndexOf(' ');
  return `${(space > length / 2 ? cut.slice(0, space) : cut).trimEnd()}…`;
}
