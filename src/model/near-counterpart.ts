/**
 * Finds the figure that a changed one replaces when the two go by different names or measures: "the ash legs", once
 * "bench legs". A name alone proves nothing here, so several signs must come together: words of the name in the talk,
 * the old value said once more, a likely measure, a near value, and the speaker's own word that something changed.
 */
import type { Attribute, Quantity } from '../language/notes.ts';
import type { Arriving } from './claims.ts';
import { LIMIT_MARK } from './counterpart.ts';
import { likenessOf } from './likeness.ts';
import { isRoomFor, nameStems, setsApart, shapeOf } from './names.ts';
import type { ItemRow, StandingRow } from './rows.ts';
import { talkStems } from './talk-stems.ts';
import { agree, toleranceBetween } from './tolerance.ts';
import { difference, exactQuantity } from './units.ts';
import type { Working } from './working.ts';

/** Things that are looked at for one figure: those whose names share most words with the talk around it. */
const MOST_ITEMS = 24;
/** Signs that must come together. */
const ENOUGH = 3.5;
/** By how much the best must lead the next. */
const LEAD = 0.3;
/** Signs of the name that make an equal value the same figure said again. */
const SAME_THING = 0.9;

interface Near {
  readonly row: StandingRow;
  readonly item: ItemRow;
  readonly weight: number;
}

/** The figure of an earlier memo that this one most likely changes; undefined when none is likely enough. */
export function nearCounterpart(work: Working, arriving: Arriving): Near | undefined {
  const { note, cue } = arriving;
  if (cue.change === undefined || cue.isRestated) return undefined;
  const near = candidates(work, arriving);
  if (near.some((one) => one.name >= SAME_THING && agrees(work, note, one.row))) return undefined;
  const ranked = near
    .flatMap((one) => weighed(work, arriving, one))
    .filter((one) => !agrees(work, note, one.row))
    .sort((a, b) => b.weight - a.weight);
  const [best, next] = ranked;
  const isPlain = best && best.weight >= ENOUGH && !(next && best.weight - next.weight < LEAD);
  return isPlain ? best : byOldValue(work, arriving);
}

/**
 * The figure that is meant where the old value is said, and it is not the value of the figure that goes by the name:
 * "across the floor it's 2296, not 2310" is not the floor's thickness.
 */
export function meantInstead(work: Working, arriving: Arriving, standing: StandingRow): Near | undefined {
  const old = oldValueOf(work, arriving);
  if (!old || !isFurther(standing, old, SMALL_CHANGE, work.settings.region)) return undefined;
  return byOldValue(work, arriving);
}

/** Figures that are looked at for an old value that is said with the new one. */
const MOST_FIGURES = 400;

/**
 * "It isn't 7 foot 1, it's 6 foot 11": the old value itself says which figure is meant, by whatever name the new one
 * goes. Of several figures of that value the one whose name is nearest is meant.
 */
function byOldValue(work: Working, arriving: Arriving): Near | undefined {
  const { note, place } = arriving;
  const old = oldValueOf(work, arriving);
  if (!old) return undefined;
  const found = work.draft
    .latestIn(note.dimension, MOST_FIGURES)
    .filter((row) => isOfEarlierMemo(work, row) && isThatValue(work, old, row))
    .flatMap((row) => {
      const item = work.draft.item(row.itemId);
      if (!item) return [];
      const name = nameWeight(note.item, item.name, place.sentence, place.before);
      const isGuess = note.assumed?.includes('attribute') ?? false;
      const attribute = isGuess ? 0 : attributeWeight(row.attribute, note.attribute, false);
      return name <= APART ? [] : [{ row, item, weight: name + attribute }];
    })
    .sort((a, b) => b.weight - a.weight);
  const [best, next] = found;
  return best && next && best.weight - next.weight < LEAD ? undefined : best;
}
/** What names weigh that are set apart: front and rear. */
const APART = -1;

/** The old value where it is plainly said: as the one that is replaced, or again beside a size measured anew. */
function oldValueOf(work: Working, { note, cue }: Arriving): Quantity | undefined {
  const { region } = work.settings;
  if (note.replaces) return isFurther(note.replaces, note, MOST_CHANGE, region) ? undefined : note.replaces;
  if (cue.weight < PLAIN_CHANGE) return undefined;
  const again = work.memo.notes.figures.findLast(
    (other) =>
      other.span.end <= note.span.start &&
      other.dimension === note.dimension &&
      other.bound === 'exact' &&
      work.sentenceOf(note.span) - work.sentenceOf(other.span) <= 1,
  );
  return again && !isFurther(again, note, SMALL_CHANGE, region) ? again : undefined;
}
const PLAIN_CHANGE = 3;
/** Beyond these ratios the two are of two things. */
const MOST_CHANGE = 3;
const SMALL_CHANGE = 1.12;

function isFurther(a: Quantity, b: Quantity, most: number, region?: string): boolean {
  const [x, y] = [exactQuantity(a, region)?.size, exactQuantity(b, region)?.size];
  return x === undefined || y === undefined || x <= 0 || y <= 0 || Math.max(x / y, y / x) > most;
}

/** The value as it was told, to the last place: many figures come near any other one. */
function isThatValue(work: Working, old: Quantity, row: StandingRow): boolean {
  const apart = difference(old, row, work.settings.region);
  return apart !== undefined && Math.abs(apart) <= Math.abs(old.value) * 1e-4;
}

interface Candidate {
  readonly row: StandingRow;
  readonly item: ItemRow;
  /** How much of its name is said. */
  readonly name: number;
}

