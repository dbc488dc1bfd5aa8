/** Reads uncompressed sound of every depth, from WAV and from video containers. */
import { AudioSampleSink, type InputAudioTrack } from 'mediabunny';
import { mixToMono, type NativeSound } from './native-sound.ts';

/** The library yields some 50 ms at a time; the recogniser is served better by whole seconds. */
const BATCH_SECONDS = 1;

export async function* pcmSound(track: InputAudioTrack): AsyncGenerator<NativeSound> {
  const origin = Math.max(0, await track.input.getFirstTimestamp());
  let batch: Float32Array[] = [];
  let length = 0;
  let startSeconds = 0;
  let sampleRate = 0;
  for await (const sample of new AudioSampleSink(track).samples()) {
    if (length === 0) startSeconds = Math.max(0, sample.timestamp - origin);
    sampleRate = sample.sampleRate;
    const channels = Array.from({ length: sample.numberOfChannels }, (_, planeIndex) => {
      const plane = new Float32Array(sample.numberOfFrames);
      sample.copyTo(plane, { planeIndex, format: 'f32-planar' });
      return plane;
    });
    sample.close();
    const mono = mixToMono(channels);
    batch.push(mono);
    length += mono.length;
    if (length >= BATCH_SECONDS * sampleRate) {
      yield { samples: joined(batch, length), sampleRate, startSeconds };
      batch = [];
      length = 0;
    }
  }
  if (length > 0) yield { samples: joined(batch, length), sampleRate, startSeconds };
}

function joined(parts: readonly Float32Array[], length: number): Float32Array {
  const whole = new Float32Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
