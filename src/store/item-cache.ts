import { leastShared } from '../model/items.ts';
import { withoutHoles } from '../model/names.ts';
import type { ItemRow } from '../model/rows.ts';

/**
 * Items as they were last read, by id and by the words of their names. Naming asks for the same few hundred things
 * with every figure, and reading a row costs far more than looking it up here. Holds for one version of the file.
 */
export class ItemCache {
  readonly #rows = new Map<string, ItemRow>();
  /** Per item, the fewest words that a name must share with it. */
  readonly #least = new Map<string, number>();
  /** Ids by word, in order of first mention; a word that nobody asked for has no entry. */
  readonly #byWord = new Map<string, Set<string>>();
  #version: number | undefined;

  /** Forgets everything when the file is no longer at `version`. */
  keepFor(version: number): void {
    if (version !== this.#version) this.clear();
    this.#version = version;
  }

  clear(): void {
    this.#rows.clear();
    this.#least.clear();
    this.#byWord.clear();
  }

  row(id: string, read: () => ItemRow | undefined): ItemRow | undefined {
    const known = this.#rows.get(id);
    if (known) return known;
    const row = read();
    if (row) this.#rows.set(id, row);
    return row;
  }

  /** Items that have at least one of the words, in order of first mention. */
  sharing(words: readonly string[], read: (word: string) => readonly ItemRow[]): readonly ItemRow[] {
    const ids = new Set<string>();
    for (const word of words) for (const id of this.#idsOf(word, read)) ids.add(id);
    return [...ids].map((id) => this.#rows.get(id) as ItemRow).sort(byFirstMention);
  }

  /** Items that a name of these words may stand for: `isLike`, counted instead of compared. */
  like(words: readonly string[], read: (word: string) => readonly ItemRow[]): readonly ItemRow[] {
    const shared = new Map<string, number>();
    for (const word of words) {
      for (const id of this.#idsOf(word, read)) shared.set(id, (shared.get(id) ?? 0) + 1);
    }
    const most = withoutHoles(words).length;
    const found: ItemRow[] = [];
    for (const [id, count] of shared) {
      if (count >= most || count >= this.#leastOf(id)) found.push(this.#rows.get(id) as ItemRow);
    }
    return found.sort(byFirstMention);
  }

  #leastOf(id: string): number {
    let least = this.#least.get(id);
    if (least === undefined) {
      least = leastShared(this.#rows.get(id) as ItemRow);
      this.#least.set(id, least);
    }
    return least;
  }

  #idsOf(word: string, read: (word: string) => readonly ItemRow[]): ReadonlySet<string> {
    let ids = this.#byWord.get(word);
    if (!ids) {
      const rows = read(word);
      for (const row of rows) if (!this.#rows.has(row.id)) this.#rows.set(row.id, row);
      ids = new Set(rows.map(({ id }) => id));
      this.#byWord.set(word, ids);
    }
    return ids;
  }

  /** Keeps a row that was just written, under all of its words. */
  put(row: ItemRow, words: readonly string[]): void {
    this.#rows.set(row.id, row);
    this.#least.delete(row.id);
    const has = new Set(words);
    for (const [word, ids] of this.#byWord) if (!has.has(word)) ids.delete(row.id);
    for (const word of words) this.#byWord.get(word)?.add(row.id);
  }
}

/** `i12` comes after `i9`. */
function byFirstMention(a: ItemRow, b: ItemRow): number {
  return Number(a.id.slice(1)) - Number(b.id.slice(1));
}
