import { itemStems, leastShared } from './items.ts';
import { withoutHoles } from './names.ts';
import type { ItemRow } from './rows.ts';

/** An item that has a word, and the fewest words that a longer name must share with it. */
export interface Holder {
  readonly id: string;
  readonly least: number;
}

/** Numbers of the items that have one word, by the fewest words that a name must share with each. */
type Holders = Set<number>[];

/** Where items are kept when not all of them are here. */
export interface ItemShelf {
  row(id: string): ItemRow | undefined;
  holders(word: string): readonly Holder[];
}

/**
 * Items by the words of their names. Naming asks for those that a name may stand for with every figure: they are
 * looked for among the holders of its rarest words. With a shelf, what is not here is fetched when first asked for.
 */
export class ItemIndex {
  readonly #rows = new Map<string, ItemRow>();
  readonly #byWord = new Map<string, Holders>();
  readonly #shelf: ItemShelf | undefined;
  /** For `near`, by the number of the item; nought again behind each call. */
  #counts = new Uint8Array(1024);

  constructor(shelf?: ItemShelf) {
    this.#shelf = shelf;
  }

  clear(): void {
    this.#rows.clear();
    this.#byWord.clear();
  }

  row(id: string): ItemRow | undefined {
    let row = this.#rows.get(id);
    if (!row) {
      row = this.#shelf?.row(id);
      if (row) this.#rows.set(id, row);
    }
    return row;
  }

  /** Files an item, or one that got another name, under all of its words. */
  put(row: ItemRow): void {
    this.#rows.set(row.id, row);
    const holder = { id: row.id, least: leastShared(row) };
    for (const word of itemStems(row)) {
      const holders = this.#shelf ? this.#byWord.get(word) : this.#holdersOf(word);
      if (!holders) continue;
      for (const numbers of holders) numbers.delete(numberOf(row.id));
      hold(holders, holder);
    }
  }

  /** Items that have at least one of the words, in order of first mention. */
  sharing(words: readonly string[]): readonly ItemRow[] {
    const found = new Set<number>();
    for (const word of words)
      for (const numbers of this.#holdersOf(word)) for (const number of numbers) found.add(number);
    return this.#inOrder([...found]);
  }

  /**
   * Items that a name of these words may stand for: see `isLike`. An item that must share `n` of `m` words is a holder
   * of one of the `m - n + 1` rarest, so the others are not gone through.
   */
  like(words: readonly string[]): readonly ItemRow[] {
    const lists = words.map((word) => this.#holdersOf(word));
    const most = withoutHoles(words).length;
    const found = new Set<number>();
    const deepest = Math.max(0, ...lists.map((list) => list.length));
    for (let least = 0; least < deepest; least++) {
      const needed = Math.max(1, Math.min(most, least));
      const holders = lists.flatMap((list) => (list[least]?.size ? [list[least] as Set<number>] : []));
      holders.sort((a, b) => a.size - b.size);
      for (const numbers of holders.slice(0, Math.max(0, holders.length - needed + 1)))
        for (const number of numbers) if (isInAtLeast(holders, number, needed)) found.add(number);
    }
    return this.#inOrder([...found]);
  }

  /** The items that share most words with these, of equals the latest, in order of first mention. */
  near(words: readonly string[], limit: number): readonly ItemRow[] {
    const found: number[] = [];
    let most = 0;
    for (const word of new Set(words))
      for (const numbers of this.#holdersOf(word))
        for (const number of numbers) {
          const count = this.#countUp(number);
          if (count === 1) found.push(number);
          if (count > most) most = count;
        }
    // Of thousands that share one word few are in the running: those that share less are not even put in order.
    const best: number[] = [];
    for (let count = most; count > 0 && best.length < limit; count--) {
      const equals = found.filter((number) => this.#counts[number] === count).sort((a, b) => b - a);
      best.push(...equals.slice(0, limit - best.length));
    }
    for (const number of found) this.#counts[number] = 0;
    return this.#inOrder(best);
  }

  #countUp(number: number): number {
    if (number >= this.#counts.length) {
      const counts = new Uint8Array(2 * number);
      counts.set(this.#counts);
      this.#counts = counts;
    }
    const count = (this.#counts[number] ?? 0) + 1;
    this.#counts[number] = count;
    return count;
  }

  #holdersOf(word: string): Holders {
    let holders = this.#byWord.get(word);
    if (!holders) {
      holders = [];
      this.#byWord.set(word, holders);
      for (const holder of this.#shelf?.holders(word) ?? []) hold(holders, holder);
    }
    return holders;
  }

  #inOrder(numbers: number[]): readonly ItemRow[] {
    return numbers.sort((a, b) => a - b).flatMap((number) => this.row(`i${number}`) ?? []);
  }
}

/** Ids count up: `i12` comes after `i9`. */
const numberOf = (id: string) => Number(id.slice(1));

function hold(holders: Holders, { id, least }: Holder): void {
  while (holders.length <= least) holders.push(new Set());
  (holders[least] as Set<number>).add(numberOf(id));
}

function isInAtLeast(sets: readonly ReadonlySet<number>[], item: number, needed: number): boolean {
  let count = 0;
  for (const numbers of sets) if (numbers.has(item) && ++count >= needed) return true;
  return false;
}
