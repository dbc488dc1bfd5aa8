/** Finds the figure that an arriving one most likely takes the place of, by what speaks for each. */
import { mostOfName, mostOfTalk, mostTold, SLACK } from './change-bounds.ts';
import {
  type Held,
  heldOf,
  ratioOf,
  signsOfName,
  signsOfTalk,
  signsOfTold,
  weighChange,
} from './change-signs.ts';
import { LOUD_CHANGE } from './change-weights.ts';
import type { Arriving } from './claims.ts';
import type { Sign } from './closing-signs.ts';
import { LIMIT_MARK } from './counterpart.ts';
import { likenessOf } from './likeness.ts';
import { shapeOf } from './names.ts';
import type { ItemRow, StandingRow } from './rows.ts';
import { isOfWhole, isOtherMeasure, signsOfSize } from './size-signs.ts';
import { type ToldBefore, toldBefore } from './told-with.ts';
import { agree, toleranceBetween } from './tolerance.ts';
import type { Working } from './working.ts';

/** Things that are looked at for one figure: those whose names share most words with the talk around it. */
const MOST_ITEMS = 6;
/** Figures further apart are of two things, unless the unit or a nought went wrong. */
const FURTHEST = 1100;

/** So much like a slip, a figure told in like words may be of the thing after all, by another name. */
const STRONG_LIKENESS = 0.8;

export interface LikelyChange {
  readonly row: StandingRow;
  readonly item: ItemRow;
  readonly signs: readonly Sign[];
}

/** An arriving figure with what is the same whatever it is held against. */
interface Looked {
  readonly work: Working;
  readonly arriving: Arriving;
  readonly held: Held;
  readonly told: ToldBefore;
  /** Slots of the figures that were told in like words. */
  readonly beside: ReadonlySet<string>;
  /** Slots of all figures that share words at all. */
  readonly sharing: ReadonlySet<string>;
  /** What the signs of the figure itself come to. */
  readonly ofNote: number;
  readonly mostOfName: (item: ItemRow) => number;
  /** What cannot come to so much is left out. */
  readonly least: number;
}

/**
 * Every figure of an earlier memo that an arriving one may take the place of, each with what speaks for it. With `least`
 * those are left out that cannot come to so much.
 */
export function likelyChanges(
  work: Working,
  arriving: Arriving,
  least = Number.NEGATIVE_INFINITY,
): readonly LikelyChange[] {
  const held = heldOf(work, arriving);
  if (held.size <= 0) return [];
  const told = toldBefore(work, arriving);
  const rows = rowsTold(work, told);
  const beside = new Set(rows.map(({ slot }) => slot));
  const looked = lookedAt(work, arriving, { held, told, beside, least });
  const ids = rows.map(({ itemId }) => itemId);
  return itemsAround(looked, ids).flatMap((item) => changesOf(looked, item, ids.includes(item.id)));
}

function lookedAt(
  work: Working,
  arriving: Arriving,
  { held, told, beside, least }: Pick<Looked, 'held' | 'told' | 'beside' | 'least'>,
): Looked {
  return {
    work,
    arriving,
    held,
    told,
    beside,
    sharing: slotsOf(told),
    ofNote: weighChange(held.signs),
    mostOfName: mostOfName(arriving, held),
    least,
  };
}

const slotsOf = ({ alike }: ToldBefore): ReadonlySet<string> => new Set(alike.map(({ slot }) => slot));

/** The things that the talk names, the figure's own one, and those of the figures told in like words. */
function itemsAround({ work, arriving, held }: Looked, told: readonly string[]): readonly ItemRow[] {
  const { sentence, before, further } = held.around;
  const talk = new Set(sentence);
  for (const stems of [before, ...further]) for (const stem of stems) talk.add(stem);
  const isNamed = ({ name }: ItemRow) => {
    const { head, stems } = shapeOf(name);
    return talk.has(head) || stems.filter((stem) => talk.has(stem)).length * 2 >= stems.length;
  };
  const named = work.draft.itemsNear([...talk], MOST_ITEMS).filter(isNamed);
  const items = new Map([...named, arriving.item].map((item) => [item.id, item]));
  for (const id of told) {
    const item = items.has(id) ? undefined : work.draft.item(id);
    if (item) items.set(id, item);
  }
  return [...items.values()];
}

