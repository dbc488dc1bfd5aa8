/**
 * What brings a check up again. Each check has a few keys, and each change of the model too; a check is run anew when
 * they share one. So a memo costs by the checks that it touches, however many there are.
 *
 * `i3`: a figure of that thing changed. `~hatch`: something of that name has a figure now, which a name in the check
 * may stand for. `*mass`: some figure of that dimension changed. `!hatch`: something was done to a thing of that name, or to what a figure was measured from.
 */
import { itemStems } from '../items.ts';
import { shapeOf } from '../names.ts';
import type { ModelChange, ModelReader, StandingRow } from '../rows.ts';
import { circumstanceStems } from './doubts.ts';
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
    if (item) keys.add(`!${shapeOf(item.name).head}`);
    for (const stem of circumstanceStems(row, reader)) keys.add(`!${stem}`);
  }
  for (const name of waitsFor)
    for (const one of new Set([name, itemAndAttribute(name).item])) keys.add(`~${shapeOf(one).head}`);
  return [...keys].sort();
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
    else if (change.table === 'items') items.add(change.row.id);
    else if (change.table === 'acts') for (const stem of change.row.words) keys.add(`!${stem}`);
  }
  for (const id of items) {
    keys.add(id);
    const item = reader.item(id);
    for (const stem of item ? itemStems(item) : []) keys.add(`~${stem}`);
  }
  return [...keys];
}
