import { firstShown, Rows } from '../components/rows.tsx';
import { memoLine } from '../state/rows.ts';
import type { ScreenProps } from './screen-props.ts';

/** The sign before the chosen row. */
const MARK = 2;

/** Every memo, newest first. */
export function MemosScreen({ state, height, columns }: ScreenProps) {
  const { memos } = state.data;
  // Rows are made for those in sight alone: there may be thousands.
  const first = firstShown(state.chosen.memos, memos.length, height);
  return (
    <Rows
      lines={memos.slice(first, first + height).map((memo) => memoLine(memo, columns - MARK))}
      chosen={state.chosen.memos - first}
      height={height}
      empty="No memos yet. Press r and talk, or t and type the name of a recording or a text."
    />
  );
}
