/** Logistic regression by Adam, with half the penalty times the square of each weight; the same each time it is run. */
import { type ClauseCase, OPEN, YES } from './cases.ts';

export interface WordModel {
  /** Row of each feature number. */
  readonly rows: ReadonlyMap<number, number>;
  readonly columns: number;
  readonly weights: Float64Array;
  readonly bias: Float64Array;
}

export interface FitSettings {
  readonly penalty: number;
  /** A feature that stands in fewer clauses is left out. */
  readonly least: number;
  /** How many features may stay. */
  readonly most: number;
  readonly rounds: number;
}

/** Steps of Adam over a flat array of weights. */
class Steps {
  readonly #m: Float64Array;
  readonly #v: Float64Array;
  readonly #rounds: number;
  readonly #fastest: number;
  #round = 0;

  constructor(size: number, rounds: number, fastest: number) {
    this.#m = new Float64Array(size);
    this.#v = new Float64Array(size);
    this.#rounds = rounds;
    this.#fastest = fastest;
  }

  /** Moves the weights against their gradient, slower each time. */
  take(weights: Float64Array, gradient: Float64Array, penalty: number): void {
    const round = ++this.#round;
    const rate = this.#fastest * (1 - round / (this.#rounds * 1.05));
    const first = 1 - 0.9 ** round;
    const second = 1 - 0.999 ** round;
    for (let k = 0; k < weights.length; k++) {
      const slope = (gradient[k] as number) + penalty * (weights[k] as number);
      const m = 0.9 * (this.#m[k] as number) + 0.1 * slope;
      const v = 0.999 * (this.#v[k] as number) + 0.001 * slope * slope;
      this.#m[k] = m;
      this.#v[k] = v;
      weights[k] = (weights[k] as number) - (rate * m) / first / (Math.sqrt(v / second) + 1e-8);
    }
  }
}

const chance = (odds: number): number => 1 / (1 + Math.exp(-odds));

/** Fits all features that are common enough, keeps those that tell most, and fits these once more. */
export function fitWords(cases: readonly ClauseCase[], columns: number, settings: FitSettings): WordModel {
  const seen = new Map<number, number>();
  for (const { features } of cases) for (const f of new Set(features)) seen.set(f, (seen.get(f) ?? 0) + 1);
  const common = [...seen].filter(([, n]) => n >= settings.least).map(([f]) => f);
  const all = fitRows(cases, columns, common, settings);
  if (common.length <= settings.most) return all;
  const tells = (feature: number): number => {
    const row = all.rows.get(feature) as number;
    let sum = 0;
    for (let k = 0; k < columns; k++) sum += (all.weights[row * columns + k] as number) ** 2;
    return sum * (seen.get(feature) as number);
  };
  const best = common
    .map((f) => [f, tells(f)] as const)
    .sort(([f, a], [g, b]) => b - a || f - g)
    .slice(0, settings.most)
    .map(([f]) => f);
  return fitRows(cases, columns, best, settings);
}

function fitRows(
  cases: readonly ClauseCase[],
  columns: number,
  features: readonly number[],
  { penalty, rounds }: FitSettings,
): WordModel {
  const rows = new Map(features.map((f, k) => [f, k]));
  const own = cases.map((each) => Int32Array.from([...each.features].flatMap((f) => rows.get(f) ?? [])));
  const weights = new Float64Array(rows.size * columns);
  const gradient = new Float64Array(weights.length);
  const bias = new Float64Array(columns).fill(-2);
  const biasGradient = new Float64Array(columns);
  const steps = new Steps(weights.length, rounds, 0.08);
  const biasSteps = new Steps(columns, rounds, 0.08);
  const odds = new Float64Array(columns);
  for (let round = 0; round < rounds; round++) {
    gradient.fill(0);
    biasGradient.fill(0);
    cases.forEach(({ labels }, n) => {
      const ids = own[n] as Int32Array;
      odds.set(bias);
      for (const id of ids)
        for (let k = 0; k < columns; k++)
          odds[k] = (odds[k] as number) + (weights[id * columns + k] as number);
      let any = false;
      for (let k = 0; k < columns; k++) {
        const label = labels[k];
        const off = label === OPEN ? 0 : chance(odds[k] as number) - (label === YES ? 1 : 0);
        biasGradient[k] = (biasGradient[k] as number) + off;
        odds[k] = Math.abs(off) < 1e-4 ? 0 : off;
        any ||= odds[k] !== 0;
      }
      if (!any) return;
      for (const id of ids)
        for (let k = 0; k < columns; k++)
          gradient[id * columns + k] = (gradient[id * columns + k] as number) + (odds[k] as number);
    });
    steps.take(weights, gradient, penalty);
    biasSteps.take(bias, biasGradient, 0);
  }
  return { rows, columns, weights, bias };
}

/** Adds up what the features of a clause weigh. */
export function oddsOfWords(model: WordModel, features: Int32Array): Float64Array {
  const { columns, rows, weights } = model;
  const odds = model.bias.slice();
  for (const f of features) {
    const row = rows.get(f);
    if (row === undefined) continue;
    for (let k = 0; k < columns; k++) odds[k] = (odds[k] as number) + (weights[row * columns + k] as number);
  }
  return odds;
}

export interface CueCase {
  readonly cues: readonly (readonly [string, number])[];
  readonly isRight: boolean;
  /** How much the case counts. */
  readonly worth: number;
}

/** Fits one weight for each cue. */
export function fitCues(
  cases: readonly CueCase[],
  penalty: number,
  rounds = 150,
): Readonly<Record<string, number>> {
  const index = new Map<string, number>();
  const ids: number[] = [];
  const sizes: number[] = [];
  const ends: number[] = [];
  for (const { cues } of cases) {
    for (const [name, size] of cues) {
      if (!index.has(name)) index.set(name, index.size);
      ids.push(index.get(name) as number);
      sizes.push(size);
    }
    ends.push(ids.length);
  }
  const [id, size, end] = [Int32Array.from(ids), Float64Array.from(sizes), Int32Array.from(ends)];
  const weights = new Float64Array(index.size);
  const gradient = new Float64Array(index.size);
  const steps = new Steps(index.size, rounds, 0.1);
  for (let round = 0; round < rounds; round++) {
    gradient.fill(0);
    let from = 0;
    cases.forEach(({ isRight, worth }, n) => {
      const to = end[n] as number;
      let odds = 0;
      for (let k = from; k < to; k++) odds += (weights[id[k] as number] as number) * (size[k] as number);
      const off = worth * (chance(odds) - (isRight ? 1 : 0));
      for (let k = from; k < to; k++)
        gradient[id[k] as number] = (gradient[id[k] as number] as number) + off * (size[k] as number);
      from = to;
    });
    steps.take(weights, gradient, penalty);
  }
  return Object.fromEntries([...index].map(([name, k]) => [name, weights[k] as number]));
}
