import { Lines } from '../components/lines.tsx';
import { whereLines } from '../state/where-lines.ts';
import type { ScreenProps } from './screen-props.ts';

/** Where one was when the talk stopped. */
export function WhereScreen({ state, height }: ScreenProps) {
  return <Lines lines={whereLines(state)} first={state.chosen.where} height={height} />;
}
