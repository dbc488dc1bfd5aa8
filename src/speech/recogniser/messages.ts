/** What the recogniser's process tells its parent. Sound goes the other way, as raw 32-bit floats on its input. */
import type { SherpaModel } from 'sherpa-onnx-node';
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

/** A model that the sherpa-onnx runtime loads. */
export interface SherpaSetup {
  readonly kind: 'sherpa';
  readonly model: SherpaModel;
}

/** The bundled model, which also tells its doubts. */
export interface MoonshineSetup {
  readonly kind: 'moonshine';
  readonly encoder: string;
  readonly decoder: string;
  readonly tokens: string;
  /** The project's own words for its things. */
  readonly words?: readonly string[];
  /** How many other words are weighed in a second of sound; a few where it is left out. */
  readonly weighedPerSecond?: number;
}

/** A Whisper model that a whisper.cpp program loads, anew for each piece. */
export interface WhisperSetup {
  readonly kind: 'whisper-program';
  readonly program: string;
  readonly model: string;
  /** Words that may be expected, for the spelling of names. */
  readonly prompt?: string;
}

/** What the parent hands over at the start, as one argument in JSON. */
export interface RecogniserSetup {
  /** The file that voice activity is found with. */
  readonly voiceActivity: string;
  readonly recogniser: SherpaSetup | MoonshineSetup | WhisperSetup;
  readonly threads: number;
  /** Stretches of talk are heard together up to this length. */
  readonly longestPieceSeconds: number;
  /** The sound comes as it is spoken: every stretch is also told as soon as it ends. */
  readonly live?: boolean;
  /** Where heard pieces are kept until the recording is done: after a kill they are not heard again. */
  readonly heardFile?: string;
}
