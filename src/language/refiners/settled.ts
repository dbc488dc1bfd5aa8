import type { Dimension } from '../notes.ts';

/** What a unit of several meanings is taken for, and why. */
export interface Settled {
  readonly unit: string;
  readonly dimension: Dimension;
  /** What the figure is multiplied by. */
  readonly factor?: number;
  readonly alternatives?: readonly { readonly value: number; readonly unit: string }[];
  readonly why: string;
  /** The token that the quote reaches to. */
  readonly quoteTo?: number;
}
