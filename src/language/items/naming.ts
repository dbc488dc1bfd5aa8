/** Gives things stable names: the same thing said twice comes out as the same words. */
import { isTradeNoun, kindsOf, type NounKind, singular } from '../lexicon/trade-nouns.ts';
import type { Attribute, Dimension, KnownFigure, Quantity } from '../notes.ts';
import { wordTable } from '../word-table.ts';
import type { KnownLength } from './attributes.ts';
import { inMillimetres } from './fitness.ts';
import { nameKey, type Phrase } from './noun-phrases.ts';
import { isSize } from './sizes.ts';

/** Heads that mean nothing without their owner: "the top", "legs", "the rough opening". */
const RELATIONAL_HEADS = new Set(
  `top bottom leg side end back front base underside inside outside middle centre center edge face foot rim lip lid
  opening cutout cut-out hole bore headroom legroom height width length depth thickness diameter clearance gap fall pitch
  spacing overhang upstand lap seat backrest tread riser stringer nosing horn corner half rear apron kick heel
  toe cheek neck throat mouth inlet outlet stem head shoulder surround rebate rabbet groove slot notch mortise
  tenon tongue weight load moisture leaf crown camber stretcher`.split(/\s+/),
);
/** Heads that belong to a thing when it was put in front: "Shower, the drain's 14 inches off". */
const DEPENDENT_HEADS = new Set(
  `carcass door drawer drain lining header lintel sill cill jamb frame rail stile post panel runner slide handle hinge latch seal
  gasket shaft blade tip bracket mount plate motor pulley belt joint seam tank pump filter element thermostat breaker fuse
  cable wiring roof floor ceiling wall sole deck beam hull transom keel freeboard draught recess niche bay skin layer core
  veneer edging lipping trim skirting plinth shelf bit pane glass sash reveal architrave cover valve spout tap tray waste
  trap vent duct flue bezel coat spring axle hub tyre tire wheel bunk bush bolt screw clip fixing board cushion mattress
  step rung hatch window vane rudder tiller bar rod pipe hose supply circuit`.split(/\s+/),
);
export const isRelational = (phrase: Phrase): boolean => RELATIONAL_HEADS.has(singular(phrase.head));
export const isDependent = (phrase: Phrase): boolean => DEPENDENT_HEADS.has(singular(phrase.head));

/** Words of which a thing has one or another: putting one in turns out its fellow. */
const FELLOWS: readonly (readonly string[])[] = [
  ['upper', 'lower', 'top', 'bottom', 'middle'],
  ['port', 'starboard'],
  ['left', 'right'],
  ['nearside', 'offside', 'driver', 'passenger'],
  ['east', 'west', 'north', 'south'],
  ['front', 'back', 'rear'],
  ['fore', 'aft', 'forward', 'after', 'midship'],
  ['inner', 'outer', 'inside', 'outside', 'internal', 'external', 'interior', 'exterior'],
  ['inboard', 'outboard'],
  ['first', 'second', 'third', 'fourth', 'fifth'],
  ['old', 'new'],
  ['tall', 'low', 'short', 'high'],
  ['long', 'short'],
  ['big', 'small', 'large', 'little'],
  ['wide', 'narrow'],
  ['thick', 'thin'],
  ['hot', 'cold'],
  ['fresh', 'grey', 'gray', 'black', 'waste'],
  ['main', 'secondary', 'spare'],
  ['upstairs', 'downstairs'],
];
const OPPOSITE = wordTable<string>({
  upper: 'lower',
  lower: 'upper',
  port: 'starboard',
  starboard: 'port',
  left: 'right',
  right: 'left',
  nearside: 'offside',
  offside: 'nearside',
  east: 'west',
  west: 'east',
  north: 'south',
  south: 'north',
  front: 'back',
  back: 'front',
  rear: 'front',
  fore: 'aft',
  forward: 'aft',
  aft: 'forward',
  inner: 'outer',
  outer: 'inner',
  inside: 'outside',
  outside: 'inside',
  inboard: 'outboard',
  outboard: 'inboard',
  top: 'bottom',
  bottom: 'top',
  first: 'second',
  second: 'first',
  hot: 'cold',
  cold: 'hot',
});

const isPlace = (word: string): boolean => {
  const kinds = kindsOf([word]);
  return kinds.has('space') || kinds.has('vessel');
};
export const areFellows = (a: string, b: string): boolean =>
  a !== b && (FELLOWS.some((list) => list.includes(a) && list.includes(b)) || (isPlace(a) && isPlace(b)));

/** "the west one" after "east sash opening": the new modifiers turn out their fellows, the rest stays. */
export function nameOfOne(modifiers: readonly string[], antecedent: readonly string[]): readonly string[] {
  if (modifiers.length === 0) return antecedent;
  const replaced = antecedent.map((word) => modifiers.find((modifier) => areFellows(modifier, word)) ?? word);
  const missing = modifiers.filter((modifier) => !replaced.includes(modifier));
  return [...missing, ...replaced];
}

