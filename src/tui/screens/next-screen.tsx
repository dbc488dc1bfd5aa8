import { Rows } from '../components/rows.tsx';
import { nextLines } from '../state/rows.ts';
import type { ScreenProps } from './screen-props.ts';

/** What can be done now, what waits and on what, what is coming and what was promised. */
export function NextScreen({ state, height }: ScreenProps) {
  return (
    <Rows
      lines={nextLines(state.data.next)}
      chosen={state.chosen.next}
      height={height}
      empty="Nothing is open."
    />
  );
}
