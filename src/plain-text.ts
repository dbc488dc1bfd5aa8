/**
 * Makes text from memos and file names safe to show on a terminal: no escape sequence, control character or
 * direction override gets through. Words, accents, wide characters and emoji stay.
 */

const ESC = '\u001b';
/** CSI, then OSC and the other string sequences up to their end, then two-character escapes. */
const ESCAPE_SEQUENCES = new RegExp(
  `${ESC}\\[[0-?]*[ -/]*[@-~]|${ESC}[\\]PX^_][^\\u0007${ESC}]*(?:\\u0007|${ESC}\\\\)?|${ESC}[ -/]*[0-~]?|\\u009b[0-?]*[ -/]*[@-~]|[\\u0090\\u0098\\u009d\\u009e\\u009f][^\\u0007\\u009c${ESC}]*(?:\\u0007|\\u009c)?`,
  'g',
);
const BLANKS = /[\t\n\v\f\r\u0085\u2028\u2029]+/g;
const CONTROLS = /[\p{Cc}\u200e\u200f\u061c\u202a-\u202e\u2066-\u2069\ufeff]/gu;

/** Returns `text` as one line that any terminal shows as plain words. */
export function plainText(text: string): string {
  return text.toWellFormed().replace(ESCAPE_SEQUENCES, '').replace(BLANKS, ' ').replace(CONTROLS, '');
}