/** "the other one": the opposite side where the name holds one. */
export function nameOfOther(antecedent: readonly string[]): readonly string[] {
  const at = antecedent.findIndex((word) => OPPOSITE[word]);
  if (at < 0) return ['other', ...antecedent];
  return antecedent.map((word, k) => (k === at ? (OPPOSITE[word] as string) : word));
}

/** Puts owner and part together: "kitchen window" and "rough opening". Words the part has already are not repeated. */
export function joinNames(owner: readonly string[], part: readonly string[]): readonly string[] {
  const have = new Set(nameKey(part));
  const kept = owner.filter((word) => !have.has(singular(word)));
  // "windows", "panes" is "window panes": an owner in front stands in the singular.
  return [...kept.map((word, k) => (k === kept.length - 1 ? singular(word) : word)), ...part];
}

const NO_WORDS: ReadonlySet<string> = new Set();

/** "Fridge each side": the room beside a thing, which its bare name never means. */
const isOfSides = (name: readonly string[]): boolean =>
  name.at(-2) === 'each' || (name.at(-2) === 'all' && name.at(-1) === 'round');

/** Words that two names are compared by. The rough opening of a window is as wide as the window's hole. */
function plainKey(name: readonly string[]): readonly string[] {
  const key = nameKey(name).map((word) => word.replace(/,$/, ''));
  if (key.at(-1) !== 'opening' || key.length < 2) return key;
  const rest = key.filter((word) => word !== 'opening' && word !== 'rough' && word !== 'clear');
  return rest.some((word) => kindsOf([word]).has('opening')) ? rest : key;
}

export interface KnownThing {
  readonly name: readonly string[];
  readonly key: ReadonlySet<string>;
  readonly head: string;
  readonly attributes: ReadonlySet<Attribute>;
  /** Higher is later. */
  readonly lastSaid: number;
}

const HEAD_STOP =
  /^(?:from|above|below|under|over|between|at|on|in|to|with|for|off|of|as|each|per|,|across|behind|without)$/;

/** The head of a name: its last word before any "from the wall", "between coats". */
export function headOf(name: readonly string[]): string {
  const stop = name.findIndex((word, k) => k > 0 && HEAD_STOP.test(word.replace(/,$/, '')));
  const core = stop > 0 ? name.slice(0, stop) : name;
  return singular((core.at(-1) ?? '').replace(/,$/, ''));
}

/** A value to nine figures with its unit: what two figures of one value share. */
const valueKey = ({ value, unit }: Quantity): string => `${toNineFigures(value)} ${unit}`;

/** Whole numbers, which most figures are, stay as they are: writing the digits out takes its time. */
const toNineFigures = (value: number): number =>
  Number.isInteger(value) && Math.abs(value) < 1e9 ? value : Number(value.toPrecision(9));

function append<T>(lists: Map<string, T[]>, key: string, value: T): void {
  const list = lists.get(key);
  if (list) list.push(value);
  else lists.set(key, [value]);
}

/** Of one thing the latest figures count: no memo tells more of it, but for one that is nothing but figures. */
const MOST_OF_ITEM = 64;

/** Names known before this memo and those given in it so far. */
export class KnownThings {
  readonly #things = new Map<string, KnownThing>();
  #clock = 0;
  readonly #byHead = new Map<string, Set<string>>();
  readonly #byItem = new Map<string, KnownFigure[]>();
  /** Figures of one value, one for each measure of a thing. */
  readonly #byValue = new Map<string, Map<string, KnownFigure>>();

  constructor(items: readonly string[], figures: readonly KnownFigure[]) {
    for (const item of items) this.say(item);
    for (const figure of figures) this.keep(figure);
  }

