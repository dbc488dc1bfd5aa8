import { Box } from 'ink';
import { Line, Paragraph } from '../components/line.tsx';
import { firstShown, Rows } from '../components/rows.tsx';
import { figureRows, figureWords, findLine, foundFigures, noFigure } from '../state/figure-rows.ts';
import type { ScreenProps } from './screen-props.ts';

/** Rows for the chosen figure in full: what a narrow list leaves out stands here. */
const DETAIL = 3;
/** On a small terminal the list keeps the greater part. */
const DETAIL_SHARE = 1 / 3;

/** The figures that stand, found as their words are typed. */
export function FiguresScreen({ state, height, columns }: ScreenProps) {
  const found = foundFigures(state);
  const today = state.data.next.date;
  const chosen = found[state.chosen.figures];
  const detail = Math.max(1, Math.min(DETAIL, Math.floor(height * DETAIL_SHARE)));
  const listHeight = Math.max(1, height - detail - 1);
  // Rows are made for those in sight alone: there may be thousands.
  const first = firstShown(state.chosen.figures, found.length, listHeight);
  const inSight = found.slice(first, first + listHeight);
  return (
    <Box flexDirection="column">
      <Line text={findLine(state)} />
      <Box height={listHeight} flexDirection="column">
        <Rows
          lines={figureRows(inSight, today, columns)}
          chosen={state.chosen.figures - first}
          height={listHeight}
          empty={noFigure(state)}
        />
      </Box>
      {chosen ? <Paragraph text={figureWords(chosen, today)} height={detail} /> : null}
    </Box>
  );
}
