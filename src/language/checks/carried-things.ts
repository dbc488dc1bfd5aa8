/** Which thing a demand is of: "this has to go in", "I want the tank to fit", "we have to get the fridge in". */
import type { Phrase } from '../items/noun-phrases.ts';
import { clauseStart, type Line, phrasesOf } from '../kept/scene.ts';
import { singular } from '../lexicon/trade-nouns.ts';
import { wordSet } from '../word-table.ts';
import { type CheckScene, isThing, phraseFrom, thingBefore, wordsOf } from './spoken-check.ts';

/** Everything there is. */
const WHOLE =
  /(?:^| )(?:it all|all of (?:it|this|that|them)|everything|every bit of it|the (?:whole )?lot|the whole thing|all (?:this|that)(?: lot)?|they all|all the (?:panels|parts|pieces|sheets|furniture|boards))$/;
const POINTS = /(?:^| )(?:it|this|that|they|these|those|which|them)$/;

/** Things that have their sizes by height, width and depth; what holds goods goes by length, width and height. */
export const UPRIGHT = wordSet(
  'fridge freezer cooker stove oven hob wardrobe cabinet cupboard drawer unit washer dryer dishwasher microwave bookcase larder carcass boiler heater radiator toilet locker',
);
/** What is carried: named between verb and the word `until`, else before the verb; "all" for everything there is. */
export function carriedBy(
  scene: CheckScene,
  line: Line,
  must: number,
  verb: number,
  until: number,
): Phrase | 'all' | undefined {
  const between = wordsOf(scene, verb + 1, until).replace(
    /(?: (?:in|out|back|down|up|through|into|of|on|and))+$/,
    '',
  );
  const object = phraseFrom(scene, verb + 1);
  if (object && object.last < until && isCarried(object)) return object;
  if (WHOLE.test(between)) return 'all';
  if (POINTS.test(between)) return thingBefore(scene, line, must, isCarried);
  // "I want the tank to fit through the hatch": the thing stands within; an errand has none before it.
  const within = /^(?:want|wants|need|needs) (?!to )(.+?) to /.exec(`${wordsOf(scene, must, verb)} `)?.[1];
  const from = within === undefined ? clauseStart(scene, line, must) : must + 1;
  const subject = within ?? wordsOf(scene, from, must);
  if (WHOLE.test(subject)) return 'all';
  if (POINTS.test(subject)) return thingBefore(scene, line, must, isCarried);
  if (within === undefined && subject === '') return overInsertion(scene, line, must);
  const named = within === undefined ? thingBefore(scene, line, must, () => true) : phraseFrom(scene, from);
  return named && named.first >= from && isCarried(named) ? named : undefined;
}

/** Sizes that stand between a thing and what is said of it: "that sheet, 2440 by 1220 by 18, has to …". */
const INSERTED =
  /^(?: (?:,|#|by|x|and|a|half|which|that|is|'s|are|at|about|it|also|so|then|long|wide|thick|high|deep|tall|across|inch|inches|feet|foot|mil|millimetres?|metres?))+$/;

/** The thing before sizes that were put in between; "it's 1200 long and has to …" points at one before. */
function overInsertion(scene: CheckScene, line: Line, must: number): Phrase | undefined {
  const before = phrasesOf(scene, line).findLast(
    (phrase) => phrase.last < must && (isCarried(phrase) || phrase.pronoun !== undefined),
  );
  if (!before || !INSERTED.test(` ${wordsOf(scene, before.last + 1, must)}`)) return undefined;
  return before.pronoun === undefined ? before : thingBefore(scene, line, before.first, isCarried);
}

/** What stays where it is. */
export const STAYS = wordSet('floor ceiling wall roof deck ground sole slab hull house');

/** A wardrobe is a space to some and a box to carry here. */
export const isCarried = (phrase: Phrase): boolean => {
  const head = singular(phrase.head);
  return (isThing(phrase) && !STAYS.has(head)) || (phrase.pronoun === undefined && UPRIGHT.has(head));
};
