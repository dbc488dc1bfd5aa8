import { Box, Text } from 'ink';
import { plainText } from '../../plain-text.ts';
import { cutStart } from '../../reports/columns.ts';
import { findingText } from '../../reports/finding-text.ts';
import { takenBackLine } from '../../reports/live-text.ts';
import { otherReadings } from '../../reports/note-doubts.ts';
import { Line, Paragraph } from '../components/line.tsx';
import { type Bench, heardRow, largeFigure } from '../state/bench.ts';
import { bigRows } from '../state/big-digits.ts';
import type { ScreenProps } from './screen-props.ts';

/** Of the words heard last the end stays in sight, on so many lines; broken between words they need a little more. */
const HEARD_LINES = 2;
const SPARE = 12;
/** Below this height a clash needs the rows that large signs would take. */
const ROOM_FOR_BIG = 13;

/** While a recording runs: the figure heard last, large, in both unit systems, and what clashes with it. */
export function RecordingScreen({ state, height, columns }: ScreenProps) {
  const { bench } = state;
  if (!bench) return <Line text="Press r and talk. Each figure stands here as soon as it is heard." />;
  return (
    <Box flexDirection="column" height={height} overflowY="hidden">
      <Latest bench={bench} height={height} columns={columns} />
      <Clashes bench={bench} />
      {bench.takenBack === undefined ? null : <Line bold text={plainText(takenBackLine(bench.takenBack))} />}
      <Since bench={bench} />
      {bench.words === '' ? null : (
        <Paragraph text={cutStart(`heard: ${plainText(bench.words)}`, HEARD_LINES * columns - SPARE)} />
      )}
      {bench.readBack === undefined ? null : <Line text={`aloud: ${plainText(bench.readBack)}`} />}
      <Before bench={bench} />
    </Box>
  );
}

function Latest({ bench, height, columns }: { readonly bench: Bench } & Omit<ScreenProps, 'state'>) {
  const figure = bench.latest;
  if (!figure) return <Line text={withoutFigure(bench)} />;
  const { subject, number, rest, other } = largeFigure(figure);
  const readings = otherReadings(figure);
  const rows = height >= ROOM_FOR_BIG ? bigRows(number, columns - rest.length - 2) : [];
  const value = number === '' ? rest : `${number} ${rest}`;
  return (
    <Box flexDirection="column" flexShrink={0}>
      <Line bold text={subject} />
      {rows.map((row, index) => (
        // Rows of a picture have no identity of their own.
        // biome-ignore lint/suspicious/noArrayIndexKey: see above
        <Text key={index} bold>
          {index === rows.length - 1 ? `${row}  ${rest}` : row}
        </Text>
      ))}
      {rows.length > 0 ? null : <Line bold text={value} />}
      {other === undefined ? null : <Line bold text={other.startsWith('≈') ? other : `= ${other}`} />}
      {readings === '' ? null : <Line bold text={readings} />}
    </Box>
  );
}

function withoutFigure({ phase, takenBack }: Bench): string {
  if (takenBack !== undefined) return 'No figure stands.';
  return phase === 'over' ? 'No figure was heard.' : 'No figure yet.';
}

/** The newest in full, the others counted: they wait under `c` when the recording is taken in. */
function Clashes({ bench }: { readonly bench: Bench }) {
  const [newest, ...others] = bench.clashes;
  if (!newest) return null;
  const [head, ...lines] = findingText({ ...newest, id: 'just said' }).split('\n');
  return (
    <Box flexDirection="column" flexShrink={0}>
      <Line bold loudWord text={`CLASH  ${head}`} />
      {lines.map((line) => (
        <Paragraph key={line} text={line} />
      ))}
      {others.length > 0 ? <Line text={`and ${others.length} more`} /> : null}
    </Box>
  );
}

/** What was heard after the large figure: it is what was said last. */
function Since({ bench }: { readonly bench: Bench }) {
  const [newest] = bench.notes;
  if (!newest || newest.kind === 'figure') return null;
  return <Line bold text={heardRow(newest)} />;
}

/** All that was heard before, the newest first; what there is no room for is cut off below. */
function Before({ bench }: { readonly bench: Bench }) {
  const [, ...before] = bench.notes;
  return (
    <Box flexDirection="column" flexShrink={0}>
      {before
        .filter((note) => note !== bench.latest)
        .map((note) => (
          <Line key={note.id} text={`before  ${heardRow(note)}`} />
        ))}
    </Box>
  );
}
