/** The standing figure that a name in a check stands for. */
import { ATTRIBUTES, type Attribute, DIMENSIONS } from '../../language/notes.ts';
import { LIMIT_MARK } from '../counterpart.ts';
import { nameKey, nameStems, wordsOf } from '../names.ts';
import { bestItem } from '../naming.ts';
import type { ItemRow, LimitRow, ModelReader, NameRow, Slot, StandingRow } from '../rows.ts';

/** What resolving reads. `nameRule` is apart: views must not leave a mark in the log of names that were asked for. */
export interface Names {
  readonly reader: Pick<ModelReader, 'itemsLike' | 'standingOf' | 'standing' | 'item' | 'limitsIn'>;
  readonly ruleOf: (key: string) => NameRow | undefined;
}

/** A figure that a check may read: one that stands, or the stated end of a limit. */
export interface ReadRow extends StandingRow {
  readonly limit?: LimitRow;
}

export type NamedFigure =
  | { readonly kind: 'figure'; readonly row: ReadRow }
  /** Nobody said it yet. `item` is the thing as it is known, or as it was written. */
  | { readonly kind: 'unsaid'; readonly words: string }
  /** Several figures fit. */
  | { readonly kind: 'several'; readonly words: string; readonly which: readonly string[] };

/**
 * Finds the figure of a name: "side hatch width", or "side hatch" where the input itself says what is measured or where
 * only one figure of the thing is of this kind. A limit stands in where nothing but the limit was said.
 */
export function figureNamed(names: Names, name: string, kind: string, inputName: string): NamedFigure {
  const found = figureAsNamed(names, name, kind, inputName);
  if (found.kind !== 'unsaid') return found;
  const { item, attribute } = itemAndAttribute(name);
  const side = sideByOrder(names, item, inputName);
  if (side) return { kind: 'figure', row: side };
  if (inputName === 'opening') return inOtherWords(names, item, attribute, kind) ?? found;
  // "Through the back door", whose sizes were said of "the back door opening".
  if (!/^opening /.test(inputName) || wordsOf(item).at(-1) === 'opening') return found;
  const clear = `${item} opening${attribute === undefined ? '' : ` ${attribute}`}`;
  const opening = figureAsNamed(names, clear, kind, inputName);
  return opening.kind === 'figure' ? opening : found;
}

/** What the room that is left for a thing is called, beside its opening. */
const ROOMS = [
  'hole',
  'bay',
  'recess',
  'housing',
  'alcove',
  'niche',
  'aperture',
  'slot',
  'gap',
  'space',
  'frame',
];

/** "Flue opening diameter", that was told of the flue hole: the one room of that thing that has the size. */
function inOtherWords(
  names: Names,
  name: string,
  attribute: Attribute | undefined,
  kind: string,
): NamedFigure | undefined {
  const thing = thingOfOpening(name);
  if (thing === undefined || attribute === undefined) return undefined;
  const rows = new Map<Slot, ReadRow>();
  for (const room of ROOMS) {
    const item = itemNamed(names, `${thing} ${room}`);
    // A thing of that name without the word is no room.
    if (!item || wordsOf(item.name).at(-1) !== room) continue;
    const row = figureOf(names, item, attribute, kind);
    if (row) rows.set(row.slot, row);
  }
  const [row] = rows.values();
  return row && rows.size === 1 ? { kind: 'figure', row } : undefined;
}

/** "Flue" of "flue opening". */
export const thingOfOpening = (name: string): string | undefined => /^(.+) opening$/.exec(name)?.[1];

/** Inputs whose order among each other is that of sizes told without names: "2400 by 880 by 40", "710 by 540". */
const IN_ORDER: readonly (readonly string[])[] = [
  ['panel length', 'panel width', 'thickness'],
  ['opening width', 'opening height'],
];

/**
 * A side of a thing of which as many sizes stand as it has sides here, none of them told by name. Whatever way it is
 * turned, it goes through the same openings.
 */
function sideByOrder(names: Names, name: string, inputName: string): ReadRow | undefined {
  const sides = IN_ORDER.find((one) => one.includes(inputName));
  const item = sides && itemNamed(names, name);
  if (!sides || !item) return undefined;
  const sizes = names.reader
    .standingOf(item.id)
    .filter(({ slot, dimension }) => dimension === 'length' && SIZE_SLOT.test(slot))
    .sort((left, right) => placeOf(left) - placeOf(right));
  return sizes.length === sides.length ? sizes[sides.indexOf(inputName)] : undefined;
}

