/** Any model of the sherpa-onnx runtime as a recogniser. Runs in the recogniser's own process. */
import type { OfflineRecognizer, OfflineResult } from 'sherpa-onnx-node';
import type { SherpaSetup } from './messages.ts';
import { type Recognised, type SoundRecogniser, type TimedPart, tidy, wordsOf } from './recognised.ts';
import { SAMPLE_RATE } from './sample-rate.ts';

/** Loads the model. Its files must have been looked at: a damaged one ends the process. */
export async function loadSherpaRecogniser(setup: SherpaSetup, threads: number): Promise<SoundRecogniser> {
  const { default: sherpa } = await import('sherpa-onnx-node');
  const recogniser = new sherpa.OfflineRecognizer({
    featConfig: { sampleRate: SAMPLE_RATE, featureDim: 80 },
    modelConfig: { ...setup.model, numThreads: threads, provider: 'cpu', debug: 0 },
  });
  return { recognise: (samples) => recognise(recogniser, samples), leavesMemory: true };
}

async function recognise(recogniser: OfflineRecognizer, samples: Float32Array): Promise<Recognised> {
  const stream = recogniser.createStream();
  stream.acceptWaveform({ samples, sampleRate: SAMPLE_RATE });
  await recogniser.decodeAsync(stream);
  return recognisedIn(recogniser.getResult(stream), samples.length / SAMPLE_RATE);
}

/** Text and word times of one answer of the runtime. Its tokens are parts of words, with a time for each, or none. */
export function recognisedIn(result: OfflineResult, lengthSeconds: number): Recognised {
  const text = tidy(result.text);
  const { tokens = [], timestamps = [], durations = [] } = result;
  if (tokens.length === 0 || timestamps.length !== tokens.length) return { text };
  const parts = tokens.map((token, place): TimedPart => {
    const startSeconds = timestamps[place] ?? 0;
    const lasts = durations.length === tokens.length ? durations[place] : undefined;
    return { text: token, startSeconds, ...(lasts ? { endSeconds: startSeconds + lasts } : {}) };
  });
  const words = wordsOf(text, parts, lengthSeconds);
  return { text, ...(words ? { words } : {}) };
}
