/** Any recording as one stream of samples. */
import type { Result } from '../problem.ts';
import { codecName } from './media/known-formats.ts';
import { formatProblem, mediaProblem } from './media/media-problems.ts';
import { mp3DelaySamples } from './media/mp3-delay.ts';
import type { NativeSound } from './media/native-sound.ts';
import { type BundledRecording, type OpenRecording, openRecording } from './media/open-recording.ts';
import { opusSound } from './media/opus-sound.ts';
import { outsideFacts, outsideSound } from './media/outside-decoder.ts';
import { packetSound } from './media/packet-sound.ts';
import { pcmSound } from './media/pcm-sound.ts';
import { SAMPLE_RATE, steadySound } from './media/steady-sound.ts';
import type { MediaFacts } from './transcript.ts';

export { SAMPLE_RATE };

/** Says what a file is without decoding it: container and codec by content, length, time of recording. */
export async function probe(file: string): Promise<Result<MediaFacts>> {
  const opened = await openRecording(file);
  if (!opened.ok) return opened;
  opened.value.close();
  return { ok: true, value: opened.value.facts };
}

/** How a decoding went, returned when the last piece was read. */
export interface SoundEnd {
  readonly durationSeconds: number;
  /** The sound stops before the end that the file states, or a later part could not be decoded. */
  readonly endsEarly: boolean;
}

/**
 * Decodes a file to 16 kHz mono, piece by piece in bounded memory. Throws a `Problem` for a fault of the file and
 * the signal's reason when stopped.
 */
export async function* decode(file: string, signal?: AbortSignal): AsyncGenerator<Float32Array, SoundEnd> {
  const opened = await openRecording(file);
  if (!opened.ok) throw opened.problem;
  try {
    return yield* decodeRecording(file, opened.value, signal);
  } finally {
    opened.value.close();
  }
}

/** As `decode`, for a recording that is already open. */
export async function* decodeRecording(
  file: string,
  recording: OpenRecording,
  signal?: AbortSignal,
): AsyncGenerator<Float32Array, SoundEnd> {
  let samples = 0;
  let fault: unknown;
  try {
    for await (const piece of soundOf(file, recording)) {
      signal?.throwIfAborted();
      samples += piece.length;
      yield piece;
    }
  } catch (error) {
    signal?.throwIfAborted();
    fault = error;
  }
  signal?.throwIfAborted();
  // Sound that stops in the middle of a file is kept as far as it goes.
  if (samples > 0) return soundEnd(samples, recording, fault !== undefined);
  if (fault && recording.decoder === 'bundled' && (await outsideFacts(file))) {
    for await (const piece of outsideSound(file)) {
      signal?.throwIfAborted();
      samples += piece.length;
      yield piece;
    }
    if (samples > 0) return soundEnd(samples, recording, false);
  }
  throw silentProblem(file, recording, fault);
}

/** Only these state the length of the sound itself; elsewhere a video may go on after its sound. */
const STATE_LENGTH = ['flac', 'mp3'];

function soundEnd(samples: number, recording: OpenRecording, broken: boolean): SoundEnd {
  const durationSeconds = samples / SAMPLE_RATE;
  const stated = recording.facts.durationSeconds;
  const states = recording.decoder === 'bundled' && STATE_LENGTH.includes(recording.codec);
  const short = states && durationSeconds < stated * 0.97 - 1;
  return { durationSeconds, endsEarly: broken || short || recording.facts.endsEarly === true };
}

function silentProblem(file: string, recording: OpenRecording, fault: unknown) {
  if (!fault) return mediaProblem(file, 'sound-empty');
  const unknown = /unsupported|no suitable/i.test(String(fault));
  if (!unknown || recording.decoder !== 'bundled') return mediaProblem(file, 'sound-damaged', fault);
  return formatProblem(file, codecName(recording.codec), fault);
}

function soundOf(file: string, recording: OpenRecording): AsyncIterable<Float32Array> {
  return recording.decoder === 'outside' ? outsideSound(file) : steadySound(nativeSound(file, recording));
}

async function* nativeSound(file: string, { track, codec }: BundledRecording): AsyncGenerator<NativeSound> {
  if (codec === 'opus') yield* opusSound(track);
  else if (codec.startsWith('pcm-') || codec === 'ulaw' || codec === 'alaw') yield* pcmSound(track);
  else yield* packetSound(track, codec, codec === 'mp3' ? await mp3DelaySamples(file) : 0);
}
