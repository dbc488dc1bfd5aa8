/** Fits what each piece of evidence for a size weighs: a multinomial logit over the sizes, with an L2 penalty. */
import type { SizeWeights } from '../src/language/items/size-choice.ts';
import { STEP } from '../src/language/items/size-table.ts';
import { SIZES } from '../src/language/items/sizes.ts';
import type { SizeCase } from './attribute-cases.ts';

export interface SizeFitSettings {
  /** Penalties on the squares of the weights. */
  readonly signs: number;
  readonly votes: number;
  /** In how few stories a sign may stand. */
  readonly stories: number;
  /** The least weight that is kept. */
  readonly least: number;
  readonly rounds: number;
  readonly drop?: RegExp;
}

export const FIT: SizeFitSettings = { signs: 6, votes: 1, stories: 4, least: 0.08, rounds: 150 };

/** Where the weights of each vote and of each sign begin in the array of weights; a sign has one for each size. */
interface Places {
  readonly votes: ReadonlyMap<string, number>;
  readonly signs: ReadonlyMap<string, number>;
  readonly count: number;
}

function placesOf(cases: readonly SizeCase[], { drop, stories: fewest }: SizeFitSettings): Places {
  const votes = new Map<string, number>();
  const storiesOf = new Map<string, Set<string>>();
  for (const { evidence, story } of cases) {
    const told = story.replace(/ bare$/, '');
    for (const [source] of evidence.votes)
      if (!votes.has(source) && !drop?.test(`vote ${source}`)) votes.set(source, votes.size);
    for (const sign of evidence.signs) storiesOf.set(sign, (storiesOf.get(sign) ?? new Set()).add(told));
  }
  const signs = new Map<string, number>();
  for (const [sign, stories] of storiesOf)
    if (stories.size >= fewest && !drop?.test(sign)) signs.set(sign, votes.size + signs.size * SIZES.length);
  return { votes, signs, count: votes.size + signs.size * SIZES.length };
}

/** A case by its places: which weight counts for which size. */
interface Row {
  readonly right: number;
  readonly weight: number;
  readonly votes: readonly (readonly [place: number, size: number])[];
  readonly signs: readonly number[];
}

const INDEX = new Map<string, number>(SIZES.map((size, k) => [size, k]));

function rowOf({ evidence, right, weight }: SizeCase, places: Places): Row {
  return {
    right: INDEX.get(right) as number,
    weight,
    votes: evidence.votes.flatMap(([source, size]) => {
      const place = places.votes.get(source);
      const of = INDEX.get(size);
      return place === undefined || of === undefined ? [] : [[place, of] as const];
    }),
    signs: evidence.signs.flatMap((sign) => places.signs.get(sign) ?? []),
  };
}

/** Adds the gradient of the loss to `g`. */
function addGradient(rows: readonly Row[], w: Float64Array, g: Float64Array): void {
  const n = SIZES.length;
  const score = new Float64Array(n);
  for (const row of rows) {
    score.fill(0);
    for (const [at, of] of row.votes) score[of] = (score[of] as number) + (w[at] as number);
    for (const at of row.signs)
      for (let k = 0; k < n; k++) score[k] = (score[k] as number) + (w[at + k] as number);
    const most = Math.max(...score);
    let all = 0;
    for (let k = 0; k < n; k++) all += score[k] = Math.exp((score[k] as number) - most);
    for (let k = 0; k < n; k++)
      score[k] = row.weight * ((score[k] as number) / all - (k === row.right ? 1 : 0));
    for (const [at, of] of row.votes) g[at] = (g[at] as number) + (score[of] as number);
    for (const at of row.signs)
      for (let k = 0; k < n; k++) g[at + k] = (g[at + k] as number) + (score[k] as number);
  }
}

/** Weights of the whole set, in whole steps and without those that say next to nothing. */
export function fitSizes(cases: readonly SizeCase[], settings: SizeFitSettings = FIT): SizeWeights {
  const places = placesOf(cases, settings);
  const rows = cases.map((one) => rowOf(one, places));
  return tableOf(places, descend(rows, places, settings), settings);
}

/** The weights by Adam on the whole set. */
function descend(rows: readonly Row[], places: Places, settings: SizeFitSettings): Float64Array {
  const w = new Float64Array(places.count);
  const g = new Float64Array(places.count);
  const m = new Float64Array(places.count);
  const v = new Float64Array(places.count);
  for (let round = 1; round <= settings.rounds; round++) {
    g.fill(0);
    addGradient(rows, w, g);
    const rate = 0.1 * (1 - round / (settings.rounds * 1.1));
    for (let k = 0; k < w.length; k++) {
      const penalty = k < places.votes.size ? settings.votes : settings.signs;
      const grad = (g[k] as number) + penalty * (w[k] as number);
      m[k] = 0.9 * (m[k] as number) + 0.1 * grad;
      v[k] = 0.999 * (v[k] as number) + 0.001 * grad * grad;
      const mHat = (m[k] as number) / (1 - 0.9 ** round);
      const vHat = (v[k] as number) / (1 - 0.999 ** round);
      w[k] = (w[k] as number) - (rate * mHat) / (Math.sqrt(vHat) + 1e-8);
    }
  }
  return w;
}

function tableOf(places: Places, w: Float64Array, { least }: SizeFitSettings): SizeWeights {
  const kept = (k: number): number | undefined => {
    const weight = w[k] as number;
    return Math.abs(weight) < least ? undefined : Math.round(weight / STEP) * STEP;
  };
  const votes: Record<string, number> = {};
  for (const [source, at] of places.votes) {
    const weight = kept(at);
    if (weight) votes[source] = weight;
  }
  const signs: Record<string, Record<string, number>> = {};
  for (const [sign, at] of places.signs) {
    const row: Record<string, number> = {};
    SIZES.forEach((size, k) => {
      const weight = kept(at + k);
      if (weight) row[size] = weight;
    });
    if (Object.keys(row).length > 0) signs[sign] = row;
  }
  return { votes, signs };
}
