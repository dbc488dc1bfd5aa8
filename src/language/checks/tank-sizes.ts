/** Reads what a tank of known sizes has to hold: "the tank has to hold 90 litres, it's 600 by 400 by 380 inside". */
import type { Line } from '../kept/scene.ts';
import { singular } from '../lexicon/trade-nouns.ts';
import type { Attribute, CheckNote, FigureNote, SpokenInput } from '../notes.ts';
import { wordSet } from '../word-table.ts';
import { type Face, facesOf, withoutFace } from './faces.ts';
import { figuresNear, reading } from './figure-names.ts';
import { metres } from './metres.ts';
import { type CheckScene, checkNote, figuresOf, input, written } from './spoken-check.ts';

const TANKS = wordSet('tank cistern sump trough locker box bin reservoir bladder butt bath sink bilge');
const HOLDS =
  / (?:(?:has|have|needs?|wants?|got|ought|supposed) to (?:hold|take|carry|give|store)|must (?:hold|take|carry)|should (?:hold|take|carry)|i (?:need|want)|we (?:need|want)|holds at least|no less than|at least|(?:ought|supposed) to (?:give|do|make|yield)|should (?:give|do|make|yield)|good for|room for) /;
const USABLE = / (?:usable|useable|can be used|get at|only fill|fill it to|full) /;
/** More than so many times what the sizes give is wanted of no tank: a unit is another than it seems. */
const MOST_TIMES = 10;
const ROOM = /\b(?:litres?|liters?|gallons?)\b/i;

const SIDES = ['length', 'width', 'height'] as const;

/** What one sentence wants a tank to hold. */
export function tankWantedIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const wanted = figuresOf(scene, line, 'volume').find(({ quote }) => ROOM.test(quote));
  if (!wanted) return [];
  if (line.asks || !HOLDS.test(line.words) || / (?:if|unless|n't|not|never) /.test(line.words)) return [];
  const told = figuresNear(scene, line, 'length').filter(({ item }) => isTank(withoutFace(item)));
  const item = told[0] && withoutFace(told[0].item);
  const sizes = told.filter((one) => withoutFace(one.item) === item);
  const faces = facesOf(scene.text, sizes);
  const toldInside = sizes.filter((one) => faces.get(one) === 'inside');
  const inside =
    toldInside.length >= SIDES.length ? toldInside : sizes.filter((one) => faces.get(one) !== 'outside');
  const inputs = sidesOf(scene, inside, faces.size > 0) ?? insideAsked(sizes, faces);
  if (!inputs || !isLikely(inside.length > 0 ? inside : sizes, wanted)) return [];
  const share = usableShare(scene, line);
  const rest = [...(share ? [input('usable share', written(share))] : []), input('wanted', written(wanted))];
  return [checkNote(scene, line, { check: 'tank volume', inputs: [...inputs, ...rest] })];
}

/** "Only ninety percent of it's usable". */
export const usableShare = (scene: CheckScene, line: Line): FigureNote | undefined =>
  figuresOf(scene, line, 'ratio').find(
    ({ unit, value }) => unit === '%' && value >= 20 && value < 100 && USABLE.test(line.words),
  );

const LITRES: Readonly<Record<string, number>> = { L: 1, m3: 1000, gal: 3.785411784, 'gal UK': 4.54609 };

/** "48 by 27 by 12" of a tank for 60 gallons is no size in millimetres, whatever the house measures in. */
function isLikely(sizes: readonly FigureNote[], wanted: FigureNote): boolean {
  const litres = sizes.slice(0, 3).reduce((product, size) => product * metres(size), 1000);
  return wanted.value * (LITRES[wanted.unit] ?? 1) <= litres * MOST_TIMES;
}

export const isTank = (item: string): boolean =>
  TANKS.has(singular(item.toLowerCase().split(' ').at(-1) ?? ''));

/** Three inside sizes: each by its name, or all three told as sizes; as they were said where both faces were told. */
function sidesOf(
  scene: CheckScene,
  sizes: readonly FigureNote[],
  isFaced: boolean,
): readonly SpokenInput[] | undefined {
  const plain = sizes.filter(({ attribute }) => attribute === 'size');
  if (plain.length === 3)
    return SIDES.map((name, index) => {
      const size = plain[index] as FigureNote;
      return input(name, written(size), size.item);
    });
  const of = (...attributes: readonly Attribute[]) =>
    sizes.find(({ attribute }) => attributes.includes(attribute));
  const [length, width, height] = [of('length'), of('width'), of('height', 'depth')];
  if (!length || !width || !height) return undefined;
  const read = (name: string, size: FigureNote) =>
    isFaced ? input(name, written(size), size.item) : reading(scene, name, size);
  return [read('length', length), read('width', width), read('height', height)];
}

/** Told of the outside alone: the walls are not known, and the check asks for the sizes inside. */
function insideAsked(
  sizes: readonly FigureNote[],
  faces: ReadonlyMap<FigureNote, Face>,
): readonly SpokenInput[] | undefined {
  const outside = sizes.filter((one) => faces.get(one) === 'outside');
  const [first] = outside;
  if (!first || outside.length < 3) return undefined;
  return SIDES.map((name) => input(name, `${withoutFace(first.item)} inside ${name}`));
}
