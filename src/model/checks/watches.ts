/**
 * What brings a check up again. Each check has a few keys, and each change of the model too; a check is run anew when
 * they share one. So a memo costs by the checks that it touches, however many there are.
 *
 * `i3`: a figure of that thing changed. `~hatch`: something of that name has a figure now, which a name in the check
 * may stand for. `*mass`: some figure of that dimension changed. `!hatch`: a layer went on or came off a thing of that
 * name, or of what a figure was measured from. `+hatch`: a second thing of that name is there.
 * `@clock`: a product was mixed or laid, or its times were said. `@least`: the least that a product takes was said. `@now`: time went on.
 */
import { itemStems } from '../items.ts';
import { shapeOf } from '../names.ts';
import type { ModelChange, ModelReader, StandingRow } from '../rows.ts';
import { aloneIn, circumstanceStems, isLayer, layersOn, mayConcern, namedSo } from './doubts.ts';
import { itemAndAttribute, thingOfOpening } from './named-figure.ts';
import { hasClock } from './running-clock.ts';

/** Keys of a check that reads these figures, and waits for these names. */
export function watchesOf(
  reader: Pick<ModelReader, 'claim' | 'item' | 'actsNaming'>,
  read: readonly StandingRow[],
  waitsFor: readonly string[],
): readonly string[] {
  const keys = new Set<string>();
  for (const row of read) {
    keys.add(row.itemId);
    const item = reader.item(row.itemId);
    const head = item && shapeOf(item.name).head;
    if (head !== undefined) {
      keys.add(`!${head}`);
      // Once there is a second one, its bare name may mean either.
      if (layersOn(reader, head).length > 0) keys.add(`+${head}`);
    }
    for (const stem of circumstanceStems(row, reader)) keys.add(`!${stem}`);
  }
  for (const name of waitsFor) {
    const { item } = itemAndAttribute(name);
    // The flue's opening may be told of as the flue hole.
    for (const one of new Set([name, item, thingOfOpening(item) ?? name])) keys.add(`~${shapeOf(one).head}`);
  }
  return [...keys].sort();
}

/**
 * Tells of a check's keys whether what changed may change it: they share one other than that of a layer, or the layer
 * went on one of its own things, or on what a figure of it was measured from.
 */
export function changing(
  reader: Pick<ModelReader, 'item' | 'itemsSharing'>,
  keys: ReadonlySet<string>,
  changes: readonly ModelChange[],
): (watches: readonly string[]) => boolean {
  const layers = changes.flatMap((change) =>
    change.table === 'acts' && isLayer(change.row) ? [change.row] : [],
  );
  const isAlone = aloneIn(reader);
  return (watches) => {
    if (watches.some((key) => !key.startsWith('!') && keys.has(key))) return true;
    const things = watches.flatMap((key) => reader.item(key) ?? []);
    const heads = new Set(things.map(({ name }) => `!${shapeOf(name).head}`));
    const around = watches.filter((key) => key.startsWith('!') && !heads.has(key)).map((key) => key.slice(1));
    return layers.some(
      (act) =>
        around.some((stem) => act.words.includes(stem)) ||
        things.some((item) => mayConcern(act, item, isAlone)),
    );
  };
}

/** Keys of what changed. */
export function changedKeys(
  reader: Pick<ModelReader, 'item' | 'itemsSharing' | 'checksWatching'>,
  changes: readonly ModelChange[],
): readonly string[] {
  const keys = new Set<string>();
  const items = new Set<string>();
  const heads = new Set<string>();
  for (const change of changes) {
    if (change.table === 'standing') {
      items.add(change.row.itemId);
      keys.add(`*${change.row.dimension}`);
    } else if (change.table === 'claims') {
      // Measured again with the same result: the figure stands as before, and is fresh.
      if (change.row.state === 'measured') items.add(change.row.itemId);
    } else if (change.table === 'records') {
      if (change.row.kind === 'clock') keys.add('@clock');
    } else if (change.table === 'checks') {
      if (change.row.check === 'product temperature') keys.add('@least');
      // A coat without a name is of the only product that has a data sheet.
      if (hasClock(change.row.check)) keys.add('@clock');
    } else if (change.table === 'limits') items.add(change.row.itemId);
    else if (change.table === 'items') {
      items.add(change.row.id);
      heads.add(shapeOf(change.row.name).head);
    } else if (change.table === 'acts' && isLayer(change.row))
      for (const stem of change.row.words) keys.add(`!${stem}`);
  }
  for (const key of secondOnes(reader, heads)) keys.add(key);
  for (const id of items) {
    keys.add(id);
    const item = reader.item(id);
    for (const stem of item ? itemStems(item) : []) keys.add(`~${stem}`);
  }
  return [...keys];
}

/**
 * Keys of those names that a second thing has got. Things of one name are as many as the project has of that kind, so
 * they are counted only where a check waits for a second one.
 */
function secondOnes(
  reader: Pick<ModelReader, 'itemsSharing' | 'checksWatching'>,
  heads: ReadonlySet<string>,
): readonly string[] {
  if (heads.size === 0) return [];
  const keys = [...heads].map((head) => `+${head}`);
  const awaited = new Set(reader.checksWatching(keys).flatMap(({ watches }) => watches));
  return keys.filter((key) => awaited.has(key) && namedSo(reader, key.slice(1)) === 2);
}
