import type { Check, Given, Range, Worked } from './check.ts';
import { exactSize, wholeNumber } from './exact-size.ts';
import { countPieces } from './pieces-from-stock.ts';
import { maybe, one } from './ranges.ts';
import { saidCount } from './said-range.ts';

const TURNED = 'pieces may turn';
const ALONG = 'grain along the length';

/**
 * The fewest sheets that could hold the pieces, by area, and how many do it in plain rows. Between the two only a cutting
 * plan decides, which this is not.
 * Formula: by area, pieces x (length + kerf)(width + kerf) / (sheet length + kerf)(sheet width + kerf), rounded up; in
 * rows, pieces from stock in both directions. Source: arithmetic; common practice, no source.
 */
export const SHEETS_FOR_PIECES: Check = {
  name: 'sheets for pieces',
  says: 'the least number of sheets that pieces of one size can come out of: a lower bound, not a cutting plan',
  formula:
    'by area: pieces x (length + kerf)(width + kerf) / (sheet length + kerf)(sheet width + kerf), rounded up; in rows: pieces from stock in both directions',
  source: 'arithmetic',
  inputs: [
    { name: 'sheet length', kind: 'length', says: 'length of a sheet' },
    { name: 'sheet width', kind: 'length', says: 'width of a sheet' },
    { name: 'piece length', kind: 'length', says: 'finished length of a piece' },
    { name: 'piece width', kind: 'length', says: 'finished width of a piece' },
    { name: 'pieces', kind: 'ratio', unit: '1', says: 'how many pieces are wanted' },
    { name: 'kerf', kind: 'length', says: 'width that the saw takes', optional: true, most: 0.05 },
    { name: 'sheets', kind: 'ratio', unit: '1', says: 'how many sheets there are', optional: true },
  ],
  options: [{ name: 'grain', says: 'whether pieces may be turned', of: [TURNED, ALONG] }],
  gives: 'sheets at least',
  run: sheetsOf,
};

/** Sizes in metres. */
interface Layout {
  readonly sheet: readonly [length: number, width: number];
  readonly piece: readonly [length: number, width: number];
  readonly kerf: number;
  readonly mayTurn: boolean;
}

function sheetsOf(given: Given): Worked {
  const pieces = wholeNumber(one(given, 'pieces'));
  if (pieces === undefined) return { verdict: 'refused', why: 'the count of pieces must be a whole number' };
  const inRows = over(given, rowsOf);
  if (inRows.low < 1) {
    return {
      verdict: 'broken',
      why: 'at worst not one piece comes out of a sheet',
      results: [],
      notes: notesOf(given),
    };
  }
  const needed = over(given, (layout) => -sheetsByArea(layout, pieces));
  const least = { low: -needed.high, mid: -needed.mid, high: -needed.low };
  const enough = sheetsAt(inRows, pieces);
  return {
    ...judged(maybe(given, 'sheets'), least, enough, pieces),
    results: [
      { name: 'sheets at least', kind: 'ratio', range: least, unit: '1' },
      { name: 'sheets in plain rows', kind: 'ratio', range: enough, unit: '1' },
      { name: 'pieces from a sheet in plain rows', kind: 'ratio', range: inRows, unit: '1' },
    ],
    notes: notesOf(given),
  };
}

function notesOf(given: Given): readonly string[] {
  return [
    'a lower bound only: no cutting plan was made, and faults and trim are not counted',
    ...(maybe(given, 'kerf') ? [] : ['no kerf was given: counted as if the saw took nothing']),
    given.options.get('grain') === ALONG ? 'pieces keep the grain along the sheet' : 'pieces may be turned',
  ];
}

/** Works something out that grows with the sheet and shrinks with the piece and the kerf, over the ranges of all. */
function over(given: Given, count: (layout: Layout) => number): Range {
  const at = (big: keyof Range, small: keyof Range) => {
    const size = (name: string, end: keyof Range) => one(given, name)[end];
    return count({
      sheet: [size('sheet length', big), size('sheet width', big)],
      piece: [size('piece length', small), size('piece width', small)],
      kerf: maybe(given, 'kerf')?.[small] ?? 0,
      mayTurn: given.options.get('grain') !== ALONG,
    });
  };
  return { low: at('low', 'high'), mid: at('mid', 'mid'), high: at('high', 'low') };
}

/** Pieces that a sheet gives when all lie one way in rows: the better of both ways where they may turn. */
function rowsOf({ sheet, piece: [length, width], kerf, mayTurn }: Layout): number {
  const rows = (along: number, across: number) =>
    countPieces(sheet[0], along, kerf) * countPieces(sheet[1], across, kerf);
  return mayTurn ? Math.max(rows(length, width), rows(width, length)) : rows(length, width);
}

function sheetsByArea({ sheet, piece, kerf }: Layout, pieces: number): number {
  const cut = exactSize(kerf);
  const area = ([length, width]: readonly [number, number]) =>
    exactSize(length).add(cut).mul(exactSize(width).add(cut));
  return area(piece).mul(pieces).div(area(sheet)).ceil().valueOf();
}

/** Sheets that hold the pieces in plain rows. Fewer to a sheet at worst are more sheets at worst. */
function sheetsAt(inRows: Range, pieces: number): Range {
  const sheets = (perSheet: number) => Math.ceil(pieces / perSheet);
  return { low: sheets(inRows.high), mid: sheets(inRows.mid), high: sheets(inRows.low) };
}

const isOne = ({ low, high }: Range): boolean => low === 1 && high === 1;
const sheetWords = (count: Range): string => (isOne(count) ? 'one sheet' : `${saidCount(count)} sheets`);
const there = (count: Range): string => `there ${isOne(count) ? 'is' : 'are'} ${saidCount(count)}`;

function judged(sheets: Range | undefined, least: Range, enough: Range, pieces: number) {
  const bound = `${pieces} pieces take at least ${sheetWords(least)}`;
  const rows = `${sheetWords(enough)} ${isOne(enough) ? 'does' : 'do'} in plain rows`;
  if (!sheets) return { verdict: 'told', why: `${bound}; ${rows}` } as const;
  if (sheets.low < least.high) return { verdict: 'broken', why: `${bound}, ${there(sheets)}` } as const;
  if (sheets.low >= enough.high) return { verdict: 'holds', why: `${rows}, ${there(sheets)}` } as const;
  const why = `${bound} and ${rows}: with ${sheetWords(sheets)} a cutting plan decides`;
  return { verdict: 'told', why } as const;
}
