/**
 * Reads how many pieces of two sizes are to come out of sheets: "twelve panels at 600 by 400 out of two sheets, 2440 by
 * 1220". In two directions only the least number of sheets is told: no cutting plan is made.
 */
import { wordAt } from '../items/parse.ts';
import { type Line, phrasesOf } from '../kept/scene.ts';
import { singular } from '../lexicon/trade-nouns.ts';
import type { CheckNote } from '../notes.ts';
import { smallNumber } from '../numbers/small-number.ts';
import { wordSet } from '../word-table.ts';
import { linesNear } from './figure-names.ts';
import { metres } from './metres.ts';
import { type SizePair, sizePairs } from './size-pairs.ts';
import { type CheckScene, checkNote, figuresOf, input, wordOfFigure, written } from './spoken-check.ts';

const SHEETS = wordSet('sheet ply plywood board panel mdf');
const COUNTED_ON =
  / (?:should|can|want|wants|need|needs|hope|hoping|reckon|expect|'ll|will|going to|trying to|plan|planning|must|aim|getting|supposed to|have to|has to|got to|ought to|enough for|out of) /;
const NOT_COUNTED_ON = / (?:n't|not|never|only|if|unless|[a-z]+n't|would have|could have|cut|made|had|got) /;
/** Between how many and their size: "twelve panels at", "twelve". */
const MOST_BETWEEN = 5;

/** The pieces that one sentence wants out of sheets. */
export function sheetCountIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const piece = line.asks ? undefined : piecePair(scene, line);
  if (!piece || !COUNTED_ON.test(line.words) || NOT_COUNTED_ON.test(withoutStock(line.words))) return [];
  const sheet = sheetPair(scene, line, piece.pair);
  const head = phrasesOf(scene, line).find(
    (one) => one.last > piece.pair.to && SHEETS.has(singular(one.head)) && one.name.length > 0,
  );
  if (!head) return [];
  const sheets = countBefore(scene, line, head.last) ?? (head.plural ? undefined : 1);
  const kerf = kerfNear(scene, line);
  const inputs = [
    ...(sheet
      ? [
          input('sheet length', written(sheet.first), 'sheet'),
          input('sheet width', written(sheet.second), 'sheet'),
        ]
      : [input('sheet length', 'sheet length'), input('sheet width', 'sheet width')]),
    input('piece length', written(piece.pair.first), thingOf(piece.pair)),
    input('piece width', written(piece.pair.second), thingOf(piece.pair)),
    input('pieces', String(piece.count)),
    ...(kerf === undefined ? [] : [input('kerf', kerf)]),
    ...(sheets === undefined ? [] : [input('sheets', String(sheets))]),
  ];
  return [checkNote(scene, line, { check: 'sheets for pieces', inputs })];
}

/** Whether the pieces of a line are told by two sizes: of those no count in one direction holds. */
export const hasPiecePair = (scene: CheckScene, line: Line): boolean => piecePair(scene, line) !== undefined;

/** What is on hand is no count that was got: "I've got two sheets". */
const withoutStock = (words: string): string =>
  words
    .replace(/ (?:only )?(?:'ve |have |has |'s )?got (?=\S+ (?:\S+ ){0,2}?(?:sheets?|boards?) )/g, ' ')
    .replace(/ (?:have|has|'ve|'s) got to /g, ' ')
    .replace(/ to be (?:cut|made) /g, ' ');

function piecePair(scene: CheckScene, line: Line) {
  for (const pair of sizePairs(scene, line)) {
    const count = countBefore(scene, line, pair.from);
    if (count === undefined || count < 2) continue;
    const isSheet = phrasesOf(scene, line).some(
      (one) => one.last < pair.from && one.last >= pair.from - MOST_BETWEEN && singular(one.head) === 'sheet',
    );
    if (!isSheet) return { pair, count };
  }
  return undefined;
}

/** The whole number in the few words before a word. */
function countBefore(scene: CheckScene, line: Line, until: number): number | undefined {
  for (let word = until - 1; word >= Math.max(line.first, until - MOST_BETWEEN); word--) {
    const figure = figuresOf(scene, line, 'count').find((one) => wordOfFigure(scene, one) === word);
    const count = figure?.value ?? smallNumber(wordAt(scene.parse, word));
    if (count !== undefined && count >= 1 && Number.isInteger(count)) return count;
    if (wordAt(scene.parse, word) === '#') return undefined;
  }
  return undefined;
}

/** The sizes of the sheet: the larger pair of the sentence, or of one beside it. */
function sheetPair(scene: CheckScene, line: Line, piece: SizePair): SizePair | undefined {
  const area = ({ first, second }: SizePair) => metres(first) * metres(second);
  return linesNear(scene, line, 1, 1)
    .flatMap((one) => sizePairs(scene, one))
    .filter((pair) => pair.first !== piece.first)
    .find((pair) => area(pair) > area(piece));
}

const thingOf = ({ first }: SizePair): string | undefined =>
  first.item === 'unnamed' ? undefined : first.item;

/** The widest blade. */
const WIDEST = 0.03;

function kerfNear(scene: CheckScene, line: Line): string | undefined {
  const kerf = linesNear(scene, line, 2, 1)
    .flatMap((one) => figuresOf(scene, one, 'length'))
    .find(
      (figure) =>
        metres(figure) < WIDEST &&
        /\b(?:kerf|blade|saw)\b/i.test(
          scene.text.slice(Math.max(0, figure.span.start - 24), figure.span.end + 16),
        ),
    );
  return kerf && written(kerf);
}
