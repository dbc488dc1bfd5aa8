/**
 * What speaks for a figure being the new size of something told before, and what against it. Each sign has a name and
 * a size; what it weighs stands in `change-weights.ts`.
 */
import type { FigureNote, Quantity, Span } from '../language/notes.ts';
import { CHANGE_WEIGHTS } from './change-weights.ts';
import type { Arriving } from './claims.ts';
import type { Sign } from './closing-signs.ts';
import { isRoomFor, setsApart, shapeOf } from './names.ts';
import type { ItemRow, StandingRow } from './rows.ts';
import { talkStems } from './talk-stems.ts';
import { type ToldBefore, wordsToldWith } from './told-with.ts';
import { agree, toleranceBetween } from './tolerance.ts';
import { difference, exactQuantity } from './units.ts';
import type { Kept } from './views.ts';
import type { Working } from './working.ts';

/** The stems of the talk around a figure, by how near they are. */
export interface Around {
  readonly sentence: ReadonlySet<string>;
  readonly before: ReadonlySet<string>;
  /** Of each of the two sentences before that one. */
  readonly further: readonly [ReadonlySet<string>, ReadonlySet<string>];
  readonly after: ReadonlySet<string>;
  readonly memo: ReadonlySet<string>;
}

const whole = new WeakMap<Working, ReadonlySet<string>>();

const placed = new WeakMap<Working, ReadonlyMap<FigureNote, number>>();

/** The number of the sentence that each figure of the memo stands in. */
function sentencesOfFigures(work: Working): ReadonlyMap<FigureNote, number> {
  const known = placed.get(work);
  if (known) return known;
  const found = new Map(work.memo.notes.figures.map((note) => [note, work.sentenceOf(note.span)]));
  placed.set(work, found);
  return found;
}

/** What is said around a figure. */
function aroundOf(work: Working, { place }: Arriving): Around {
  const stemsAt = (index: number) => talkStems(work.sentences[index]?.text ?? '');
  let memo = whole.get(work);
  if (!memo) {
    memo = new Set(work.sentences.flatMap(({ text }) => [...talkStems(text)]));
    whole.set(work, memo);
  }
  return {
    sentence: talkStems(place.sentence),
    before: talkStems(place.before),
    further: [stemsAt(place.index - 2), stemsAt(place.index - 3)],
    after: talkStems(place.after),
    memo,
  };
}

/** How many of the stems are in a stretch of talk, or in one of two, as a share. */
const share = (stems: readonly string[], words: ReadonlySet<string>, more = words): number => {
  if (stems.length === 0) return 0;
  let shared = 0;
  for (const stem of stems) if (words.has(stem) || more.has(stem)) shared++;
  return shared / stems.length;
};

/** A map, since most signs are asked for with every pair, and some weigh nothing: an object is slow at what it has not. */
const WEIGHTS: ReadonlyMap<string, number> = new Map(Object.entries(CHANGE_WEIGHTS));

/** What the signs come to. */
export function weighChange(signs: readonly Sign[]): number {
  let sum = 0;
  for (const [name, size] of signs) sum += (WEIGHTS.get(name) ?? 0) * size;
  return sum;
}

/** A list of signs that leaves out what is not there. */
export class Signs {
  readonly list: Sign[] = [];
  put(name: string, size: number | boolean = 1): void {
    const value = Number(size);
    if (value !== 0) this.list.push([name, value]);
  }
}

/** What is the same whatever figure an arriving one is held against, found once for each. */
export interface Held {
  readonly around: Around;
  readonly signs: readonly Sign[];
  /** Size in its base unit. */
  readonly size: number;
  /** Other figures of the same dimension, told within two sentences. */
  readonly near: readonly FigureNote[];
}

/** Looks once at an arriving figure and at the talk around it. */
export function heldOf(work: Working, arriving: Arriving): Held {
  const { note, cue, place } = arriving;
  const { notes } = work.memo;
  const signs = new Signs();
  signs.put('any');
  signs.put(`word ${cue.change ?? 'none'}`);
  signs.put('word plain', Math.min(cue.weight, 6) / 3);
  signs.put('word of the reader', note.change !== undefined);
  signs.put('needed', cue.isNeeded);
  signs.put('restated', cue.isRestated);
  signs.put('of length', note.dimension === 'length');
  signs.put(`now ${note.state ?? 'untold'}`);
  signs.put('about', note.bound === 'about');
  const isIn = (list: readonly { readonly span: Span }[]) =>
    list.some(({ span }) => span.start < note.span.end && span.end > note.span.start);
  signs.put('in a choice', isIn(notes.decisions));
  signs.put('in a snag', isIn(notes.problems));
  signs.put('in a deed', isIn(notes.done));
  signs.put('in an arrival', isIn(notes.arrivals));
  signs.put('in a task', isIn(notes.tasks));
  signs.put('own thing known', work.draft.standingOf(arriving.item.id).length > 0);
  const sentences = sentencesOfFigures(work);
  const near = notes.figures.filter(
    (other) =>
      other.id !== note.id &&
      other.dimension === note.dimension &&
      Math.abs((sentences.get(other) ?? 0) - place.index) <= 2,
  );
  const size = exactQuantity(note, work.settings.region)?.size ?? 0;
  return { around: aroundOf(work, arriving), signs: signs.list, size, near };
}

/** How many times one figure is the other; undefined where they do not compare. */
export function ratioOf(
  work: Working,
  { note }: Arriving,
  row: StandingRow,
  size: number,
): number | undefined {
  const [x, y] =
    row.unit === note.unit
      ? [row.value, note.value]
      : [exactQuantity(row, work.settings.region)?.size ?? 0, size];
  return x > 0 && y > 0 ? Math.max(x / y, y / x) : undefined;
}

