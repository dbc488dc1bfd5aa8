/** Formulas that go round: a figure that follows from itself, at once or through others. */
import type { ModelReader, Slot } from './rows.ts';

/** A chain of formulas is followed no further than this; longer ones are taken as free of circles. */
const FURTHEST = 1000;

/**
 * The way round that a formula for `slot` over `inputs` would close: from `slot` through each figure that is read
 * back to `slot`. Undefined when there is none.
 */
export function circleOf(
  reader: Pick<ModelReader, 'formula'>,
  slot: Slot,
  inputs: readonly Slot[],
): readonly Slot[] | undefined {
  const from = new Map<Slot, Slot>();
  const waiting = [...inputs];
  for (const input of inputs) from.set(input, slot);
  for (let steps = 0; waiting.length > 0 && steps < FURTHEST; steps++) {
    const next = waiting.shift() as Slot;
    if (next === slot) return pathTo(slot, from);
    for (const read of reader.formula(next)?.inputs ?? []) {
      if (from.has(read)) continue;
      from.set(read, next);
      waiting.push(read);
    }
  }
  return undefined;
}

function pathTo(slot: Slot, from: ReadonlyMap<Slot, Slot>): readonly Slot[] {
  const path = [slot];
  for (let at = from.get(slot); at !== undefined; at = from.get(at)) {
    path.unshift(at);
    if (at === slot) break;
  }
  return path;
}
