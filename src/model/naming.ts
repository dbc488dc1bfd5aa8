import type { Draft } from './draft.ts';
import { itemStems } from './items.ts';
import { kinship, nameKey, nameStems, otherWay } from './names.ts';
import type { ItemRow } from './rows.ts';

/** Finds the item that a name stands for, or makes it. `recent` are item ids of this memo, latest last. */
export function itemFor(draft: Draft, said: string, recent: readonly string[]): ItemRow {
  const rule = draft.nameRule(nameKey(said));
  const name = rule?.into ?? said;
  const apart = rule !== undefined && rule.into === undefined;
  // Most talk is of things by the very name that they have: no others of like names are gone through.
  const same = apart ? undefined : sameItem(name, draft.itemsNamed(name));
  if (same) return withAlias(draft, same, said);
  const other = otherWay(name);
  const known = [
    ...draft.itemsLike(nameStems(name)),
    ...(other === undefined ? [] : draft.itemsLike(nameStems(other))),
  ];
  const found = apart
    ? known.find((item) => nameKey(item.name) === nameKey(name))
    : bestItem(name, known, recent);
  if (!found) return newItem(draft, name, said, apart);
  return withAlias(draft, found, said);
}

/** The known item that a name stands for, if there is exactly one best. */
export function bestItem(
  name: string,
  known: readonly ItemRow[],
  recent: readonly string[],
): ItemRow | undefined {
  const kin = known
    .filter((item) => mayBe(name, item))
    .map((item) => ({ item, kinship: closestKinship(name, item) }));
  const same = kin.find((one) => one.kinship === 'same');
  if (same) return same.item;
  const close = kin.filter((one) => one.kinship === 'shorter' || one.kinship === 'longer');
  if (close.length === 1) return close[0]?.item;
  // "The top" with a bench top and a table top: the one that the talk was about.
  return close
    .map((one) => one.item)
    .sort((a, b) => recent.lastIndexOf(b.id) - recent.lastIndexOf(a.id))
    .find((item) => recent.includes(item.id));
}

/** What a person set apart goes by its own name alone. */
const mayBe = (name: string, item: ItemRow): boolean => !item.apart || nameKey(item.name) === nameKey(name);

/** The first of these that goes by the very name. */
const sameItem = (name: string, known: readonly ItemRow[]): ItemRow | undefined =>
  known.find((item) => mayBe(name, item) && closestKinship(name, item) === 'same');

function closestKinship(name: string, item: ItemRow): ReturnType<typeof kinship> {
  const order = ['same', 'shorter', 'longer', 'sort', 'rival', 'apart'] as const;
  const found = [item.name, ...item.aliases].map((known) => kinship(name, known));
  return order.find((one) => found.includes(one)) ?? 'apart';
}

function newItem(draft: Draft, name: string, said: string, apart: boolean): ItemRow {
  const aliases = nameKey(said) === nameKey(name) ? [] : [said];
  const id = `i${draft.itemCount() + 1}`;
  const item: ItemRow = { id, name, words: nameStems(name), aliases, ...(apart ? { apart: true } : {}) };
  draft.put({ table: 'items', row: item });
  return item;
}

/** Keeps another way to say an item, so that it is found by it next time. */
function withAlias(draft: Draft, item: ItemRow, said: string): ItemRow {
  const key = nameKey(said);
  if (nameKey(item.name) === key || item.aliases.some((alias) => nameKey(alias) === key)) return item;
  // A shorter name is no name of its own: "the top" must stay free for other tops.
  if (nameStems(said).every((stem) => itemStems(item).includes(stem))) return item;
  const named = { ...item, aliases: [...item.aliases, said] };
  draft.put({ table: 'items', row: named });
  return named;
}
