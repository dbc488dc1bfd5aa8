import { Box, Text } from 'ink';
import { useContext } from 'react';
import type { Span } from '../../language/notes.ts';
import { plainText } from '../../plain-text.ts';
import { cutStart, shortLine, widthOf, wrapped } from '../../reports/columns.ts';
import { Columns, Line, Paragraph } from '../components/line.tsx';
import { Rows } from '../components/rows.tsx';
import { noteLines } from '../state/rows.ts';
import { dayAndClock } from '../state/words.ts';
import type { ScreenProps } from './screen-props.ts';

/** The notes of one memo, and the words of the chosen one where they were said. */
export function HeardScreen({ state, height, columns }: ScreenProps) {
  const { memo } = state;
  if (!memo) return <Paragraph dimColor text="Choose a memo first." />;
  const notes = noteLines(memo);
  const chosen = notes[state.chosen.heard];
  const around = chosen ? talkAround(memo.text, chosen.span, columns) : undefined;
  // Title, gap and two lines of talk.
  const listHeight = Math.max(1, height - 4);
  return (
    <Box flexDirection="column">
      <Line bold text={`${memo.id}  ${dayAndClock(memo.recordedAt)}  ${plainText(memo.source.name)}`} />
      <Box height={listHeight} flexDirection="column">
        <Rows
          lines={notes.map((note) => `${note.at.padEnd(note.at ? 6 : 0)}${note.kind.padEnd(9)} ${note.what}`)}
          chosen={state.chosen.heard}
          height={listHeight}
          empty="Nothing was read from this memo."
        />
      </Box>
      {around ? <Said around={around} /> : null}
    </Box>
  );
}

/** Rows for the words of a note: a heading and two lines of talk. */
const SAID = 3;

/** The talk around a note, broken into lines, the words of the note standing out in it. */
function Said({ around: { before, quote, after } }: { readonly around: Around }) {
  const columns = useContext(Columns);
  const [from, to] = [before.length, before.length + quote.length];
  return (
    <Box height={SAID} flexDirection="column">
      <Line dimColor text="said" />
      {wrapped(before + quote + after, columns)
        .slice(0, SAID - 1)
        .map(({ text, start }) => {
          const at = (offset: number) => Math.min(text.length, Math.max(0, offset - start));
          return (
            <Text key={start} wrap="truncate-end">
              {text.slice(0, at(from))}
              <Text bold underline>
                {text.slice(at(from), at(to))}
              </Text>
              {text.slice(at(to))}
            </Text>
          );
        })}
    </Box>
  );
}

/** So many columns of talk are shown on either side. */
const REACH = 60;

export interface Around {
  readonly before: string;
  readonly quote: string;
  readonly after: string;
}

/** More than this is not looked at: what no terminal shows may stand between the words. */
const FAR = 10 * REACH;

/** Of the room for talk, what stands before the words of the note takes so much at most: these must be in sight. */
const SHARE = 0.4;
const LEAST = 8;

/** The words of a span with a little of the talk on both sides, cut between words where it can, with a sign. */
export function talkAround(text: string, { start, end }: Span, columns: number): Around {
  const quote = plainText(text.slice(start, end));
  const room = (SAID - 1) * columns - widthOf(quote);
  const reach = Math.min(REACH, Math.max(LEAST, Math.floor(room * SHARE)));
  return {
    before: lastWords(plainText(text.slice(Math.max(0, start - FAR), start)), reach),
    quote,
    after: firstWords(plainText(text.slice(end, end + FAR))),
  };
}

const firstWords = (text: string) => (/^\s/.test(text) ? ' ' : '') + shortLine(text, REACH);

/** Cut from behind: what stands right before a quote matters most. */
function lastWords(text: string, reach: number): string {
  const near = cutStart(text, reach);
  return near === text ? text : near.replace(/^…\S*\s+(?=\S)/, '…');
}
