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

/** How the recogniser's process is set up with the bundled files; `words` are the project's own for its things. */
export function bundledSetup(
  { encoder, decoder, tokens, voiceActivity }: ModelFiles,
  words: readonly string[] = [],
): RecogniserSetup {
  return {
    voiceActivity,
    recogniser: { kind: 'moonshine', encoder, decoder, tokens, words },
    threads: THREADS,
    longestPieceSeconds: LONGEST_PIECE_SECONDS,
  };
}

/** The single words of names, each once. */
const wordsOf = (names: readonly string[] = []): readonly string[] => [
  ...new Set(names.flatMap((name) => name.toLowerCase().match(/\p{L}{4,}/gu) ?? [])),
];

export const bundledSource: EngineSource = {
  name: ENGINE_NAME,
  async prepare({ words }) {
    const files = await checkedModelFiles();
    return files.ok ? { ok: true, value: bundledSetup(files.value, wordsOf(words)) } : files;
  },
};

export const moonshineEngine: Engine = engineOf(bundledSource);

/** Hears one recording with the bundled recogniser. */
export function transcribe(file: string, options: HearOptions = {}): Promise<Result<HeardRecording>> {
  return hearRecording(bundledSource, file, options);
}
