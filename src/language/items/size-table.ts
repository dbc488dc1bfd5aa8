/** Writes what the evidence for sizes weighs as lines of text, and reads them back. */
import { wordTable } from '../word-table.ts';
import type { SizeWeights } from './size-choice.ts';
import type { Size } from './sizes.ts';

/** A letter for each size. */
export const SIZE_LETTERS: Readonly<Record<string, Size>> = {
  t: 'thickness',
  w: 'width',
  l: 'length',
  h: 'height',
  d: 'depth',
  o: 'diameter',
  r: 'radius',
  g: 'gap',
  c: 'clearance',
  x: 'offset',
  e: 'other',
  s: 'size',
};
const LETTER_OF = new Map(Object.entries(SIZE_LETTERS).map(([letter, size]) => [size, letter]));

/** What one step of a weight is worth; the table holds whole steps. */
export const STEP = 0.04;
const steps = (weight: number): number => Math.round(weight / STEP);

/** One line for each: "known near 31" for a vote, "next deep d48t-9" for a sign with a weight for each size. */
export function writeSizes({ votes, signs }: SizeWeights): {
  readonly votes: string;
  readonly signs: string;
} {
  const lines = (rows: readonly (readonly [string, string])[]) =>
    rows
      .filter(([, weights]) => weights !== '')
      .map((row) => row.join(' '))
      .sort()
      .join('\n');
  return {
    votes: lines(Object.entries(votes).map(([source, weight]) => [source, `${steps(weight) || ''}`])),
    signs: lines(
      Object.entries(signs).map(([sign, row]) => [
        sign,
        Object.entries(row)
          .filter(([, weight]) => steps(weight) !== 0)
          .map(([size, weight]) => `${LETTER_OF.get(size as Size)}${steps(weight)}`)
          .join(''),
      ]),
    ),
  };
}

/** Reads what `writeSizes` wrote. Throws where a line does not end in weights. */
export function readSizes(table: { readonly votes: string; readonly signs: string }): SizeWeights {
  const votes: Record<string, number> = {};
  for (const [source, weight] of linesOf(table.votes)) votes[source] = Number(weight) * STEP;
  const signs: Record<string, Partial<Record<Size, number>>> = {};
  for (const [sign, weights] of linesOf(table.signs)) {
    const row: Partial<Record<Size, number>> = {};
    for (const [, letter = '', count] of weights.matchAll(/([a-z])(-?\d+)/g))
      row[SIZE_LETTERS[letter] as Size] = Number(count) * STEP;
    signs[sign] = row;
  }
  return { votes: wordTable(votes), signs: wordTable(signs) };
}

function linesOf(text: string): readonly (readonly [name: string, weights: string])[] {
  return text.split('\n').flatMap((line) => {
    if (line === '') return [];
    const space = line.lastIndexOf(' ');
    const weights = line.slice(space + 1);
    if (space < 1 || !/^(?:-?\d+|(?:[a-z]-?\d+)+)$/.test(weights))
      throw new Error(`a line of the table of sizes ends in its weights, got "${line}"`);
    return [[line.slice(0, space), weights]];
  });
}
