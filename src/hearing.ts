/** The recogniser, loaded only when a recording is to be heard. */

import type { Result } from './problem.ts';
import type { HeardRecording, HearOptions } from './speech/engine.ts';
import type { MediaFacts } from './speech/transcript.ts';

export interface Hearing {
  /** What the file says of itself, without hearing it. */
  probe(file: string): Promise<Result<MediaFacts>>;
  transcribe(file: string, options: HearOptions): Promise<Result<HeardRecording>>;
}

/** Loads the decoders and the bundled recogniser; the recogniser's own process starts with the first recording. */
export async function loadHearing(): Promise<Hearing> {
  const [{ probe }, { transcribe }] = await Promise.all([
    import('./speech/decode.ts'),
    import('./speech/moonshine-engine.ts'),
  ]);
  return { probe, transcribe };
}
