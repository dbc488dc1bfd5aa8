/** A row in memory, with its place in the order of first writing and the event that first wrote it. */
export interface Entry<R> {
  readonly key: string;
  readonly ord: number;
  /** Place in the log of the event that made the row; 0 for what stands before the first one. */
  readonly since: number;
  row: R;
}

/** Rows of one table by a value that each of them has: its item, its slot, its words. */
export class RowIndex<R> {
  readonly #valuesOf: (row: R) => readonly string[];
  readonly #buckets = new Map<string, Set<Entry<R>>>();
  /** Values whose rows are not in order: a row came back that was there before others. */
  readonly #unsorted = new Set<string>();
  /** The rows of values that were asked for their latest, in order; left out again where a row comes back or goes. */
  readonly #inOrder = new Map<string, Entry<R>[]>();

  /** What was found by a value, until a row of it changes: a memo asks for the figures of one thing dozens of times. */
  readonly #found = new Map<string, readonly R[]>();

  constructor(valuesOf: (row: R) => readonly string[]) {
    this.#valuesOf = valuesOf;
  }

  /** Files a row that was just put; `before` is the row that gave way to it. */
  put(entry: Entry<R>, before: R | undefined): void {
    const values = this.#valuesOf(entry.row);
    const old = before === undefined ? [] : this.#valuesOf(before);
    for (const value of old) {
      this.#found.delete(value);
      if (values.includes(value)) continue;
      this.#buckets.get(value)?.delete(entry);
      this.#inOrder.delete(value);
    }
    for (const value of values) {
      this.#found.delete(value);
      if (old.includes(value)) continue;
      const bucket = this.#buckets.get(value);
      if (!bucket) this.#buckets.set(value, new Set([entry]));
      else {
        bucket.add(entry);
        if (before !== undefined) this.#unsorted.add(value);
      }
      if (before === undefined) this.#inOrder.get(value)?.push(entry);
      else this.#inOrder.delete(value);
    }
  }

  /** Rows that have this value, in order of first writing. */
  find(value: string): readonly R[] {
    const known = this.#found.get(value);
    if (known) return known;
    const found: R[] = [];
    for (const { row } of this.#sorted(value)) found.push(row);
    this.#found.set(value, found);
    return found;
  }

  /** The last `limit` of the rows that have this value, in order of first writing; the others are not gone through. */
  latest(value: string, limit: number): readonly R[] {
    let entries = this.#inOrder.get(value);
    if (!entries) {
      entries = [...this.#sorted(value)];
      this.#inOrder.set(value, entries);
    }
    return entries.slice(-limit).map(({ row }) => row);
  }

  /** Rows that have at least one of these values, in order of first writing. */
  findAny(values: readonly string[]): readonly R[] {
    if (values.length === 1) return this.find(values[0] as string);
    const entries = new Set<Entry<R>>();
    for (const value of values) for (const entry of this.#buckets.get(value) ?? []) entries.add(entry);
    return [...entries].sort(byOrd).map(({ row }) => row);
  }

  /**
   * Rows that have this value and at least `least` of the others, in order of first writing. Whichever are fewer are gone
   * through, those that have the one or those that have any of the others; only what is found is put in order.
   */
  findWith(value: string, others: readonly string[], least: number): readonly R[] {
    const own = this.#buckets.get(value);
    if (!own) return [];
    if (least <= 0) return this.find(value);
    const buckets = others.flatMap((other) => this.#buckets.get(other) ?? []);
    if (buckets.length < least) return [];
    const fewer = buckets.reduce((sum, { size }) => sum + size, 0) < own.size ? buckets : [own];
    const found = new Set<Entry<R>>();
    for (const bucket of fewer)
      for (const entry of bucket) if (own.has(entry) && isInAtLeast(buckets, entry, least)) found.add(entry);
    return [...found].sort(byOrd).map(({ row }) => row);
  }

  /** How many rows have this value. */
  count(value: string): number {
    return this.#buckets.get(value)?.size ?? 0;
  }

  clear(): void {
    this.#buckets.clear();
    this.#unsorted.clear();
    this.#inOrder.clear();
    this.#found.clear();
  }

  #sorted(value: string): ReadonlySet<Entry<R>> {
    const bucket = this.#buckets.get(value) ?? new Set<Entry<R>>();
    if (!this.#unsorted.delete(value)) return bucket;
    const sorted = new Set([...bucket].sort(byOrd));
    this.#buckets.set(value, sorted);
    return sorted;
  }
}

const byOrd = (a: { readonly ord: number }, b: { readonly ord: number }) => a.ord - b.ord;

function isInAtLeast<T>(sets: readonly ReadonlySet<T>[], one: T, least: number): boolean {
  let count = 0;
  for (const set of sets) if (set.has(one) && ++count >= least) return true;
  return false;
}