function candidates(work: Working, { note, place }: Arriving): readonly Candidate[] {
  const said = nameStems(note.item);
  const talk = [...new Set([...said, ...talkStems(place.sentence), ...talkStems(place.before)])];
  return work.draft.itemsNear(talk, MOST_ITEMS).flatMap((item) =>
    work.draft
      .standingOf(item.id)
      .filter((row) => row.dimension === note.dimension && isOfEarlierMemo(work, row))
      .map((row) => ({ row, item, name: nameWeight(note.item, item.name, place.sentence, place.before) })),
  );
}

function isOfEarlierMemo(work: Working, row: StandingRow): boolean {
  if (row.slot.includes(LIMIT_MARK) || row.status === 'series') return false;
  const claim = row.claimId === undefined ? undefined : work.draft.claim(row.claimId);
  return claim === undefined || claim.memoId !== work.memo.id;
}

function agrees(work: Working, note: Arriving['note'], row: StandingRow): boolean {
  const { tolerances, region } = work.settings;
  return agree(note, row, toleranceBetween(row, note, tolerances, region), region) === true;
}

/** How much of a known name is in the said one, else in the sentence, else in the one before. */
function nameWeight(saidName: string, known: string, sentence: string, before: string): number {
  const [a, b] = [shapeOf(saidName), shapeOf(known)];
  const only = (from: readonly string[], other: readonly string[]) =>
    from.filter((stem) => !other.includes(stem));
  const [moreA, moreB] = [only(a.stems, b.stems), only(b.stems, a.stems)];
  // "The front legs" are no change of the rear ones.
  if ((moreA.some(setsApart) && moreB.some(setsApart)) || isRoomFor(saidName, known)) return -2;
  const inSentence = talkStems(sentence);
  const inBefore = talkStems(before);
  const share = (words: ReadonlySet<string>) =>
    b.stems.filter((stem) => words.has(stem)).length / Math.max(1, b.stems.length);
  // The sill board of a window is another thing than the window, however often the talk names both.
  if (a.head !== b.head && !b.stems.includes(a.head)) return -0.5;
  // "The kitchen" for the kitchen bench: all that was said is in the known name.
  const head =
    a.head === b.head
      ? 1
      : moreA.length === 0
        ? 0.8
        : inSentence.has(b.head)
          ? 0.8
          : inBefore.has(b.head)
            ? 0.4
            : 0;
  return head + Math.max(share(new Set(a.stems)), share(inSentence) * 0.8, share(inBefore) * 0.4);
}

/** A candidate with its weight; nothing where it is too light to be the best or to come near it. */
function weighed(work: Working, arriving: Arriving, one: Candidate): readonly (Candidate & Near)[] {
  const { note, cue } = arriving;
  const { row, name } = one;
  const attribute = attributeWeight(
    row.attribute,
    note.attribute,
    note.assumed?.includes('attribute') ?? false,
  );
  const change = Math.min(1, cue.weight / 3);
  // What costs much is weighed last, and only where it can still matter.
  if (name + attribute + change + MOST_OLD + MOST_CLOSE < MATTERS) return [];
  const close = closeness(row, note, work.settings.region);
  if (name + attribute + change + MOST_OLD + close < MATTERS) return [];
  const weight = name + oldValueWeight(work, arriving, row) + attribute + close + change;
  return [{ row, name, item: one.item, weight }];
}
/** The most that `oldValueWeight` and `closeness` give. */
const MOST_OLD = 2.5;
const MOST_CLOSE = 1;
/** Lighter than this it can neither win nor stand in the way of the best; a little less, for the noise of sums. */
const MATTERS = ENOUGH - LEAD - 1e-6;

/** The old value is said beside the new one: as the one that is replaced, or near by. */
export function oldValueWeight(work: Working, { note, place }: Arriving, row: StandingRow): number {
  const { replaces } = note;
  if (replaces && agrees(work, { ...note, ...replaces }, row)) return 2.5;
  const saidNear = work.memo.notes.figures.some((other) => {
    // The older figure itself, further up in the same talk, is not the old value said once more.
    if (other.id === note.id || other.id === row.claimId || other.dimension !== note.dimension) return false;
    const back = place.index - work.sentenceOf(other.span);
    return back >= -1 && back <= 1 && agrees(work, other, row);
  });
  return saidNear ? 1.5 : 0;
}

const LOOSE: readonly Attribute[] = ['size', 'other', 'length'];
const ACROSS: readonly Attribute[] = ['width', 'diameter', 'clearance', 'gap', 'offset'];

function attributeWeight(known: Attribute, said: Attribute, isAssumed: boolean): number {
  if (known === said) return 0.8;
  if (LOOSE.includes(known) || LOOSE.includes(said)) return 0.4;
  if (ACROSS.includes(known) && ACROSS.includes(said)) return 0.4;
  return isAssumed ? 0 : -0.7;
}

function closeness(was: StandingRow, now: Arriving['note'], region?: string): number {
  const [a, b] = [exactQuantity(was, region)?.size, exactQuantity(now, region)?.size];
  if (a === undefined || b === undefined || a <= 0 || b <= 0) return -2;
  const ratio = Math.max(a / b, b / a);
  if (ratio < 1.04) return 1;
  if (ratio < 1.12) return 0.7;
  if (ratio < 1.3) return 0.3;
  if (ratio < 2) return 0;
  return (likenessOf(was, now, region)?.weight ?? 0) >= 0.8 ? 0.3 : -1.5;
}
