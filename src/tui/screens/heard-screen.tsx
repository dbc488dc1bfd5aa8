import { Box, Text } from 'ink';
import { useContext } from 'react';
import type { Span } from '../../language/notes.ts';
import { plainText } from '../../plain-text.ts';
import { cutLine, cutStart, shortLine, widthOf, wrapped } from '../../reports/columns.ts';
import { otherReadings } from '../../reports/note-doubts.ts';
import { Columns, Line, Paragraph } from '../components/line.tsx';
import { firstShown, Rows } from '../components/rows.tsx';
import { reviewWords } from '../state/review-steps.ts';
import { type NoteLine, shownNotes } from '../state/rows.ts';
import { dayAndClock } from '../state/words.ts';
import type { ScreenProps } from './screen-props.ts';

/** The notes of one memo, why the chosen one is unsure, and its words where they were said. */
export function HeardScreen({ state, height, columns }: ScreenProps) {
  const { memo } = state;
  if (!memo) return <Paragraph text="Choose a memo first." />;
  const notes = shownNotes(state);
  const chosen = notes[state.chosen.heard];
  const around = chosen ? talkAround(memo.text, chosen.span, columns) : undefined;
  const why = chosen && chosen.why.length > 0 ? wrapped(whyUnsure(chosen), columns) : [];
  // Title, gap, why it is unsure, and two lines of talk.
  const listHeight = Math.max(1, height - 4 - Math.min(MOST_WHY, why.length));
  const first = firstShown(state.chosen.heard, notes.length, listHeight);
  const name = `${memo.id}  ${dayAndClock(memo.recordedAt)}  ${plainText(memo.source.name)}`;
  return (
    <Box flexDirection="column">
      <Line bold text={headOf(name, reviewWords(state), columns)} />
      <Box height={listHeight} flexDirection="column">
        <Rows
          lines={notes.slice(first, first + listHeight).map((note) => noteRow(note, columns))}
          chosen={state.chosen.heard - first}
          height={listHeight}
          empty={
            state.unsureAlone
              ? 'No note is unsure any more: s shows all.'
              : 'Nothing was read from this memo.'
          }
        />
      </Box>
      {why.slice(0, MOST_WHY).map(({ text }) => (
        <Line key={text} bold text={text} />
      ))}
      {around ? <Said around={around} /> : null}
    </Box>
  );
}

/** Why a note is unsure, and the key that takes its other reading where it has one. */
function whyUnsure({ why, note }: NoteLine): string {
  const other = note.kind === 'figure' && otherReadings(note) !== '' ? ' (2 takes it)' : '';
  return `unsure: ${why.join('; ')}${other}`;
}

/** Lines for why a note is unsure. */
const MOST_WHY = 2;
/** Below this the time in the recording is left out, and blanks are spared. */
const NARROW = 60;

/** How far one has come stands at the right; on a narrow screen the name gives way to it. */
function headOf(name: string, review: string, columns: number): string {
  if (review === '') return name;
  return `${cutLine(name, Math.max(4, columns - widthOf(review) - 2))}  ${review}`;
}

function noteRow({ at, kind, state, what }: NoteLine, columns: number): string {
  // A figure is known by its value, which must not be what is cut off.
  if (columns < NARROW) return [kind === 'figure' ? '' : kind, state, what].filter(Boolean).join(' ');
  const time = at === '' ? '' : at.padEnd(6);
  return `${time}${kind.padEnd(9)} ${state === '' ? '' : `${state}  `}${what}`;
}

/** Rows for the words of a note: a heading and two lines of talk. */
const SAID = 3;

/** The talk around a note, broken into lines, the words of the note standing out in it. */
function Said({ around: { before, quote, after } }: { readonly around: Around }) {
  const columns = useContext(Columns);
  const [from, to] = [before.length, before.length + quote.length];
  return (
    <Box height={SAID} flexDirection="column">
      <Line text="said" />
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
