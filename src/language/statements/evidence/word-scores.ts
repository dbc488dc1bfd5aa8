/** How much the words of each clause speak for each kind of statement: a sum of weights, as log odds. */
import type { Scene } from '../draft.ts';
import type { Said } from '../words.ts';
import type { Atom } from './atoms.ts';
import { featureNumber, features, featureText, type Place } from './features.ts';
import { KINDS } from './kinds.ts';
import { eachRow, rowLength, STEP, stepsAt } from './table-text.ts';

/** Weights by feature number, one for each kind. */
export interface WordWeights {
  readonly bias: readonly number[];
  /** Slots of an open table: feature numbers, 0 where a slot is free. */
  readonly numbers: Int32Array;
  /** In steps of the table: small numbers keep the whole table near at hand. */
  readonly weights: Int8Array;
}

export interface WordScores {
  readonly of: (clause: number, kind: number) => number;
}

const COLUMNS = KINDS.length;
/** Log odds of a clause without any word: numbers and marks state nothing. */
const BLANK = -9;

/** An open table for features and their weights, the weights of one feature side by side. Unpacks what `writeTable` wrote. */
export function tableOf(bias: readonly number[], text: string): WordWeights {
  let size = 1024;
  while (size < (text.length / rowLength(COLUMNS)) * 2.5) size *= 2;
  const numbers = new Int32Array(size);
  const weights = new Int8Array(size * COLUMNS);
  eachRow(text, COLUMNS, (number, at) => {
    let slot = number & (size - 1);
    while (numbers[slot] !== 0) slot = (slot + 1) & (size - 1);
    numbers[slot] = number;
    for (let k = 0; k < COLUMNS; k++) weights[slot * COLUMNS + k] = stepsAt(text, at + k);
  });
  return { bias, numbers, weights };
}

function slotOf({ numbers }: WordWeights, number: number): number {
  const last = numbers.length - 1;
  let slot = number & last;
  while (numbers[slot] !== number) {
    if (numbers[slot] === 0) return -1;
    slot = (slot + 1) & last;
  }
  return slot;
}

export const isBlank = ({ words }: Said): boolean => !words.some(({ lower }) => /[a-z]/.test(lower));

/** Scores every clause of a memo for every kind. */
export function scoreWords(scene: Scene, table: WordWeights): WordScores {
  const { said } = scene;
  const scores = new Float64Array(said.length * COLUMNS);
  const steps = new Int32Array(COLUMNS);
  const { weights } = table;
  const add = (place: Place, a: Atom, b: Atom, c: Atom): void => {
    const slot = slotOf(table, featureNumber(place, a, b, c));
    if (slot < 0) return;
    const row = slot * COLUMNS;
    for (let k = 0; k < COLUMNS; k++) steps[k] = (steps[k] as number) + (weights[row + k] as number);
  };
  for (const clause of said) {
    const blank = isBlank(clause);
    steps.fill(0);
    if (!blank) features(clause, scene, add);
    for (let k = 0; k < COLUMNS; k++)
      scores[clause.index * COLUMNS + k] = blank
        ? BLANK
        : (table.bias[k] as number) + STEP * (steps[k] as number);
  }
  return { of: (clause, kind) => scores[clause * COLUMNS + kind] as number };
}

/** The features of a clause that weigh most for and against a kind, told in words. */
export function tellWords(
  clause: Said,
  scene: Scene,
  kind: number,
  table: WordWeights,
): { readonly speaksFor: readonly string[]; readonly against: readonly string[] } {
  const told = new Map<string, number>();
  features(clause, scene, (place, a, b, c) => {
    const slot = slotOf(table, featureNumber(place, a, b, c));
    if (slot < 0) return;
    const text = featureText(place, a, b, c);
    told.set(text, (told.get(text) ?? 0) + STEP * (table.weights[slot * COLUMNS + kind] as number));
  });
  const sorted = [...told].sort(([, a], [, b]) => b - a);
  const most = (list: readonly (readonly [string, number])[]) =>
    list
      .slice(0, 3)
      .filter(([, weight]) => Math.abs(weight) > 0.1)
      .map(([text]) => text);
  return {
    speaksFor: most(sorted.filter(([, weight]) => weight > 0)),
    against: most(sorted.filter(([, weight]) => weight < 0).reverse()),
  };
}
