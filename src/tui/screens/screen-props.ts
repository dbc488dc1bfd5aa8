import type { ScreenState } from '../state/screen-state.ts';

export interface ScreenProps {
  readonly state: ScreenState;
  /** Rows at hand. */
  readonly height: number;
  readonly columns: number;
}
