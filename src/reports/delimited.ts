/**
 * Comma-separated values. Source of the format: RFC 4180; of what spreadsheets take for a formula: OWASP, "CSV
 * Injection".
 */
import { oneLine } from './words.ts';

/** A number stays a number; nothing is an empty cell. */
export type Cell = string | number | undefined;

/** What a spreadsheet takes for the start of a formula, also in full width; and the mark that takes its meaning away. */
const FORMULA_START = /^[=+\-@'\uff1d\uff0b\uff0d\uff20]/;

/** Plain words on one line; where they would start a formula, an apostrophe stands before them. */
function cellText(text: string): string {
  const plain = oneLine(text);
  const harmless = FORMULA_START.test(plain) ? `'${plain}` : plain;
  return /[",]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

/** Writes records: a line for each that ends in CRLF, the first with the names of the columns. */
export function writeDelimited(records: readonly (readonly Cell[])[]): string {
  return records
    .map(
      (cells) =>
        `${cells.map((cell) => (typeof cell === 'string' ? cellText(cell) : (cell ?? ''))).join(',')}\r\n`,
    )
    .join('');
}

/**
 * Reads records: cells between commas, a cell with a comma, a quotation mark or a line break between quotation marks,
 * where a doubled mark stands for one. Lines end in CRLF or LF. Each record comes with the line it starts on, from 1.
 */
export function readDelimited(text: string): readonly { readonly line: number; readonly cells: string[] }[] {
  const records: { line: number; cells: string[] }[] = [];
  // A cell, and what ends it: a comma, a line break, or the end of the text.
  const cell = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))([^,\r\n]*)(,|\r\n|\n|\r|$)/y;
  let line = 1;
  let current: { line: number; cells: string[] } | undefined;
  while (cell.lastIndex <= text.length) {
    const found = cell.exec(text);
    if (!found) break;
    const [whole, quoted, plain = '', rest = '', end] = found;
    if (!current) current = { line, cells: [] };
    // What stands behind a closing mark is no part of the format; it is kept, so that nothing is lost unseen.
    current.cells.push((quoted === undefined ? plain : quoted.replaceAll('""', '"')) + rest);
    line += (whole.match(/\r\n|\n|\r/g) ?? []).length;
    if (end === ',') continue;
    records.push(current);
    current = undefined;
    if (end === '' || cell.lastIndex === text.length) break;
  }
  return records.filter(({ cells }) => cells.length > 1 || cells[0] !== '');
}
