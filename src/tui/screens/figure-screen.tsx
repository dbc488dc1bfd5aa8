import { Paragraph } from '../components/line.tsx';
import { Lines } from '../components/lines.tsx';
import { figureLines } from '../state/figure-lines.ts';
import type { ScreenProps } from './screen-props.ts';

/** One figure with all that is known of it. */
export function FigureScreen({ state, height }: ScreenProps) {
  const lines = figureLines(state);
  if (lines.length === 0) return <Paragraph text="This figure does not stand any more." />;
  return <Lines lines={lines} first={state.chosen.figure} height={height} />;
}
