/**
 * Reads what has to get round a corner: "the ten foot lengths have to get round the corner in the hall, the hall's 900
 * wide and the passage is 1100".
 */
import { figuresIn, type Line, phrasesOf, wordAtOffset } from '../kept/scene.ts';
import { singular } from '../lexicon/trade-nouns.ts';
import type { CheckNote, SpokenInput } from '../notes.ts';
import { wordSet } from '../word-table.ts';
import { carriedBy } from './carried-things.ts';
import { ADVERBS, BRING, GO, MUST, NO_DEMAND } from './demands.ts';
import { linesNear } from './figure-names.ts';
import {
  type CheckScene,
  checkNote,
  figuresOf,
  input,
  nameOf,
  wordOfFigure,
  written,
} from './spoken-check.ts';

const CORNER = '(?:corner|bend|turn|dogleg|dog-leg|landing|elbow|right angle)';
const NAMES_CORNER = new RegExp(` ${CORNER} `);
/** The last word of what names a corner. */
const CORNER_WORD = /^(?:corner|bend|turn|dogleg|dog-leg|landing|elbow|angle)$/;
export const namesCorner = (word: string): boolean => CORNER_WORD.test(word);
const BEHIND =
  '(?=(?:[.,;:!?]|in|at|of|from|into|between|by|and|on|to|with|out|where|there|without|before|past|onto) )';
const CARRY = `(?:${GO}|${BRING}|swing|walk|turn|work|manoeuvre|swivel|wangle|ease)`;
const ROUND = new RegExp(
  ` ${MUST} ${ADVERBS}${CARRY} (?:\\S+ ){0,8}?(?:round|around) (?:the |that |a |this )?(?:\\S+ )?${CORNER} ${BEHIND}`,
);
/** "They've got to turn the corner", "it has to make the bend". */
const TURNS = new RegExp(
  ` ${MUST} ${ADVERBS}(?:turn|make|take|clear|manage|negotiate) (?:the |that |a |this )(?:\\S+ )?${CORNER} ${BEHIND}`,
);
/** "There's a right angle turn from the landing into the hall to get them through". */
const THERE = new RegExp(
  ` (?:there is|there 's|there's|it 's|it's|got) (?:a|the|that) (?:tight |sharp |square )?(?:right angled? |right-angled? |ninety degree |# )?${CORNER} (?:\\S+ ){0,14}?to (?:get|bring|carry|take|swing|pass|manoeuvre|work|walk) (?:it|them|that|those|these|(?:the|that|those) (?:\\S+ ){1,3}?)?(?:through|round|around|past|along)? `,
);
/** What things are carried along. */
const PASSAGES = wordSet(
  'hall hallway passage passageway corridor landing stairwell stair companionway gangway aisle alley alleyway walkway side-deck sidedeck lobby entry entrance doorway lane path',
);

/** What one sentence wants carried round a corner. */
export function roundCornerIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  if (line.asks || !NAMES_CORNER.test(line.words)) return [];
  const found = ROUND.exec(line.words) ?? TURNS.exec(line.words);
  if (!found) return thereIn(scene, line);
  if (NO_DEMAND.test(line.words.slice(0, found.index + 1))) return [];
  const must = wordAtOffset(line, found.index + 1);
  const round = line.words
    .slice(0, found.index + found[0].length)
    .search(/ (?:round|around) (?!.* (?:round|around) )/);
  const corner = wordAtOffset(line, round < 0 ? found.index + found[0].length - 1 : round + 1);
  const verb = verbAfter(line, found.index, found[0]);
  const carried = carriedBy(scene, line, must, verb, corner);
  const length = lengthOf(scene, line, must, carried);
  return length ? cornerNote(scene, line, length) : [];
}

/** What is carried was named before: "the skirtings are 3 metres and there's a right angle turn … to get them through". */
function thereIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const found = THERE.exec(line.words);
  if (!found || NO_DEMAND.test(line.words.slice(0, found.index + 1))) return [];
  const at = wordAtOffset(line, found.index + 1);
  const length = linesNear(scene, line, 1, 0)
    .flatMap((one) => figuresIn(scene, one))
    .filter(
      (one) => one.dimension === 'length' && LONG.test(one.attribute) && !PASSAGES.has(headOf(one.item)),
    )
    .findLast((one) => wordOfFigure(scene, one) < at);
  return length ? cornerNote(scene, line, input('length', written(length), length.item)) : [];
}
const LONG = /^(?:length|height|size|other|width)$/;
const headOf = (item: string): string => singular(item.toLowerCase().split(' ').at(-1) ?? '');

function cornerNote(scene: CheckScene, line: Line, length: SpokenInput): readonly CheckNote[] {
  const widths = passageWidths(scene, line);
  const inputs = [
    ...['first passage', 'second passage'].flatMap((name, index) => {
      const width = widths[index];
      return width ? [input(name, width.expression, width.of)] : [];
    }),
    length,
  ];
  return [checkNote(scene, line, { check: 'rod round corner', inputs })];
}

/** "The twelve foot lengths", else the length of a thing that was named. */
function lengthOf(
  scene: CheckScene,
  line: Line,
  must: number,
  carried: ReturnType<typeof carriedBy>,
): SpokenInput | undefined {
  if (carried && carried !== 'all') return input('length', `${nameOf(carried)} length`);
  const said = figuresOf(scene, line, 'length').findLast((figure) => wordOfFigure(scene, figure) < must);
  return said && input('length', written(said), said.item);
}

const VERB = new RegExp(` ${CARRY} `);

function verbAfter(line: Line, index: number, words: string): number {
  const lead = new RegExp(`^ ${MUST} ${ADVERBS}`).exec(words)?.[0].length ?? 1;
  const verb = VERB.exec(words.slice(lead - 1));
  return wordAtOffset(line, index + lead + (verb?.index ?? 0));
}

/** Widths of the two passages: told with the sentence or beside it, else by their names. */
function passageWidths(scene: CheckScene, line: Line): readonly Pick<SpokenInput, 'expression' | 'of'>[] {
  const near = scene.lines.slice(Math.max(0, line.index - 1), line.index + 3);
  const told = near
    .flatMap((one) => figuresIn(scene, one))
    .filter(({ item, attribute, dimension }) => {
      return (
        dimension === 'length' &&
        /^(?:width|size|clearance|gap)$/.test(attribute) &&
        PASSAGES.has(headOf(item))
      );
    })
    .map((figure) => ({ figure, of: figure.item, expression: `${figure.item} ${figure.attribute}` }));
  // "Between the 600 corridor and the 700 one": two of one name.
  const isOneName = new Set(told.map(({ of }) => of)).size < told.length;
  if (told.length >= 2)
    return told.map(({ figure, of, expression }) =>
      isOneName ? { expression: written(figure), of } : { expression },
    );
  const named = phrasesOf(scene, line)
    .filter((phrase) => PASSAGES.has(singular(phrase.head)) && phrase.name.length > 0)
    .map((phrase) => nameOf(phrase))
    .filter((name) => !told.some(({ of }) => of.toLowerCase() === name))
    .map((name) => ({ expression: `${name} width` }));
  return [...told.map(({ expression }) => ({ expression })), ...named];
}
