/**
 * Reads what has to go through an opening from now on: "this has to go through the side hatch", "we've got to get the
 * fridge in through the slider". Wires and pipes that run through one, people, and what went through already are left.
 */
import type { Phrase } from '../items/noun-phrases.ts';
import { wordAt } from '../items/parse.ts';
import { figuresIn, type Line, phrasesOf, type RecordScene, wordAtOffset } from '../kept/scene.ts';
import { kindsOf, type NounKind, singular } from '../lexicon/trade-nouns.ts';
import type { Attribute, CheckNote, FigureNote, SpokenInput } from '../notes.ts';
import { wordSet } from '../word-table.ts';
import { carriedBy, isCarried, STAYS, UPRIGHT } from './carried-things.ts';
import { ADVERBS, BRING, GO, MUST, NO_DEMAND } from './demands.ts';
import { facesOf } from './faces.ts';
import { fittingsOf } from './fittings.ts';
import {
  attributesOf,
  type CheckScene,
  checkNote,
  input,
  nameOf,
  phraseFrom,
  thingBefore,
  wordOfFigure,
  written,
} from './spoken-check.ts';

const PASSAGE = new RegExp(` ${MUST} ${ADVERBS}(?:${GO}|${BRING}) `);
/** An errand: "get the mattress out through the rear doors". */
const ERRAND = new RegExp(`^ (?:and |then |so |next |first |right |okay |ok |tomorrow |, )*(?:${BRING}) `);

/** Before the opening's name: "at the door" and "in the hatch" tell where, and no way. */
const WAY_IN = /^(?:through|thru|down|up|past|via)$/;

/** Openings that things are carried through, beside the nouns of the kind. Louvres, letterboxes and niches are none. */
const MORE_OPENINGS = wordSet('slider tailgate stairwell hallway hall lift elevator barn-door opening gap');
const NO_WAY = wordSet(
  'niche bay recess sash reveal cubby fireplace inglenook vent louvre grille letterbox catflap ventilator casement alcove frame',
);
const RUNS: ReadonlySet<NounKind> = new Set(['cable', 'pipe', 'fastener']);

/** "The only way in for the bed is the companionway": a thing and its way, with no verb of carrying. */
const ONLY_WAY =
  / only way (?:in|out|through|down|up|on|aboard|inside)(?: and out)? for (?:\S+ ){1,5}(?:is|'s|'ll be|will be) (?:through |down |by |up |via |out of )?/;

/** A verb of a demand or an errand, or the "only way". */
const PASSING_WORD = new RegExp(
  `^(?:way|${BRING}|(?:go|come|travel|get)|(?:carried|brought|got|taken|passed|moved|lifted|craned|slid))$`,
);
export const namesPassing = (word: string): boolean => PASSING_WORD.test(word);

/** The passages that one sentence asks for. */
export function passagesIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  return onlyWayIn(scene, line) ?? demandedIn(scene, line);
}

function onlyWayIn(scene: CheckScene, line: Line): readonly CheckNote[] | undefined {
  const found = line.asks ? null : ONLY_WAY.exec(line.words);
  if (!found || / (?:if|unless|was) /.test(line.words)) return undefined;
  const way = wordAtOffset(line, found.index + found[0].length);
  const named = phrasesOf(scene, line);
  const opening = named.find(({ first }) => first >= way);
  const thing = named.find((one) => one.last < way && one.first > line.first && isCarried(one));
  if (!opening || !thing || !isOpening(opening)) return undefined;
  return passages(scene, line, thing, [opening]);
}

function demandedIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const found = line.asks ? null : (PASSAGE.exec(line.words) ?? ERRAND.exec(line.words));
  if (!found || NO_DEMAND.test(line.words.slice(0, found.index + 1))) return [];
  const must = wordAtOffset(line, found.index + 1);
  const verb = wordAtOffset(line, found.index + found[0].trimEnd().length - 1);
  const openings = openingsAfter(scene, line, verb);
  const [first] = openings;
  if (!first) {
    const before = openingMeant(scene, line, must, verb);
    const thing = before && carriedBy(scene, line, must, verb, before.until);
    return before && thing ? passages(scene, line, thing, [before.opening]) : [];
  }
  const carried = carriedBy(scene, line, must, verb, first.first);
  return carried ? passages(scene, line, carried, openings) : [];
}

