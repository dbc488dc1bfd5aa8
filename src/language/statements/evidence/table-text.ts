/** Writes the weights of many features as a line of text and reads them back: eleven letters for each feature. */
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+-';
const VALUES = new Uint8Array(128);
for (let k = 0; k < LETTERS.length; k++) VALUES[LETTERS.charCodeAt(k)] = k;

/** Letters for the 30 bits of a feature's number. */
const NUMBER_LETTERS = 5;
/** What one step of a weight's letter is worth; 32 steps each way. */
export const STEP = 0.04;

export type Row = readonly [number, readonly number[]];

/** Weights are rounded to steps; those beyond the last step are cut to it. */
export function writeTable(rows: readonly Row[]): string {
  return [...rows]
    .sort(([a], [b]) => a - b)
    .map(([number, weights]) => {
      let text = '';
      for (let k = NUMBER_LETTERS - 1; k >= 0; k--) text += LETTERS[(number >>> (6 * k)) & 63];
      for (const weight of weights)
        text += LETTERS[Math.max(0, Math.min(63, Math.round(weight / STEP) + 32))];
      return text;
    })
    .join('');
}

/** `columns` weights follow each number. Throws where the text was cut. */
export function readTable(text: string, columns: number): Row[] {
  const rows: Row[] = [];
  eachRow(text, columns, (number, at) => {
    rows.push([number, Array.from({ length: columns }, (_, k) => stepsAt(text, at + k) * STEP)]);
  });
  return rows;
}

/** Gives the number of each row and where its weights stand in the text: no row is made of what is only passed on. */
export function eachRow(text: string, columns: number, take: (number: number, at: number) => void): void {
  const length = rowLength(columns);
  if (text.length % length !== 0)
    throw new Error(`a table of evidence has rows of ${length} letters, got ${text.length} letters in all`);
  for (let at = 0; at < text.length; at += length) {
    let number = 0;
    for (let k = 0; k < NUMBER_LETTERS; k++)
      number = (number << 6) | (VALUES[text.charCodeAt(at + k)] as number);
    take(number, at + NUMBER_LETTERS);
  }
}

export const rowLength = (columns: number): number => NUMBER_LETTERS + columns;

/** The weight that a letter of the text stands for, in steps. */
export const stepsAt = (text: string, at: number): number => (VALUES[text.charCodeAt(at)] as number) - 32;
