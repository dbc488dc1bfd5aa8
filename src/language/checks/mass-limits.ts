/**
 * Reads the most that several things may weigh together: "all of it has to stay under 400 kilos", "the payload is 620",
 * "the shelves in the kiln can't come to more than 40 kilos", "no more than 75 kilos on the roof". What one thing may
 * weigh is a limit on it, and no sum.
 */
import type { Phrase } from '../items/noun-phrases.ts';
import { wordAt } from '../items/parse.ts';
import { isPlace, wordOfPlace } from '../kept/places-of-weights.ts';
import { type Line, phrasesOf } from '../kept/scene.ts';
import { type NounKind, singular } from '../lexicon/trade-nouns.ts';
import type { CheckNote, FigureNote } from '../notes.ts';
import { wordSet } from '../word-table.ts';
import {
  type CheckScene,
  checkNote,
  figuresOf,
  input,
  isThing,
  nameOf,
  wordOfFigure,
  wordsOf,
  written,
} from './spoken-check.ts';

const EVERYTHING =
  / (?:it all|all of (?:it|this|that|them)|everything|every bit of it|the (?:whole )?lot|the whole thing|all the (?:kit|furniture|gear|stuff)) /;
/** Several are meant together, and not each of them. */
const TOGETHER =
  / (?:all (?:in|up|told|together)|together|altogether|in total|in all|combined|between them|total weight|combined weight|fully loaded|loaded up|the lot of them|all of them|the pair of them|both of them) /;
