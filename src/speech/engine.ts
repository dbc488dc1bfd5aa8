/** What every recogniser offers, so that others can stand beside the bundled one. */
import type { Result } from '../problem.ts';
import type { MediaFacts, TakeProgress, Transcript } from './transcript.ts';

export interface HearOptions {
  readonly onProgress?: (progress: TakeProgress) => void;
  /** Stops the work; the answer is then a problem with the code `cancelled`. */
  readonly signal?: AbortSignal;
  /** Takes what the engine itself says, line by line; without it those lines are swallowed. */
  readonly onEngineLine?: (line: string) => void;
}

export type HeardRecording = Transcript & { readonly facts: MediaFacts };

export interface Engine {
  /** Engine and model, as kept with the transcript: `moonshine-tiny-en`. */
  readonly name: string;
  /** Hears one recording. Faults of the file, of the engine and a stop are problems; nothing is kept by the engine. */
  transcribe(file: string, options?: HearOptions): Promise<Result<HeardRecording>>;
}
