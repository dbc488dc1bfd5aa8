import { Box } from 'ink';
import { Line, Paragraph } from '../components/line.tsx';
import { Lines } from '../components/lines.tsx';
import { dayLine, pageLines } from '../state/page-lines.ts';
import type { ScreenProps } from './screen-props.ts';

/** The pages of a day with talk, as they will be written. */
export function DayScreen({ state, height }: ScreenProps) {
  const { pages, page } = state;
  if (!pages || pages.length === 0)
    return <Paragraph text="Nothing was taken in yet: there is no day to write of." />;
  return (
    <Box flexDirection="column">
      <Line
        text={pages
          .map(({ title }, index) => (index === page ? `[${index + 1} ${title}]` : ` ${index + 1} ${title} `))
          .join(' ')}
      />
      <Line text={dayLine(state)} />
      <Lines lines={pageLines(state)} first={state.chosen.day} height={Math.max(1, height - 2)} />
    </Box>
  );
}
