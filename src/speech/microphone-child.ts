/**
 * The bundled recorder's own process. `list` prints the devices as JSON; `record [NAME]` writes signed 16-bit, 16 kHz,
 * one channel to pipe 3 until it is ended or nobody reads: the library may print on standard output.
 */
import { once } from 'node:events';
import { createWriteStream } from 'node:fs';
import { createRequire } from 'node:module';
import type { PvRecorder as Recorder } from '@picovoice/pvrecorder-node';
import { SAMPLE_RATE } from './recogniser/sample-rate.ts';

/** Samples a piece: a tenth of a second. */
const PIECE = SAMPLE_RATE / 10;
/** So many pieces wait in the library while this process is kept from running. */
const WAITING = 100;
const DEFAULT_DEVICE = -1;
/** So many readings in a row without sound, and the device is gone. */
const MOST_FAILED = 4;

/** Loaded here, so that a system that it has no part for is told of like a missing microphone. */
function library(): typeof Recorder {
  const load = createRequire(import.meta.url);
  return (load('@picovoice/pvrecorder-node') as { readonly PvRecorder: typeof Recorder }).PvRecorder;
}

/** By its place, as the library counts them. What a sound server gives of its own playing hears no room. */
function inputs(recorder: typeof Recorder): readonly { readonly place: number; readonly name: string }[] {
  return recorder
    .getAvailableDevices()
    .map((name, place) => ({ place, name }))
    .filter(({ name }) => !name.startsWith('Monitor of '));
}

async function record(name: string | undefined): Promise<void> {
  const recorders = library();
  const known = inputs(recorders);
  const device = name === undefined ? undefined : known.find((one) => one.name === name);
  if (known.length === 0) throw new Error('there is no device');
  if (name !== undefined && !device) throw new Error('no device has that name');
  const recorder = new recorders(PIECE, device?.place ?? DEFAULT_DEVICE, WAITING);
  const out = createWriteStream('', { fd: 3 });
  // Whoever listened is gone.
  out.on('error', () => process.exit(0));
  recorder.start();
  for (;;) {
    const { buffer, byteOffset, byteLength } = await nextPiece(recorder);
    if (!out.write(new Uint8Array(buffer, byteOffset, byteLength))) await once(out, 'drain');
  }
}

/** The library gives up after a second without sound; a device that was asleep needs longer for its first. */
async function nextPiece(recorder: Recorder): Promise<Int16Array> {
  for (let failed = 0; failed < MOST_FAILED; failed++) {
    const piece = await recorder.read().catch(() => undefined);
    if (piece) return piece;
  }
  throw new Error('the device is gone');
}

try {
  const [what, name] = process.argv.slice(2);
  if (what === 'list') {
    const names = inputs(library()).map((one) => ({ name: one.name }));
    process.stdout.write(`\n${JSON.stringify(names)}`, () => process.exit(0));
  } else await record(name);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`, () => process.exit(1));
}
