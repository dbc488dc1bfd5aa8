/** Weighs the sizes that a length may be and takes the likeliest. */
import type { Attribute } from '../notes.ts';
import type { Evidence } from './size-evidence.ts';
import { SIZES, type Size } from './sizes.ts';

export interface SizeWeights {
  /** What a source's word for the size that it names is worth. */
  readonly votes: Readonly<Record<string, number>>;
  /** What a sign adds to each size. */
  readonly signs: Readonly<Record<string, Readonly<Partial<Record<Size, number>>>>>;
}

export interface ChosenSize {
  readonly size: Size;
  /** The next likeliest. */
  readonly second: Size;
  /** What speaks loudest for the one against the other, the strongest first. */
  readonly reasons: () => readonly string[];
}

const PLACE_OF: ReadonlyMap<Attribute, number> = new Map(SIZES.map((size, k) => [size, k]));

const ready = new WeakMap<SizeWeights, ReadonlyMap<string, Float64Array>>();

/** What each sign adds to the sizes, in their order; laid out once. */
function rowsOf(weights: SizeWeights): ReadonlyMap<string, Float64Array> {
  let rows = ready.get(weights);
  if (!rows) {
    rows = new Map(
      Object.entries(weights.signs).map(([sign, row]) => [
        sign,
        Float64Array.from(SIZES, (size) => row[size] ?? 0),
      ]),
    );
    ready.set(weights, rows);
  }
  return rows;
}

/** The likeliest size by these weights. */
export function chooseSize(evidence: Evidence, weights: SizeWeights): ChosenSize {
  const score = new Float64Array(SIZES.length);
  for (const [source, size] of evidence.votes) {
    const weight = weights.votes[source];
    const k = PLACE_OF.get(size);
    if (weight !== undefined && k !== undefined) score[k] = (score[k] as number) + weight;
  }
  const rows = rowsOf(weights);
  for (const sign of evidence.signs) {
    const row = rows.get(sign);
    if (row) for (let k = 0; k < row.length; k++) score[k] = (score[k] as number) + (row[k] as number);
  }
  const scoreOf = (size: Size) => score[PLACE_OF.get(size) as number] as number;
  const [size, second] = [...SIZES].sort((a, b) => scoreOf(b) - scoreOf(a)) as [Size, Size];
  return { size, second, reasons: () => reasonsOf(evidence, weights, size, second) };
}

function reasonsOf(evidence: Evidence, weights: SizeWeights, size: Size, second: Size): readonly string[] {
  const says = new Map<string, number>();
  const count = (reason: string, weight: number) => says.set(reason, (says.get(reason) ?? 0) + weight);
  for (const [source, named] of evidence.votes) {
    const weight = weights.votes[source] ?? 0;
    if (named === size) count(`${source} (${named})`, weight);
    if (named === second) count(`${source} (${named})`, -weight);
  }
  for (const sign of evidence.signs) {
    const row = weights.signs[sign];
    if (row) count(sign, (row[size] ?? 0) - (row[second] ?? 0));
  }
  return [...says]
    .filter(([, weight]) => weight >= 0.15)
    .sort((a, b) => b[1] - a[1])
    .slice(0, 4)
    .map(([reason]) => reason);
}
