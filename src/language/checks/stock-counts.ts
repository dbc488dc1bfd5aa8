/**
 * Reads how many pieces are to come out of a length or a sheet: "four shelves at 610 out of a 2440 sheet", "I should get
 * four out of a sheet". What was got already, and what nobody counts on, is left.
 */
import type { Phrase } from '../items/noun-phrases.ts';
import { wordAt } from '../items/parse.ts';
import { type Line, phrasesOf, type RecordScene, wordAtOffset } from '../kept/scene.ts';
import { singular } from '../lexicon/trade-nouns.ts';
import type { CheckNote, FigureNote, SpokenInput } from '../notes.ts';
import { smallNumber } from '../numbers/small-number.ts';
import { wordSet } from '../word-table.ts';
import { hasPiecePair } from './sheet-counts.ts';
import {
  type CheckScene,
  checkNote,
  figuresOf,
  input,
  nameOf,
  wordOfFigure,
  written,
} from './spoken-check.ts';

const STOCK = wordSet(
  'sheet board length plank panel slab bar stick pole roll batten tube section extrusion stock piece ply plywood',
);

const SOURCE =
  / (?:out of|out|from|off|per|to) (?:a|an|one|each|every|the|that|this|my|single|full|whole|#|standard|[a-z]+ foot|by|x|of) /;
/** Somebody counts on it. */
const COUNTED_ON =
  / (?:should|can|could|want|wants|need|needs|hope|hoping|reckon|reckons|expect|'ll|will|gonna|going to|trying to|plan|planning|must|aim|figure|would|'d|getting|banking on|counting on|supposed to|have to|has to|got to|ought to|enough for) /;
const NOT_COUNTED_ON =
  / (?:n't|not|never|no|only|if|unless|would have|could have|should have|[a-z]+n't) | (?:got|cut|made|had) (?:#|all|me|two|three|four|five|six|seven|eight|nine|ten) /;

/** The count that one sentence wants out of a stock. */
export function stockCountIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  // Pieces of two sizes are counted by sheets: see sheet-counts.ts.
  if (line.asks || NOT_COUNTED_ON.test(line.words) || hasPiecePair(scene, line)) return [];
  const told = outOfStock(scene, line) ?? stockFirst(scene, line);
  if (!told || isOfTwoSizes(scene, line, told)) return [];
  const { wanted, head, stock, piece } = told;
  const ofStock = stock ? written(stock) : head && lengthOf(head);
  const ofPiece = piece ? written(piece) : pieceBefore(scene, line);
  const inputs = [
    ...(ofStock === undefined ? [] : [input('stock', ofStock, stock && head ? nameOf(head) : undefined)]),
    ...(ofPiece === undefined ? [] : [input('piece', ofPiece, piece && thingOf(piece))]),
    ...kerfOf(scene, line),
    input('wanted', String(wanted)),
  ];
  return [checkNote(scene, line, { check: 'pieces from stock', inputs })];
}

/** "610 wide and 300 deep": what comes out of a sheet of those is no count in one direction. */
function isOfTwoSizes(scene: CheckScene, line: Line, { piece, stock }: Told): boolean {
  const flat = (one: FigureNote) => /^(?:length|width|height|depth|size)$/.test(one.attribute);
  return (
    piece !== undefined &&
    figuresOf(scene, line, 'length').some(
      (one) =>
        one !== stock &&
        one.item === piece.item &&
        one.item !== 'unnamed' &&
        one.attribute !== piece.attribute &&
        flat(one) &&
        flat(piece),
    )
  );
}

interface Told {
  readonly wanted: number;
  /** The stock by name; absent where only its size was said. */
  readonly head?: Phrase;
  readonly stock?: FigureNote;
  readonly piece?: FigureNote;
}

/** Lengths of a line with the words that stand for them, the saw's cut left out. */
const lengthsOf = (scene: CheckScene, line: Line) =>
  figuresOf(scene, line, 'length')
    .filter((figure) => !isKerf(scene, figure))
    .map((figure) => ({ figure, at: wordOfFigure(scene, figure) }));

/** "Four shelves at 610 out of a 2440 sheet". */
function outOfStock(scene: CheckScene, line: Line): Told | undefined {
  const source = sourceIn(scene, line);
  const wanted = source && countBefore(scene, line, source.from);
  if (!wanted || !(COUNTED_ON.test(line.words) || opensWith(scene, line, wanted.word))) return undefined;
  const lengths = lengthsOf(scene, line);
  const stock = lengths.find(({ at }) => at > source.from && at <= source.until);
  const piece =
    lengths.find(({ at }) => at > wanted.word && at < source.from) ??
    lengths.find((one) => one !== stock && one.at > source.until - 2);
  if (!source.head && !(stock && piece)) return undefined;
  const pieces = source.head?.plural ? fromEach(scene, line, source.head, wanted) : wanted.count;
  if (pieces === undefined) return undefined;
  return toldOf(pieces, source.head, stock?.figure, piece?.figure);
}

/** "Twelve slats out of eight foot boards, two boards will do it": six from each; unknown where nobody told of how many. */
function fromEach(
  scene: CheckScene,
  line: Line,
  head: Phrase,
  wanted: { readonly count: number; readonly word: number },
): number | undefined {
  for (let k = line.first; k < line.endWord; k++) {
    if (k === wanted.word || !/^\p{L}+s$/u.test(wordAt(scene.parse, k + 1))) continue;
    const boards = countAt(scene, line, k);
    if (boards !== undefined && singular(wordAt(scene.parse, k + 1)) === singular(head.head))
      return Math.ceil(wanted.count / boards);
  }
  return undefined;
}

const GIVES =
  / (?:(?:will|'ll|should|would|'d|can|ought to|has to|must) (?:do|give|make|yield)|gives|makes|yields|does) (?:me |us |you )?/;
const ENOUGH = / enough (?:in|on|of) (?:a|one|each|the|that|this) (?:\S+ ){1,3}?for /;

/** "That sheet will do four shelves at 600", "there's enough in that sheet for four doors at 595". */
function stockFirst(scene: CheckScene, line: Line): Told | undefined {
  const found = GIVES.exec(line.words) ?? ENOUGH.exec(line.words);
  if (!found) return undefined;
  const after = wordAtOffset(line, found.index + found[0].trimEnd().length - 1) + 1;
  const count = countAt(scene, line, after);
  const head = phrasesOf(scene, line).findLast((one) => one.last < after && STOCK.has(singular(one.head)));
  if (count === undefined || !head || head.plural) return undefined;
  const lengths = lengthsOf(scene, line);
  const stock = lengths.find(({ at }) => at >= head.first && at < after);
  // Without a size of the piece it may give grades of finish.
  const piece = lengths.find(({ at }) => at > after);
  return piece && toldOf(count, head, stock?.figure, piece.figure);
}

/** "Shelves" of "four shelves at 610"; a size that nobody named is of nothing. */
const thingOf = ({ item }: FigureNote): string | undefined => (item === 'unnamed' ? undefined : item);

const toldOf = (wanted: number, head?: Phrase, stock?: FigureNote, piece?: FigureNote): Told => ({
  wanted,
  ...(head ? { head } : {}),
  ...(stock ? { stock } : {}),
  ...(piece ? { piece } : {}),
});

/** "Twelve battens from each length": the count is what the sentence is about. */
function opensWith(scene: CheckScene, line: Line, word: number): boolean {
  for (let k = line.first; k < word; k++) {
    if (!/^(?:and|so|then|that|that's|'s|say|just|another|the|right|ok|okay|,)$/.test(wordAt(scene.parse, k)))
      return false;
  }
  return true;
}

/** "Length length" names nothing. */
const lengthOf = (head: Phrase): string | undefined => {
  const name = [...head.name.slice(0, -1), singular(head.head)].join(' ');
  return name === 'length' ? undefined : `${name} length`;
};

interface Source {
  /** Where "out of" stands. */
  readonly from: number;
  /** The sheet, board, length that it comes out of; absent where only a size is said: "from a 2440". */
  readonly head?: Phrase;
  /** Last word that may tell the stock's size. */
  readonly until: number;
}

/** "Out of a sheet", "from one 2.4 metre length". "Out of the four sheets" is a part of a number. */
function sourceIn(scene: CheckScene, line: Line): Source | undefined {
  const found = SOURCE.exec(line.words);
  if (!found) return undefined;
  const from = wordAtOffset(line, found.index + 1);
  const head = phrasesOf(scene, line).find(
    (phrase) => phrase.last > from && phrase.last <= from + 7 && STOCK.has(singular(phrase.head)),
  );
  const until = head ? head.last + 2 : from + 3;
  for (let k = from + 1; k <= (head?.last ?? until); k++)
    if (countAt(scene, line, k) !== undefined) return undefined;
  return { from, until, ...(head ? { head } : {}) };
}

/** The whole number of more than one that stands at a word. */
function countAt(scene: CheckScene, line: Line, word: number): number | undefined {
  const figure = figuresOf(scene, line, 'count').find((one) => wordOfFigure(scene, one) === word);
  const count = figure?.value ?? smallNumber(wordAt(scene.parse, word));
  return count !== undefined && count > 1 && Number.isInteger(count) ? count : undefined;
}

/** The last whole number before the stock that is no size: "four", "four shelves". One of a stock asks nothing. */
function countBefore(scene: CheckScene, line: Line, until: number) {
  for (let word = until - 1; word >= line.first; word--) {
    const count = countAt(scene, line, word);
    if (count !== undefined) return { count, word };
  }
  return undefined;
}

/** "The shelves are 610. I should get four out of a sheet.": the size that was said last, of one thing alone. */
function pieceBefore(scene: RecordScene, line: Line): string | undefined {
  const before = scene.lines
    .slice(Math.max(0, line.index - 2), line.index)
    .flatMap((one) => figuresOf(scene, one, 'length'))
    .filter((figure) => !isKerf(scene, figure) && !STOCK.has(singular(figure.item.split(' ').at(-1) ?? '')));
  const last = before.at(-1);
  if (!last || before.filter(({ item }) => item === last.item).length > 1) return undefined;
  return last.item === 'unnamed' ? written(last) : `${last.item} ${last.attribute}`;
}

const isKerf = ({ text }: RecordScene, { item, span }: FigureNote): boolean =>
  /\bkerf\b/i.test(item) ||
  /\b(?:kerf|blade|saw cut)\b/i.test(text.slice(Math.max(0, span.start - 20), span.end + 16));

/** The cut that the saw takes: said in this sentence, before it, or standing. */
function kerfOf(scene: CheckScene, line: Line): readonly SpokenInput[] {
  const here = scene.lines
    .slice(Math.max(0, line.index - 2), line.index + 2)
    .flatMap((one) => figuresOf(scene, one, 'length'))
    .find((figure) => figure.value < 30 && isKerf(scene, figure));
  if (here) return [input('kerf', written(here))];
  const standing = scene.known.find(({ item }) => /\bkerf\b/i.test(item));
  return standing ? [input('kerf', `${standing.item} ${standing.attribute}`)] : [];
}
