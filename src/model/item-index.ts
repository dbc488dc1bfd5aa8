import { itemStems, leastShared, plainKeys } from './items.ts';
import { nameStems, plainKey, withoutHoles } from './names.ts';
import type { ItemRow } from './rows.ts';

/** An item that has a word, and the fewest words that a longer name must share with it. */
export interface Holder {
  readonly id: string;
  readonly least: number;
}

/**
 * Numbers of the items that have one word, by the fewest words that a name must share with each. Lists and no sets: they
 * are gone through with every figure, and changed only by a new thing or another name of one.
 */
type Holders = number[][];

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
  /** By their numbers. */
  readonly #rows: (ItemRow | undefined)[] = [];
  readonly #byWord = new Map<string, Holders>();
  /** By their names in full; not kept where there is a shelf. */
  readonly #byName = new Map<string, number[]>();
  readonly #shelf: ItemShelf | undefined;
  /** How many of the words asked for an item has, by its number; nought again behind each call. */
  #counts = new Uint16Array(1024);

  constructor(shelf?: ItemShelf) {
    this.#shelf = shelf;
  }

  clear(): void {
    this.#rows.length = 0;
    this.#byWord.clear();
    this.#byName.clear();
  }

  row(id: string): ItemRow | undefined {
    const number = numberOf(id);
    const known = this.#rows[number];
    // What is no item's id may end in a number as well.
    if (known?.id === id) return known;
    const row = this.#shelf?.row(id);
    if (row) this.#rows[number] = row;
    return row;
  }

  /** Files an item, or one that got another name, under all of its words. */
  put(row: ItemRow): void {
    const number = numberOf(row.id);
    // With a shelf, an item that was never asked for may yet be among the holders of a word.
    const isNew = !this.#shelf && this.#rows[number] === undefined;
    this.#rows[number] = row;
    if (!this.#shelf) this.#putNames(row, number);
    const holder = { id: row.id, least: leastShared(row) };
    for (const word of itemStems(row)) {
      const holders = this.#shelf ? this.#byWord.get(word) : this.#holdersOf(word);
      if (!holders) continue;
      if (!isNew) for (const numbers of holders) drop(numbers, number);
      this.#hold(holders, holder);
    }
  }

  #putNames(row: ItemRow, number: number): void {
    for (const key of plainKeys(row)) {
      const numbers = this.#byName.get(key);
      if (!numbers) this.#byName.set(key, [number]);
      else if (!numbers.includes(number)) numbers.push(number);
    }
  }

  /** Items that go by this very name, in order of first mention; with a shelf, those that it may stand for. */
  named(name: string): readonly ItemRow[] {
    const stems = nameStems(name);
    if (this.#shelf) return this.like(stems);
    // What has no word that tells it apart is no known thing.
    return stems.length === 0 ? [] : this.#inOrder([...(this.#byName.get(plainKey(name)) ?? [])]);
  }

  /** Items that have at least one of the words, in order of first mention. */
  sharing(words: readonly string[]): readonly ItemRow[] {
    const found: number[] = [];
    for (const word of words) for (const numbers of this.#holdersOf(word)) this.#count(numbers, found);
    this.#forgetCounts(found);
    return this.#inOrder(found);
  }

  /**
   * Items that a name of these words may stand for: see `isLike`. An item that must share `n` of `m` words is a holder
   * of one of the `m - n + 1` rarest, so those of the others are counted only where they were met before.
   */
  like(words: readonly string[]): readonly ItemRow[] {
    const lists = words.map((word) => this.#holdersOf(word));
    const most = withoutHoles(words).length;
    const like: number[] = [];
    const deepest = Math.max(0, ...lists.map((list) => list.length));
    for (let least = 0; least < deepest; least++) {
      const needed = Math.max(1, Math.min(most, least));
      const holders: number[][] = [];
      for (const { [least]: numbers } of lists) if (numbers && numbers.length > 0) holders.push(numbers);
      if (holders.length < needed) continue;
      holders.sort((a, b) => a.length - b.length);
      const rarest = holders.length - needed + 1;
      const met: number[] = [];
      for (const numbers of holders.slice(0, rarest)) this.#count(numbers, met);
      for (const numbers of holders.slice(rarest)) this.#countAgain(numbers);
      for (const number of met) if ((this.#counts[number] ?? 0) >= needed) like.push(number);
      this.#forgetCounts(met);
    }
    return this.#inOrder(like);
  }

  /** The items that share most words with these, of equals the latest, in order of first mention. */
  near(words: readonly string[], limit: number): readonly ItemRow[] {
    const found: number[] = [];
    for (const word of new Set(words))
      for (const numbers of this.#holdersOf(word)) this.#count(numbers, found);
    const best = this.#mostShared(found, limit);
    this.#forgetCounts(found);
    return this.#inOrder(best);
  }

  /** Of the items counted, those with most words. Of thousands that share one word, most are passed over at a glance. */
  #mostShared(numbers: readonly number[], limit: number): number[] {
    const counts = this.#counts;
    const best: number[] = [];
    let least = 0;
    for (const number of numbers) {
      const count = counts[number] as number;
      if (count < least) continue;
      let at = best.length;
      while (at > 0 && isBehind(best[at - 1] as number, count, number, counts)) at--;
      if (at >= limit) continue;
      best.splice(at, 0, number);
      if (best.length > limit) best.pop();
      if (best.length === limit) least = counts[best[limit - 1] as number] as number;
    }
    return best;
  }

  /** Counts items up; those that were not counted before are put into `met`. */
  #count(numbers: readonly number[], met: number[]): void {
    const counts = this.#counts;
    for (const number of numbers) {
      const count = counts[number] ?? 0;
      if (count === 0) met.push(number);
      counts[number] = count + 1;
    }
  }

  /** Counts up those items alone that were counted before. */
  #countAgain(numbers: readonly number[]): void {
    const counts = this.#counts;
    for (const number of numbers) if (counts[number]) counts[number]++;
  }

  #forgetCounts(numbers: readonly number[]): void {
    for (const number of numbers) this.#counts[number] = 0;
  }

  #holdersOf(word: string): Holders {
    let holders = this.#byWord.get(word);
    if (!holders) {
      holders = [];
      this.#byWord.set(word, holders);
      for (const holder of this.#shelf?.holders(word) ?? []) this.#hold(holders, holder);
    }
    return holders;
  }

  #hold(holders: Holders, { id, least }: Holder): void {
    const number = numberOf(id);
    while (holders.length <= least) holders.push([]);
    (holders[least] as number[]).push(number);
    if (number < this.#counts.length) return;
    const counts = new Uint16Array(2 * number);
    counts.set(this.#counts);
    this.#counts = counts;
  }

  #inOrder(numbers: number[]): readonly ItemRow[] {
    if (numbers.length > 1) numbers.sort((a, b) => a - b);
    const rows: ItemRow[] = [];
    for (const number of numbers) {
      const row = this.#rows[number] ?? this.row(`i${number}`);
      if (row) rows.push(row);
    }
    return rows;
  }
}

/** Ids count up: `i12` comes after `i9`. */
const numberOf = (id: string) => Number(id.slice(1));

function drop(numbers: number[], number: number): void {
  // From behind: an item that gets another name is mostly a late one.
  const at = numbers.lastIndexOf(number);
  if (at >= 0) numbers.splice(at, 1);
}

/** Whether an item comes behind one of this many shared words: it shares fewer, or as many and is the earlier one. */
function isBehind(known: number, count: number, number: number, counts: Uint16Array): boolean {
  const own = counts[known] as number;
  return own < count || (own === count && known < number);
}
