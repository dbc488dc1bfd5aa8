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

  constructor(valuesOf: (row: R) => readonly string[]) {
    this.#valuesOf = valuesOf;
  }

  /** Files a row that was just put; `before` is the row that gave way to it. */
  put(entry: Entry<R>, before: R | undefined): void {
    const values = this.#valuesOf(entry.row);
    const old = before === undefined ? [] : this.#valuesOf(before);
    for (const value of old) {
      if (values.includes(value)) continue;
      this.#buckets.get(value)?.delete(entry);
      this.#inOrder.delete(value);
    }
    for (const value of values) {
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
    return [...this.#sorted(value)].map(({ row }) => row);
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

  /** How many rows have this value. */
  count(value: string): number {
    return this.#buckets.get(value)?.size ?? 0;
  }

  clear(): void {
    this.#buckets.clear();
    this.#unsorted.clear();
    this.#inOrder.clear();
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
