/**
 * Makes text from memos and file names safe to show on a terminal: no escape sequence, control character or
 * direction override gets through. Words, accents, wide characters and emoji stay.
 */

const ESC = '\u001b';
/** What a string sequence (a title, a clipboard, a picture) carries: up to its end; without one, to that of the line. */
const PAYLOAD = `(?:[^\\u0007\\u009c${ESC}]*(?:\\u0007|\\u009c|${ESC}\\\\)|[^\\u0007\\u009c${ESC}\\r\\n]*)`;
/** CSI, then OSC and the other string sequences with what they carry, then two-character escapes. */
const ESCAPE_SEQUENCES = new RegExp(
  `${ESC}\\[[0-?]*[ -/]*[@-~]|${ESC}[\\]PX^_]${PAYLOAD}|${ESC}[ -/]*[0-~]?|\\u009b[0-?]*[ -/]*[@-~]|[\\u0090\\u0098\\u009d\\u009e\\u009f]${PAYLOAD}`,
  'g',
);
const BLANKS = /[\t\n\v\f\r\u0085\u2028\u2029]+/g;
/**
 * Controls, direction marks, and what shows nothing by itself but takes a column, or none, in some terminals. Joiners and
 * variation selectors stay, for they make emoji and letters what they are.
 */
const JOINING = String.raw`\u034f|\u17b4|\u17b5|[\u180b-\u180f]|\u200c|\u200d|[\ufe00-\ufe0f]|[\u{e0020}-\u{e007f}]|[\u{e0100}-\u{e01ef}]`;
const CONTROLS = new RegExp(
  String.raw`(?!${JOINING})[\p{Cc}\p{Default_Ignorable_Code_Point}\ufff9-\ufffb]`,
  'gu',
);
/** No writing stacks more marks on a letter than this; heaps of them run over the lines above and below. */
const MARKS = /(\p{M}{4})\p{M}+/gu;
/** Katakana of half a width, whose sound marks are counted in two ways: shown in their whole width. */
const HALF_WIDTH = /[\uff61-\uff9f]+/g;

/** Returns `text` as one line that any terminal shows as plain words. */
export function plainText(text: string): string {
  return text
    .toWellFormed()
    .replace(ESCAPE_SEQUENCES, '')
    .replace(BLANKS, ' ')
    .replace(CONTROLS, '')
    .replace(MARKS, '$1')
    .replace(HALF_WIDTH, (kana) => kana.normalize('NFKC'));
}

/** Where a terminal would take orders instead of showing words: each sequence whole, in order, apart from each other. */
export function escapeSequences(text: string): readonly { readonly start: number; readonly end: number }[] {
  return Array.from(text.matchAll(ESCAPE_SEQUENCES), ({ 0: sequence, index }) => ({
    start: index,
    end: index + sequence.length,
  }));
}

/** The text with a blank for every character of an escape sequence: offsets stay. */
export function blankedSequences(text: string): string {
  return text.replace(ESCAPE_SEQUENCES, (sequence) => ' '.repeat(sequence.length));
}
