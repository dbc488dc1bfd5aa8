/**
 * Adds up what speaks for a thing. A feature has a name and up to two words that it is about: "kind" of "hole" and
 * "length". Weights are kept in tables within tables, so that no text is put together while things are weighed.
 */

/** Weights by the name of a feature, its words parted by "|": "kind|hole|length". */
export type Weights = Readonly<Record<string, number>>;

/** Name and size of a feature. */
export type Feature = readonly [string, number];

/** What takes the features of one candidate. */
export interface Tally {
  one(feature: string, size?: number): void;
  two(feature: string, of: string, size?: number): void;
  three(feature: string, of: string, and: string, size?: number): void;
}

/** Keeps every feature by its full name: for fitting, and to tell reasons. */
export class Noted implements Tally {
  readonly features: Feature[] = [];
  one(feature: string, size = 1): void {
    this.features.push([feature, size]);
  }
  two(feature: string, of: string, size = 1): void {
    this.features.push([`${feature}|${of}`, size]);
  }
  three(feature: string, of: string, and: string, size = 1): void {
    this.features.push([`${feature}|${of}|${and}`, size]);
  }
}

interface Branch {
  weight: number;
  readonly next: Map<string, Branch>;
}

const branch = (): Branch => ({ weight: 0, next: new Map() });

function grow(root: Branch, path: readonly string[], weight: number): void {
  let at = root;
  for (const part of path) {
    let next = at.next.get(part);
    if (!next) {
      next = branch();
      at.next.set(part, next);
    }
    at = next;
  }
  at.weight = weight;
}

/** Adds up weights; `sum` is the score since it was last set to 0. */
export class Weighing implements Tally {
  sum = 0;
  readonly #root = branch();

  constructor(weights: Weights) {
    for (const [name, weight] of Object.entries(weights)) grow(this.#root, name.split('|'), weight);
  }

  one(feature: string, size = 1): void {
    const found = this.#root.next.get(feature);
    if (found) this.sum += found.weight * size;
  }

  two(feature: string, of: string, size = 1): void {
    const found = this.#root.next.get(feature)?.next.get(of);
    if (found) this.sum += found.weight * size;
  }

  three(feature: string, of: string, and: string, size = 1): void {
    const found = this.#root.next.get(feature)?.next.get(of)?.next.get(and);
    if (found) this.sum += found.weight * size;
  }
}

const ready = new WeakMap<Weights, Weighing>();

/** The table of some weights, made once. */
export function weighingBy(weights: Weights): Weighing {
  let found = ready.get(weights);
  if (!found) {
    found = new Weighing(weights);
    ready.set(weights, found);
  }
  return found;
}
