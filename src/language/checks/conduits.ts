/**
 * Reads what cables have to go through a conduit: "three cables 8 mil across have to go down a 20 mil conduit". A cable
 * told by its copper ("six mil cable") says nothing of how thick it is, and its diameter is asked for.
 */

import type { Phrase } from '../items/noun-phrases.ts';
import { type Line, phrasesOf } from '../kept/scene.ts';
import { singular } from '../lexicon/trade-nouns.ts';
import type { CheckNote, FigureNote, SpokenInput } from '../notes.ts';
import { smallNumber } from '../numbers/small-number.ts';
import { wordSet } from '../word-table.ts';
import { MUST, NO_DEMAND } from './demands.ts';
import { wordsAround } from './figure-names.ts';
import { type CheckScene, checkNote, figuresOf, input, wordOfFigure, written } from './spoken-check.ts';

const CONDUITS = wordSet('conduit tube duct gland sleeve pipe');
const CABLES = wordSet('cable wire flex core lead conductor');
const WANTED = new RegExp(
  ` (?:${MUST}|to (?:go|get|pull|run|fit|feed|thread|draw)|want|wants|need|needs|going) (?:\\S+ ){0,10}?(?:down|through|in|into|inside|up|along) `,
);
/** More than that is a slip. */
const MOST = 40;

/** "I'm running two cables through it", "it has to take two cables". */
const RUNS =
  / (?:running|pulling|putting|feeding|threading|drawing|taking|sending) (?:\S+ ){0,6}?(?:down|through|in|into|inside|up|along) /;
const TAKES = new RegExp(` (?:${MUST} (?:take|carry|hold|house)|(?:is|'s|it's) for) `);
/** "Two cables to pull down it". */
const TO_PULL =
  / (?:to (?:go|get|pull|run|fit|feed|thread|draw)|going) (?:\S+ ){0,3}?(?:down|through|in|into|inside|up|along) /;

/** Without such a word a sentence asks for no conduit. */
export const namesConduit = (word: string): boolean => CONDUITS.has(singular(word));

/** The conduit that one sentence wants cables in. */
export function conduitIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const ways = line.asks ? [] : [WANTED, RUNS, TAKES, TO_PULL];
  const found = ways.map((way) => way.exec(line.words)).find((one) => one !== null);
  if (!found || NO_DEMAND.test(line.words.slice(0, found.index + 1))) return [];
  const phrases = phrasesOf(scene, line);
  const conduit = phrases.find(({ head }) => CONDUITS.has(singular(head)));
  const cable = phrases.find((one) => one !== conduit && CABLES.has(singular(one.head)));
  if (!cable || !conduit) return [];
  const lengths = figuresOf(scene, line, 'length');
  const bore =
    lengths.find((figure) => isNear(wordOfFigure(scene, figure), conduit, 3)) ??
    lengths.find((figure) => isOf(figure, conduit)) ??
    boreAsArea(scene, line, conduit);
  const across =
    lengths.find((figure) => figure !== bore && isNear(wordOfFigure(scene, figure), cable, 3)) ??
    lengths.find((figure) => figure !== bore && isAcross(scene, line, figure));
  // "A cable through the pipe": nobody asks how full it is.
  const told = figuresOf(scene, line, 'count').find((figure) =>
    isNear(wordOfFigure(scene, figure), cable, 0),
  );
  const count = told
    ? Math.min(MOST, told.value)
    : countBefore(line, cable.first - line.first, cable.last - line.first);
  if (!bore || (count === 1 && !across)) return [];
  const inputs: readonly SpokenInput[] = [
    ...(across
      ? Array.from({ length: count }, () => input('cable', written(across), cable.name.join(' ')))
      : []),
    input('bore', written(bore), conduit.name.join(' ')),
  ];
  return [checkNote(scene, line, { check: 'conduit fill', inputs })];
}

/** Said in a phrase, right before it, or a few words behind. */
const isNear = (at: number, { first, last }: Phrase, behind: number): boolean =>
  at >= first - 1 && at <= last + behind;

/** "A 25 mil conduit" beside cables is read as one of their areas; a conduit has none. */
function boreAsArea(scene: CheckScene, line: Line, conduit: Phrase): FigureNote | undefined {
  const area = figuresOf(scene, line, 'area').find(
    (figure) => figure.unit === 'mm2' && isNear(wordOfFigure(scene, figure), conduit, 0),
  );
  return area && { ...area, dimension: 'length', unit: 'mm' };
}

const isOf = (figure: FigureNote, conduit: Phrase): boolean =>
  CONDUITS.has(singular(figure.item.toLowerCase().split(' ').at(-1) ?? '')) &&
  figure.item.toLowerCase().endsWith(conduit.head);

/** "And they're 7 mil across", "8 mil each". */
const isAcross = (scene: CheckScene, line: Line, figure: FigureNote): boolean =>
  CABLES.has(singular(figure.item.toLowerCase().split(' ').at(-1) ?? '')) ||
  /^ # (?:across|each|apiece|thick|in diameter|diameter|outside|over the (?:sheath|jacket)) /.test(
    wordsAround(scene, line, figure)[1],
  );

/** How many cables: a number in front of them, or in front of their size. */
function countBefore(line: Line, first: number, last: number): number {
  const words = line.words.trim().split(' ');
  for (let k = last; k >= Math.max(0, first - 2); k--) {
    const count = smallNumber(words[k] ?? '');
    if (count !== undefined && Number.isInteger(count) && count >= 1 && count <= MOST) return count;
  }
  return 1;
}
