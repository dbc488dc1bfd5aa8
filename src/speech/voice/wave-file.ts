/** A WAV file of one channel and 16 bit, for players. Source: Microsoft's RIFF WAVE description. Pure. */
const HEADER_BYTES = 44;
const BYTES = 2;
const FULL_SCALE = 32_767;

export function waveFile(samples: Float32Array, sampleRate: number): Uint8Array {
  const bytes = new Uint8Array(HEADER_BYTES + samples.length * BYTES);
  const view = new DataView(bytes.buffer);
  const text = (at: number, words: string) => bytes.set(new TextEncoder().encode(words), at);
  text(0, 'RIFF');
  view.setUint32(4, bytes.length - 8, true);
  text(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, sampleRate, true);
  view.setUint32(28, sampleRate * BYTES, true);
  view.setUint16(32, BYTES, true);
  view.setUint16(34, BYTES * 8, true);
  text(36, 'data');
  view.setUint32(40, samples.length * BYTES, true);
  samples.forEach((sample, index) => {
    const held = Number.isFinite(sample) ? Math.min(1, Math.max(-1, sample)) : 0;
    view.setInt16(HEADER_BYTES + index * BYTES, Math.round(held * FULL_SCALE), true);
  });
  return bytes;
}