/** A thing whose figures are looked at, with what its name says, found once for all of them. */
interface Named {
  readonly item: ItemRow;
  readonly signs: readonly Sign[];
  /** What the signs of the name come to. */
  readonly sum: number;
  /** Another thing of its kind: the front one, not the rear one. */
  readonly isBarred: boolean;
  /** Another thing told by its name. */
  readonly isOther: boolean;
  /** Its name alone says that it may be meant. */
  readonly isMeant: boolean;
}

function namedOf({ arriving, held }: Looked, item: ItemRow): Named {
  const signs = signsOfName(arriving, item, held);
  const has = (name: string) => signs.some(([sign]) => sign === name);
  return {
    item,
    signs,
    sum: weighChange(signs),
    isBarred: has('set apart'),
    isOther: has('another by name'),
    isMeant: mayBeMeant(arriving, item, has),
  };
}

/** The figures of one thing that the arriving one may take the place of. */
function changesOf(looked: Looked, item: ItemRow, isTold: boolean): readonly LikelyChange[] {
  const { work, arriving } = looked;
  const { note } = arriving;
  const rows = work.draft.standingOf(item.id).filter(({ dimension }) => dimension === note.dimension);
  // Most figures are ruled out by what they are and how large: what their thing's name says is found for the others.
  const mostOfName = looked.mostOfName(item) + SLACK;
  const sized: Sized[] = [];
  for (const row of rows) {
    const one = sizedOf(looked, row);
    if (one && one.most + mostOfName >= looked.least) sized.push(one);
  }
  if (sized.length === 0) return [];
  const named = namedOf(looked, item);
  if (named.isBarred && note.replaces === undefined) return [];
  // Told nothing of an old value, most names are ruled out before their figures are looked at.
  if (!isTold && !mayBeOld(looked) && !named.isMeant) return [];
  return sized.flatMap((one) => changeOf(looked, named, one, rows.length - 1) ?? []);
}

/** Whether an old value may be told with the figure. */
const mayBeOld = ({ arriving: { note }, held }: Looked): boolean =>
  note.replaces !== undefined || held.near.length > 0;

/** A figure that may be held against the arriving one, with what measure and size say. */
interface Sized {
  readonly row: StandingRow;
  readonly ratio: number;
  /** How much the two values are like a slip, 0 to 1. */
  readonly alike: number;
  readonly signs: readonly Sign[];
  /** The most that the pair can come to, its thing's name left out. */
  readonly most: number;
  /** Another measure, told in so many words. */
  readonly isBarred: boolean;
}

/** Undefined where the two do not compare, or where measure and size alone rule the figure out. */
function sizedOf(looked: Looked, row: StandingRow): Sized | undefined {
  const { work, arriving, held, told } = looked;
  if (row.slot.includes(LIMIT_MARK) || row.status === 'series') return undefined;
  const isBarred = isOtherMeasure(arriving.note, row);
  if (isBarred && arriving.note.replaces === undefined) return undefined;
  const ratio = ratioOf(work, arriving, row, held.size);
  if (ratio === undefined || ratio > FURTHEST) return undefined;
  const { signs, sum } = signsOfSize(arriving, row, ratio);
  const alike = likenessOf(row, arriving.note, work.settings.region)?.weight ?? 0;
  const ofTalk = mostOfTalk(arriving, row.itemId === arriving.item.id, held.near, alike);
  const most = looked.ofNote + sum + ofTalk + mostTold(told, looked.sharing.has(row.slot));
  return { row, ratio, alike, signs, most, isBarred };
}

