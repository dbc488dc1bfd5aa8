/** The line on a terminal that says that a recording runs: elapsed time, level, and a few words. */

import { shortLine } from '../../reports/columns.ts';
import { clipTime } from '../../reports/source-text.ts';
import { meter, type SoundLevel } from './level.ts';

const CELLS = 20;
/** On a narrow terminal the words and the time come first. */
const NARROW_CELLS = 8;
const NARROW = 60;

/** At most `columns` wide: `RECORDING 00:42  ███████░░░░░░░░░░░░░  -18 dB  words`. */
export function recordingLine(
  { seconds, level }: { readonly seconds: number; readonly level: SoundLevel },
  words: string,
  columns: number,
): string {
  const cells = columns < NARROW ? NARROW_CELLS : CELLS;
  const { lit, word } = meter(level, cells);
  const bar = `${'█'.repeat(lit)}${'░'.repeat(cells - lit)}`;
  const loud = word ?? `${Math.round(level.peak)} dB`;
  return shortLine(`RECORDING ${clipTime(seconds)}  ${bar}  ${loud}  ${words}`, columns);
}