  /** Keeps a figure read in this memo, so that saying it again finds its thing. */
  keep(figure: KnownFigure): void {
    append(this.#byItem, figure.item, figure);
    const ofItem = this.#byItem.get(figure.item) as KnownFigure[];
    if (ofItem.length > MOST_OF_ITEM) ofItem.shift();
    const key = valueKey(figure);
    const ofValue = this.#byValue.get(key) ?? new Map<string, KnownFigure>();
    this.#byValue.set(key, ofValue);
    // Said again it points to the same thing.
    const own = `${figure.attribute} ${figure.item}`;
    if (!ofValue.has(own)) ofValue.set(own, figure);
    this.say(figure.item, figure.attribute);
  }

  say(item: string, attribute?: Attribute): void {
    const lastSaid = ++this.#clock;
    const known = this.#things.get(item);
    if (known) {
      // A thing with many figures is said once for each of them: its words stay as they are.
      const isOfIt = attribute === undefined || known.attributes.has(attribute);
      const attributes = isOfIt ? known.attributes : new Set([...known.attributes, attribute]);
      this.#things.set(item, { ...known, attributes, lastSaid });
      return;
    }
    const name = item.split(/\s+/).filter(Boolean);
    const key = plainKey(name);
    const head = headOf(key);
    const attributes = new Set(attribute ? [attribute] : []);
    this.#things.set(item, { name, key: new Set(key), head, attributes, lastSaid });
    const same = this.#byHead.get(head);
    if (same) same.add(item);
    else this.#byHead.set(head, new Set([item]));
  }

  /** The thing of a kind that was named last: the vessel that "she" means. */
  latestOf(kind: NounKind): readonly string[] | undefined {
    let best: KnownThing | undefined;
    for (const thing of this.#things.values())
      if (kindsOf(thing.name).has(kind) && thing.lastSaid > (best?.lastSaid ?? -1)) best = thing;
    return best?.name;
  }

  /** How many known names say each of the words that `isOne` takes. */
  countWords(isOne: (word: string) => boolean): Map<string, number> {
    const counts = new Map<string, number>();
    for (const thing of this.#things.values())
      for (const word of thing.name) if (isOne(word)) counts.set(word, (counts.get(word) ?? 0) + 1);
    return counts;
  }

  /** The first of these words that stands in a known name. */
  wordIn(words: ReadonlySet<string>): string | undefined {
    for (const thing of this.#things.values())
      for (const word of thing.name) if (words.has(word)) return word;
    return undefined;
  }

  /** Lengths said of this very item, oldest first. */
  lengthsOf(item: string): readonly KnownLength[] {
    return (this.#byItem.get(item) ?? [])
      .filter((figure) => isSize(figure.attribute))
      .map((figure) => ({
        attribute: figure.attribute,
        millimetres: inMillimetres(figure.value, figure.unit),
      }));
  }

  attributesOf(item: string): ReadonlySet<Attribute> {
    return this.#things.get(item)?.attributes ?? new Set();
  }

  has(item: string): boolean {
    return this.#things.has(item);
  }

  /** "the top" of a worktop is the worktop. */
  #endingIn(head: string): KnownThing[] {
    if (head !== 'top') return [];
    return [...this.#byHead]
      .filter(([known]) => known !== head && known.endsWith(head))
      .flatMap(([, items]) => [...items].flatMap((item) => this.#things.get(item) ?? []));
  }

  /** Things that share the head of a name. */
  #sameHead(name: readonly string[]): KnownThing[] {
    const items = this.#byHead.get(headOf(plainKey(name)));
    if (!items) return [];
    return [...items].flatMap((item) => this.#things.get(item) ?? []);
  }

  /**
   * The known thing that a mention means: same words, or a longer known name with the same head and all of the
   * mention's words. Of several, the one that carries this attribute already, or shares its other words with what is
   * being spoken of (`nearby`, singular). `undefined` when none or several do.
   */
  settle(
    name: readonly string[],
    attribute: Attribute | undefined,
    nearby: ReadonlySet<string> = NO_WORDS,
  ): readonly string[] | undefined {
    const key = plainKey(name);
    const candidates = this.#sameHead(name);
    const exact = candidates.find(
      (thing) => thing.key.size === key.length && key.every((word) => thing.key.has(word)),
    );
    if (exact) return exact.name;
    const longer = candidates.filter(
      (thing) => key.every((word) => thing.key.has(word)) && !isOfSides(thing.name),
    );
    if (longer.length === 0 && key.length === 1) longer.push(...this.#endingIn(key[0] as string));
    if (longer.length <= 1) return longer[0]?.name;
    const near = longer.filter((thing) =>
      [...thing.key].some((word) => !key.includes(word) && nearby.has(word)),
    );
    if (near.length === 1) return near[0]?.name;
    const fitting = (near.length > 1 ? near : longer).filter(
      (thing) => attribute && thing.attributes.has(attribute),
    );
    return fitting.length === 1 ? fitting[0]?.name : undefined;
  }

  /** Known items that have this very figure: settles who "it" is when a standing value is said again. */
  /** Figures of this value, one for each measure of a thing. */
  figuresOf(value: number, unit: string): readonly KnownFigure[] {
    return [...(this.#byValue.get(valueKey({ value, unit }))?.values() ?? [])];
  }

  withValue(dimension: Dimension, value: number, unit: string, attribute?: Attribute): ReadonlySet<string> {
    const items = new Set<string>();
    for (const figure of this.#byValue.get(valueKey({ value, unit }))?.values() ?? [])
      if (attribute ? figure.attribute === attribute : isSize(figure.attribute) === (dimension === 'length'))
        items.add(figure.item);
    return items;
  }
}

/** True when the word is one that only tells a thing from its fellow: "east", "upper", "second". */
export const isTelling = (word: string): boolean => FELLOWS.some((list) => list.includes(word));

/** True for a name whose head the lexicon holds. */
export const isKnownNoun = (name: readonly string[]): boolean => isTradeNoun(name.at(-1) ?? '');
