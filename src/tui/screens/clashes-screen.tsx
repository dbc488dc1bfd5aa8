import { Box, Text } from 'ink';
import type { Consequence, FindingView, SourcedQuantity } from '../../model/views.ts';
import { plainText } from '../../plain-text.ts';
import { Rows } from '../components/rows.tsx';
import { findingLine } from '../state/rows.ts';
import { clock, dayAndClock, quantityWords } from '../state/words.ts';
import type { ScreenProps } from './screen-props.ts';

const DETAIL_ROWS = 10;

/** What clashes, dearest first, with both quotes of the chosen one. */
export function ClashesScreen({ state, height }: ScreenProps) {
  const finding = state.data.findings[state.chosen.clashes];
  const listHeight = Math.max(1, height - (finding ? DETAIL_ROWS : 0));
  return (
    <Box flexDirection="column">
      <Box height={listHeight} flexDirection="column">
        <Rows
          lines={state.data.findings.map(findingLine)}
          chosen={state.chosen.clashes}
          height={listHeight}
          empty="Nothing clashes. Nothing flagged is not the same as safe."
        />
      </Box>
      {finding ? <Detail finding={finding} /> : null}
    </Box>
  );
}

function Detail({ finding }: { readonly finding: FindingView }) {
  const lines = detailLines(finding).slice(0, DETAIL_ROWS);
  return (
    <Box flexDirection="column" height={DETAIL_ROWS} overflow="hidden">
      {lines.map(([label, words]) => (
        <Text key={label + words} wrap="truncate-end">
          <Text dimColor>{label.padEnd(9)}</Text>
          {words}
        </Text>
      ))}
    </Box>
  );
}

/** Label and words of each line under a finding. */
export function detailLines(finding: FindingView): readonly (readonly [string, string])[] {
  const differs = finding.difference
    ? [
        [
          'differs',
          `${quantityWords(finding.difference)}${finding.tolerance ? `, ${quantityWords(finding.tolerance)} is let pass (${finding.tolerance.from})` : ''}`,
        ] as const,
      ]
    : [];
  const lines = [
    ['said', sourced(finding.now)] as const,
    ['stands', sourced(finding.was)] as const,
    ...differs,
    ['why', finding.why] as const,
    ...finding.consequences.map((consequence) => ['so far', consequenceWords(consequence)] as const),
    ['next', finding.next] as const,
  ];
  return lines.map(([label, words]) => [label, plainText(words)] as const);
}

function sourced(quantity: SourcedQuantity): string {
  const { source } = quantity;
  const amount = quantityWords(quantity);
  if (!source) return `${amount}, worked out`;
  const at = source.startSeconds === undefined ? '' : ` at ${clock(source.startSeconds)}`;
  return `${amount}  ${source.memoId}${at}, ${dayAndClock(source.recordedAt)}: "${source.quote}"`;
}

function consequenceWords({ act, what, before, after }: Consequence): string {
  const change = before && after ? `: ${quantityWords(before)} → ${quantityWords(after)}` : '';
  return `${act} ${what}${change}`;
}
