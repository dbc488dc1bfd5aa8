/** Sound as a decoder gives it: one mixed channel at the recording's own rate, with its place in time. */
export interface NativeSound {
  readonly samples: Float32Array;
  readonly sampleRate: number;
  /** From the start of the file; a gap before it was silence or a pause of the recorder. */
  readonly startSeconds: number;
}

/** Position of the low-frequency channel in the common layouts of six and eight channels. */
const LOW_FREQUENCY_CHANNEL = 3;

/** Mixes channels to one by their mean. The low-frequency channel of surround sound holds no speech. */
export function mixToMono(channels: readonly Float32Array[]): Float32Array {
  const [first] = channels;
  if (!first || channels.length === 1) return first ?? new Float32Array();
  const surround = channels.length === 6 || channels.length === 8;
  const mixed = channels.filter((_, place) => !(surround && place === LOW_FREQUENCY_CHANNEL));
  const mono = new Float32Array(first.length);
  for (const channel of mixed) {
    for (let i = 0; i < mono.length; i++) mono[i] = (mono[i] ?? 0) + (channel[i] ?? 0);
  }
  for (let i = 0; i < mono.length; i++) mono[i] = (mono[i] ?? 0) / mixed.length;
  return mono;
}
