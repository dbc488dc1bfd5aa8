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
  const length = NUMBER_LETTERS + columns;
  if (text.length % length !== 0)
    throw new Error(`a table of evidence has rows of ${length} letters, got ${text.length} letters in all`);
  const rows: Row[] = [];
  for (let at = 0; at < text.length; at += length) {
    let number = 0;
    for (let k = 0; k < NUMBER_LETTERS; k++)
      number = (number << 6) | (VALUES[text.charCodeAt(at + k)] as number);
    const weights: number[] = [];
    for (let k = 0; k < columns; k++)
      weights.push(((VALUES[text.charCodeAt(at + NUMBER_LETTERS + k)] as number) - 32) * STEP);
    rows.push([number, weights]);
  }
  return rows;
}
