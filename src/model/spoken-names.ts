/** Which things a stretch of talk speaks of by their names. */
import { shapeOf, wordsOf } from './names.ts';
import type { ItemRow } from './rows.ts';
import { stemOf } from './stems.ts';

/** The stems of a stretch of talk. */
export const stemsSaid = (talk: string): ReadonlySet<string> => new Set(wordsOf(talk).map(stemOf));

/** Whether a name is spoken of: its head or most of its words. */
export function isSpokenOf(name: string, said: ReadonlySet<string>): boolean {
  const { head, stems } = shapeOf(name);
  return said.has(head) || stems.filter((stem) => said.has(stem)).length * 2 > stems.length;
}

/** A word that more things than this end in names none of them. */
const MOST_OF_A_NAME = 8;

/**
 * The things that are spoken of. Where one is said in full, others that end in the same word are not meant: "the bench
 * top" is no duct top. In a big build hundreds end in "top".
 */
export function spokenOf(items: readonly ItemRow[], said: ReadonlySet<string>): readonly ItemRow[] {
  const byHead = new Map<string, ItemRow[]>();
  for (const item of items) {
    if (!isSpokenOf(item.name, said)) continue;
    const { head } = shapeOf(item.name);
    byHead.set(head, [...(byHead.get(head) ?? []), item]);
  }
  const isInFull = ({ name }: ItemRow) => shapeOf(name).stems.every((stem) => said.has(stem));
  return [...byHead.values()].flatMap((alike) => {
    const inFull = alike.filter(isInFull);
    if (inFull.length > 0) return inFull;
    return alike.length > MOST_OF_A_NAME ? [] : alike;
  });
}
