/**
 * The cut list: which stretch of which clip stands where in the finished film. A plain table of our own, a line for each
 * stretch in programme order: `clip,in,out` and, where the chapter is to be called something, `title`.
 */
import { readDelimited } from '../delimited.ts';
import { oneLine } from '../words.ts';

export interface Cut {
  /** File name of the clip, or the id of its memo. */
  readonly clip: string;
  /** Clip time, in milliseconds from the start of the clip. */
  readonly inMs: number;
  readonly outMs: number;
  readonly title?: string;
  /** Line of the cut list. */
  readonly line: number;
}

export type ReadCuts =
  | { readonly ok: true; readonly cuts: readonly Cut[] }
  | { readonly ok: false; readonly faults: readonly string[] };

const COLUMNS = ['clip', 'in', 'out', 'title'] as const;
type Column = (typeof COLUMNS)[number];

/** `m:ss`, `h:mm:ss` or plain seconds, each with up to three decimals, as milliseconds. */
export function clipMs(text: string): number | undefined {
  const parts = /^(?:(?:(\d{1,2}):)?(\d{1,2}):)?(\d+)(?:\.(\d{1,3}))?$/.exec(text.trim());
  if (!parts) return undefined;
  const [, hours = '0', minutes, seconds = '0', decimals = ''] = parts;
  if (minutes !== undefined && (seconds.length !== 2 || Number(seconds) > 59)) return undefined;
  if (parts[1] !== undefined && (Number(minutes) > 59 || minutes?.length !== 2)) return undefined;
  const whole = (Number(hours) * 60 + Number(minutes ?? 0)) * 60 + Number(seconds);
  return whole > 360_000 ? undefined : whole * 1000 + Number(decimals.padEnd(3, '0'));
}

/** Where each column stands, by the first line. */
function columnsOf(cells: readonly string[]): ReadonlyMap<Column, number> {
  const names = cells.map((name) => oneLine(name).toLowerCase());
  return new Map(
    COLUMNS.map((column) => [column, names.indexOf(column)] as const).filter(([, at]) => at >= 0),
  );
}

function timeFault(column: Column, text: string): string {
  const frames = /^\d+:\d+:\d+[:;]\d+$/.test(text.trim()) ? '; frames have no rate here' : '';
  return `${column}: expected a time in the clip such as 0:12.5 or 1:02:17, got "${oneLine(text)}"${frames}`;
}

/** Reads a cut list; every fault is told with its line, and none is passed over. */
export function readCutList(text: string): ReadCuts {
  const [head, ...rows] = readDelimited(text.replace(/^\uFEFF/, ''));
  const columns = columnsOf(head?.cells ?? []);
  const missing = (['clip', 'in', 'out'] as const).filter((column) => !columns.has(column));
  if (missing.length > 0) {
    return {
      ok: false,
      faults: [`the first line names no column ${missing.join(', ')}; it is: clip,in,out`],
    };
  }
  const faults: string[] = [];
  const cuts = rows.flatMap(({ line, cells }): readonly Cut[] => {
    const cell = (column: Column) => cells[columns.get(column) ?? -1] ?? '';
    const clip = oneLine(cell('clip'));
    const [inMs, outMs] = [clipMs(cell('in')), clipMs(cell('out'))];
    const found = [
      ...(clip === '' ? ['clip: no name'] : []),
      ...(inMs === undefined ? [timeFault('in', cell('in'))] : []),
      ...(outMs === undefined ? [timeFault('out', cell('out'))] : []),
      ...(inMs !== undefined && outMs !== undefined && outMs <= inMs ? ['out is not after in'] : []),
    ];
    faults.push(...found.map((fault) => `line ${line}: ${fault}`));
    if (inMs === undefined || outMs === undefined || found.length > 0) return [];
    const title = oneLine(cell('title'));
    return [{ clip, inMs, outMs, line, ...(title === '' ? {} : { title }) }];
  });
  if (faults.length > 0) return { ok: false, faults };
  return cuts.length > 0 ? { ok: true, cuts } : { ok: false, faults: ['it holds no cut'] };
}
