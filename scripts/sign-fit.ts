/** Fits what named signs weigh: logistic regression with an L2 penalty, by gradient steps of RMSprop. */
import type { Sign } from '../src/model/closing-signs.ts';

export interface SignedCase {
  readonly signs: readonly Sign[];
  readonly isRight: boolean;
}

export type SignWeights = Map<string, number>;

export const sumOf = (weights: SignWeights, signs: readonly Sign[]): number =>
  signs.reduce((sum, [name, size]) => sum + (weights.get(name) ?? 0) * size, 0);

const ROUNDS = 400;
const STEP = 0.05;

/** The sign "any" is in every case and is not held back. */
export function fitSigns(cases: readonly SignedCase[], penalty: number): SignWeights {
  const weights: SignWeights = new Map();
  const speed = new Map<string, number>();
  for (let round = 0; round < ROUNDS; round++) {
    const slope = new Map<string, number>();
    for (const { signs, isRight } of cases) {
      const miss = 1 / (1 + Math.exp(-sumOf(weights, signs))) - Number(isRight);
      for (const [name, size] of signs) slope.set(name, (slope.get(name) ?? 0) + miss * size);
    }
    for (const [name, raw] of slope) {
      const held = raw + (name === 'any' ? 0 : penalty * (weights.get(name) ?? 0));
      const grown = 0.9 * (speed.get(name) ?? 0) + 0.1 * held * held;
      speed.set(name, grown);
      weights.set(name, (weights.get(name) ?? 0) - (STEP * held) / (Math.sqrt(grown) + 1e-6));
    }
  }
  return weights;
}

/** The weights as lines of a table. */
export const tableOf = (weights: SignWeights): string =>
  [...weights]
    .sort(([a], [b]) => a.localeCompare(b))
    .map(([name, weight]) => `  '${name}': ${weight.toFixed(2)},`)
    .join('\n');
