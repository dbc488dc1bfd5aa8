/** A line on a terminal that says where a long job stands. Elsewhere nothing is printed. */
import { shortLine } from '../reports/columns.ts';
import type { TakeProgress } from '../speech/transcript.ts';
import { terminalLine } from './terminal-line.ts';

const BAR_CELLS = 20;
const STAGES: Readonly<Record<TakeProgress['stage'], string>> = {
  decoding: 'decoding',
  listening: 'listening',
  transcribing: 'transcribing',
  reading: 'reading',
};

/** The line for one state, at most `columns` wide. */
export function progressLine(name: string, progress: TakeProgress, columns: number): string {
  const fraction = Math.min(1, Math.max(0, progress.fraction));
  const full = Math.round(fraction * BAR_CELLS);
  const bar = `${'█'.repeat(full)}${'░'.repeat(BAR_CELLS - full)}`;
  const left =
    progress.remainingSeconds === undefined ? '' : `  ${Math.ceil(progress.remainingSeconds)} s left`;
  const words = progress.words ? `  ${progress.words}` : '';
  return shortLine(
    `${name}  ${STAGES[progress.stage]}  ${bar} ${Math.floor(fraction * 100)} %${left}${words}`,
    columns,
  );
}

export interface ProgressLine {
  readonly show: (name: string, progress: TakeProgress) => void;
  readonly clear: () => void;
}

/** A progress line on standard error, or nothing where that is no terminal. */
export function progressOnTerminal(): ProgressLine {
  const line = terminalLine();
  return {
    show: (name, progress) => line.draw(progressLine(name, progress, line.columns)),
    clear: line.clear,
  };
}
