import { Paragraph } from '../components/line.tsx';
import { Lines } from '../components/lines.tsx';
import { ruleLines } from '../state/rule-lines.ts';
import type { ScreenProps } from './screen-props.ts';

/** All limits and checks with their state. */
export function RulesScreen({ state, height }: ScreenProps) {
  const lines = ruleLines(state);
  if (lines.length === 0) return <Paragraph text="Reading the limits and checks." />;
  return <Lines lines={lines} first={state.chosen.rules} height={height} />;
}
