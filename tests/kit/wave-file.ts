/** Writes WAV files of every depth. Source: Microsoft's RIFF WAVE description, WAVEFORMATEXTENSIBLE. */

export type WaveForm = 'u8' | 's16' | 's24' | 's32' | 'f32' | 'extensible';

export interface WaveShape {
  readonly form: WaveForm;
  readonly sampleRate: number;
  readonly channels: number;
}

const BYTES: Record<WaveForm, number> = { u8: 1, s16: 2, s24: 3, s32: 4, f32: 4, extensible: 3 };

/** The same samples on every channel; `samples` run from -1 to 1. */
export function waveFile(samples: Float32Array, { form, sampleRate, channels }: WaveShape): Buffer {
  const width = BYTES[form];
  const data = Buffer.alloc(samples.length * channels * width);
  let at = 0;
  for (const sample of samples) {
    for (let channel = 0; channel < channels; channel++, at += width) write(data, at, form, sample);
  }
  const format = formatChunk(form, sampleRate, channels, width);
  const parts = [chunk('fmt ', format), chunk('data', data)];
  const body = Buffer.concat([Buffer.from('WAVE'), ...parts]);
  return chunk('RIFF', body);
}

function write(data: Buffer, at: number, form: WaveForm, sample: number): void {
  if (form === 'u8') data.writeUInt8(Math.round(sample * 127) + 128, at);
  else if (form === 's16') data.writeInt16LE(Math.round(sample * 32_767), at);
  else if (form === 's32') data.writeInt32LE(Math.round(sample * 2_147_483_647), at);
  else if (form === 'f32') data.writeFloatLE(sample, at);
  else data.writeIntLE(Math.round(sample * 8_388_607), at, 3);
}

function formatChunk(form: WaveForm, sampleRate: number, channels: number, width: number): Buffer {
  const extensible = form === 'extensible';
  const format = Buffer.alloc(extensible ? 40 : 16);
  format.writeUInt16LE(extensible ? 0xfffe : form === 'f32' ? 3 : 1, 0);
  format.writeUInt16LE(channels, 2);
  format.writeUInt32LE(sampleRate, 4);
  format.writeUInt32LE(sampleRate * channels * width, 8);
  format.writeUInt16LE(channels * width, 12);
  format.writeUInt16LE(width * 8, 14);
  if (extensible) {
    format.writeUInt16LE(22, 16);
    format.writeUInt16LE(width * 8, 18);
    Buffer.from('0100000000001000800000aa00389b71', 'hex').copy(format, 24);
  }
  return format;
}

function chunk(name: string, body: Buffer): Buffer {
  const head = Buffer.alloc(8);
  head.write(name, 0, 'latin1');
  head.writeUInt32LE(body.length, 4);
  return Buffer.concat([head, body]);
}
