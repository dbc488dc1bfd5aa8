import { Box } from 'ink';
import { Line, Paragraph } from '../components/line.tsx';
import { Rows } from '../components/rows.tsx';
import { chosenWords, taskCounts, taskLines } from '../state/task-rows.ts';
import type { ScreenProps } from './screen-props.ts';

/** Rows for the chosen task in full. */
const DETAIL = 4;
/** On a small terminal the list keeps the greater part. */
const DETAIL_SHARE = 1 / 3;

/** Ready, waiting and done today, snags, and everything known of the chosen one. */
export function TasksScreen({ state, height }: ScreenProps) {
  const chosen = chosenWords(state);
  const detail = Math.max(1, Math.min(DETAIL, Math.floor(height * DETAIL_SHARE)));
  const listHeight = Math.max(1, height - detail - 1);
  return (
    <Box flexDirection="column">
      <Line text={taskCounts(state)} />
      <Box height={listHeight} flexDirection="column">
        <Rows
          lines={taskLines(state)}
          chosen={state.chosen.tasks}
          height={listHeight}
          empty="No task is open. Press a and type one."
        />
      </Box>
      {chosen ? <Paragraph text={chosen} height={detail} /> : null}
    </Box>
  );
}
