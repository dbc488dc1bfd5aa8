/** Counts that run into the size behind them: "two twelve ply sheets" are two, and no 212. */
import type { Token } from '../tokens.ts';
import { DIGIT_WORDS } from './number-words.ts';
import { readSmall } from './spoken.ts';

/** How many, and the token that its size begins with. */
interface Counted {
  readonly to: number;
  readonly value: number;
}

/** Units of length that pieces are named by. */
const PIECE_UNIT = /^(?:mm|mils?|cm|m|millimet(?:re|er)s?|centimet(?:re|er)s?|met(?:re|er)s?|inch|foot)$/;

/** Sheets are counted before their gauge: "two twelve ply sheets". Gauges that are sold, in millimetres; common practice. */
const GAUGES: ReadonlySet<number> = new Set([3, 4, 6, 9, 10, 12, 15, 16, 18, 19, 21, 22, 24, 25]);
const BOARD_STUFF =
  /^(?:ply|plywood|mdf|osb|chipboard|hardboard|plasterboard|board|birch|marine|shuttering)$/;
/** Stuff that comes in sheets alone: "two twelve ply" is no size of it. */
const SHEET_ALONE = /^(?:ply|plywood|mdf|osb|chipboard|hardboard|plasterboard)$/;
const SHEET = /^(?:board|sheet|panel)$/;
const BAG = /^(?:bag|sack|tub|bucket|tin)$/;
const MILLIMETRES = /^(?:mm|mils?|millimet(?:re|er)s?)$/;
const PIECE = /^[a-z]{3,}s$/;
const NO_PIECE = /^(?:this|across|plus|less|was|has|its|thus)$/;
const FASTENERS =
  /^(?:screws|bolts|nails|coachscrews|setscrews|rivets|staples|washers|pegs|dowels|pins|brads|hinges|brackets|hangers|anchors|plugs|studs)$/;

const isPiece = (word: string): boolean => PIECE.test(word) && !NO_PIECE.test(word);

/** Pieces that are named by how long they are: "twenty four 40 mil lengths" may be 2440 long. */
const BY_LENGTH =
  /^(?:lengths|pieces|sections|runs|rafters|studs|joists|purlins|poles|posts|legs|sides|battens|bars)$/;

/**
 * "Six 90 mm screws", "twenty five 90 mm screws": a recogniser writes small numbers in words and sizes in figures, and
 * pieces follow their size. "Six 90 mm" alone may be 690.
 */
function countsPieces(tokens: readonly Token[], from: number): Counted | undefined {
  const pair = readSmall(tokens, from);
  if (!pair || pair.value < 2 || tokens[from]?.kind === 'number') return undefined;
  const size = tokens[pair.to];
  if (size?.kind !== 'number' || !/^[1-9]\d{1,3}$/.test(size.text)) return undefined;
  if (!PIECE_UNIT.test(tokens[pair.to + 1]?.word ?? '')) return undefined;
  const [next, after] = [tokens[pair.to + 2]?.word ?? '', tokens[pair.to + 3]?.word ?? ''];
  const isOfPieces = isPiece(next) || (BOARD_STUFF.test(next) && isPiece(after));
  const counts = isOfPieces && (pair.value < 10 || FASTENERS.test(next) || !BY_LENGTH.test(next));
  return counts ? pair : undefined;
}

/** "Four 90 by 45 rails", "six 2440 by 1220 sheets": how many, and the section of each in figures. */
function countsSections(tokens: readonly Token[], from: number): Counted | undefined {
  const count = readSmall(tokens, from);
  if (!count || count.value < 2 || tokens[from]?.kind === 'number') return undefined;
  const [size, by, other] = [0, 1, 2].map((step) => tokens[count.to + step]);
  const isSection =
    size?.kind === 'number' && /^(?:by|x|×)$/.test(by?.word ?? '') && other?.kind === 'number';
  if (!isSection) return undefined;
  const at = count.to + (MILLIMETRES.test(tokens[count.to + 3]?.word ?? '') ? 4 : 3);
  const things = tokens.slice(at, at + 3);
  const last = things.findIndex(({ kind, word }) => kind !== 'word' || isPiece(word));
  return last >= 0 && isPiece(things[last]?.word ?? '') ? count : undefined;
}

/** "A hundred twelve mil bolts", "two hundred six mil screws": who says 112 says "a hundred and twelve". */
function countsHundreds(tokens: readonly Token[], from: number): Counted | undefined {
  const many = tokens[from]?.word === 'a' ? 1 : DIGIT_WORDS.get(tokens[from]?.word ?? '');
  if (!many || tokens[from + 1]?.word !== 'hundred') return undefined;
  const size = readSmall(tokens, from + 2);
  if (!size || size.value >= 20 || !MILLIMETRES.test(tokens[size.to]?.word ?? '')) return undefined;
  return FASTENERS.test(tokens[size.to + 1]?.word ?? '') ? { to: from + 2, value: many * 100 } : undefined;
}

/** "Two twelve ply sheets", "three eighteen mil boards": how many, and then the gauge of each. */
function countsSheets(tokens: readonly Token[], from: number): Counted | undefined {
  const value = DIGIT_WORDS.get(tokens[from]?.word ?? '') ?? 0;
  if (value < 2) return undefined;
  const gauge = readSmall(tokens, from + 1);
  if (!gauge || gauge.value < 10 || !GAUGES.has(gauge.value)) return undefined;
  const at = MILLIMETRES.test(tokens[gauge.to]?.word ?? '') ? gauge.to + 1 : gauge.to;
  const isSheet =
    SHEET_ALONE.test(tokens[at]?.word ?? '') ||
    (BOARD_STUFF.test(tokens[at]?.word ?? '') && isPiece(tokens[at + 1]?.word ?? '')) ||
    /^(?:sheets|boards|panels)$/.test(tokens[at]?.word ?? '');
  return isSheet ? { to: from + 1, value } : undefined;
}

const TELLS_SIZE = /^(?:the|a|an|this|that|is|'s|are|was|be|at|to|by|x|of|about)$/;

/**
 * "I need one eighteen mil board", "one twenty kilo bag of plaster": one of what is sold by its gauge or its mass. "A one
 * eighteen mil board" and "it's one twenty" are told by their size.
 */
function countsOne(tokens: readonly Token[], from: number): Counted | undefined {
  if (tokens[from]?.word !== 'one' || TELLS_SIZE.test(tokens[from - 1]?.word ?? '')) return undefined;
  const size = readSmall(tokens, from + 1);
  if (!size || size.value < 10) return undefined;
  const [unit, next, after] = [0, 1, 2].map((step) => tokens[size.to + step]?.word ?? '');
  const isBag = /^(?:kilo|kilogram|kg|litre|liter)$/.test(unit ?? '') && BAG.test(next ?? '');
  const isSheet =
    MILLIMETRES.test(unit ?? '') &&
    GAUGES.has(size.value) &&
    (SHEET_ALONE.test(next ?? '') || SHEET.test(next ?? '') || SHEET.test(after ?? ''));
  return isBag || isSheet ? { to: from + 1, value: 1 } : undefined;
}

/** The count in words at a token where the words of a size follow it without a pause; undefined where none is told. */
export function countBeforeSize(tokens: readonly Token[], from: number): Counted | undefined {
  return (
    countsPieces(tokens, from) ??
    countsSheets(tokens, from) ??
    countsSections(tokens, from) ??
    countsHundreds(tokens, from) ??
    countsOne(tokens, from)
  );
}
