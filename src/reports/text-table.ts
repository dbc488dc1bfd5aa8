/** Columns of plain text for the terminal. */
import { padded, widthOf } from './columns.ts';
import { oneLine } from './words.ts';

/** Rows with columns padded to the widest cell; the last column is left as it is. Ends with a line feed. */
export function textTable(rows: readonly (readonly string[])[]): string {
  const clean = rows.map((row) => row.map(oneLine));
  const widths: number[] = [];
  for (const row of clean) {
    row.slice(0, -1).forEach((cell, column) => {
      widths[column] = Math.max(widths[column] ?? 0, widthOf(cell));
    });
  }
  const pad = (cell: string, column: number) => padded(cell, widths[column] ?? 0);
  return clean.map((row) => `${row.map(pad).join('  ').trimEnd()}\n`).join('');
}
