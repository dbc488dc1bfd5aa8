/**
 * A whisper.cpp command-line program as a recogniser. Each piece goes over as a file of its own and comes back as JSON:
 * a crash of the program loses that piece and nothing else. No shell is between, and no name of the person's files.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { WhisperSetup } from './messages.ts';
import { type Recognised, type SoundRecogniser, type TimedPart, tidy, wordsOf } from './recognised.ts';
import { SAMPLE_RATE } from './sample-rate.ts';
import { waveBytes } from './wave-bytes.ts';

/** The model is made for windows of 30 seconds; shorter sound than this is padded with silence for it. */
const SHORTEST_SAMPLES = 1.1 * SAMPLE_RATE;
const running = new Set<ChildProcess>();

export function whisperRecogniser(setup: WhisperSetup, threads: number): SoundRecogniser {
  const folder = mkdtempSync(join(tmpdir(), 'hearwright-whisper-'));
  process.on('exit', () => {
    for (const child of running) child.kill('SIGKILL');
    rmSync(folder, { recursive: true, force: true });
  });
  let piece = 0;
  return { recognise: (samples) => recognise(setup, threads, join(folder, `piece-${++piece}`), samples) };
}

async function recognise(
  setup: WhisperSetup,
  threads: number,
  place: string,
  samples: Float32Array,
): Promise<Recognised> {
  const sound = `${place}.wav`;
  try {
    await writeFile(sound, waveBytes(samples, SHORTEST_SAMPLES));
    const lastLine = await run(setup.program, [
      ...['-m', setup.model, '-f', sound, '-of', place, '-ojf'],
      ...['-l', 'en', '-t', String(threads)],
      ...(setup.prompt ? ['--prompt', setup.prompt] : []),
    ]);
    const json = await readFile(`${place}.json`, 'utf8').catch(() => {
      // Older programs end with success when they understood nothing of the call.
      throw new Error(`the Whisper program wrote no result${lastLine && `: ${lastLine}`}`);
    });
    return recognisedInJson(json, samples.length / SAMPLE_RATE);
  } finally {
    await Promise.all([rm(sound, { force: true }), rm(`${place}.json`, { force: true })]);
  }
}

/** Runs the program to its end and gives its last line of talk. Fails with that line when it ends badly. */
function run(program: string, args: readonly string[]): Promise<string> {
  const child = spawn(program, [...args], { stdio: ['ignore', 'ignore', 'pipe'], windowsHide: true });
  running.add(child);
  let lastLine = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    lastLine = text.split('\n').findLast((line) => line.trim() !== '') ?? lastLine;
    // What the program says is passed on: the parent keeps the last line for the message of a failure.
    process.stderr.write(text);
  });
  return new Promise((resolve, reject) => {
    child.on('error', (error) => {
      running.delete(child);
      reject(new Error(`the Whisper program does not start: ${error.message}`));
    });
    child.on('close', (code, signal) => {
      running.delete(child);
      if (code === 0) resolve(lastLine);
      else reject(new Error(`the Whisper program ended with ${signal ?? code}: ${lastLine}`));
    });
  });
}

interface JsonToken {
  readonly text?: unknown;
  readonly offsets?: { readonly from?: unknown; readonly to?: unknown };
}
interface JsonSegment {
  readonly text?: unknown;
  readonly tokens?: readonly JsonToken[];
}

/** Tokens such as `[_BEG_]` and `[_TT_200]` are marks, no talk. */
const MARK = /^\[_.*\]$|^<\|.*\|>$/;

/** Reads the JSON that the program writes: segments with tokens, offsets in milliseconds. */
export function recognisedInJson(json: string, lengthSeconds: number): Recognised {
  const { transcription } = JSON.parse(json.replace(/\p{Cc}/gu, ' ')) as {
    readonly transcription?: readonly JsonSegment[];
  };
  if (!Array.isArray(transcription))
    throw new Error('the Whisper program wrote something else than a transcript');
  const segments = transcription as readonly JsonSegment[];
  const text = tidy(segments.map((segment) => String(segment.text ?? '')).join(''));
  const parts = segments.flatMap((segment) => (segment.tokens ?? []).flatMap((token) => partOf(token)));
  const words = wordsOf(text, parts, lengthSeconds);
  return { text, ...(words ? { words } : {}) };
}

function partOf({ text, offsets }: JsonToken): readonly TimedPart[] {
  if (typeof text !== 'string' || MARK.test(text)) return [];
  const { from, to } = offsets ?? {};
  if (typeof from !== 'number' || typeof to !== 'number') return [];
  return [{ text, startSeconds: from / 1000, endSeconds: Math.max(from, to) / 1000 }];
}
