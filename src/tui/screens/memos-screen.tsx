import { Rows } from '../components/rows.tsx';
import { memoLine } from '../state/rows.ts';
import type { ScreenProps } from './screen-props.ts';

/** The sign before the chosen row. */
const MARK = 2;

/** Every memo, newest first. */
export function MemosScreen({ state, height, columns }: ScreenProps) {
  return (
    <Rows
      lines={state.data.memos.map((memo) => memoLine(memo, columns - MARK))}
      chosen={state.chosen.memos}
      height={height}
      empty="No memos yet. Press t and type the name of a recording or a text."
    />
  );
}
