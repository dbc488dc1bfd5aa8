import type { Attribute, Dimension, FigureNote, Quantity } from '../language/notes.ts';
import type { Draft } from './draft.ts';
import type { ModelSettings } from './reconcile.ts';
import type { ItemRow, Slot, StandingRow } from './rows.ts';
import { slotOf } from './rows.ts';
import { agree, toleranceBetween } from './tolerance.ts';
import { difference } from './units.ts';

/** Attributes that are said for each other. */
const ALIKE: readonly (readonly Attribute[])[] = [
  ['clearance', 'gap'],
  ['width', 'diameter'],
];

/** Limits stand beside the figures that they bind. */
export const LIMIT_MARK = '|limit';

export interface Counterpart {
  /** Where the claim is filed. */
  readonly slot: Slot;
  /** The figure that stands there. */
  readonly standing: StandingRow | undefined;
}

/** A figure as far as finding its place goes. */
type Placed = Pick<
  FigureNote,
  | 'attribute'
  | 'assumed'
  | 'dimension'
  | 'bound'
  | 'value'
  | 'unit'
  | 'high'
  | 'plusMinus'
  | 'plusMinusUnit'
  | 'replaces'
>;

/**
 * Finds the figure of the same thing that a claim confirms or contradicts. One attribute may hold several figures
 * ("560 by 480"): the one that agrees is meant, else the one that the speaker names as the old value, else the only
 * one that was not said in the same breath. `beside` is the other side of a size told by two: where one side of it
 * agrees with a known pair, the other is held against the other.
 */
export function counterpartOf(
  draft: Draft,
  item: ItemRow,
  note: Placed,
  settings: ModelSettings,
  saidTogether: (standing: StandingRow) => boolean,
  beside?: Quantity,
): Counterpart {
  const own = slotOf(item.id, note.attribute, note.dimension);
  const standing = draft.standingOf(item.id);
  const likely = standing.filter(
    (row) =>
      !row.slot.includes(LIMIT_MARK) &&
      row.dimension === note.dimension &&
      (goesWith(row, note, standing) || isTheOnlySize(row, note, standing, settings.region)),
  );
  const agreeing = likely.find((row) => agreesWith(row, note, settings));
  if (agreeing) return { slot: agreeing.slot, standing: agreeing };
  const { replaces } = note;
  const named = replaces && likely.find((row) => agreesWith(row, { ...note, ...replaces }, settings));
  if (named) return { slot: named.slot, standing: named };
  const side = otherSide(
    standing.filter((row) => !saidTogether(row)),
    note,
    settings,
    beside,
  );
  if (side) return { slot: side.slot, standing: side };
  const unnamed = unnamedSide(
    standing.filter((row) => !saidTogether(row)),
    note,
    settings.region,
  );
  if (unnamed) return { slot: unnamed.slot, standing: unnamed };
  const apart = likely.filter((row) => !saidTogether(row));
  const [only] = apart.length === 1 ? apart : apart.filter((row) => row.slot === own && apart.length > 1);
  const crowded = likely.length > 1 && note.attribute === 'size';
  if (only && !crowded) return { slot: only.slot, standing: only };
  return { slot: freeSlot(draft, own), standing: undefined };
}

/** The lengths of a thing, without its limits. */
const lengthsOf = (standing: readonly StandingRow[]): readonly StandingRow[] =>
  standing.filter((row) => row.dimension === 'length' && !row.slot.includes(LIMIT_MARK));

const SIDES: ReadonlySet<Attribute> = new Set(['size', 'width', 'height', 'length', 'depth']);

/** "The door is 24 by 72", "it came 24 by 75": the side of a known pair that a figure is another value of. */
function otherSide(
  standing: readonly StandingRow[],
  note: Placed,
  settings: ModelSettings,
  beside: Quantity | undefined,
): StandingRow | undefined {
  if (!beside || note.attribute !== 'size' || note.dimension !== 'length') return undefined;
  const pair = lengthsOf(standing).filter((row) => SIDES.has(row.attribute));
  const [first, second] = pair;
  if (!first || !second || pair.length > 2) return undefined;
  const agrees = (row: StandingRow) => agreesWith(row, { ...note, ...beside }, settings);
  const other = agrees(first) ? second : agrees(second) ? first : undefined;
  return other && isNear(other, note, settings.region) ? other : undefined;
}

/** "38 by 82", "the opening's 37 wide": of a pair that was told without its sides the one that is near. */
function unnamedSide(
  standing: readonly StandingRow[],
  note: Placed,
  region: string | undefined,
): StandingRow | undefined {
  if (note.dimension !== 'length' || !SIDES.has(note.attribute) || note.attribute === 'size')
    return undefined;
  const sizes = lengthsOf(standing);
  const pair = sizes.filter((row) => row.attribute === 'size');
  if (pair.length !== 2 || sizes.some((row) => row.attribute === note.attribute)) return undefined;
  const near = pair.filter((row) => isNear(row, note, region));
  return near.length === 1 ? near[0] : undefined;
}

/** Further apart than this they are sides of two things of the name: windows of 600 by 450, and of 600 by 300. */
const NEAR_SHARE = 0.25;
const isNear = (row: StandingRow, note: Placed, region?: string) =>
  Math.abs(difference(note, row, region) ?? Number.POSITIVE_INFINITY) <= Math.abs(note.value) * NEAR_SHARE;

function goesWith(row: StandingRow, note: Placed, standing: readonly StandingRow[]): boolean {
  if (row.attribute === note.attribute) return true;
  if (ALIKE.some((group) => group.includes(row.attribute) && group.includes(note.attribute))) return true;
  if (note.dimension !== 'length') return ONE_PER_DIMENSION.has(note.dimension);
  // "885" of an opening whose width is known: a size is whichever one it is, where there is only one.
  const sizes = lengthsOf(standing);
  return (row.attribute === 'size' || note.attribute === 'size') && sizes.length === 1;
}

/** "The centre line's at 200": no side was named, and the thing has one size of about that. */
function isTheOnlySize(
  row: StandingRow,
  note: Placed,
  standing: readonly StandingRow[],
  region: string | undefined,
): boolean {
  if (!note.assumed?.includes('attribute') || !SIDES.has(note.attribute) || !SIDES.has(row.attribute))
    return false;
  const sizes = lengthsOf(standing);
  return sizes.length === 1 && isNear(row, note, region);
}

/** A thing has one weight and one voltage, whatever the attribute was called. */
const ONE_PER_DIMENSION: ReadonlySet<Dimension> = new Set([
  'mass',
  'voltage',
  'current',
  'charge',
  'power',
  'pressure',
  'torque',
  'volume',
  'frequency',
]);

function agreesWith(row: StandingRow, note: Placed & Quantity, settings: ModelSettings): boolean {
  const tolerance = toleranceBetween(row, note, settings.tolerances, settings.region);
  return [row, ...(row.also ?? [])].some((value) => agree(note, value, tolerance, settings.region) === true);
}

/** The slot itself, or the next numbered one beside it when it is taken. */
function freeSlot(draft: Draft, own: Slot): Slot {
  let slot = own;
  for (let number = 2; draft.standing(slot) !== undefined; number++) slot = `${own}#${number}`;
  return slot;
}
