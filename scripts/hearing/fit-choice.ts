/** Fits a choice among candidates and what was heard. */
import type { Case } from './heard-cases.ts';

const ROUNDS = 250;
/** Keeps weights small that few cases speak for (ridge). */
const PENALTY = 0.002;
/** How much a choice counts in which no candidate is right and the heard words are wrong too: to read them otherwise does little harm. */
const WRONG_ANYWAY = 0.3;
const SLOWEST = 1e-8;

/**
 * Weights of the first `size` features by the conditional logit of McFadden (1974): of each group of candidates for the
 * same heard words one was said, or what was heard. By Adam (Kingma and Ba 2015); features are brought to one scale first.
 */
export function fitChoice(choices: readonly (readonly Case[])[], size: number): readonly number[] {
  const cases = choices.flat();
  const scale = Array.from({ length: size }, (_, k) => {
    const mean = cases.reduce((sum, { features }) => sum + (features[k] as number) ** 2, 0) / cases.length;
    return Math.sqrt(mean) || 1;
  });
  const groups = choices.map((group) => ({
    weight: !group.some(({ isRight }) => isRight) && group[0]?.isWrongAnyway ? WRONG_ANYWAY : 1,
    rows: group.map(({ features, isRight }) => ({
      isRight,
      x: Float64Array.from({ length: size }, (_, k) => (features[k] as number) / (scale[k] as number)),
    })),
  }));
  const weights = new Float64Array(size);
  const [m, v] = [new Float64Array(size), new Float64Array(size)];
  for (let round = 1; round <= ROUNDS; round++) {
    const gradient = new Float64Array(size);
    for (const group of groups) addGradient(gradient, weights, group);
    const rate = 0.1 * (1 - round / (ROUNDS * 1.1));
    for (let k = 0; k < size; k++) {
      const slope = (gradient[k] as number) / groups.length + PENALTY * (weights[k] as number);
      m[k] = 0.9 * (m[k] as number) + 0.1 * slope;
      v[k] = 0.999 * (v[k] as number) + 0.001 * slope * slope;
      const step = (m[k] as number) / (1 - 0.9 ** round);
      weights[k] =
        (weights[k] as number) -
        (rate * step) / (Math.sqrt((v[k] as number) / (1 - 0.999 ** round)) + SLOWEST);
    }
  }
  return Array.from(weights, (weight, k) => weight / (scale[k] as number));
}

interface Group {
  readonly weight: number;
  readonly rows: readonly { readonly isRight: boolean; readonly x: Float64Array }[];
}

function addGradient(gradient: Float64Array, weights: Float64Array, { weight, rows }: Group): void {
  const odds = rows.map(({ x }) => {
    let sum = 0;
    for (let k = 0; k < x.length; k++) sum += (x[k] as number) * (weights[k] as number);
    return Math.exp(sum);
  });
  const all = 1 + odds.reduce((sum, one) => sum + one, 0);
  const right = rows.reduce((sum, { isRight }, at) => sum + (isRight ? (odds[at] as number) : 0), 0);
  rows.forEach(({ isRight, x }, at) => {
    const chance = (odds[at] as number) / all;
    const error = weight * (chance - (isRight ? (odds[at] as number) / right : 0));
    for (let k = 0; k < x.length; k++) gradient[k] = (gradient[k] as number) + error * (x[k] as number);
  });
}
