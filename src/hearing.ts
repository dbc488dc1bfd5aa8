/** The recogniser, loaded only when a recording is to be heard. */

import type { Result } from './problem.ts';
import type { HeardRecording, HearOptions } from './speech/engine.ts';
import type { MediaFacts } from './speech/transcript.ts';

export interface Hearing {
  /** What the file says of itself, without hearing it. */
  probe(file: string): Promise<Result<MediaFacts>>;
  /** The name of the engine that hears under this name or path; without one, of the default. */
  engineName(wanted?: string): Promise<Result<string>>;
  transcribe(
    file: string,
    options: HearOptions & { readonly engine?: string },
  ): Promise<Result<HeardRecording>>;
}

/** Loads the decoders and the engines; a recogniser's own process starts with the first recording. */
export async function loadHearing(): Promise<Hearing> {
  const [{ probe }, { engineSource }, { hearRecording }] = await Promise.all([
    import('./speech/decode.ts'),
    import('./speech/engines/known-engines.ts'),
    import('./speech/hear-recording.ts'),
  ]);
  return {
    probe,
    async engineName(wanted) {
      const source = await engineSource(wanted);
      return source.ok ? { ok: true, value: source.value.name } : source;
    },
    async transcribe(file, { engine, ...options }) {
      const source = await engineSource(engine);
      return source.ok ? hearRecording(source.value, file, options) : source;
    },
  };
}
