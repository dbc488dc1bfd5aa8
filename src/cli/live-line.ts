/** The line on a terminal that says that a recording runs: elapsed time, level, the last words. */
import type { ListenEvent } from '../project-api.ts';
import { clipTime } from '../reports/source-text.ts';
import { shortLine } from '../reports/words.ts';
import { meter } from '../speech/microphone/level.ts';

const CELLS = 20;

/** The line for one level, at most `columns` wide: `recording 00:42  ███████░░░░░░░░░░░░░  -18 dB  words`. */
export function recordingLine(
  { seconds, level }: Extract<ListenEvent, { kind: 'level' }>,
  words: string,
  columns: number,
): string {
  const { lit, word } = meter(level, CELLS);
  const bar = `${'█'.repeat(lit)}${'░'.repeat(CELLS - lit)}`;
  const loud = word ?? `${Math.round(level.peak)} dB`;
  return shortLine(`recording ${clipTime(seconds)}  ${bar}  ${loud}  ${words}`, columns);
}
