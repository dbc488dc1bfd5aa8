import { Rows } from '../components/rows.tsx';
import { memoLine } from '../state/rows.ts';
import type { ScreenProps } from './screen-props.ts';

/** Every memo, newest first. */
export function MemosScreen({ state, height }: ScreenProps) {
  return (
    <Rows
      lines={state.data.memos.map(memoLine)}
      chosen={state.chosen.memos}
      height={height}
      empty="No memos yet. Press t and type the name of a recording or a text."
    />
  );
}
