/**
 * Reads what has to be tipped upright under a ceiling: "the wardrobe has to stand up under the ceiling", "we've got to tip
 * the cupboard upright under a 96 inch ceiling". A person who wants to stand up in there wants headroom, and no sum.
 */
import type { Phrase } from '../items/noun-phrases.ts';
import { isSpeaker } from '../items/parse.ts';
import { figuresIn, type Line, phrasesOf, wordAtOffset } from '../kept/scene.ts';
import { singular } from '../lexicon/trade-nouns.ts';
import type { CheckNote, SpokenInput } from '../notes.ts';
import { wordSet } from '../word-table.ts';
import { carriedBy, isCarried, UPRIGHT } from './carried-things.ts';
import { ADVERBS, MUST, NO_DEMAND } from './demands.ts';
import {
  attributesOf,
  type CheckScene,
  checkNote,
  input,
  nameOf,
  wordOfFigure,
  written,
} from './spoken-check.ts';

const RAISE =
  '(?:stand|stood|tip|tipped|tilt|tilted|swing|swung|lift|lifted|turn|turned|raise|raised|rear|reared|walk|walked|heave|heaved)';
/** "Stand up to the weather", "lift up out of the way", "stand up against the wall" raise nothing under a ceiling. */
const UP =
  '(?:upright|on end|vertical|up on end|up straight|up(?! (?:to|against|for|with|out|through|on|the|a|there|and down)))';
const RAISED = new RegExp(` ${MUST} ${ADVERBS}(?:be )?${RAISE} (?:\\S+ ){0,4}?${UP} `);

const RAISE_WORD = new RegExp(`^${RAISE}$`);
export const namesRaising = (word: string): boolean => RAISE_WORD.test(word);

/** What is overhead. */
const OVERHEAD = wordSet(
  'ceiling headroom roof beam headlining headliner deckhead lintel joist rafter overhead soffit purlin deckbeam',
);
const INSIDE = / (?:under|underneath|beneath|indoors|inside|in (?:there|here|the)|upright|on end) /;

/** What one sentence wants stood up. */
export function standingUpIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const found = line.asks ? null : RAISED.exec(line.words);
  if (!found || NO_DEMAND.test(line.words.slice(0, found.index + 1))) return [];
  const must = wordAtOffset(line, found.index + 1);
  const up = wordAtOffset(line, found.index + found[0].trimEnd().length - 1);
  const raised = raisedBy(scene, line, must, up);
  if (!raised) return [];
  const name = nameOf(raised);
  const overhead = overheadSize(scene, line);
  const sizes = attributesOf(scene, name);
  const isTold = overhead !== undefined || (sizes.has('height') && sizes.has('depth'));
  const head = singular(raised.head);
  // "The lid has to lift up" is about a hinge.
  if (HINGED.has(head)) return [];
  if (!isTold && !(INSIDE.test(line.words) && (UPRIGHT.has(head) || ON_END.test(found[0])))) return [];
  const tall = sizes.has('height') || !sizes.has('length') ? 'height' : 'length';
  const deep =
    sizes.has('depth') || !(sizes.has('thickness') || sizes.has('width'))
      ? 'depth'
      : sizes.has('thickness')
        ? 'thickness'
        : 'width';
  const inputs = [
    input('depth', `${name} ${deep}`),
    overhead ?? input('ceiling', 'ceiling height'),
    input('height', `${name} ${tall}`),
  ];
  return [checkNote(scene, line, { check: 'standing up', inputs })];
}

const HINGED = wordSet('lid hatch seat bed bunk table flap door tailgate window bonnet');
/** Verbs that set something on its end. */
const ON_END = / (?:stand|stood|tip|tipped|tilt|tilted) /;

function raisedBy(scene: CheckScene, line: Line, must: number, up: number): Phrase | undefined {
  for (let verb = must + 1; verb < up; verb++) {
    const object = phrasesOf(scene, line).find(({ first, last }) => first === verb + 1 && last <= up);
    if (object && isCarried(object)) return object;
  }
  const carried = carriedBy(scene, line, must, up - 1, up);
  return carried === 'all' || carried === undefined || isSpeaker(carried) ? undefined : carried;
}

/** How high it is to what is overhead: told with the sentence or beside it. */
function overheadSize(scene: CheckScene, line: Line): SpokenInput | undefined {
  const near = scene.lines
    .slice(Math.max(0, line.index - 2), line.index + 3)
    .flatMap((one) => figuresIn(scene, one))
    .filter(({ dimension, value }) => dimension === 'length' && value > 0);
  const named = near.find(({ item }) => OVERHEAD.has(singular(item.toLowerCase().split(' ').at(-1) ?? '')));
  // "The beam's at 2050" is its height, whatever it was taken for.
  const isHeight = named && /^(?:height|clearance|gap)$/.test(named.attribute);
  if (named)
    return isHeight
      ? input('ceiling', `${named.item} ${named.attribute}`)
      : input('ceiling', written(named), named.item);
  // "Under a 96 inch ceiling", whose figure may have been given to the thing that goes under it.
  const before = near.find((figure) => {
    const at = wordOfFigure(scene, figure);
    const head = phrasesOf(scene, line).find(({ first, last }) => first <= at && last >= at)?.head;
    return head !== undefined && OVERHEAD.has(singular(head));
  });
  return before && input('ceiling', written(before), 'ceiling');
}
