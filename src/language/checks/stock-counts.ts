/**
 * Reads how many pieces are to come out of a length or a sheet: "four shelves at 610 out of a 2440 sheet", "I should get
 * four out of a sheet". What was got already, and what nobody counts on, is left.
 */
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
  / (?:should|can|could|want|wants|need|needs|hope|hoping|reckon|reckons|expect|'ll|will|gonna|going to|trying to|plan|planning|must|aim|figure|supposed to|have to|has to|got to|ought to|enough for) /;
const NOT_COUNTED_ON =
  / (?:n't|not|never|no|only|if|unless|would have|could have|should have|[a-z]+n't) | (?:got|cut|made|had) (?:#|all|me|two|three|four|five|six|seven|eight|nine|ten) /;

/** Reads the counts of one memo, in order of speech. */
export function readStockCounts(scene: CheckScene): readonly CheckNote[] {
  return scene.lines.flatMap((line) => stockCountIn(scene, line) ?? []);
}

function stockCountIn(scene: CheckScene, line: Line): CheckNote | undefined {
  if (line.asks || NOT_COUNTED_ON.test(line.words)) return undefined;
  const stockAt = stockWord(scene, line);
  if (!stockAt) return undefined;
  const wanted = countBefore(scene, line, stockAt.from);
  if (!wanted || !(COUNTED_ON.test(line.words) || wanted.word <= line.first + 2)) return undefined;
  const lengths = figuresOf(scene, line, 'length').map((figure) => ({
    figure,
    at: wordOfFigure(scene, figure),
  }));
  const stock = lengths.find(({ at }) => at > stockAt.from && at <= stockAt.head + 2);
  const piece = lengths.find(({ at }) => at > wanted.word && at < stockAt.from)?.figure;
  const sized = piece ? written(piece) : pieceBefore(scene, line);
  const kerf = kerfOf(scene, line);
  const inputs = [
    input('stock', stock ? written(stock.figure) : `${wordAt(scene.parse, stockAt.head)} length`),
    ...(sized === undefined ? [] : [input('piece', sized)]),
    ...kerf,
    input('wanted', String(wanted.count)),
  ];
  return checkNote(scene, line, { check: 'pieces from stock', inputs });
}

/** "Out of a sheet", "from one 2.4 metre length": where the words begin and where the stock's name is. */
function stockWord(
  scene: RecordScene,
  line: Line,
): { readonly from: number; readonly head: number } | undefined {
  const found = SOURCE.exec(line.words);
  if (!found) return undefined;
  const from = wordAtOffset(line, found.index + 1);
  const head = phrasesOf(scene, line).find(
    (phrase) => phrase.last > from && phrase.last <= from + 7 && STOCK.has(singular(phrase.head)),
  );
  return head && { from, head: head.last };
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