const without = (stems: readonly string[], taken: readonly string[]): readonly string[] =>
  stems.filter((stem) => !taken.includes(stem));

/** The signs of one figure against a thing, as far as its name goes. */
export function signsOfName(arriving: Arriving, item: ItemRow, { around }: Held): readonly Sign[] {
  const { note } = arriving;
  const signs = new Signs();
  signs.put('own thing', arriving.item.id === item.id);
  const [a, b] = [shapeOf(note.item), shapeOf(item.name)];
  signs.put('same head', a.head === b.head);
  signs.put('head within', a.head !== b.head && b.stems.includes(a.head));
  signs.put('head beside', a.head !== b.head && a.stems.includes(b.head));
  const [moreA, moreB] = [without(a.stems, b.stems), without(b.stems, a.stems)];
  const isApart = (moreA.some(setsApart) && moreB.some(setsApart)) || isRoomFor(note.item, item.name);
  signs.put('set apart', isApart);
  // "The stool legs" are no change of the bench legs, nor is the kiln lid one of the kiln shelf.
  const isTold = !(note.assumed?.includes('item') ?? false) && moreA.length > 0 && moreB.length > 0;
  const isUnsaid = (stem: string) => !around.sentence.has(stem) && !around.before.has(stem);
  const isOther = a.head === b.head ? moreB.every(isUnsaid) : isUnsaid(b.head) && !b.stems.includes(a.head);
  signs.put('another by name', isTold && isOther);
  signs.put('name shared', (b.stems.length - moreB.length) / Math.max(1, b.stems.length));
  signs.put('name in the sentence', share(b.stems, around.sentence));
  signs.put('name before', share(b.stems, around.before));
  signs.put('name further up', share(b.stems, ...around.further));
  signs.put('name behind', share(b.stems, around.after));
  signs.put('name in the memo', share(b.stems, around.memo));
  signs.put('head in the sentence', around.sentence.has(b.head));
  signs.put('head before', around.before.has(b.head) && !around.sentence.has(b.head));
  signs.put('name unsaid', moreA.length > 0 && share(a.stems, around.sentence) === 0);
  return signs.list;
}

/** What is known of a pair before its other signs are looked for. */
export interface Beside {
  /** How much the two values are like a slip, 0 to 1. */
  readonly alike: number;
  /** Other figures of the thing that the arriving one may take the place of. */
  readonly rivals: number;
}

/** The other signs of the pair, which cost more to find. */
export function signsOfTalk(
  work: Working,
  arriving: Arriving,
  row: StandingRow,
  { alike, rivals }: Beside,
  { near }: Held,
): readonly Sign[] {
  const { note, cue } = arriving;
  const { region } = work.settings;
  const signs = new Signs();
  signs.put('alike', alike);
  signs.put('alike, own thing', arriving.item.id === row.itemId ? alike : 0);
  signs.put('alike, no word', cue.change === undefined ? alike : 0);
  const isAsked = note.replaces !== undefined || near.length > 0;
  const tolerance = isAsked && toleranceBetween(row, note, work.settings.tolerances, region);
  const agrees = (value: Quantity) => tolerance !== false && agree(value, row, tolerance, region) === true;
  signs.put('replaced', note.replaces !== undefined && agrees(note.replaces));
  signs.put('another replaced', note.replaces !== undefined && !agrees(note.replaces));
  const again = near.find((other) => (other as Kept<FigureNote>).id !== row.claimId && agrees(other));
  signs.put('old value near', again !== undefined);
  signs.put('old value near, before', again !== undefined && again.span.start < note.span.start);
  signs.put('derived', work.draft.formula(row.slot) !== undefined);
  signs.put('rivals of the thing', Math.min(rivals, 4));
  return signs.list;
}

/** The signs of the words that the older figure was told with, and of what else there is in its dimension. */
export function signsOfTold(
  work: Working,
  { note, item }: Arriving,
  row: StandingRow,
  told: ToldBefore,
): readonly Sign[] {
  const { alike, few } = told;
  const signs = new Signs();
  const own = alike.find(({ slot }) => slot === row.slot);
  signs.put('told alike', Math.min(own?.shared ?? 0, 3) / 3);
  signs.put('told likest', own?.ofBest === 1);
  signs.put('told less alike', own ? 1 - own.ofBest : 0);
  signs.put('told otherwise', own === undefined);
  signs.put('told with the name', share(shapeOf(note.item).stems, wordsToldWith(row)));
  signs.put('only one of its dimension', few.length === 1);
  signs.put('few of its dimension', few.length > 1);
  const again = equalOf(work, note, told).find(({ slot }) => slot !== row.slot);
  signs.put('told of another', again !== undefined && (again.itemId === item.id || isAlike(alike, again)));
  return signs.list;
}

const equals = new WeakMap<ToldBefore, readonly StandingRow[]>();

/** The figures of the dimension that have the value of the arriving one, found once for all that it is held against. */
function equalOf(work: Working, note: FigureNote, told: ToldBefore): readonly StandingRow[] {
  const known = equals.get(told);
  if (known) return known;
  const found = told.rows.filter((row) => isEqual(work, note, row));
  equals.set(told, found);
  return found;
}

const isAlike = (alike: ToldBefore['alike'], { slot }: StandingRow) =>
  alike.some((one) => one.slot === slot && one.ofBest > 0.5);

function isEqual(work: Working, note: FigureNote, row: StandingRow): boolean {
  if (row.unit === note.unit) return row.value === note.value;
  const apart = difference(note, row, work.settings.region);
  return apart !== undefined && Math.abs(apart) <= Math.abs(note.value) * 1e-4;
}
