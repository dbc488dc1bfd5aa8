import { Box } from 'ink';
import { Line, Paragraph } from '../components/line.tsx';
import { Rows } from '../components/rows.tsx';
import { transcriptRow, transcriptWords } from '../state/transcript-steps.ts';
import type { ScreenProps } from './screen-props.ts';

/** Of the height, the list of transcripts takes so much at most: the words are what is decided by. */
const LIST_SHARE = 1 / 3;

/** What each engine heard in a memo, the words of the marked one beneath. */
export function TranscriptsScreen({ state, height }: ScreenProps) {
  const { memo, transcripts } = state;
  if (!memo || !transcripts) return <Paragraph text="Reading the transcripts." />;
  const listHeight = Math.max(1, Math.min(transcripts.length, Math.floor(height * LIST_SHARE)));
  const wordsHeight = Math.max(1, height - listHeight - 2);
  return (
    <Box flexDirection="column">
      <Line bold text={`memo ${memo.id.slice(1)}: its notes are read from the one with *`} />
      {transcripts.length === 0 ? null : (
        <Box height={listHeight} flexDirection="column">
          <Rows
            lines={transcripts.map(transcriptRow)}
            chosen={state.chosen.transcripts}
            height={listHeight}
            empty=""
          />
        </Box>
      )}
      <Line text="" />
      {transcriptWords(state)
        .split('\n')
        .map((text) => (
          <Paragraph key={text} text={text} height={wordsHeight} />
        ))}
    </Box>
  );
}
