import { nameStems } from './names.ts';
import type { ItemRow } from './rows.ts';

/** Stems by which an item is found: those of its name and of its other names. */
export function itemStems(item: ItemRow): readonly string[] {
  return [...new Set([item.name, ...item.aliases].flatMap(nameStems))].sort();
}
