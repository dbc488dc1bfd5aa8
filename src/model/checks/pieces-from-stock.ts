import type { Check, Given, Range, Result, Say, Worked } from './check.ts';
import { exactSize, wholeNumber } from './exact-size.ts';
import { exactRange, maybe, one } from './ranges.ts';
import { saidCount } from './said-range.ts';

/**
 * How many pieces of one length come out of a length of stock, the saw's cut counted, in one direction.
 * Formula: n pieces need n - 1 cuts: n = whole part of (stock + kerf) / (piece + kerf). Source: arithmetic; that the kerf
 * counts, http://www.woodworkersjournal.com/using-cutting-diagrams/
 */
export const PIECES_FROM_STOCK: Check = {
  name: 'pieces from stock',
  says: 'how many pieces come out of a length of stock with the width of the cut counted',
  formula: 'whole part of (stock + kerf) / (piece + kerf): n pieces need n - 1 cuts between them',
  source: 'arithmetic; that the kerf counts: http://www.woodworkersjournal.com/using-cutting-diagrams/',
  inputs: [
    { name: 'stock', kind: 'length', says: 'length that is cut up' },
    { name: 'piece', kind: 'length', says: 'finished length of one piece' },
    { name: 'kerf', kind: 'length', says: 'width that the saw takes', optional: true, most: 0.05 },
    { name: 'wanted', kind: 'ratio', unit: '1', says: 'how many pieces are wanted', optional: true },
  ],
  gives: 'pieces',
  run: piecesOf,
};

interface Cutting {
  readonly stock: Range;
  readonly piece: Range;
  /** Undefined while nobody has said what saw cuts it. */
  readonly kerf?: Range;
}

/**
 * Pieces of one length, a kerf apart, that a stock gives: exact, so that a stock of whole pieces and cuts gives them all.
 * Sizes in metres; the kerf may be nought.
 */
export function countPieces(stock: number, piece: number, kerf: number): number {
  const cut = exactSize(kerf);
  return exactSize(stock).add(cut).div(exactSize(piece).add(cut)).floor().valueOf();
}

function piecesOf(given: Given): Worked {
  const kerf = maybe(given, 'kerf');
  const cutting = { stock: one(given, 'stock'), piece: one(given, 'piece'), ...(kerf ? { kerf } : {}) };
  const wanted = maybe(given, 'wanted');
  const count = wanted && wholeNumber(wanted);
  if (wanted && count === undefined)
    return { verdict: 'refused', why: 'the count wanted must be a whole number' };
  const pieces = countOver(cutting, kerf ?? exactRange(0));
  const { verdict, why } = judged(given.say, cutting, pieces, count);
  const notes = kerf ? [] : ['no kerf was given: counted as if the saw took nothing'];
  return {
    verdict,
    why,
    results: resultsOf(cutting, pieces),
    notes: [...notes, 'one direction; squaring the ends and faults in the stock are not counted'],
  };
}

function countOver({ stock, piece }: Cutting, kerf: Range): Range {
  return {
    low: countPieces(stock.low, piece.high, kerf.high),
    mid: countPieces(stock.mid, piece.mid, kerf.mid),
    high: countPieces(stock.high, piece.low, kerf.low),
  };
}

function judged(say: Say, cutting: Cutting, pieces: Range, wanted: number | undefined) {
  const [stock, piece] = [say(cutting.stock.mid, 'length'), say(cutting.piece.mid, 'length')];
  const saw = cutting.kerf ? `, with a ${say(cutting.kerf.mid, 'length')} kerf` : '';
  const gives = `${stock} gives ${saidCount(pieces)} x ${piece}`;
  if (wanted === undefined) return { verdict: 'told', why: `${gives}${saw}` } as const;
  if (pieces.low < wanted) return { verdict: 'broken', why: `${gives}, not ${wanted}${saw}` } as const;
  const most = mostKerf(cutting, wanted);
  if (cutting.kerf || most === undefined) return { verdict: 'holds', why: `${gives}${saw}` } as const;
  if (most > 0)
    return { verdict: 'told', why: `${gives} with a kerf of up to ${say(most, 'length')}` } as const;
  const why = `${wanted} x ${piece} is all of ${stock}: nothing is left for the cuts`;
  return { verdict: 'broken', why } as const;
}

/** The widest cut that still leaves the count, at the worst of the sizes; undefined for one piece, which needs none. */
function mostKerf({ stock, piece }: Cutting, wanted: number): number | undefined {
  if (wanted < 2) return undefined;
  const spare = exactSize(stock.low).sub(exactSize(piece.high).mul(wanted));
  return spare.div(wanted - 1).valueOf();
}

function resultsOf({ stock, piece, kerf }: Cutting, pieces: Range): readonly Result[] {
  const cut = kerf?.mid ?? 0;
  const used = exactSize(piece.mid).add(exactSize(cut)).mul(pieces.mid);
  // The last cut may run off the end of the stock.
  const left = Math.max(0, exactSize(stock.mid).sub(used).valueOf());
  return [
    { name: 'pieces', kind: 'ratio', range: pieces, unit: '1' },
    { name: 'left of the stock', kind: 'length', range: exactRange(left) },
  ];
}
