import { Box, Text } from 'ink';
import { plainText } from '../../plain-text.ts';
import { findingText } from '../../reports/finding-text.ts';
import { figureHeardLine } from '../../reports/live-text.ts';
import { type Bench, largeFigure } from '../state/bench.ts';
import { bigRows } from '../state/big-digits.ts';
import type { ScreenProps } from './screen-props.ts';

/** Below this height a clash needs the rows that large signs would take. */
const ROOM_FOR_BIG = 13;

/** While a recording runs: the figure heard last, large, in both unit systems, and what clashes with it. */
export function RecordingScreen({ state, height, columns }: ScreenProps) {
  const { bench } = state;
  if (!bench) return <Text dimColor>Press r and talk. Each figure stands here as soon as it is heard.</Text>;
  return (
    <Box flexDirection="column" height={height} overflow="hidden">
      <Latest bench={bench} height={height} columns={columns} />
      <Clashes bench={bench} />
      <Before bench={bench} />
      {bench.words === '' ? null : (
        <Text dimColor wrap="truncate-end">
          {`heard: ${plainText(bench.words)}`}
        </Text>
      )}
    </Box>
  );
}

function Latest({ bench, height, columns }: { readonly bench: Bench } & Omit<ScreenProps, 'state'>) {
  const [figure] = bench.figures;
  if (!figure)
    return <Text dimColor>{bench.phase === 'over' ? 'No figure was heard.' : 'No figure yet.'}</Text>;
  const { subject, number, rest, other } = largeFigure(figure);
  const rows = height >= ROOM_FOR_BIG ? bigRows(number, columns - rest.length - 2) : [];
  const value = number === '' ? rest : `${number} ${rest}`;
  return (
    <Box flexDirection="column" flexShrink={0}>
      <Text bold wrap="truncate-end">
        {subject}
      </Text>
      {rows.map((row, index) => (
        // Rows of a picture have no identity of their own.
        // biome-ignore lint/suspicious/noArrayIndexKey: see above
        <Text key={index} bold>
          {index === rows.length - 1 ? `${row}  ${rest}` : row}
        </Text>
      ))}
      {rows.length > 0 ? null : (
        <Text bold wrap="truncate-end">
          {value}
        </Text>
      )}
      {other === undefined ? null : (
        <Text bold wrap="truncate-end">
          {`= ${other}`.replace('= ≈', '≈')}
        </Text>
      )}
    </Box>
  );
}

/** The newest in full, the others counted: they wait under `c` when the recording is taken in. */
function Clashes({ bench }: { readonly bench: Bench }) {
  const [newest, ...others] = bench.clashes;
  if (!newest) return null;
  const [head, ...lines] = findingText({ ...newest, id: 'just said' }).split('\n');
  return (
    <Box flexDirection="column" flexShrink={0}>
      <Text bold color="red" wrap="truncate-end">
        {`CLASH  ${head}`}
      </Text>
      {lines.map((line) => (
        <Text key={line}>{line}</Text>
      ))}
      {others.length > 0 ? <Text>{`and ${others.length} more`}</Text> : null}
    </Box>
  );
}

function Before({ bench }: { readonly bench: Bench }) {
  const [, ...before] = bench.figures;
  return (
    <Box flexDirection="column">
      {before.map((figure) => (
        <Text key={`${figure.startSeconds} ${figure.id} ${figure.value}`} dimColor wrap="truncate-end">
          {`before  ${figureHeardLine(figure)}`}
        </Text>
      ))}
    </Box>
  );
}
