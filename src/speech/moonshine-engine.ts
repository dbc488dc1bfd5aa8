/** The bundled recogniser: Moonshine tiny for English. */
import type { Result } from '../problem.ts';
import type { Engine, EngineSource, HeardRecording, HearOptions } from './engine.ts';
import { engineOf, hearRecording } from './hear-recording.ts';
import { checkedModelFiles, ENGINE_NAME, type ModelFiles } from './model-folder.ts';
import type { RecogniserSetup } from './recogniser/messages.ts';

/** The second thread brings nothing with models this small. */
const THREADS = 1;
/** Longer pieces loop, or come back empty. */
const LONGEST_PIECE_SECONDS = 15;

/** How the recogniser's process is set up with the bundled files. */
export function bundledSetup({ encoder, decoder, tokens, voiceActivity }: ModelFiles): RecogniserSetup {
  return {
    voiceActivity,
    recogniser: { kind: 'sherpa', model: { tokens, moonshine: { encoder, mergedDecoder: decoder } } },
    threads: THREADS,
    longestPieceSeconds: LONGEST_PIECE_SECONDS,
  };
}

export const bundledSource: EngineSource = {
  name: ENGINE_NAME,
  async prepare() {
    const files = await checkedModelFiles();
    return files.ok ? { ok: true, value: bundledSetup(files.value) } : files;
  },
};

export const moonshineEngine: Engine = engineOf(bundledSource);

/** Hears one recording with the bundled recogniser. */
export function transcribe(file: string, options: HearOptions = {}): Promise<Result<HeardRecording>> {
  return hearRecording(bundledSource, file, options);
}
