/** The top lines: which project, how much is in it, and what is on its way in. */
import { Box, Text } from 'ink';
import { plainText } from '../../plain-text.ts';
import type { Job, ScreenState } from '../state/screen-state.ts';

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

export function Head({ state }: { readonly state: ScreenState }) {
  const { data, jobs } = state;
  const counts = [
    `${data.memos.length} ${data.memos.length === 1 ? 'memo' : 'memos'}`,
    data.findings.length === 0 ? 'nothing clashes' : `${data.findings.length} to settle`,
    `${data.next.ready.length} ready to do`,
  ].join(', ');
  const [job, ...waiting] = jobs;
  return (
    <Box flexDirection="column">
      <Text wrap="truncate-end">
        <Text bold>{plainText(data.projectName)}</Text>
        {`  ${counts}`}
      </Text>
      {job ? (
        <Text wrap="truncate-end">
          {jobLine(job) + (waiting.length > 0 ? `, ${waiting.length} more waiting` : '')}
          {job.progress?.words ? <Text dimColor>{`  ${plainText(job.progress.words)}`}</Text> : null}
        </Text>
      ) : null}
    </Box>
  );
}