/** One figure as one that the arriving one may take the place of. What costs more to find is looked for later. */
function changeOf(looked: Looked, named: Named, sized: Sized, rivals: number): LikelyChange | undefined {
  const { work, arriving, held, told, beside, least } = looked;
  const { note } = arriving;
  const { item } = named;
  const { row, ratio, alike } = sized;
  const { tolerances, region } = work.settings;
  if (!named.isMeant && !beside.has(row.slot) && !mayBeOld(looked)) return undefined;
  if (named.sum + sized.most + SLACK < least) return undefined;
  // Nothing but the old value itself outweighs these.
  const isOther = named.isOther && alike < STRONG_LIKENESS;
  const isBarred = named.isBarred || sized.isBarred || isOther || isOfWhole(arriving, item.name, row);
  if (isBarred && note.replaces === undefined) return undefined;
  if (!isOfEarlierMemo(work, row)) return undefined;
  const tolerance = ratio < NO_TOLERANCE && toleranceBetween(row, note, tolerances, region);
  if (tolerance && agree(note, row, tolerance, region) === true) return undefined;
  const ofTalk = signsOfTalk(work, arriving, row, { alike, rivals }, held);
  const ofTold = signsOfTold(work, arriving, row, told);
  const signs = [...held.signs, ...named.signs, ...sized.signs, ...ofTalk, ...ofTold];
  const has = (name: string) => signs.some(([sign]) => sign === name);
  if (has('replaced')) return { row, item, signs };
  if (isBarred) return undefined;
  const isTold = beside.has(row.slot) && !areTwoTold(arriving, has);
  return isTold || mayBeMeant(arriving, item, has) ? { row, item, signs } : undefined;
}
/** The figures told in like words, as they stand now. */
function rowsTold(work: Working, { alike }: ToldBefore): readonly StandingRow[] {
  return alike
    .filter(({ shared }) => shared >= LEAST_SHARED)
    .flatMap(({ slot }) => work.draft.standing(slot) ?? []);
}
/** Less than a word that one figure in six was told with is no tie. */
const LEAST_SHARED = 0.4;

/**
 * Whether a figure said of one name may be of another thing: the names share a word, the old value is told beside it, or
 * its name was only guessed. A like value alone makes no change: a compressor is not the hatch that it goes through.
 */
function mayBeMeant({ note, item: own }: Arriving, item: ItemRow, has: (sign: string) => boolean): boolean {
  if (own.id === item.id || has('name shared') || has('old value near')) return true;
  return (note.assumed?.includes('item') ?? false) && (has('name in the sentence') || has('name before'));
}

/**
 * Whether both things are told by their names, which share no word: "it has to go through the hatch. The compressor is 720
 * wide." Like words are of what goes with what then, and not of one thing.
 */
function areTwoTold({ note }: Arriving, has: (sign: string) => boolean): boolean {
  if (note.assumed?.includes('item') || has('own thing')) return false;
  if (has('name shared') || has('head within') || has('head beside')) return false;
  return has('name in the sentence') || has('name before');
}

/** The one that the signs speak for loudest, where they are loud enough. */
export function likeliestChange(work: Working, arriving: Arriving): LikelyChange | undefined {
  const [best] = likelyChanges(work, arriving, LOUD_CHANGE)
    .map((one) => ({ one, sum: weighChange(one.signs) }))
    .sort((a, b) => b.sum - a.sum);
  return best && best.sum >= LOUD_CHANGE ? best.one : undefined;
}

/**
 * Whether a figure that disagrees with one of its own name is of another thing of that name: so little speaks for a
 * change. What cannot be weighed (a figure of this memo, one that the bars rule out) is left to other rules.
 */
export function isOfAnother(work: Working, arriving: Arriving, row: StandingRow): boolean {
  const held = heldOf(work, arriving);
  const item = work.draft.item(row.itemId);
  if (!item || held.size <= 0) return false;
  const found = { held, told: toldBefore(work, arriving), beside: new Set<string>() };
  const looked = lookedAt(work, arriving, { ...found, least: Number.NEGATIVE_INFINITY });
  const rivals = work.draft.standingOf(item.id).filter(({ dimension }) => dimension === row.dimension);
  const sized = sizedOf(looked, row);
  const change = sized && changeOf(looked, namedOf(looked, item), sized, rivals.length - 1);
  return change !== undefined && weighChange(change.signs) < TOO_QUIET;
}
/** A figure of the same name is not changed where the signs come to less. */
const TOO_QUIET = -1;

function isOfEarlierMemo(work: Working, row: StandingRow): boolean {
  const claim = row.claimId === undefined ? undefined : work.draft.claim(row.claimId);
  return claim === undefined || claim.memoId !== work.memo.id;
}

/** No tolerance lets so much pass. */
const NO_TOLERANCE = 1.5;
