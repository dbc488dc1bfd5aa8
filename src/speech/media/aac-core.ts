/** AAC as the decoder knows it: the plain core inside the high-efficiency profiles. */

/** Source: ISO/IEC 14496-3, samplingFrequencyIndex. */
const FREQUENCIES = [
  96_000, 88_200, 64_000, 48_000, 44_100, 32_000, 24_000, 22_050, 16_000, 12_000, 11_025, 8_000, 7_350,
];
const LOW_COMPLEXITY = 2;
/** Spectral band replication and parametric stereo: extensions over a low-complexity core. */
const EXTENSIONS = [5, 29];

interface AacConfig {
  codec: string;
  sampleRate: number;
  numberOfChannels: number;
  description?: AllowSharedBufferSource;
}

/**
 * The configuration of the core: at its own rate, without the extensions, which add only overtones above the
 * range of speech. Configurations that hold none come back with the rate that they state.
 */
export function coreOfAac<C extends AacConfig>(config: C): C {
  const bytes = bytesOf(config.description);
  if (bytes.length < 2) return config;
  const profile = (bytes[0] ?? 0) >> 3;
  const index = (((bytes[0] ?? 0) & 7) << 1) | ((bytes[1] ?? 0) >> 7);
  const channels = ((bytes[1] ?? 0) >> 3) & 15;
  const sampleRate = FREQUENCIES[index];
  if (!sampleRate) return config;
  if (!EXTENSIONS.includes(profile)) return { ...config, sampleRate };
  const core = Uint8Array.of((LOW_COMPLEXITY << 3) | (index >> 1), ((index & 1) << 7) | (channels << 3));
  return { ...config, codec: 'mp4a.40.2', sampleRate, numberOfChannels: channels, description: core };
}

function bytesOf(description: AllowSharedBufferSource | undefined): Uint8Array {
  if (!description) return new Uint8Array();
  if (ArrayBuffer.isView(description)) {
    return new Uint8Array(description.buffer, description.byteOffset, description.byteLength);
  }
  return new Uint8Array(description);
}
