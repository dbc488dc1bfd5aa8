/** Text in the columns of a terminal: wide characters take two, combining ones none. */
import stringWidth from 'string-width';
import { oneLine } from './words.ts';

/** How many columns a terminal shows `text` in. */
export function widthOf(text: string): number {
  return stringWidth(text);
}

const graphemes = new Intl.Segmenter();
const RIGHT_TO_LEFT =
  /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\p{Script=Adlam}\p{Script=Samaritan}\p{Script=Mandaic}]/u;
/** LEFT-TO-RIGHT MARK: no column wide; what stands behind it keeps its place. */
const MARK = '\u200e';

/** Closes words that run from right to left, so that a terminal that turns them leaves what follows where it is. */
export function closed(text: string): string {
  return RIGHT_TO_LEFT.test(text) ? `${text}${MARK}` : text;
}

/** Filled up with blanks to `width` columns; what is wider stays as it is. */
export function padded(text: string, width: number): string {
  return closed(text) + ' '.repeat(Math.max(0, width - widthOf(text)));
}

/** At most `width` columns of one line; a cut falls between words where it can and shows an ellipsis. */
export function shortLine(text: string, width: number): string {
  const line = oneLine(text);
  if (widthOf(line) <= width) return line;
  const cut = firstColumns(line, width - 1);
  const space = cut.lastIndexOf(' ');
  return `${(space > cut.length / 2 ? cut.slice(0, space) : cut).trimEnd()}…`;
}

/** Printable characters of ASCII: one column each, and none joins the one before it. */
const PLAIN = /^[ -~]*$/;
/** A line of so many characters for each column is looked at first: to part a long text into characters takes long. */
const NEAR = 8;

/** The whole characters that fit into so many columns. */
function firstColumns(line: string, width: number): string {
  if (width <= 0) return '';
  if (PLAIN.test(line.slice(0, width + 1))) return line.slice(0, width);
  const near = line.slice(0, NEAR * width);
  const end = endOfColumns(near, width);
  // At its end the last character may be cut.
  return line.slice(0, end < near.length || near.length === line.length ? end : endOfColumns(line, width));
}

function endOfColumns(line: string, width: number): number {
  let taken = 0;
  let end = 0;
  for (const { segment, index } of graphemes.segment(line)) {
    taken += widthOf(segment);
    if (taken > width) break;
    end = index + segment.length;
  }
  return end;
}

/** Cut to `width` columns wherever that falls, with an ellipsis where something is left out. */
export function cutLine(text: string, width: number): string {
  return widthOf(text) <= width ? text : `${firstColumns(text, width - 1)}…`;
}

/** Likewise, but what stays is the end. */
export function cutStart(text: string, width: number): string {
  if (widthOf(text) <= width) return text;
  const segments = [...graphemes.segment(text)];
  let start = text.length;
  let taken = 1;
  for (const { segment, index } of segments.reverse()) {
    taken += widthOf(segment);
    if (taken > width) break;
    start = index;
  }
  return `…${text.slice(start)}`;
}

/** One line of a text that runs over several, and where in the text it begins. */
export interface WrappedLine {
  readonly text: string;
  readonly start: number;
}

/**
 * Lines of at most `width` columns, broken between words; a word that is longer is broken where the line ends. No more
 * than `most` of them: what hangs on a dear clash is thousands of words, and a screen shows twenty lines.
 */
export function wrapped(
  text: string,
  width: number,
  most = Number.POSITIVE_INFINITY,
): readonly WrappedLine[] {
  const lines: WrappedLine[] = [];
  let start = 0;
  while (!fits(text.slice(start), width)) {
    if (lines.length >= most) return lines;
    const end = breakAfter(text, start, width);
    lines.push({ text: text.slice(start, end).trimEnd(), start });
    start = end + (/^\s*/.exec(text.slice(end))?.[0].length ?? 0);
  }
  const rest = text.slice(start);
  return rest === '' && lines.length > 0 ? lines : [...lines, { text: rest, start }];
}

/** More characters than these for each column are not measured as a whole: that takes time by their number. */
const MEASURED_WHOLE = 4;

function fits(text: string, width: number): boolean {
  if (text.length <= MEASURED_WHOLE * width) return widthOf(text) <= width;
  return firstColumns(text, width).length === text.length;
}

/** Where the line that begins at `start` ends. One character at least is in it, however narrow the columns. */
function breakAfter(text: string, start: number, width: number): number {
  const line = firstColumns(text.slice(start), width) || firstCharacter(text.slice(start));
  const end = start + line.length;
  if (/\s/.test(text[end] ?? '')) return end;
  const space = line.search(/\s\S*$/);
  return /\S/.test(line.slice(0, Math.max(0, space))) ? start + space + 1 : end;
}

const firstCharacter = (text: string) => [...graphemes.segment(text.slice(0, 64))][0]?.segment ?? text;

/** A label of eight characters after two blanks, as findings and checks have it; else blanks and the mark of a list. */
const HANGS = /^(?: {2}[a-z ]{8} (?=\S)|\s*(?:[-*>] |\d{1,3}[.)] )?)/;
/** Where columns are few, words are worth more than their place. */
const MOST_HANG = 1 / 3;

/** Likewise, with what runs on set in to where the words of the first line begin. */
export function wrappedUnder(
  text: string,
  width: number,
  most = Number.POSITIVE_INFINITY,
): readonly string[] {
  const head = HANGS.exec(text)?.[0] ?? '';
  const hang = head.length <= width * MOST_HANG ? head.length : 0;
  return wrapped(text.slice(hang), width - hang, most).map(
    (line, index) => (index === 0 ? text.slice(0, hang) : ' '.repeat(hang)) + line.text,
  );
}
