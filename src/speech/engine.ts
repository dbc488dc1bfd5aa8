/** What every recogniser offers, so that others can stand beside the bundled one. */
import type { Result } from '../problem.ts';
import type { RecogniserSetup } from './recogniser/messages.ts';
import type { MediaFacts, TakeProgress, Transcript } from './transcript.ts';

export interface HearOptions {
  readonly onProgress?: (progress: TakeProgress) => void;
  /** Stops the work; the answer is then a problem with the code `cancelled`. */
  readonly signal?: AbortSignal;
  /** Stretches that are heard as silence, in seconds. */
  readonly silences?: readonly { readonly from: number; readonly to: number }[];
  /** Takes what the engine itself says, line by line; without it those lines are swallowed. */
  readonly onEngineLine?: (line: string) => void;
  /** Names that the project has for its things, latest first, for engines that can be told what to expect. */
  readonly words?: readonly string[];
  /** Where what was heard is kept piece by piece, so that a kill costs no more than the piece at hand. */
  readonly heardFile?: string;
}

export type HeardRecording = Transcript & { readonly facts: MediaFacts };

/** A model with what its process needs. All engines share the rest: `hearRecording` makes an `Engine` of each. */
export interface EngineSource {
  readonly name: string;
  /** Looks the files over and says how the recogniser's process is to be set up. */
  prepare(options: Pick<HearOptions, 'words'>): Promise<Result<RecogniserSetup>>;
}

export interface Engine {
  /** Engine and model, as kept with the transcript: `moonshine-tiny-en`. */
  readonly name: string;
  /** Hears one recording. Faults of the file, of the engine and a stop are problems; nothing is kept by the engine. */
  transcribe(file: string, options?: HearOptions): Promise<Result<HeardRecording>>;
}
