/** What the recogniser's process tells its parent. Sound goes the other way, as raw 32-bit floats on its input. */
import type { Heard } from './listener.ts';

export type RecogniserMessage =
  | { readonly kind: 'ready' }
  /**
   * `secondsHeard` of the recording lie behind; talk was last found until `spokenUntil`; `heard` is what was understood
   * since the last message, `early` the same ahead of it, in shorter pieces.
   */
  | {
      readonly kind: 'progress';
      readonly secondsHeard: number;
      readonly spokenUntil?: number;
      readonly heard?: Heard;
      readonly early?: Heard;
    }
  | { readonly kind: 'done' }
  | { readonly kind: 'failed'; readonly reason: string };

/** What the parent hands over at the start, as one argument in JSON. */
export interface RecogniserSetup {
  readonly models: {
    readonly encoder: string;
    readonly decoder: string;
    readonly tokens: string;
    readonly voiceActivity: string;
  };
  readonly threads: number;
  /** The sound comes as it is spoken: every stretch is also told as soon as it ends. */
  readonly live?: boolean;
}
