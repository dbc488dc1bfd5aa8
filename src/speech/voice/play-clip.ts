/** Plays a stretch of a recording. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Result } from '../../problem.ts';
import { decode, SAMPLE_RATE } from '../decode.ts';
import { PLAYERS } from './programs.ts';
import { runSound } from './run-sound.ts';
import { waveFile } from './wave-file.ts';

/** In seconds from the beginning of the recording. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** So much more is played on both sides: places of words are known to a few tenths of a second. */
const MARGIN_SECONDS = 0.4;

/** Plays it to its end, or until the signal. Throws a Problem for a fault of the file. */
export async function playClip(file: string, stretch: Stretch, signal?: AbortSignal): Promise<Result<null>> {
  const sound = await cutOut(file, stretch, signal);
  const folder = mkdtempSync(join(tmpdir(), 'hearwright-clip-'));
  try {
    const clip = join(folder, 'clip.wav');
    writeFileSync(clip, waveFile(sound, SAMPLE_RATE), { mode: 0o600 });
    const played = await runSound(PLAYERS, clip, signal);
    return played.ok ? { ok: true, value: null } : played;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The samples of a stretch; decoding stops behind it. */
export async function cutOut(
  file: string,
  { from, to }: Stretch,
  signal?: AbortSignal,
): Promise<Float32Array> {
  const first = Math.max(0, Math.round((from - MARGIN_SECONDS) * SAMPLE_RATE));
  const end = Math.max(first, Math.round((to + MARGIN_SECONDS) * SAMPLE_RATE));
  const parts: Float32Array[] = [];
  let at = 0;
  for await (const piece of decode(file, signal)) {
    const part = piece.slice(Math.max(0, first - at), Math.max(0, end - at));
    if (part.length > 0) parts.push(part);
    at += piece.length;
    if (at >= end) break;
  }
  const whole = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
  let place = 0;
  for (const part of parts) {
    whole.set(part, place);
    place += part.length;
  }
  return whole;
}
