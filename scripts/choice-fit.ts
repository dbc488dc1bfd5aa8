/** Fits what each feature weighs: a conditional logit over the candidates of each figure, with an L2 penalty. */
import type { Weights } from '../src/language/items/choice.ts';
import type { Case } from './choice-cases.ts';

export interface FitSettings {
  readonly penalty: number;
  readonly rounds: number;
  /** Features seen with fewer candidates than this are left out. */
  readonly atLeast: number;
  /** Added to what the first frame weighs: the sentences that frames must read are few among stories. */
  readonly trust: number;
  readonly drop?: RegExp;
}

export const SETTINGS: FitSettings = { penalty: 8, rounds: 120, atLeast: 8, trust: 0.6 };

/** Cases as flat arrays: a run of ids and sizes for each candidate, a run of candidates for each case. */
interface Flat {
  readonly names: readonly string[];
  readonly id: Int32Array;
  readonly size: Float64Array;
  readonly end: Int32Array;
  readonly isRight: Uint8Array;
  readonly caseEnd: Int32Array;
}

function flatten(cases: readonly Case[], { atLeast, drop }: FitSettings): Flat {
  const useful = cases.filter(
    ({ candidates }) => candidates.some((c) => c.isBest) && candidates.some((c) => !c.isBest),
  );
  const seen = new Map<string, number>();
  for (const { candidates } of useful)
    for (const c of candidates) for (const [name] of c.features) seen.set(name, (seen.get(name) ?? 0) + 1);
  const index = new Map<string, number>();
  for (const [name, n] of seen) if (n >= atLeast && !drop?.test(name)) index.set(name, index.size);
  const ids: number[] = [];
  const sizes: number[] = [];
  const ends: number[] = [];
  const isRight: number[] = [];
  const caseEnds: number[] = [];
  for (const { candidates } of useful) {
    for (const c of candidates) {
      for (const [name, size] of c.features) {
        const id = index.get(name);
        if (id === undefined) continue;
        ids.push(id);
        sizes.push(size);
      }
      ends.push(ids.length);
      isRight.push(c.isBest ? 1 : 0);
    }
    caseEnds.push(ends.length);
  }
  return {
    names: [...index.keys()],
    id: Int32Array.from(ids),
    size: Float64Array.from(sizes),
    end: Int32Array.from(ends),
    isRight: Uint8Array.from(isRight),
    caseEnd: Int32Array.from(caseEnds),
  };
}

/** Adds the gradient of the loss to `g`; several right candidates share the credit. */
function addGradient({ id, size, end, isRight, caseEnd }: Flat, w: Float64Array, g: Float64Array): void {
  const weight = new Float64Array(end.length);
  let from = 0;
  for (const to of caseEnd) {
    let most = Number.NEGATIVE_INFINITY;
    for (let c = from; c < to; c++) {
      let sum = 0;
      for (let k = c === 0 ? 0 : (end[c - 1] as number); k < (end[c] as number); k++)
        sum += (w[id[k] as number] as number) * (size[k] as number);
      weight[c] = sum;
      if (sum > most) most = sum;
    }
    let all = 0;
    let right = 0;
    for (let c = from; c < to; c++) {
      weight[c] = Math.exp((weight[c] as number) - most);
      all += weight[c] as number;
      if (isRight[c]) right += weight[c] as number;
    }
    for (let c = from; c < to; c++) {
      const d = (weight[c] as number) / all - (isRight[c] ? (weight[c] as number) / right : 0);
      if (Math.abs(d) < 1e-6) continue;
      for (let k = c === 0 ? 0 : (end[c - 1] as number); k < (end[c] as number); k++)
        g[id[k] as number] = (g[id[k] as number] as number) + d * (size[k] as number);
    }
    from = to;
  }
}

/** Weights by Adam on the whole set. */
export function fitWeights(cases: readonly Case[], settings: FitSettings = SETTINGS): Weights {
  const flat = flatten(cases, settings);
  const count = flat.names.length;
  const penalty = flat.names.map((name) => settings.penalty * (name.startsWith('size|') ? 2 : 1));
  const w = new Float64Array(count);
  const m = new Float64Array(count);
  const v = new Float64Array(count);
  const g = new Float64Array(count);
  for (let round = 1; round <= settings.rounds; round++) {
    g.fill(0);
    addGradient(flat, w, g);
    const rate = 0.1 * (1 - round / (settings.rounds * 1.1));
    for (let k = 0; k < count; k++) {
      const grad = (g[k] as number) + (penalty[k] as number) * (w[k] as number);
      m[k] = 0.9 * (m[k] as number) + 0.1 * grad;
      v[k] = 0.999 * (v[k] as number) + 0.001 * grad * grad;
      const mHat = (m[k] as number) / (1 - 0.9 ** round);
      const vHat = (v[k] as number) / (1 - 0.999 ** round);
      w[k] = (w[k] as number) - (rate * mHat) / (Math.sqrt(vHat) + 1e-8);
    }
  }
  const out: Record<string, number> = {};
  flat.names.forEach((name, k) => {
    if (Math.abs(w[k] as number) >= 0.02) out[name] = Math.round((w[k] as number) * 100) / 100;
  });
  out.first = (out.first ?? 0) + settings.trust;
  return out;
}
