import { Rows } from '../components/rows.tsx';
import { keysOf } from '../keys.ts';
import { settleWords } from '../state/settle-words.ts';
import type { ScreenProps } from './screen-props.ts';

/** The keys of the view that `?` was pressed in. */
export function KeysScreen({ state, height }: ScreenProps) {
  const now = state.viewBefore === 'clashes' ? settleWords(state) : {};
  return (
    <Rows
      lines={keysOf(state.viewBefore).map(
        ({ shown, intent, words }) => `${shown.padEnd(7)} ${now[intent] ?? words}`,
      )}
      chosen={state.chosen.keys}
      height={height}
      empty=""
    />
  );
}
