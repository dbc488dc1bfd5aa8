import { Box } from 'ink';
import type { FindingView } from '../../model/views.ts';
import { findingText } from '../../reports/finding-text.ts';
import { Line, Paragraph } from '../components/line.tsx';
import { firstShown, Rows } from '../components/rows.tsx';
import { findingRow } from '../state/rows.ts';
import type { ScreenProps } from './screen-props.ts';

/** At most this share of the height lists clashes; the chosen one gets the rest, for its quotes are long. */
const LIST_SHARE = 1 / 3;

/** What clashes, dearest first, with both quotes of the chosen one. */
export function ClashesScreen({ state, height }: ScreenProps) {
  const { findings } = state.data;
  const finding = findings[state.chosen.clashes];
  const listHeight = Math.max(1, Math.min(findings.length, Math.floor(height * LIST_SHARE)));
  // Rows are made for those in sight alone: there may be thousands.
  const first = firstShown(state.chosen.clashes, findings.length, listHeight);
  return (
    <Box flexDirection="column">
      <Box height={listHeight} flexDirection="column">
        <Rows
          lines={findings.slice(first, first + listHeight).map(findingRow)}
          chosen={state.chosen.clashes - first}
          height={listHeight}
          empty="Nothing clashes. Nothing flagged is not the same as safe."
        />
      </Box>
      {finding ? <Detail finding={finding} height={height - listHeight} /> : null}
    </Box>
  );
}

/** The same words as `hearwright findings` prints. Long quotes run on: they are what the person decides by. */
function Detail({ finding, height }: { readonly finding: FindingView; readonly height: number }) {
  const [head, ...lines] = findingText(finding).split('\n');
  return (
    <Box flexDirection="column" height={height} overflowY="hidden">
      <Line bold text={head ?? ''} />
      {/* Each takes a row at least: what hangs on a dear clash may be hundreds of lines. */}
      {lines.slice(0, height).map((line) => (
        <Paragraph key={line} text={line} />
      ))}
    </Box>
  );
}
