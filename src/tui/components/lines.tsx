/** A text from one of its lines on. Long lines run on; what does not fit is reached by scrolling. */
import { Box, Text } from 'ink';
import type { TextLine } from '../state/page-lines.ts';

interface LinesProps {
  readonly lines: readonly TextLine[];
  /** Number of the first line in sight. */
  readonly first: number;
  readonly height: number;
}

export function Lines({ lines, first, height }: LinesProps) {
  return (
    <Box flexDirection="column" height={height} overflow="hidden">
      {lines.slice(first, first + height).map((line, index) => (
        // Lines have no identity of their own, and must not be squeezed into the height.
        // biome-ignore lint/suspicious/noArrayIndexKey: see above
        <Box key={first + index} flexShrink={0}>
          <Text bold={line.heading === true}>{line.text === '' ? ' ' : line.text}</Text>
        </Box>
      ))}
    </Box>
  );
}