/** "Through that", "in through there": the opening that was named last. */
function openingMeant(scene: CheckScene, line: Line, must: number, verb: number) {
  for (let k = verb + 1; k < line.endWord - 1; k++) {
    if (!WAY_IN.test(wordAt(scene.parse, k))) continue;
    if (!/^(?:that|it|there|those|them|this|here)$/.test(wordAt(scene.parse, k + 1))) return undefined;
    // "Through that hatch" names its own.
    if ((phraseFrom(scene, k + 1)?.name.length ?? 0) > 0) return undefined;
    const opening = thingBefore(scene, line, must, isOpening);
    return opening && { opening, until: k };
  }
  return undefined;
}

/** The passages of what is carried, or of each thing that has its sizes, through all of some openings. */
function passages(
  scene: CheckScene,
  line: Line,
  carried: Phrase | 'all',
  openings: readonly Phrase[],
): readonly CheckNote[] {
  const sizes = openings.flatMap((opening, index) => {
    return sizesOf(scene, line, opening, openings[index + 1]?.first ?? line.endWord);
  });
  const note = (thing: readonly SpokenInput[], name?: string) => {
    const fittings = name === undefined ? [] : fittingsOf(scene, name);
    // A lid has them on its face; on a box nobody said where they are, and so they are counted on every side.
    const isFlat = name === undefined || FLAT.has(singular(name.split(' ').at(-1) ?? ''));
    const options = fittings.length > 0 && !isFlat ? { options: { 'fittings add to': 'all three' } } : {};
    const inputs = [...thing, ...sizes, ...fittings];
    return checkNote(scene, line, { check: 'panel through opening', inputs, ...options });
  };
  if (carried === 'all') {
    const ways = openings.map(nameOf).flatMap((name) => [name, `${name} opening`]);
    const things = sizedThings(scene, ways);
    return things.length > 0 ? things.map((name) => note(sidesOf(scene, name), name)) : [note([])];
  }
  if ([...carried.kinds].some((kind) => RUNS.has(kind))) return [];
  const name = sizedName(scene, line, nameOf(carried), openings.map(nameOf));
  return [note(sidesOf(scene, name), name)];
}

/** "The worktop is one sheet, 1850 by 620 by 28, and it has to come in": the thing that the sizes are told of. */
function sizedName(scene: CheckScene, line: Line, name: string, ways: readonly string[]): string {
  if (attributesOf(scene, name).size > 0) return name;
  const items = new Set(lengthsIn(scene, line).map(({ item }) => item));
  const sized = [...items].filter(
    (item) => !ways.includes(item) && lengthsIn(scene, line).filter((one) => one.item === item).length >= 2,
  );
  return sized.length === 1 ? (sized[0] as string) : name;
}

const lengthsIn = (scene: CheckScene, line: Line) =>
  figuresIn(scene, line).filter(({ dimension, limit }) => dimension === 'length' && !limit);

function openingsAfter(scene: RecordScene, line: Line, verb: number): readonly Phrase[] {
  const found: Phrase[] = [];
  for (let k = verb + 1; k < line.endWord; k++) {
    const phrase = phraseFrom(scene, k);
    if (!phrase) continue;
    if (isOpening(phrase) && isWay(scene, phrase.first - 1, found.length > 0)) found.push(phrase);
    k = Math.max(k, phrase.last);
  }
  return found;
}

function isWay({ parse }: RecordScene, at: number, isSecond: boolean): boolean {
  const word = wordAt(parse, at);
  if (word === 'of') return wordAt(parse, at - 1) === 'out';
  // "In by the side door" is a way; "the lamp by the door" is a place.
  if (word === 'by') return /^(?:in|out)$/.test(wordAt(parse, at - 1));
  return WAY_IN.test(word) || (isSecond && /^(?:and|then)$/.test(word));
}

function isOpening(phrase: Phrase): boolean {
  const head = singular(phrase.head);
  if (NO_WAY.has(head) || phrase.name.length === 0) return false;
  // "Forehatch", "sidedoor": what a name ends in.
  return phrase.kinds.has('opening') || MORE_OPENINGS.has(head) || /(?:hatch|door|doorway)$/.test(head);
}

const PANEL_INPUTS = ['panel length', 'panel width', 'thickness'] as const;

const FLAT = wordSet(
  'panel door sheet board lid hatch top worktop benchtop tabletop bulkhead plate shelf headboard mattress window pane glass ply partition',
);

