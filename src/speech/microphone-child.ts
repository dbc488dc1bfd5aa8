/**
 * The bundled recorder's own process. `list` prints the devices as JSON; `record [NAME]` writes signed 16-bit, 16 kHz,
 * one channel to pipe 3 until it is ended or nobody reads: the library prints on standard output.
 */
import { createWriteStream } from 'node:fs';
import { AudioContext, mediaDevices } from 'node-web-audio-api';
import { SAMPLE_RATE } from './recogniser/sample-rate.ts';

/** Samples a piece: an eighth of a second. */
const PIECE = 2048;
const FULL_SCALE = 32_767;

async function inputs(): Promise<readonly { readonly id: string; readonly name: string }[]> {
  const all = await mediaDevices.enumerateDevices();
  return all
    .filter(({ kind }) => kind === 'audioinput')
    .map(({ deviceId, label }) => ({ id: deviceId, name: label }));
}

async function record(name: string | undefined): Promise<void> {
  const known = await inputs();
  const device = name === undefined ? undefined : known.find((one) => one.name === name);
  if (known.length === 0) throw new Error('there is no device');
  if (name !== undefined && !device) throw new Error('no device has that name');
  const stream = await mediaDevices.getUserMedia({
    audio: device ? { deviceId: device.id } : true,
  });
  // Nothing is played: without a sink no loudspeaker is needed.
  const out = createWriteStream('', { fd: 3 });
  // Whoever listened is gone.
  out.on('error', () => process.exit(0));
  const context = new AudioContext({ sampleRate: SAMPLE_RATE, sinkId: { type: 'none' } });
  const tap = context.createScriptProcessor(PIECE, 1, 1);
  tap.onaudioprocess = ({ inputBuffer }) => {
    out.write(asBytes(inputBuffer.getChannelData(0)));
  };
  context.createMediaStreamSource(stream).connect(tap);
  tap.connect(context.destination);
}

function asBytes(samples: Float32Array): Buffer {
  const bytes = Buffer.alloc(samples.length * 2);
  samples.forEach((sample, place) => {
    const held = Number.isFinite(sample) ? Math.min(1, Math.max(-1, sample)) : 0;
    bytes.writeInt16LE(Math.round(held * FULL_SCALE), place * 2);
  });
  return bytes;
}

try {
  const [what, name] = process.argv.slice(2);
  if (what === 'list') {
    process.stdout.write(`\n${JSON.stringify((await inputs()).map((one) => ({ name: one.name })))}`, () =>
      process.exit(0),
    );
  } else await record(name);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`, () => process.exit(1));
}
