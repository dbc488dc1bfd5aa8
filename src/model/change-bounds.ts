/**
 * The most that signs of `change-signs.ts` can come to before they are looked for: what cannot come to enough is left out
 * without looking.
 */
import type { Held } from './change-signs.ts';
import { CHANGE_WEIGHTS } from './change-weights.ts';
import type { Arriving } from './claims.ts';
import { shapeOf } from './names.ts';
import type { ItemRow } from './rows.ts';
import type { ToldBefore } from './told-with.ts';

/** Sums of the same numbers in another order differ by less. */
export const SLACK = 1e-9;

/** What these signs come to at most: those that speak against may be absent. */
const sumOf = (names: readonly string[]): number =>
  names.reduce((sum, name) => sum + Math.max(0, CHANGE_WEIGHTS[name] ?? 0), 0);

/** The most that the signs of the talk can come to, where the two values are so much alike. */
export function mostOfTalk(
  { note, cue }: Arriving,
  isOwn: boolean,
  near: readonly unknown[],
  alike: number,
): number {
  return (
    alike * ((isOwn ? MOST_ALIKE_OWN : MOST_ALIKE) + (cue.change === undefined ? MOST_ALIKE_NO_WORD : 0)) +
    (note.replaces ? MOST_REPLACED : 0) +
    (near.length > 0 ? MOST_OLD_NEAR : 0) +
    MOST_OF_RIVALS
  );
}
const MOST_ALIKE = sumOf(['alike']);
const MOST_ALIKE_OWN = sumOf(['alike', 'alike, own thing']);
const MOST_ALIKE_NO_WORD = sumOf(['alike, no word']);
const MOST_REPLACED = sumOf(['replaced', 'another replaced']);
const MOST_OLD_NEAR = sumOf(['old value near', 'old value near, before']);
const MOST_OF_RIVALS = sumOf(['derived']) + 4 * sumOf(['rivals of the thing']);

/** The most that the words told before can come to for a figure that shares some of them, or none. */
export function mostTold({ few }: ToldBefore, isSharing: boolean): number {
  const ofFew = few.length === 0 ? 0 : few.length === 1 ? WEIGHT_OF_ONLY : WEIGHT_OF_FEW;
  return ofFew + (isSharing ? MOST_TOLD : MOST_UNTOLD);
}
const weightOf = (name: string): number => CHANGE_WEIGHTS[name] ?? 0;
const WEIGHT_OF_ONLY = weightOf('only one of its dimension');
const WEIGHT_OF_FEW = weightOf('few of its dimension');
const MOST_ANYHOW = sumOf(['told with the name', 'told of another']);
const MOST_TOLD = MOST_ANYHOW + sumOf(['told alike', 'told likest', 'told less alike']);
const MOST_UNTOLD = MOST_ANYHOW + weightOf('told otherwise');

/** The most that the name of a thing can come to, worked out from the heads of both names alone. */
export function mostOfName({ note, item: own }: Arriving, { around }: Held): (item: ItemRow) => number {
  const { head, stems } = shapeOf(note.item);
  const isUnsaid = !stems.some((stem) => around.sentence.has(stem));
  const ofNote = MOST_OF_WORDS + (isUnsaid ? sumOf(['name unsaid']) : 0);
  return (item) =>
    ofNote +
    (item.id === own.id ? MOST_OWN : 0) +
    (shapeOf(item.name).head === head ? MOST_SAME_HEAD : MOST_OTHER_HEAD);
}
const MOST_OWN = sumOf(['own thing']);
const MOST_SAME_HEAD = sumOf(['same head']);
const MOST_OTHER_HEAD = sumOf(['head within', 'head beside']);
const MOST_OF_WORDS = sumOf([
  ...['name shared', 'name in the sentence', 'name before', 'name further up', 'name behind'],
  ...['name in the memo', 'head in the sentence', 'head before', 'set apart', 'another by name'],
]);