/** The three sizes of a thing by name: those that were said of it, else those that such a thing is given by. */
export function sidesOf(scene: CheckScene, name: string): readonly SpokenInput[] {
  const said = attributesOf(scene, name);
  const sizes = sizesSaid(scene, name);
  if (sizes.length === 3)
    return PANEL_INPUTS.map((one, index) => input(one, written(sizes[index] as FigureNote), name));
  const head = singular(name.split(' ').at(-1) ?? '');
  const has = (...attributes: readonly Attribute[]) => attributes.every((one) => said.has(one));
  const flat: readonly Attribute[] = [
    has('height') && !has('length') ? 'height' : 'length',
    'width',
    'thickness',
  ];
  const upright: readonly Attribute[] = ['height', 'width', 'depth'];
  const lying: readonly Attribute[] = [
    'length',
    'width',
    has('depth') && !has('height') ? 'depth' : 'height',
  ];
  const sides =
    has('thickness') || FLAT.has(head)
      ? flat
      : has('length')
        ? lying
        : has('depth') || UPRIGHT.has(head)
          ? upright
          : lying;
  // "1850 by 620 by 28 thick": a side that was told as a size, in the place of one that was not told by name.
  const left = [...sizes];
  return PANEL_INPUTS.map((one, index) => {
    const side = sides[index] as Attribute;
    const size = said.has(side) ? undefined : left.shift();
    return size ? input(one, written(size), name) : input(one, `${name} ${side}`);
  });
}

/** "1220 by 700 by 18": three figures of a thing that say of none which size it is; of a tank those of its outside. */
function sizesSaid({ ofItem, wordOf, text }: CheckScene, name: string): readonly FigureNote[] {
  const sizes = (ofItem.get(name) ?? []).filter(
    (one): one is FigureNote =>
      one.attribute === 'size' &&
      'dimension' in one &&
      one.dimension === 'length' &&
      wordOf.has(one as FigureNote),
  );
  const faces = facesOf(text, sizes);
  const isOutside = (one: FigureNote) => faces.get(one) === 'outside';
  return sizes.some(isOutside) ? sizes.filter(isOutside) : sizes;
}

/** Things of this memo that have two sizes or more; `ways` are the names of the openings, which are left out. */
function sizedThings(scene: CheckScene, ways: readonly string[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const { item, dimension, limit } of scene.figures) {
    const name = item.toLowerCase();
    if (dimension === 'length' && !limit && name !== 'unnamed' && !ways.includes(name) && mayBeCarried(name))
      counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return [...counts].filter(([, count]) => count > 1).map(([name]) => name);
}

/** A garden, a van or a hull that has its sizes is not carried in with the rest. */
function mayBeCarried(name: string): boolean {
  const head = singular(name.split(' ').at(-1) ?? '');
  const kinds = kindsOf(name.split(' '));
  return UPRIGHT.has(head) || (!STAYS.has(head) && ![...kinds].some((kind) => STAY_KINDS.has(kind)));
}
const STAY_KINDS: ReadonlySet<NounKind> = new Set(['vessel', 'space', 'ground', 'region', 'person', 'air']);

/** Clear sizes of an opening: said beside it, told of it as a pair, else by name, so that the check waits for them. */
function sizesOf(scene: CheckScene, line: Line, opening: Phrase, until: number): readonly SpokenInput[] {
  const name = nameOf(opening);
  const said = figuresIn(scene, line).filter((figure) => {
    const at = wordOfFigure(scene, figure);
    return figure.dimension === 'length' && figure.attribute === 'size' && at >= opening.first && at < until;
  });
  // Three sizes are those of a thing: "through the hatch and it's 940 by 540 by 480".
  const own = said.length > 2 ? said.filter(({ item }) => isOpeningNamed(item, name)) : said;
  const [width, height] = (own.length > 0 ? own : pairTold(scene, line, name)).map(written);
  return [
    width === undefined ? input('opening width', `${name} width`) : input('opening width', width, name),
    height === undefined ? input('opening height', `${name} height`) : input('opening height', height, name),
  ];
}

const isOpeningNamed = (item: string, name: string): boolean =>
  item.toLowerCase() === name || item.toLowerCase() === `${name} opening`;

/** So many sentences on either side may tell how large an opening is. */
const PAIR_NEAR = 2;

/** "The hatch is 710 by 540": two sizes of the opening, of which nobody said which is which. */
function pairTold(scene: CheckScene, line: Line, name: string): readonly FigureNote[] {
  if (attributesOf(scene, name).has('width') || attributesOf(scene, name).has('height')) return [];
  const near = scene.lines.slice(Math.max(0, line.index - PAIR_NEAR), line.index + PAIR_NEAR + 1);
  const sizes = near
    .flatMap((one) => figuresIn(scene, one))
    .filter(({ item, attribute, dimension, value }) => {
      return isOpeningNamed(item, name) && attribute === 'size' && dimension === 'length' && value > 0;
    });
  return sizes.length === 2 ? sizes : [];
}
