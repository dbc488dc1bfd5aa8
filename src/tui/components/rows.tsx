/** A list cut to the height at hand, with the chosen row marked by a sign and by weight, never by colour alone. */
import { Box, Text } from 'ink';

interface RowsProps {
  readonly lines: readonly string[];
  readonly chosen: number;
  readonly height: number;
  /** Shown when there is nothing to list. */
  readonly empty: string;
}

/** First row to show so that the chosen one is in sight. */
export function firstShown(chosen: number, count: number, height: number): number {
  const middle = chosen - Math.floor(height / 2);
  return Math.max(0, Math.min(middle, count - height));
}

export function Rows({ lines, chosen, height, empty }: RowsProps) {
  if (lines.length === 0) return <Text dimColor>{empty}</Text>;
  const first = firstShown(chosen, lines.length, height);
  return (
    <Box flexDirection="column">
      {lines.slice(first, first + height).map((line, index) => {
        const isChosen = first + index === chosen;
        return (
          // Rows have no identity of their own: their place in the list is what they are.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <Text key={first + index} bold={isChosen} wrap="truncate-end">
            {`${isChosen ? '>' : ' '} ${line}`}
          </Text>
        );
      })}
    </Box>
  );
}
