/** Finds the figure that an arriving one most likely takes the place of, by what speaks for each. */
import { aroundOf, signsOfChange } from './change-signs.ts';
import { CHANGE_WEIGHTS, LOUD_CHANGE } from './change-weights.ts';
import type { Arriving } from './claims.ts';
import type { Sign } from './closing-signs.ts';
import { LIMIT_MARK } from './counterpart.ts';
import type { ItemRow, StandingRow } from './rows.ts';
import { agree, toleranceBetween } from './tolerance.ts';
import { exactQuantity } from './units.ts';
import type { Working } from './working.ts';

/** Things that are looked at for one figure: those whose names share most words with the talk around it. */
const MOST_ITEMS = 24;
/** Figures further apart are of two things, unless the unit or a nought went wrong. */
const FURTHEST = 1100;

/** What nothing but the old value itself outweighs: the other side of a pair, another measure told in so many words. */
const BARS: ReadonlySet<string> = new Set(['set apart', 'other measure told']);

export interface LikelyChange {
  readonly row: StandingRow;
  readonly item: ItemRow;
  readonly signs: readonly Sign[];
}

/** Every figure of an earlier memo that an arriving one may take the place of, each with what speaks for it. */
export function likelyChanges(work: Working, arriving: Arriving): readonly LikelyChange[] {
  const { note } = arriving;
  const { tolerances, region } = work.settings;
  const around = aroundOf(work, arriving);
  const talk = [...new Set([...around.sentence, ...around.before, ...around.further])];
  const items = new Map(work.draft.itemsNear(talk, MOST_ITEMS).map((item) => [item.id, item]));
  items.set(arriving.item.id, arriving.item);
  const size = exactQuantity(note, region)?.base.valueOf() ?? 0;
  return [...items.values()].flatMap((item) =>
    work.draft.standingOf(item.id).flatMap((row): readonly LikelyChange[] => {
      if (row.dimension !== note.dimension || row.slot.includes(LIMIT_MARK) || row.status === 'series')
        return [];
      if (!isOfEarlierMemo(work, row)) return [];
      const other = exactQuantity(row, region)?.base.valueOf() ?? 0;
      if (size <= 0 || other <= 0 || Math.max(size / other, other / size) > FURTHEST) return [];
      if (agree(note, row, toleranceBetween(row, note, tolerances, region), region) === true) return [];
      const signs = signsOfChange(work, arriving, row, item, around);
      const has = (name: string) => signs.some(([sign]) => sign === name);
      if (has('replaced')) return [{ row, item, signs }];
      const isBarred = signs.some(([name]) => BARS.has(name));
      return isBarred || !mayBeMeant(arriving, item, has) ? [] : [{ row, item, signs }];
    }),
  );
}

/**
 * Whether a figure said of one name may be of another thing: the names share a word, the old value is told beside it, or
 * its name was only guessed. A like value alone makes no change: a compressor is not the hatch that it goes through.
 */
function mayBeMeant({ note, item: own }: Arriving, item: ItemRow, has: (sign: string) => boolean): boolean {
  if (own.id === item.id || has('name shared') || has('old value near')) return true;
  return (note.assumed?.includes('item') ?? false) && (has('name in the sentence') || has('name before'));
}

/** The one that the signs speak for loudest, where they are loud enough. */
export function likeliestChange(work: Working, arriving: Arriving): LikelyChange | undefined {
  // A person has said what it is of.
  if (arriving.note.review === 'amended') return undefined;
  const rated = likelyChanges(work, arriving)
    .map((one) => ({ one, sum: weighChange(one.signs) }))
    .sort((a, b) => b.sum - a.sum);
  const [best] = rated;
  return best && best.sum >= LOUD_CHANGE ? best.one : undefined;
}

/** What the signs come to. */
export const weighChange = (signs: readonly Sign[]): number =>
  signs.reduce((sum, [name, size]) => sum + (CHANGE_WEIGHTS[name] ?? 0) * size, 0);

function isOfEarlierMemo(work: Working, row: StandingRow): boolean {
  const claim = row.claimId === undefined ? undefined : work.draft.claim(row.claimId);
  return claim === undefined || claim.memoId !== work.memo.id;
}
