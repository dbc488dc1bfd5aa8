/** A recording program that plays a file instead of hearing a room. It stands in the path under a system's name. */
import { chmodSync, mkdirSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { decode, SAMPLE_RATE } from '../../src/speech/decode.ts';
import { joined } from './sound.ts';

export interface StandIn {
  /** Signed 16-bit, 16 kHz, one channel. */
  readonly sound: Int16Array;
  /** How many times as fast as real time it plays. */
  readonly pace?: number;
  /** What it does after the last sample: goes on with silence, or ends with an error, as when it is unplugged. */
  readonly after?: 'silence' | 'gone';
}

/** The file in `folder` that holds when the program began to play, in milliseconds since 1970. */
export const beganFile = (folder: string) => join(folder, 'bin', 'began');

/** Writes the program into `folder` and gives back a PATH on which it is found first. */
export function standInMicrophone(folder: string, { sound, pace = 1, after = 'silence' }: StandIn): string {
  const bin = join(folder, 'bin');
  mkdirSync(bin, { recursive: true });
  const raw = join(bin, 'sound.raw');
  writeFileSync(raw, new Uint8Array(sound.buffer, sound.byteOffset, sound.byteLength));
  const program = join(bin, 'arecord');
  writeFileSync(program, programText({ raw, began: beganFile(folder), pace, after }));
  chmodSync(program, 0o755);
  return [bin, process.env.PATH ?? ''].join(delimiter);
}

/** A tenth of a second a piece, as sound cards give it. */
function programText({
  raw,
  began,
  pace,
  after,
}: {
  readonly raw: string;
  readonly began: string;
  readonly pace: number;
  readonly after: string;
}): string {
  return `#!${process.execPath}
const { readFileSync, writeFileSync } = require('node:fs');
if (process.argv.includes('-L')) {
  console.log('null\\n    Nothing\\nbench\\n    Bench microphone\\n    Stand-in');
  process.exit(0);
}
const device = process.argv.find((word) => word.startsWith('--device='));
if (device && device !== '--device=bench') {
  console.error('arecord: main:831: audio open error: No such file or directory');
  process.exit(1);
}
const sound = readFileSync(${JSON.stringify(raw)});
const PIECE = 3200;
const began = performance.now();
writeFileSync(${JSON.stringify(began)}, String(Date.now()));
let at = 0;
process.stdout.on('error', () => process.exit(1));
const playing = setInterval(() => {
  const due = ((performance.now() - began) / 1000) * 32000 * ${pace};
  while (at + PIECE <= due) {
    const piece = Buffer.alloc(PIECE);
    sound.copy(piece, 0, Math.min(at, sound.length), at + PIECE);
    at += PIECE;
    const isGone = ${JSON.stringify(after)} === 'gone' && at >= sound.length;
    process.stdout.write(piece, isGone ? unplugged : undefined);
    if (isGone) return clearInterval(playing);
  }
}, 20);
function unplugged() {
  console.error('arecord: pcm_read:2272: read error: No such device');
  process.exit(1);
}
`;
}

/** Sound of a recording as a microphone gives it, with silence before and behind. */
export async function microphoneSound(
  file: string,
  { before = 0, behind = 0 }: { readonly before?: number; readonly behind?: number } = {},
): Promise<Int16Array> {
  const parts: Float32Array[] = [new Float32Array(before * SAMPLE_RATE)];
  for await (const part of decode(file)) parts.push(part);
  parts.push(new Float32Array(behind * SAMPLE_RATE));
  return Int16Array.from(joined(parts), (sample) => Math.round(sample * 32_767));
}
