import { itemStems, leastShared } from './items.ts';
import { withoutHoles } from './names.ts';
import type { ItemRow } from './rows.ts';

interface Filed {
  readonly row: ItemRow;
  readonly stems: ReadonlySet<string>;
  /** Fewest words that a longer name must share with it. */
  readonly least: number;
  /** `i12` comes after `i9`. */
  readonly ord: number;
}

/** Items that have one word, by the fewest words that a name must share with each. */
type Holders = Set<string>[];

/**
 * Items by the words of their names. Naming asks for those that a name may stand for with every figure: they are
 * looked for among the holders of its rarest words. Where items are kept elsewhere, `read` gives the holders of a word
 * when it is first asked for.
 */
export class ItemIndex {
  readonly #filed = new Map<string, Filed>();
  readonly #byWord = new Map<string, Holders>();
  readonly #read: ((word: string) => readonly ItemRow[]) | undefined;

  constructor(read?: (word: string) => readonly ItemRow[]) {
    this.#read = read;
  }

  clear(): void {
    this.#filed.clear();
    this.#byWord.clear();
  }

  row(id: string): ItemRow | undefined {
    return this.#filed.get(id)?.row;
  }

  /** Files an item, or one that changed, under all of its words. */
  put(row: ItemRow): void {
    const old = this.#filed.get(row.id);
    const now = this.#file(row);
    if (old) for (const word of old.stems) this.#byWord.get(word)?.[old.least]?.delete(row.id);
    for (const word of now.stems) {
      const holders = this.#read ? this.#byWord.get(word) : this.#holdersOf(word);
      if (holders) hold(holders, now);
    }
  }

  /** Keeps a row that was read, without filing it under words that nobody asked for. */
  keep(row: ItemRow): void {
    if (!this.#filed.has(row.id)) this.#file(row);
  }

  /** Items that have at least one of the words, in order of first mention. */
  sharing(words: readonly string[]): readonly ItemRow[] {
    const ids = new Set<string>();
    for (const word of words)
      for (const holders of this.#holdersOf(word)) for (const id of holders ?? []) ids.add(id);
    return this.#inOrder([...ids].map((id) => this.#filed.get(id) as Filed));
  }

  /**
   * Items that a name of these words may stand for: see `isLike`. An item that must share `n` of `m` words is a holder
   * of one of the `m - n + 1` rarest, so the others are not gone through.
   */
  like(words: readonly string[]): readonly ItemRow[] {
    const lists = words.map((word) => this.#holdersOf(word));
    const most = withoutHoles(words).length;
    const found = new Set<Filed>();
    const deepest = Math.max(0, ...lists.map((list) => list.length));
    for (let least = 0; least < deepest; least++) {
      const needed = Math.max(1, Math.min(most, least));
      const holders = lists.flatMap((list) => (list[least]?.size ? [list[least] as Set<string>] : []));
      holders.sort((a, b) => a.size - b.size);
      for (const ids of holders.slice(0, Math.max(0, holders.length - needed + 1)))
        for (const id of ids) {
          const filed = this.#filed.get(id) as Filed;
          if (sharesAtLeast(filed.stems, words, needed)) found.add(filed);
        }
    }
    return this.#inOrder([...found]);
  }

  /** The items that share most words with these, of equals the latest, in order of first mention. */
  near(words: readonly string[], limit: number): readonly ItemRow[] {
    const shared = new Map<string, number>();
    for (const word of new Set(words))
      for (const holders of this.#holdersOf(word))
        for (const id of holders ?? []) shared.set(id, (shared.get(id) ?? 0) + 1);
    const byCount: Filed[][] = [];
    for (const [id, count] of shared) {
      byCount[count] ??= [];
      byCount[count].push(this.#filed.get(id) as Filed);
    }
    const best: Filed[] = [];
    for (let count = byCount.length - 1; count > 0 && best.length < limit; count--) {
      const equals = (byCount[count] ?? []).sort((a, b) => b.ord - a.ord);
      best.push(...equals.slice(0, limit - best.length));
    }
    return this.#inOrder(best);
  }

  #file(row: ItemRow): Filed {
    const stems = new Set(itemStems(row));
    const filed = { row, stems, least: leastShared(row), ord: Number(row.id.slice(1)) };
    this.#filed.set(row.id, filed);
    return filed;
  }

  #holdersOf(word: string): Holders {
    let holders = this.#byWord.get(word);
    if (!holders) {
      holders = [];
      this.#byWord.set(word, holders);
      for (const row of this.#read?.(word) ?? []) hold(holders, this.#filed.get(row.id) ?? this.#file(row));
    }
    return holders;
  }

  #inOrder(filed: readonly Filed[]): readonly ItemRow[] {
    return [...filed].sort((a, b) => a.ord - b.ord).map(({ row }) => row);
  }
}

function hold(holders: Holders, { row, least }: Filed): void {
  while (holders.length <= least) holders.push(new Set());
  (holders[least] as Set<string>).add(row.id);
}

function sharesAtLeast(stems: ReadonlySet<string>, words: readonly string[], needed: number): boolean {
  let shared = 0;
  for (const word of words) if (stems.has(word) && ++shared >= needed) return true;
  return false;
}
