/** A text from one of its lines on. Long lines run on; what does not fit is reached by scrolling. */
import { Box } from 'ink';
import { useContext } from 'react';
import { wrappedUnder } from '../../reports/columns.ts';
import type { TextLine } from '../state/page-lines.ts';
import { Columns, Line } from './line.tsx';

interface LinesProps {
  readonly lines: readonly TextLine[];
  /** Number of the first line in sight. */
  readonly first: number;
  readonly height: number;
}

export function Lines({ lines, first, height }: LinesProps) {
  const columns = useContext(Columns);
  const shown = lines
    .slice(first, first + height)
    .flatMap(({ text, heading }) =>
      wrappedUnder(text, columns, height).map((line) => ({ text: line, heading })),
    )
    .slice(0, height);
  return (
    <Box flexDirection="column" height={height}>
      {shown.map((line, index) => (
        // Lines have no identity of their own.
        // biome-ignore lint/suspicious/noArrayIndexKey: see above
        <Line key={first + index} text={line.text} bold={line.heading === true} />
      ))}
    </Box>
  );
}
