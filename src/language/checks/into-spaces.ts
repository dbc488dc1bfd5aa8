/** Reads what has to go into a space of known size: "the washing machine has to fit in a 605 gap and it's 598 wide". */
import { figuresIn, type Line, wordAtOffset } from '../kept/scene.ts';
import type { CheckNote } from '../notes.ts';
import { carriedBy } from './carried-things.ts';
import { ADVERBS, MUST, NO_DEMAND } from './demands.ts';
import { isBox, isFitted, isVoid } from './spaces.ts';
import {
  attributesOf,
  type CheckScene,
  checkNote,
  input,
  nameOf,
  phraseFrom,
  wordOfFigure,
  written,
} from './spoken-check.ts';

const FIT = '(?:fit|go|slot|drop|sit|slide|squeeze|tuck)';
const FITTED = '(?:fitted|put|slid|slotted|tucked)';
const FITTING_WORD = new RegExp(`^(?:${FIT}|${FITTED})$`);
export const namesFitting = (word: string): boolean => FITTING_WORD.test(word);
const INTO = new RegExp(
  ` ${MUST} ${ADVERBS}(?:${FIT}|be ${FITTED})(?: \\S+){0,2}? (?:in|into|inside|between|in between|within) `,
);

/** "The washing machine has to fit in a 605 gap". Attached where talk told of a size of both. */
export function fitIntoIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const found = line.asks ? null : INTO.exec(line.words);
  if (!found || NO_DEMAND.test(line.words.slice(0, found.index + 1))) return [];
  const must = wordAtOffset(line, found.index + 1);
  const into = wordAtOffset(line, found.index + found[0].trimEnd().length - 1);
  const space = phraseFrom(scene, into + 1);
  if (!space || !(isVoid(space.head) || isBox(space.head))) return [];
  const verb = wordAtOffset(line, found.index + MUST.length);
  const carried = carriedBy(scene, line, must, Math.min(verb, into - 1), into);
  if (!carried || carried === 'all' || !isFitted(carried)) return [];
  const name = nameOf(carried);
  const said = figuresIn(scene, line).find(
    (figure) =>
      figure.dimension === 'length' &&
      wordOfFigure(scene, figure) >= space.first &&
      wordOfFigure(scene, figure) <= space.last,
  );
  const of = attributesOf(scene, nameOf(space));
  const sides = (['width', 'height', 'depth', 'length'] as const).filter(
    (side) => attributesOf(scene, name).has(side) && (of.has(side) || (said && side === 'width')),
  );
  if (sides.length === 0) return [];
  const inputs = [
    ...sides.map((side) =>
      said && side === 'width'
        ? input('opening', written(said), nameOf(space))
        : input('opening', `${nameOf(space)} ${side}`),
    ),
    ...sides.map((side) => input('part', `${name} ${side}`)),
  ];
  return [checkNote(scene, line, { check: 'clearance', inputs })];
}
