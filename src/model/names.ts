/** What makes two names one thing: the thing itself (the head), what tells it apart, and what tells nothing. */
import { remembered } from '../remembered.ts';
import { stemOf } from './stems.ts';

/** Words of a name that do not tell one thing from another. "Old" does, when there is a new one. */
const FILLER = new Set(
  `a an the this that these those my your our his her their its of for on in at to from with and by one ones bit bits
  thing things piece pieces own whole actual said same same here there it is be each every all both per now still
  about just only around today yesterday tonight monday tuesday wednesday thursday friday saturday
  sunday`.split(/\s+/),
);

/** Where the thing itself ends and what is said of it begins: "top of the bench", "drain from the back wall". */
const HEAD_ENDS =
  /[,;(]|\s(?:of|for|in|on|at|from|above|below|between|with|without|to|under|over|behind|beside|inside|outside|per|off|as|around|round|after|before|across|along|through|by|that|which|where|when|against|into|onto|near|up|down|right|now)\b/u;

/** A window and the opening that it goes in are one thing in the trade's mouth; a washer and its niche are two. */
const HOLES = new Set(['opening', 'aperture', 'rough', 'reveal'].map(stemOf));
const GLAZED = new Set(['window', 'skylight', 'porthole', 'sash', 'light'].map(stemOf));

/** What is made for a thing to go into. */
const ROOMS = new Set(
  'opening aperture cavity niche hole recess slot pocket housing bay alcove cutout cut-out cradle tray doorway hatchway'
    .split(' ')
    .map(stemOf),
);

/** Pairs and places that never merge, whatever else two names share. */
const OPPOSED = new Set(
  `upper lower top bottom port starboard left right front back rear fore aft forward inner outer inside outside
  north south east west first second third fourth fifth last next middle centre center near far near-side offside
  high low tall short long big small large little wide narrow thick thin main spare old hot cold fresh grey gray black
  positive negative male female driver passenger nearside kerb street garden upstairs downstairs up down hull deck
  bow stern`
    .split(/\s+/)
    .map(stemOf),
);

/** Texts whose words are kept: a name, a sentence or a task is taken apart for one question after another. */
const MOST_TEXTS = 4000;

/** Names written as one word or as two. */
const COMPOUND =
  /^(hand|toe|guard|grab|curtain|stair|work|bench|table|counter|desk|bunk|door|window|bed|floor|skirting|barge|base|gate|fence|corner|newel|cross|book|deck|centre|center)(rails?|tops?|frames?|boards?|sills?|cills?|posts?|beams?|shelf|shelves|lines?)$/;

function apart(word: string): readonly string[] {
  const [, front, back] = (word.length > 6 && COMPOUND.exec(word)) || [];
  return front && back ? [front, back] : [word];
}

/** Splits words: letters, digits and marks inside them; a possessive's `'s` goes. */
export const wordsOf: (text: string) => readonly string[] = remembered(MOST_TEXTS, (text) =>
  (text.toLowerCase().match(/[\p{L}\p{N}]+(?:['’.][\p{L}\p{N}]+)*/gu) ?? [])
    .map((word) => word.replace(/['’](?:s|re|ll|d|ve|m)$/, ''))
    .filter((word) => word !== ''),
);

/** Stems that make a name's identity, sorted, each once. A name of nothing but filler keeps its words. */
export function nameStems(name: string): readonly string[] {
  return shapeOf(name).stems;
}

/** One string per identity: "top of the bench" and "the bench top" have the same. */
export function nameKey(name: string): string {
  return keysOf(name).key;
}

/** The same for a window and its opening: the key without words for an opening. */
export function plainKey(name: string): string {
  return keysOf(name).plain;
}

const keysOf = remembered(20_000, (name) => {
  const { stems } = shapeOf(name);
  return { key: stems.join(' '), plain: withoutHoles(stems).join(' ') };
});

export interface NameShape {
  /** Stem of the thing itself. */
  readonly head: string;
  /** Every telling stem with the head, sorted. */
  readonly stems: readonly string[];
}

/** Takes a name apart. */
export const shapeOf: (name: string) => NameShape = remembered(20_000, (name) => takeApart(name));

/** "Brackets, as bent" and "brackets as they should be" are the brackets: how a thing is at the time tells no two apart. */
const AS_IT_IS = /(?<=\S),?\s+as\s+.*$/u;

function takeApart(said: string): NameShape {
  const name = said.replace(AS_IT_IS, '');
  const stems = [...new Set(tellingStems(name))].sort();
  const front = name.trim().replace(/^(?:the|a|an|my|our|your)\s+/i, '');
  const cut = HEAD_ENDS.exec(front);
  const noun = tellingStems(cut && cut.index > 0 ? front.slice(0, cut.index) : front);
  const fallback = noun.length > 0 ? noun : stems;
  return { head: fallback[fallback.length - 1] ?? '', stems };
}

function tellingStems(text: string): readonly string[] {
  const words = wordsOf(text).flatMap(apart);
  const telling = words.filter((word) => !FILLER.has(word));
  return (telling.length > 0 ? telling : words).map(stemOf);
}

/** How two names stand to each other. */
export type Kinship =
  /** The same words. */
  | 'same'
  /** The first is a shorter way to say the second. */
  | 'shorter'
  /** The first says more, and nothing that sets it apart. */
  | 'longer'
  /** The first is a part or a sort of the second: "west window panes" of "window panes". */
  | 'sort'
  /** The same thing with different words that tell: "acrylic bath", "cast iron bath". */
  | 'rival'
  | 'apart';

const WAY = /(?:door|hatch|gate)way\b/i;
/** The opening of a door is the doorway, where one of two names says so. */
const asWay = (name: string) => name.replace(/\b(door|hatch|gate)[ -](?:openings?|apertures?)\b/gi, '$1way');

/** The name that a way in goes by as well: "front doorway" and "front door opening"; undefined of other names. */
export function otherWay(name: string): string | undefined {
  const other = WAY.test(name) ? name.replace(/(door|hatch|gate)way\b/i, '$1 opening') : asWay(name);
  return other === name ? undefined : other;
}

/** How the said name stands to the known one. */
export function kinship(said: string, known: string): Kinship {
  const [a, b] =
    WAY.test(said) || WAY.test(known)
      ? [shapeOf(asWay(said)), shapeOf(asWay(known))]
      : [shapeOf(said), shapeOf(known)];
  const sameHead = a.head === b.head || isHoleOf(a, b);
  const holes = a.head !== b.head && sameHead;
  const [left, right] = holes ? [withoutHoles(a.stems), withoutHoles(b.stems)] : [a.stems, b.stems];
  const [moreA, moreB] = [without(left, right), without(right, left)];
  if (moreA.length === 0 && moreB.length === 0) return 'same';
  if (!sameHead) return 'apart';
  if (moreA.length === 0) return 'shorter';
  if (moreB.length === 0) return moreA.some(setsApart) ? 'sort' : 'longer';
  return 'rival';
}

/** The stems without words for an opening: a window and its opening are told by the others. */
export function withoutHoles(stems: readonly string[]): readonly string[] {
  return stems.filter((stem) => !HOLES.has(stem));
}

/** Whether one is a window and the other its opening. */
function isHoleOf(a: NameShape, b: NameShape): boolean {
  if (HOLES.has(a.head) === HOLES.has(b.head)) return false;
  const [hole, window] = HOLES.has(a.head) ? [a, b] : [b, a];
  return GLAZED.has(window.head) && hole.stems.includes(window.head);
}

/**
 * Whether the second is a part of the first by its name: "bench" and "bench legs", but not "bench" and "long bench", nor a
 * window and its opening.
 */
export function isOwnerOf(whole: string, part: string): boolean {
  const [a, b] = [shapeOf(whole), shapeOf(part)];
  const isMore = b.stems.length > a.stems.length && a.stems.every((stem) => b.stems.includes(stem));
  return isMore && a.head !== b.head && !isHoleOf(a, b);
}

/** Whether one is what the other goes into: the fridge cavity and the fridge, but not a window and its opening. */
export function isRoomFor(one: string, other: string): boolean {
  const [a, b] = [shapeOf(one), shapeOf(other)];
  if (ROOMS.has(a.head) === ROOMS.has(b.head) || isHoleOf(a, b)) return false;
  const [room, thing] = ROOMS.has(a.head) ? [a, b] : [b, a];
  return room.stems.includes(thing.head);
}

const without = (from: readonly string[], taken: readonly string[]) =>
  from.filter((stem) => !taken.includes(stem));

/** Words after which two things are two: sides, ranks, numbers. */
export function setsApart(stem: string): boolean {
  return OPPOSED.has(stem) || /^\d/.test(stem) || /^[a-z]$/.test(stem);
}
