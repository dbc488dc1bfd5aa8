import { Rows } from '../components/rows.tsx';
import { keysOf } from '../keys.ts';
import type { ScreenProps } from './screen-props.ts';

/** The keys of the view that `?` was pressed in. */
export function KeysScreen({ state, height }: ScreenProps) {
  return (
    <Rows
      lines={keysOf(state.viewBefore).map((binding) => `${binding.shown.padEnd(7)} ${binding.words}`)}
      chosen={state.chosen.keys}
      height={height}
      empty=""
    />
  );
}
