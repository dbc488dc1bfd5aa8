/** Which product a time or a temperature of a check is of, and whether two names may mean one product. */
import type { SpokenInput } from '../../language/notes.ts';
import { wordsOf } from '../names.ts';
import { stemOf } from '../stems.ts';

/** Names that talk uses for one product. Common practice, no source. */
const ALIKE: readonly ReadonlySet<string>[] = [
  ['epoxy', 'resin'],
  ['glue', 'adhesive'],
  ['sealant', 'sealer', 'mastic', 'caulk'],
  ['concrete', 'slab'],
].map((names) => new Set(names.map(stemOf)));

const stemsOf = (name: string) => wordsOf(name).map(stemOf);

/** Whether two names may mean one product: one holds the other's last word, or both are used for the same. */
export function mayBeSame(one: string, other: string): boolean {
  const [left, right] = [stemsOf(one), stemsOf(other)];
  const [head, last] = [left.at(-1), right.at(-1)];
  if (head === undefined || last === undefined) return true;
  const areNamed = left.length > 1 && right.length > 1;
  if (head === last) return !areNamed || left.some((stem) => stem !== head && right.includes(stem));
  return ALIKE.some((names) => names.has(head) && names.has(last));
}

/** Whether two names may mean one thing that a product is put on: "deck" and "aft deck", and no port and starboard one. */
export function isSameThing(one: string, other: string): boolean {
  const [left, right] = [stemsOf(one), stemsOf(other)];
  const [fewer, more] = left.length <= right.length ? [left, right] : [right, left];
  return fewer.at(-1) === more.at(-1) && fewer.every((stem) => more.includes(stem));
}

/** The product that a check's inputs are of, in the words of the talk; undefined where none was named. */
export const productOfCheck = ({ inputs }: { readonly inputs: readonly SpokenInput[] }): string | undefined =>
  inputs.find(({ of }) => of !== undefined)?.of;
