/** A list cut to the height at hand, with the chosen row marked by a sign and by weight, never by colour alone. */
import { Box } from 'ink';
import { Line, Paragraph } from './line.tsx';

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
  if (lines.length === 0) return <Paragraph text={empty} height={height} />;
  const first = firstShown(chosen, lines.length, height);
  return (
    <Box flexDirection="column">
      {lines.slice(first, first + height).map((line, index) => {
        const isChosen = first + index === chosen;
        return (
          // Rows have no identity of their own: their place in the list is what they are.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <Line key={first + index} bold={isChosen} text={`${isChosen ? '>' : ' '} ${line}`} />
        );
      })}
    </Box>
  );
}
