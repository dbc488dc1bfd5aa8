import { Box } from 'ink';
import { useContext } from 'react';
import type { FindingView } from '../../model/views.ts';
import { wrappedUnder } from '../../reports/columns.ts';
import { findingText } from '../../reports/finding-text.ts';
import { age, daysBetween } from '../../reports/source-text.ts';
import { Columns, Line } from '../components/line.tsx';
import { firstShown, Rows } from '../components/rows.tsx';
import { findingRow } from '../state/rows.ts';
import type { ScreenProps } from './screen-props.ts';

/** At most this share of the height lists clashes; the chosen one gets the rest, for its quotes are long. */
const LIST_SHARE = 1 / 3;

/** From this height on a blank line parts the list from what is shown of the chosen one. */
const ROOM_FOR_GAP = 16;

/** What clashes, dearest first, with both quotes of the chosen one. */
export function ClashesScreen({ state, height }: ScreenProps) {
  const { findings } = state.data;
  const finding = findings[state.chosen.clashes];
  const listHeight =
    findings.length === 0 ? height : Math.max(1, Math.min(findings.length, Math.floor(height * LIST_SHARE)));
  const gap = finding && height >= ROOM_FOR_GAP ? 1 : 0;
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
      {gap > 0 ? <Line text="" /> : null}
      {finding ? (
        <Detail finding={finding} height={height - listHeight - gap} today={state.data.next.date} />
      ) : null}
    </Box>
  );
}

interface DetailProps {
  readonly finding: FindingView;
  readonly height: number;
  /** YYYY-MM-DD. */
  readonly today: string;
}

/** The same words as `hearwright findings` prints. Long quotes run on: they are what the person decides by. */
function Detail({ finding, height, today }: DetailProps) {
  const columns = useContext(Columns);
  const [head, ...lines] = detailLines(finding, height);
  const shown: string[] = [];
  for (const line of lines) {
    if (shown.length >= height) break;
    shown.push(...wrappedUnder(line, columns, height - shown.length));
  }
  return (
    <Box flexDirection="column" height={height} overflowY="hidden">
      <Line bold text={[head ?? '', agoOf(finding, today)].filter(Boolean).join('   ')} />
      {shown.slice(0, Math.max(0, height - 1)).map((line, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines have no identity of their own
        <Line key={index} text={line} />
      ))}
    </Box>
  );
}

/** How long ago the newer side was said: the other one is told as so much earlier. */
function agoOf({ now }: FindingView, today: string): string {
  if (!now.source) return '';
  const days = daysBetween(now.source.recordedAt, today);
  return days <= 0 ? 'said today' : `said ${age(days)} ago`;
}

/** Rows for both quotes, how far they differ, why, and what to do next. */
const OTHER_ROWS = 7;

/**
 * What hangs on a dear clash may be thousands of things: those that there is room for, how many more there are, and what
 * to do next stays in sight.
 */
function detailLines(finding: FindingView, height: number): readonly string[] {
  const { consequences } = finding;
  const most = Math.max(1, height - OTHER_ROWS - 1);
  if (consequences.length <= most) return findingText(finding).split('\n');
  const lines = findingText({ ...finding, consequences: consequences.slice(0, most) }).split('\n');
  const behind = lines.findLastIndex((line) => line.startsWith(ON_IT)) + 1;
  const more = `${ON_IT}and ${consequences.length - most} more: hearwright findings`;
  return lines.toSpliced(behind, 0, more);
}

const ON_IT = '  on it    ';
