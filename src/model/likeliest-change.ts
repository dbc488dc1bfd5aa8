/** Finds the figure that an arriving one most likely takes the place of, by what speaks for each. */
import { heldOf, ratioOf, signsOfName, signsOfSize, signsOfTalk } from './change-signs.ts';
import { CHANGE_WEIGHTS, LOUD_CHANGE } from './change-weights.ts';
import type { Arriving } from './claims.ts';
import type { Sign } from './closing-signs.ts';
import { LIMIT_MARK } from './counterpart.ts';
import { shapeOf } from './names.ts';
import type { ItemRow, StandingRow } from './rows.ts';
import { agree, toleranceBetween } from './tolerance.ts';
import type { Working } from './working.ts';

/** Things that are looked at for one figure: those whose names share most words with the talk around it. */
const MOST_ITEMS = 6;
/** Figures further apart are of two things, unless the unit or a nought went wrong. */
const FURTHEST = 1100;

/** What nothing but the old value itself outweighs: the other side of a pair, another measure told in so many words. */
const BARS: ReadonlySet<string> = new Set(['set apart', 'other measure told']);

export interface LikelyChange {
  readonly row: StandingRow;
  readonly item: ItemRow;
  readonly signs: readonly Sign[];
}

/**
 * Every figure of an earlier memo that an arriving one may take the place of, each with what speaks for it. With `least`
 * those are left out that cannot come to so much.
 */
export function likelyChanges(work: Working, arriving: Arriving, least?: number): readonly LikelyChange[] {
  const { note } = arriving;
  const { tolerances, region } = work.settings;
  const held = heldOf(work, arriving);
  if (held.size <= 0) return [];
  const { sentence, before, further } = held.around;
  const talk = new Set([...sentence, ...before, ...further]);
  const isNamed = ({ name }: ItemRow) => {
    const { head, stems } = shapeOf(name);
    return talk.has(head) || stems.filter((stem) => talk.has(stem)).length * 2 >= stems.length;
  };
  const items = new Map(
    work.draft
      .itemsNear([...talk], MOST_ITEMS)
      .filter(isNamed)
      .map((item) => [item.id, item]),
  );
  items.set(arriving.item.id, arriving.item);
  const ofNote = weighChange(held.signs);
  return [...items.values()].flatMap((item) => {
    const ofName = signsOfName(arriving, item, held);
    const known = ofNote + weighChange(ofName);
    const most = mostOfTalk(arriving, item.id === arriving.item.id, held.near);
    if (least !== undefined && known + most + MOST_OF_SIZE < least) return [];
    // Told nothing of an old value, most names are ruled out before their figures are looked up.
    const mayBeOld = note.replaces !== undefined || held.near.length > 0;
    const hasName = (name: string) => ofName.some(([sign]) => sign === name);
    if (!mayBeOld && !mayBeMeant(arriving, item, hasName)) return [];
    const rows = work.draft.standingOf(item.id).filter(({ dimension }) => dimension === note.dimension);
    return rows.flatMap((row): readonly LikelyChange[] => {
      if (row.slot.includes(LIMIT_MARK) || row.status === 'series') return [];
      const ratio = ratioOf(work, arriving, row, held.size);
      if (ratio === undefined || ratio > FURTHEST) return [];
      const ofSize = signsOfSize(arriving, row, ratio);
      const isBarred = [...ofName, ...ofSize].some(([name]) => BARS.has(name));
      if (isBarred && note.replaces === undefined) return [];
      if (least !== undefined && known + weighChange(ofSize) + most < least) return [];
      if (!isOfEarlierMemo(work, row)) return [];
      const tolerance = ratio < NO_TOLERANCE && toleranceBetween(row, note, tolerances, region);
      if (tolerance && agree(note, row, tolerance, region) === true) return [];
      const ofTalk = signsOfTalk(work, arriving, row, rows.length - 1, held);
      const signs = [...held.signs, ...ofName, ...ofSize, ...ofTalk];
      const has = (name: string) => signs.some(([sign]) => sign === name);
      if (has('replaced')) return [{ row, item, signs }];
      return isBarred || !mayBeMeant(arriving, item, has) ? [] : [{ row, item, signs }];
    });
  });
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
  const rated = likelyChanges(work, arriving, LOUD_CHANGE)
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

/** The most that the signs of the talk can come to. */
function mostOfTalk({ note, cue }: Arriving, isOwn: boolean, near: readonly unknown[]): number {
  const names = [
    'alike',
    ...(isOwn ? ['alike, own thing'] : []),
    ...(cue.change === undefined ? ['alike, no word'] : []),
    ...(note.replaces ? ['replaced'] : []),
    ...(near.length > 0 ? ['old value near', 'old value near, before'] : []),
  ];
  return names.reduce((sum, name) => sum + Math.max(0, CHANGE_WEIGHTS[name] ?? 0), 0);
}

/** No tolerance lets so much pass. */
const NO_TOLERANCE = 1.5;

/** The most that measure and size can come to: the likest measure and ratio, and what else may be. */
const MOST_OF_SIZE = Object.entries(CHANGE_WEIGHTS)
  .filter(([name]) => /measure|^ratio|^same unit$|^was |^in doubt$/.test(name))
  .reduce((sum, [, weight]) => sum + Math.max(0, weight), 0);