/** A slot that was made for a size without a name; a later figure may have given it one. */
const SIZE_SLOT = /\|size\|length(?:#(\d+))?$/;
const placeOf = ({ slot }: Pick<StandingRow, 'slot'>): number => Number(SIZE_SLOT.exec(slot)?.[1] ?? 1);

function figureAsNamed(names: Names, name: string, kind: string, inputName: string): NamedFigure {
  const { item, attribute } = itemAndAttribute(name);
  const whole = itemNamed(names, name);
  const bare = attribute === undefined ? undefined : itemNamed(names, item);
  const hint = attributeOf(inputName);
  if (bare && attribute) {
    const row = figureOf(names, bare, attribute, kind);
    if (row) return { kind: 'figure', row };
  }
  const found = whole && ofWhole(names, whole, hint, kind);
  if (found) return found;
  const measure = attribute === undefined && hint !== undefined ? ` ${hint}` : '';
  return { kind: 'unsaid', words: `${name}${measure}` };
}

function ofWhole(
  { reader }: Names,
  item: ItemRow,
  hint: Attribute | undefined,
  kind: string,
): NamedFigure | undefined {
  if (hint !== undefined) {
    const row = figureOf({ reader } as Names, item, hint, kind);
    if (row) return { kind: 'figure', row };
  }
  const rows = rowsOf(reader, item, kind);
  const plain = rows.filter(({ slot }) => !slot.includes(LIMIT_MARK));
  const fitting = hint === undefined ? plain : plain.filter(({ attribute }) => attribute === 'size');
  if (fitting.length === 1 && plain.length === 1) return { kind: 'figure', row: fitting[0] as ReadRow };
  if (hint !== undefined || plain.length === 0) return undefined;
  const which = plain.map(({ attribute }) => `${item.name} ${attribute}`);
  return { kind: 'several', words: item.name, which };
}

/** Attributes that are said for each other, as they are when figures are filed. */
const ALIKE: readonly (readonly Attribute[])[] = [
  ['clearance', 'gap'],
  ['width', 'diameter'],
];

function figureOf(
  { reader }: Pick<Names, 'reader'>,
  item: ItemRow,
  attribute: Attribute,
  kind: string,
): ReadRow | undefined {
  const rows = rowsOf(reader, item, kind);
  const alike = ALIKE.find((group) => group.includes(attribute)) ?? [];
  const of = (wanted: readonly Attribute[], isLimit: boolean) =>
    rows.find((row) => wanted.includes(row.attribute) && row.slot.includes(LIMIT_MARK) === isLimit);
  return of([attribute], false) ?? of(alike, false) ?? of([attribute], true) ?? of(alike, true);
}

/** The figures of a thing that are of a kind, then its limits: a count is a plain ratio. */
function rowsOf(reader: Names['reader'], item: ItemRow, kind: string): readonly ReadRow[] {
  const isOfKind = ({ dimension }: Pick<StandingRow, 'dimension'>) =>
    dimension === kind || (kind === 'ratio' && dimension === 'count');
  const standing = reader
    .standingOf(item.id)
    .filter((row) => isOfKind(row) && !row.slot.includes(LIMIT_MARK));
  const dimension = DIMENSIONS.find((one) => one === kind);
  const limits = dimension ? reader.limitsIn(dimension).filter(({ itemId }) => itemId === item.id) : [];
  return [...standing, ...limits.map(asFigure)];
}

/** A limit as it may be read: the words of a limit are those of a figure, and a later one takes its place. */
function asFigure(limit: LimitRow): ReadRow {
  const { slot, itemId, attribute, dimension, value, high, unit, bound } = limit;
  const row = { slot, itemId, attribute, dimension, value, unit, bound, status: 'stands' } as const;
  return { ...row, ...(high === undefined ? {} : { high }), rule: 'a limit', limit };
}

/** The figure in a slot; where the slot is empty, the same measure of the same thing. */
export function figureIn({ reader }: Pick<Names, 'reader'>, slot: Slot): ReadRow | undefined {
  const [itemId = '', attribute = '', kind = ''] = slot.split('|');
  if (slot.includes(LIMIT_MARK)) {
    const dimension = DIMENSIONS.find((one) => one === kind);
    const limit = dimension && reader.limitsIn(dimension).find((one) => one.slot === slot);
    return limit && asFigure(limit);
  }
  const row = reader.standing(slot);
  if (row) return row;
  return reader
    .standingOf(itemId)
    .find((one) => one.attribute === attribute && one.dimension === kind && !one.slot.includes(LIMIT_MARK));
}

/** The thing that a name means, by the rules for names that were set by hand; undefined where none is known. */
export function itemNamed({ reader, ruleOf }: Names, said: string): ItemRow | undefined {
  const rule = ruleOf(nameKey(said));
  const name = rule?.into ?? said;
  return bestItem(name, reader.itemsLike(nameStems(name)), []);
}

/** What is measured, by the last word: "side hatch width". */
export function itemAndAttribute(name: string): {
  readonly item: string;
  readonly attribute: Attribute | undefined;
} {
  const words = name.trim().split(/\s+/);
  const attribute = words.length > 1 ? attributeOf(words[words.length - 1] ?? '') : undefined;
  return attribute ? { item: words.slice(0, -1).join(' '), attribute } : { item: name, attribute: undefined };
}

/** The attribute that a name ends in: "panel length". */
function attributeOf(name: string): Attribute | undefined {
  const last = wordsOf(name).at(-1);
  return ATTRIBUTES.find((one) => one === last && one !== 'other');
}
