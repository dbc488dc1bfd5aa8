/** The bundled model as a recogniser that also tells its doubts. Runs in the recogniser's own process. */
import { readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import type { MoonshineSetup } from '../messages.ts';
import { type SoundRecogniser, tidy } from '../recognised.ts';
import { SAMPLE_RATE } from '../sample-rate.ts';
import { loadSherpaRecogniser } from '../sherpa-recogniser.ts';
import { doubtsIn, prepareDoubts } from './doubts.ts';
import { MoonshineModel } from './moonshine-model.ts';
import { OnnxRuntime } from './onnx-runtime.ts';
import { WordPieces } from './word-pieces.ts';

/** A sentence of talk is about this long. */
const WARM_UP_SECONDS = 3;
/** Two pieces at once take a tenth to a fifth less time on two cores than one after the other, and some 30 MB more. */
const AT_ONCE = 2;

/**
 * Loads the model. Where the runtime library cannot be called directly, sherpa-onnx hears with the same files: the same
 * words, without doubts.
 */
export async function loadMoonshine(setup: MoonshineSetup, threads: number): Promise<SoundRecogniser> {
  const { tokens, encoder, decoder } = setup;
  const runtime = await OnnxRuntime.load().catch(() => undefined);
  if (!runtime)
    return loadSherpaRecogniser(
      { kind: 'sherpa', model: { tokens, moonshine: { encoder, mergedDecoder: decoder } } },
      threads,
    );
  const model = new MoonshineModel(runtime, encoder, decoder, threads);
  const pieces = new WordPieces(readFileSync(tokens, 'utf8'));
  return {
    atOnce: Math.min(AT_ONCE, availableParallelism()),
    recognise: (samples) =>
      model.hear(samples, async ({ ids }, weighing) => {
        const written = ids.map((id) => pieces.textOf(id)).join('');
        const text = tidy(written);
        const seconds = samples.length / SAMPLE_RATE;
        const own = setup.words ?? [];
        return {
          text,
          doubts: await doubtsIn({ text, ids, seconds }, weighing, pieces, own, setup.weighedPerSecond),
        };
      }),
    async warmUp() {
      prepareDoubts(pieces);
      await model.hear(new Float32Array(WARM_UP_SECONDS * SAMPLE_RATE), () => {});
    },
  };
}