const EACH = / (?:each|apiece|every|a piece|per) /;
/** What is named is everything there is. */
const WHOLES = wordSet(
  'build conversion fit-out fitout fit van boat truck lorry bus camper caravan trailer rig hull house cabin barge dinghy yacht vehicle weight thing lot payload wagon',
);
/** Names of a most that is one by itself. */
const LIMITS =
  / (?:payload|weight limit|weight allowance|weight budget|gross weight|gross vehicle weight|gvw|gvm|max weight|maximum weight|plated weight|mam|mtplm) (?:is|'s|of|was|left is|works out at|comes to|:|,)? ?#/;
/** What is left to use of it, and what all of it may come to. */
const TO_USE =
  / (?:got|have|'ve|only|leaves (?:me|us)|gives (?:me|us)) # (?:left )?(?:to (?:play with|use up)|for (?:everything|(?:the|this) whole (?:lot|build|conversion|fit-out|thing|job)))(?= )/;
/** What is left of it, or was weighed, is no limit. */
const NO_LIMIT = / (?:already|so far|weighed|weighbridge|used|leaves|left over|if|would|might|could have) /;

/** Goods without a name of their own: "all the kit in the locker", "whatever goes in the overhang", "what's on it". */
const GOODS =
  / (?:everything|anything|whatever|what|all that|all the \S+|(?:kit|gear|stuff|load|lot|things|cargo|luggage|contents|tools|stores|furniture)) (?:that )?(?:is|'s|goes|go|sits|lives|gets|ends|we put|i put|we carry|i carry|stowed|stored|kept)? ?(?:up |down |out |back )?$/;
/** "The rack and what's on it": the thing and what it holds. */
const WITH_CONTENTS =
  / (?:and|plus|with) (?:(?:everything|anything|whatever|what|all|all that)(?: that)?(?: is| 's| goes)? (?:in|on|inside) (?:it|there|them)|(?:its |all its |the )?(?:contents|load))[ ,]/;

/** "That's everything up there": all that is in what was named before. */
const THERE =
  / (?:everything|all that|the lot) (?:that )?(?:'s |is |goes )?(?:up |down |out )?(?:there|(?:in|on|inside) (?:it|them)) /;
const POINTS = /^(?:it|she|this|that|they|he)$/;
/** Kinds of thing that others are in or on. */
const HOLDERS: readonly NounKind[] = [
  'container',
  'space',
  'vessel',
  'region',
  'ground',
  'assembly',
  'sheet',
];

/** The limit on the weight of several things that one sentence gives. */
export function massLimitIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const figures = line.asks ? [] : figuresOf(scene, line, 'mass');
  if (figures.length === 0 || NO_LIMIT.test(line.words)) return [];
  // "Plated at two tonnes so the whole lot can't come to more than 1800": what is said of everything goes first.
  for (const figure of [...figures].sort((a, b) => ofAll(b) - ofAll(a))) {
    const parts = partsHeld(scene, line, figure);
    if (!parts) continue;
    // Where no part is named, the check takes everything that has a weight, and what gets one later.
    const inputs = [...parts.map((part) => input('part', part)), input('limit', written(figure))];
    return [checkNote(scene, line, { check: 'running mass', inputs })];
  }
  return [];
}

const ofAll = ({ item }: FigureNote): number => (item === 'everything' ? 1 : 0);

/** "The joists can't take more than 250": what they may bear is a limit on them, and no sum of theirs. */
const BEARS =
  / (?:take|takes|bear|bears|carry|carries|support|supports|stand) (?:any )?(?:more than|over|#) /;

/** The parts that a limit holds, none for everything there is; undefined where it holds one thing, or is no limit. */
function partsHeld(scene: CheckScene, line: Line, figure: FigureNote): readonly string[] | undefined {
  if (isNamedLimit(scene, line, figure)) return listed(scene, line, figure) ?? [];
  if (figure.bound !== 'at-most' || EACH.test(line.words)) return undefined;
  return (
    withContents(scene, line) ??
    whereHeld(scene, line, figure) ??
    listed(scene, line, figure) ??
    (BEARS.test(line.words) ? undefined : ofOneKind(scene, line, figure))
  );
}

/** "The payload is 620", "I've got 250 kilos to play with". */
function isNamedLimit(scene: CheckScene, line: Line, figure: FigureNote): boolean {
  if (figure.bound !== 'exact') return false;
  const at = line.starts[wordOfFigure(scene, figure) - line.first];
  return [LIMITS, TO_USE].some((way) => {
    const found = way.exec(line.words);
    return found !== null && at === found.index + found[0].indexOf('#');
  });
}

const every = (name: string, place?: string): string =>
  `every ${name === '' ? '' : `${name} `}weight${place === undefined ? '' : ` in ${place}`}`;

/** "The roof rack and what's on it can't be more than 75". */
function withContents(scene: CheckScene, line: Line): readonly string[] | undefined {
  const found = WITH_CONTENTS.exec(line.words);
  if (!found) return undefined;
  const at =
    line.first +
    line.words
      .slice(0, found.index + 1)
      .trim()
      .split(' ').length;
  const holder = phrasesOf(scene, line).findLast((one) => one.last < at && isPlace(one));
  return holder && [`${nameOf(holder)} weight`, every('', nameOf(holder))];
}

/** "Everything on the roof", "the shelves in the kiln", "no more than 75 kilos on the roof". */
function whereHeld(scene: CheckScene, line: Line, figure: FigureNote): readonly string[] | undefined {
  const phrases = phrasesOf(scene, line);
  const at = wordOfFigure(scene, figure);
  for (const place of phrases) {
    const word = wordOfPlace(scene, place);
    if (word === undefined) continue;
    if (GOODS.test(line.words.slice(0, line.starts[word - line.first]))) return [every('', nameOf(place))];
    // What stands right before "in the kiln" is in it.
    const things = phrases.findLast((one) => one.last < word && one.name.length > 0);
    const isBeside = things && /^(?:|up|down|out)$/.test(wordsOf(scene, things.last + 1, word));
    const isOf = things?.first === at + 2 && wordAt(scene.parse, at + 1) === 'of';
    if (isBeside && (isOf || (things.plural && isThing(things))))
      return [every(nameOf(things), nameOf(place))];
    if (word > at && /^(?:|up|down|out)$/.test(wordsOf(scene, at + 1, word)))
      return [every('', nameOf(place))];
  }
  return undefined;
}

/** "The batteries, the charger and the inverter between them": two things or more in one list. */
function listed(scene: CheckScene, line: Line, figure: FigureNote): readonly string[] | undefined {
  const at = wordOfFigure(scene, figure);
  const things = phrasesOf(scene, line).filter((one) => isThing(one) && one.last < at);
  let run: Phrase[] = [];
  for (const one of things) {
    const last = run.at(-1);
    const between = last ? wordsOf(scene, last.last + 1, one.first) : '';
    if (last && !/^(?:,|and|plus|with|, and|, plus|, with|and both|, then)$/.test(between)) {
      if (run.length > 1) break;
      run = [];
    }
    run.push(one);
  }
  const [first] = run;
  if (!first || run.length < 2) return undefined;
  const list = wordsOf(scene, first.first - 1, run.at(-1)?.last ?? at);
  const isMeant = TOGETHER.test(line.words) || /^between | (?:plus|with) /.test(list);
  return isMeant ? run.map((one) => every(nameOf(one))) : undefined;
}

/** "The bunk tops all together", "the galley all in", "the whole lot". */
function ofOneKind(scene: CheckScene, line: Line, figure: FigureNote): readonly string[] | undefined {
  const at = wordOfFigure(scene, figure);
  const subject = phrasesOf(scene, line).findLast(
    (one) => one.last < at && (one.name.length > 0 || POINTS.test(one.pronoun ?? '')),
  );
  const isWhole = EVERYTHING.test(line.words);
  const isAll = isWhole || TOGETHER.test(line.words) || / the whole /.test(line.words);
  if (!isAll) return undefined;
  // "All up she's not to go over fifteen hundred": the whole of it.
  if (!subject || subject.pronoun !== undefined || WHOLES.has(singular(subject.head))) return [];
  if (isWhole && !THERE.test(line.words)) return [];
  if (HOLDERS.some((kind) => subject.kinds.has(kind)) && !subject.plural) return [every('', nameOf(subject))];
  return isThing(subject) || subject.plural ? [every(nameOf(subject))] : undefined;
}
