/**
 * What brings a check up again. Each check has a few keys, and each change of the model too; a check is run anew when
 * they share one. So a memo costs by the checks that it touches, however many there are.
 *
 * `i3`: a figure of that thing changed. `~hatch`: something of that name has a figure now, which a name in the check
 * may stand for. `*mass`: some figure of that dimension changed. `!hatch`: a layer went on or came off a thing of that
 * name, or of what a figure was measured from. `+hatch`: a thing of that name is new, or has another name.
 */
import { itemStems } from '../items.ts';
import { shapeOf } from '../names.ts';
import type { ModelChange, ModelReader, StandingRow } from '../rows.ts';
import { circumstanceStems, isLayer, mayConcern } from './doubts.ts';
import { itemAndAttribute } from './named-figure.ts';

/** Keys of a check that reads these figures, and waits for these names. */
export function watchesOf(
  reader: Pick<ModelReader, 'claim' | 'item'>,
  read: readonly StandingRow[],
  waitsFor: readonly string[],
): readonly string[] {
  const keys = new Set<string>();
  for (const row of read) {
    keys.add(row.itemId);
    const item = reader.item(row.itemId);
    const head = item && shapeOf(item.name).head;
    if (head !== undefined) for (const mark of ['!', '+']) keys.add(`${mark}${head}`);
    for (const stem of circumstanceStems(row, reader)) keys.add(`!${stem}`);
  }
  for (const name of waitsFor)
    for (const one of new Set([name, itemAndAttribute(name).item])) keys.add(`~${shapeOf(one).head}`);
  return [...keys].sort();
}

/**
 * Whether what changed may change a check: it shares a key other than that of a layer, or the layer went on one of its
 * own things, or on what a figure of it was measured from.
 */
export function mayChange(
  reader: Pick<ModelReader, 'item' | 'itemsSharing'>,
  watches: readonly string[],
  keys: ReadonlySet<string>,
  changes: readonly ModelChange[],
): boolean {
  if (watches.some((key) => !key.startsWith('!') && keys.has(key))) return true;
  const things = watches.flatMap((key) => reader.item(key) ?? []);
  const heads = new Set(things.map(({ name }) => `!${shapeOf(name).head}`));
  const around = watches.filter((key) => key.startsWith('!') && !heads.has(key)).map((key) => key.slice(1));
  return changes.some(
    (change) =>
      change.table === 'acts' &&
      isLayer(change.row) &&
      (around.some((stem) => change.row.words.includes(stem)) ||
        things.some((item) => mayConcern(reader, change.row, item))),
  );
}

/** Keys of what changed. */
export function changedKeys(
  reader: Pick<ModelReader, 'item'>,
  changes: readonly ModelChange[],
): readonly string[] {
  const keys = new Set<string>();
  const items = new Set<string>();
  for (const change of changes) {
    if (change.table === 'standing') {
      items.add(change.row.itemId);
      keys.add(`*${change.row.dimension}`);
    } else if (change.table === 'limits') items.add(change.row.itemId);
    else if (change.table === 'items') {
      items.add(change.row.id);
      keys.add(`+${shapeOf(change.row.name).head}`);
    } else if (change.table === 'acts' && isLayer(change.row))
      for (const stem of change.row.words) keys.add(`!${stem}`);
  }
  for (const id of items) {
    keys.add(id);
    const item = reader.item(id);
    for (const stem of item ? itemStems(item) : []) keys.add(`~${stem}`);
  }
  return [...keys];
}
