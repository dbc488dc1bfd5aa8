import { Box, Text } from 'ink';
import { plainText } from '../../plain-text.ts';
import { Rows } from '../components/rows.tsx';
import { noteLines } from '../state/rows.ts';
import { dayAndClock } from '../state/words.ts';
import type { ScreenProps } from './screen-props.ts';

/** The notes of one memo, and the words of the chosen one where they were said. */
export function HeardScreen({ state, height }: ScreenProps) {
  const { memo } = state;
  if (!memo) return <Text dimColor>Choose a memo first.</Text>;
  const notes = noteLines(memo);
  const chosen = notes[state.chosen.heard];
  const around = chosen ? sentenceAround(memo.text, chosen.quote) : undefined;
  // Title, gap and two lines of talk.
  const listHeight = Math.max(1, height - 4);
  return (
    <Box flexDirection="column">
      <Text bold wrap="truncate-end">
        {`${memo.id}  ${dayAndClock(memo.recordedAt)}  ${plainText(memo.source.name)}`}
      </Text>
      <Box height={listHeight} flexDirection="column">
        <Rows
          lines={notes.map((note) => `${note.at.padEnd(note.at ? 6 : 0)}${note.kind.padEnd(9)} ${note.what}`)}
          chosen={state.chosen.heard}
          height={listHeight}
          empty="Nothing was read from this memo."
        />
      </Box>
      {around ? (
        <Box height={3} flexDirection="column" overflow="hidden">
          <Text dimColor>said</Text>
          <Text wrap="wrap">
            {around.before}
            <Text bold underline>
              {around.quote}
            </Text>
            {around.after}
          </Text>
        </Box>
      ) : null}
    </Box>
  );
}

const REACH = 60;

/** The quote with a little of the talk on both sides, cut at words. */
export function sentenceAround(
  text: string,
  quote: string,
): { before: string; quote: string; after: string } {
  const whole = plainText(text);
  const start = whole.indexOf(quote);
  if (start < 0) return { before: '', quote, after: '' };
  const end = start + quote.length;
  const before = whole.slice(Math.max(0, start - REACH), start).replace(start > REACH ? /^\S*\s/ : /^/, '');
  const after = whole.slice(end, end + REACH).replace(end + REACH < whole.length ? /\s\S*$/ : /$/, '');
  return { before, quote, after };
}
