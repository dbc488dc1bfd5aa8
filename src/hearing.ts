/** The recogniser, loaded only when a recording is to be heard. */
import { EXIT, Problem, type Result } from './problem.ts';
import type { MediaFacts, TakeProgress, Transcript } from './speech/transcript.ts';

export interface Hearing {
  /** What the file says of itself, without hearing it. */
  probe(file: string): Promise<Result<MediaFacts>>;
  transcribe(
    file: string,
    options: { readonly onProgress?: (progress: TakeProgress) => void; readonly signal?: AbortSignal },
  ): Promise<Result<Transcript>>;
}

/** Loads the recogniser. */
export async function loadHearing(): Promise<Hearing> {
  const problem = new Problem('recordings cannot be heard yet', {
    code: 'speech-missing',
    exitCode: EXIT.partly,
  });
  const refuse = async () => ({ ok: false as const, problem });
  return { probe: refuse, transcribe: refuse };
}
