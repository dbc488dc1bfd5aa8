/**
 * Reads a layer that is not laid yet and makes heights over the floor stale: "the floor still has to go down, that's
 * 22 mil". A layer that is down, and one on a wall, takes nothing off a height.
 */
import type { Phrase } from '../items/noun-phrases.ts';
import { type Line, phrasesOf, wordAtOffset } from '../kept/scene.ts';
import { singular } from '../lexicon/trade-nouns.ts';
import type { CheckNote, FigureNote } from '../notes.ts';
import { wordSet } from '../word-table.ts';
import { type CheckScene, checkNote, figuresOf, input, nameOf, written } from './spoken-check.ts';

/** What is laid on a floor. */
const LAYERS = wordSet(
  'floor flooring sole carpet screed tile tiling vinyl lino linoleum laminate underlay decking parquet matting subfloor board floorboard plank insulation soleboard overlay ply plywood cork rubber',
);

/** Ply that has to go in through a door, or in the cupboard, is no layer. */
const IN = 'in(?! (?:through|by|via|between|under|behind|#|a|that|this|there|the (?!floor)))';
const LAID = 'be (?:laid|put down|fitted|glued down|screwed down|bonded down|poured)';
const DOWN = `(?:go|come|be put|going|coming) (?:\\S+ )?(?:down|${IN}|on top|on the floor|over (?:it|that|this|the top)|later|after|yet|underfoot|under(?:neath)? (?:it|that|everything))`;
const TO_COME = new RegExp(
  ` (?:(?:has|have|'s got|'ve got|needs|need|yet|still|'s|is|are|'re) (?:still |yet )?to (?:${LAID}|${DOWN})|(?:will|'ll) (?:${LAID}|${DOWN})|(?:is|are|'s|'re) (?:still )?${DOWN}|goes (?:down|on top|over (?:it|that|the top)) (?:later|after|last|next|once|when)|to (?:go|come) (?:down|${IN}|on top|(?:on|over) the (?:floor|sole|deck|slab))(?: yet)?|to come(?= [.,;!])) (?!to )`,
);
/** "We haven't laid the floor yet", "once the floor's in": the layer stands within. */
const NOT_YET =
  / (?:(?:have|has)(?: n't|n't| not) (?:laid|fitted|fit|poured|put down|put in) (?:the |that |my |any )?(?:\S+ ){1,3}?yet|(?:once|when|after) (?:the |that |my )?(?:\S+ ){1,3}?(?:'s|is|are|goes|go) (?:in|down|laid|on)) /;
/** Without such a word no layer is named. */
export const namesLayer = (word: string): boolean => LAYERS.has(singular(word));
/** Heights over what the layer lies on. */
const OVER_FLOOR = /\b(?:floor|sole|deck|slab|ground|subfloor|boards)\b/i;
const MOST_HEIGHTS = 6;

/** The layer to come that one sentence tells of: a check for each height over the floor that the memo tells. */
export function layerIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const layer = line.asks ? undefined : layerNamed(scene, line);
  const layers = (layer ? thicknessesOf(scene, line, layer) : []).map((one) => input('layers', one));
  if (layers.length === 0) return [];
  const check = 'height over finished floor';
  const heights = new Set(
    scene.figures.filter(isOverFloor).map(({ item, attribute }) => `${item} ${attribute}`),
  );
  if (heights.size === 0) return [checkNote(scene, line, { check, inputs: layers })];
  return [...heights]
    .slice(0, MOST_HEIGHTS)
    .map((height) => checkNote(scene, line, { check, inputs: [input('height', height), ...layers] }));
}

/** The layer that is said to be still to come. */
function layerNamed(scene: CheckScene, line: Line): Phrase | undefined {
  const within = NOT_YET.exec(line.words);
  if (within) {
    const [first, last] = [within.index + 1, within.index + within[0].trimEnd().length - 1].map((offset) =>
      wordAtOffset(line, offset),
    ) as [number, number];
    return phrasesOf(scene, line).find((one) => one.first >= first && one.last <= last && isLayer(one));
  }
  const found = / (?:[a-z]*n't|not|if|unless) /.test(line.words) ? null : TO_COME.exec(line.words);
  if (!found) return undefined;
  const at = wordAtOffset(line, found.index + 1);
  return phrasesOf(scene, line).findLast((phrase) => phrase.last < at && isLayer(phrase));
}

const isLayer = (phrase: Phrase) => phrase.name.length > 0 && LAYERS.has(singular(phrase.head));

/** Beside the layer in its sentence or the next one, else by name; with those that are told along with it. */
function thicknessesOf(scene: CheckScene, line: Line, layer: Phrase): readonly string[] {
  const next = scene.lines[line.index + 1];
  const lengths = [line, ...(next ? [next] : [])].flatMap((one) => figuresOf(scene, one, 'length'));
  const first = lengths.findIndex(
    ({ item, attribute }) => attribute === 'thickness' || item === nameOf(layer),
  );
  const said = lengths[first];
  // The most that a build-up may come to is no layer.
  if (!said || said.bound === 'at-most') return [];
  const found = [said];
  // "Three quarter ply and an eighth of vinyl": one more on top of it.
  for (const one of lengths.slice(first + 1)) {
    const between = scene.text.slice((found.at(-1) as FigureNote).span.end, one.span.start);
    const isNext = /^[^.;:!?]{0,40}(?:\band\b|\bplus\b|\bthen\b|,)[^.;:!?]{0,12}$/.test(between);
    // "50 insulation, 65 screed and 15 of flags": a number that was not read is a layer that nobody knows.
    if (isNext && /\d/.test(between)) return [];
    if (!isNext || one.attribute !== 'thickness' || !LAYERS.has(singular(one.item.split(' ').at(-1) ?? '')))
      break;
    found.push(one);
  }
  // Of layers that go by one name each is its size; of a name that two have, nobody knows which is meant.
  const isOneName = new Set(found.map(({ item }) => item)).size < found.length;
  return found.map((one) =>
    one.item === 'unnamed' || one.attribute !== 'thickness' || isOneName
      ? written(one)
      : `${one.item} thickness`,
  );
}

function isOverFloor({ attribute, datum, condition, item, dimension }: FigureNote): boolean {
  if (dimension !== 'length' || !(attribute === 'height' || attribute === 'clearance')) return false;
  const over = `${datum ?? ''} ${condition ?? ''} ${item}`;
  // Over the finished floor nothing comes off.
  return OVER_FLOOR.test(over) && !/\bfinished\b/i.test(over) && item !== 'unnamed';
}
