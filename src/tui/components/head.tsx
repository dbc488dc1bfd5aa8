/** The top lines: which project, how much is in it, and what is on its way in. */
import { Box } from 'ink';
import { useContext } from 'react';
import { plainText } from '../../plain-text.ts';
import { closed, cutLine, cutStart, shortLine, widthOf } from '../../reports/columns.ts';
import { benchLine, isRunning } from '../state/bench.ts';
import type { Job, ScreenState } from '../state/screen-state.ts';
import { Columns, Line } from './line.tsx';

const STAGES = {
  decoding: 'opening',
  listening: 'finding the talk in',
  transcribing: 'hearing',
  reading: 'reading',
} as const;

/** `hearing dinghy.m4a  62 %, about 9 s left, 1 more waiting`; where room is scarce the name is cut. */
export function jobLine(job: Job, waiting: number, columns: number): string {
  const stage = job.progress ? STAGES[job.progress.stage] : 'opening';
  const behind = `${progressWords(job)}${waiting > 0 ? `, ${waiting} more waiting` : ''}`;
  const room = Math.max(LEAST_NAME, columns - widthOf(stage) - 1 - widthOf(behind));
  return `${stage} ${closed(shortLine(job.file.split(/[\\/]/).at(-1) ?? job.file, room))}${behind}`;
}

function progressWords({ progress }: Job): string {
  if (!progress) return '';
  const { fraction, remainingSeconds } = progress;
  const left =
    remainingSeconds === undefined ? '' : `, about ${Math.max(1, Math.round(remainingSeconds))} s left`;
  return `  ${Math.round(fraction * 100)} %${left}`;
}

/** Below this the counts are told in fewer words. */
const NARROW = 60;
/** Less of a project's name says nothing. */
const LEAST_NAME = 8;

export function Head({ state }: { readonly state: ScreenState }) {
  const { data, jobs } = state;
  const columns = useContext(Columns);
  const { memos, findings } = data.counts ?? { memos: data.memos.length, findings: data.findings.length };
  // What was just said clashes before it is taken in.
  const clashes = findings + (isRunning(state.bench) ? (state.bench?.clashes.length ?? 0) : 0);
  const counts = [
    `${memos} ${memos === 1 ? 'memo' : 'memos'}`,
    clashes === 0 ? 'nothing clashes' : `${clashes} to settle`,
    `${data.next.ready.length} ready${columns < NARROW ? '' : ' to do'}`,
  ].join(', ');
  const [job, ...waiting] = jobs;
  const room = Math.max(LEAST_NAME, columns - widthOf(counts) - 2);
  const words = heardWords(state);
  const recording = benchLine(state.bench, columns);
  return (
    <Box flexDirection="column">
      <Line text={`${closed(cutLine(plainText(data.projectName), room))}  ${counts}`} bold />
      {recording === undefined ? null : (
        <Line text={recording} bold loudWord={state.bench?.phase === 'recording'} />
      )}
      {job ? <Line text={jobLine(job, waiting.length, columns)} /> : null}
      {words === '' ? null : <Line text={cutStart(`  ${words}`, columns)} />}
      {!job && state.watched !== undefined ? (
        <Line text={`watching ${plainText(state.watched)}, x stops`} />
      ) : null}
    </Box>
  );
}

/** The words of the file on its way as they come: the last ones are in sight. */
function heardWords({ jobs }: ScreenState): string {
  return plainText(jobs[0]?.progress?.words ?? '').trim();
}

/** How many lines stand above the title. */
export function headRows(state: ScreenState): number {
  const { jobs, watched, bench } = state;
  return [true, isRunning(bench), jobs.length > 0 || watched !== undefined, heardWords(state) !== ''].filter(
    Boolean,
  ).length;
}
