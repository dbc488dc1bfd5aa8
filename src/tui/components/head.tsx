/** The top lines: which project, how much is in it, and what is on its way in. */
import { Box } from 'ink';
import { useContext } from 'react';
import { plainText } from '../../plain-text.ts';
import { closed, cutLine, widthOf } from '../../reports/columns.ts';
import { benchLine, isRunning } from '../state/bench.ts';
import type { Job, ScreenState } from '../state/screen-state.ts';
import { Columns, Line } from './line.tsx';

const STAGES = {
  decoding: 'opening',
  listening: 'finding the talk in',
  transcribing: 'hearing',
  reading: 'reading',
} as const;

/** `hearing dinghy.m4a  62 %, about 9 s left`. */
export function jobLine(job: Job): string {
  const name = plainText(job.file.split(/[\\/]/).at(-1) ?? job.file);
  if (!job.progress) return `opening ${name}`;
  const { stage, fraction, remainingSeconds } = job.progress;
  const left =
    remainingSeconds === undefined ? '' : `, about ${Math.max(1, Math.round(remainingSeconds))} s left`;
  return `${STAGES[stage]} ${name}  ${Math.round(fraction * 100)} %${left}`;
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
  const recording = benchLine(state.bench, columns);
  return (
    <Box flexDirection="column">
      <Line text={`${closed(cutLine(plainText(data.projectName), room))}  ${counts}`} bold />
      {recording === undefined ? null : (
        <Line text={recording} bold loudWord={state.bench?.phase === 'recording'} />
      )}
      {job ? <Line text={headOfJobs(job, waiting.length)} /> : null}
      {!job && state.watched !== undefined ? (
        <Line text={`watching ${plainText(state.watched)}, x stops`} />
      ) : null}
    </Box>
  );
}

/** What is on its way, how much waits behind it, and the words so far. */
function headOfJobs(job: Job, waiting: number): string {
  const words = job.progress?.words ? `  ${plainText(job.progress.words)}` : '';
  return `${jobLine(job)}${waiting > 0 ? `, ${waiting} more waiting` : ''}${words}`;
}
