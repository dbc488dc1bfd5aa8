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
import { type CheckScene, checkNote, figuresOf, input, wordOfFigure, written } from './spoken-check.ts';

const STOCK = wordSet(
  'sheet board length plank panel slab bar stick pole roll batten tube section extrusion stock piece ply plywood',
);

const SOURCE =
  / (?:out of|out|from|off|per|to) (?:a|an|one|each|every|the|that|this|my|single|full|whole|#|standard|[a-z]+ foot|by|x|of) /;
/** Somebody counts on it. */
const COUNTED_ON =
  / (?:should|can|could|want|wants|need|needs|hope|hoping|reckon|reckons|expect|'ll|will|gonna|going to|trying to|plan|planning|must|aim|figure|would|'d|supposed to|have to|has to|got to|ought to|enough for) /;
const NOT_COUNTED_ON =
  / (?:n't|not|never|no|only|if|unless|would have|could have|should have|[a-z]+n't) | (?:got|cut|made|had) (?:#|all|me|two|three|four|five|six|seven|eight|nine|ten) /;

/** The count that one sentence wants out of a stock. */
export function stockCountIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  if (line.asks || NOT_COUNTED_ON.test(line.words)) return [];
  const source = sourceIn(scene, line);
  const wanted = source && countBefore(scene, line, source.from);
  if (!wanted || !(COUNTED_ON.test(line.words) || opensWith(scene, line, wanted.word))) return [];
  const lengths = figuresOf(scene, line, 'length')
    .filter((figure) => !isKerf(scene, figure))
    .map((figure) => ({ figure, at: wordOfFigure(scene, figure) }));
  const stock = lengths.find(({ at }) => at > source.from && at <= source.head.last + 2);
  const piece =
    lengths.find(({ at }) => at > wanted.word && at < source.from) ??
    lengths.find((one) => one !== stock && one.at > source.head.last);
  const [ofStock, ofPiece] = [
    stock ? written(stock.figure) : lengthOf(source.head),
    piece ? written(piece.figure) : pieceBefore(scene, line),
  ];
  const inputs = [
    ...(ofStock === undefined ? [] : [input('stock', ofStock)]),
    ...(ofPiece === undefined ? [] : [input('piece', ofPiece)]),
    ...kerfOf(scene, line),
    input('wanted', String(wanted.count)),
  ];
  return [checkNote(scene, line, { check: 'pieces from stock', inputs })];
}

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
  /** The sheet, board, length that it comes out of. */
  readonly head: Phrase;
}

/** "Out of a sheet", "from one 2.4 metre length". "Out of the four sheets" is a part of a number. */
function sourceIn(scene: CheckScene, line: Line): Source | undefined {
  const found = SOURCE.exec(line.words);
  if (!found) return undefined;
  const from = wordAtOffset(line, found.index + 1);
  const head = phrasesOf(scene, line).find(
    (phrase) => phrase.last > from && phrase.last <= from + 7 && STOCK.has(singular(phrase.head)),
  );
  if (!head) return undefined;
  const counts = figuresOf(scene, line, 'count');
  for (let k = from + 1; k <= head.last; k++) {
    const isCount = counts.some((figure) => wordOfFigure(scene, figure) === k);
    if (isCount || (smallNumber(wordAt(scene.parse, k)) ?? 1) > 1) return undefined;
  }
  return { from, head };
}

/** The last whole number before the stock that is no size: "four", "four shelves". One of a stock asks nothing. */
function countBefore(scene: CheckScene, line: Line, until: number) {
  const counts = figuresOf(scene, line, 'count').map((figure) => ({
    count: figure.value,
    word: wordOfFigure(scene, figure),
  }));
  const said = counts.findLast(({ word }) => word < until);
  if (said) return said.count > 1 && Number.isInteger(said.count) ? said : undefined;
  for (let word = until - 1; word >= line.first; word--) {
    const count = smallNumber(wordAt(scene.parse, word));
    if (count !== undefined && count > 1 && Number.isInteger(count)) return { count, word };
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
