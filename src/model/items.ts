import { nameStems, plainKey, withoutHoles } from './names.ts';
import type { ItemRow } from './rows.ts';

/** Stems by which an item is found: those of its name and of its other names. */
export function itemStems(item: ItemRow): readonly string[] {
  return [...new Set([item.name, ...item.aliases].flatMap(nameStems))].sort();
}

/** By what the names of an item are found where they are said in full, each once. */
export function plainKeys(item: ItemRow): readonly string[] {
  return [...new Set([item.name, ...item.aliases].map(plainKey))];
}

/** How many of its own words a said name must hold to be a longer way to say this item, or the same. */
export function leastShared(item: ItemRow): number {
  return Math.min(...[item.name, ...item.aliases].map((name) => withoutHoles(nameStems(name)).length));
}

/**
 * Whether a name of these stems may stand for the item: one of the two holds all the words of the other, words for an
 * opening left out. A first sieve, quicker than `kinship`; lets some through that are no kin.
 */
export function isLike(item: ItemRow, stems: readonly string[]): boolean {
  const known = new Set(itemStems(item));
  const shared = stems.filter((stem) => known.has(stem)).length;
  return shared > 0 && shared >= Math.min(withoutHoles(stems).length, leastShared(item));
}
