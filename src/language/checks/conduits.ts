/**
 * Reads what cables have to go through a conduit: "three cables 8 mil across have to go down a 20 mil conduit". A cable
 * told by its copper ("six mil cable") says nothing of how thick it is, and its diameter is asked for.
 */
import { type Line, phrasesOf } from '../kept/scene.ts';
import { singular } from '../lexicon/trade-nouns.ts';
import type { CheckNote, FigureNote, SpokenInput } from '../notes.ts';
import { smallNumber } from '../numbers/small-number.ts';
import { wordSet } from '../word-table.ts';
import { MUST, NO_DEMAND } from './demands.ts';
import { type CheckScene, checkNote, figuresOf, input, wordOfFigure, written } from './spoken-check.ts';

const CONDUITS = wordSet('conduit tube duct gland sleeve pipe');
const CABLES = wordSet('cable wire flex core lead conductor');
const WANTED = new RegExp(
  ` (?:${MUST}|to (?:go|get|pull|run|fit|feed|thread|draw)|want|wants|need|needs|going) (?:\\S+ ){0,10}?(?:down|through|in|into|inside|up|along) `,
);
/** More than that is a slip. */
const MOST = 40;

/** The conduit that one sentence wants cables in. */
export function conduitIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const found = line.asks ? null : WANTED.exec(line.words);
  if (!found || NO_DEMAND.test(line.words.slice(0, found.index + 1))) return [];
  const phrases = phrasesOf(scene, line);
  const cable = phrases.find(({ head }) => CABLES.has(singular(head)));
  const conduit = phrases.find(({ head }) => CONDUITS.has(singular(head)));
  if (!cable || !conduit) return [];
  const lengths = figuresOf(scene, line, 'length');
  const near = (figure: FigureNote, from: number, to: number) => {
    const at = wordOfFigure(scene, figure);
    return at >= from - 1 && at <= to;
  };
  const bore = lengths.find((figure) => near(figure, conduit.first, conduit.last + 3));
  const across = lengths.find((figure) => figure !== bore && near(figure, cable.first, cable.last + 3));
  // "A cable through the pipe": nobody asks how full it is.
  const told = figuresOf(scene, line, 'count').find((figure) => near(figure, cable.first, cable.last));
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

/** How many cables: a number in front of them, or in front of their size. */
function countBefore(line: Line, first: number, last: number): number {
  const words = line.words.trim().split(' ');
  for (let k = last; k >= Math.max(0, first - 2); k--) {
    const count = smallNumber(words[k] ?? '');
    if (count !== undefined && Number.isInteger(count) && count >= 1 && count <= MOST) return count;
  }
  return 1;
}
