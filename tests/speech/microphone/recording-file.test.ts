import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { decode, probe, SAMPLE_RATE } from '../../../src/speech/decode.ts';
import { RecordingFile, repairRecording } from '../../../src/speech/microphone/recording-file.ts';
import { leftRecordings, newRecording } from '../../../src/speech/microphone/recordings-folder.ts';
import { HEADER_BYTES } from '../../../src/speech/microphone/wave-header.ts';
import { joined, risingTone } from '../../kit/sound.ts';

const STARTED = '2026-05-03T16:00:05+02:00';

let folder: string;
let path: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'recording-'));
  path = join(folder, 'talk.wav');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const tone = Int16Array.from(risingTone(3, SAMPLE_RATE), (sample) => Math.round(sample * 32_767));
const tenth = SAMPLE_RATE / 10;

async function record(seconds: number): Promise<RecordingFile> {
  const file = await RecordingFile.create(path, STARTED);
  for (let at = 0; at < seconds * SAMPLE_RATE; at += tenth) await file.append(tone.subarray(at, at + tenth));
  return file;
}

async function samplesOf(file: string): Promise<Int16Array> {
  const parts: Float32Array[] = [];
  for await (const part of decode(file)) parts.push(part);
  return Int16Array.from(joined(parts), (sample) => Math.round(sample * 32_768));
}

test('what was recorded is decoded to the sample, with its length and its time', async () => {
  await (await record(3)).close();
  expect(await samplesOf(path)).toEqual(tone);
  expect(await probe(path)).toEqual({
    ok: true,
    value: { format: 'WAV, PCM, 16 bit', durationSeconds: 3, createdAt: '2026-05-03T16:00:05' },
  });
});

test('only its owner may read it', async () => {
  await (await record(0.1)).close();
  expect(statSync(path).mode & 0o777).toBe(0o600);
});

test('at any moment the file decodes, and half a second of it at most is not stated yet', async () => {
  const file = await record(1.9);
  const copy = join(folder, 'copy.wav');
  copyFileSync(path, copy);
  const found = await probe(copy);
  expect(found.ok && found.value.durationSeconds).toBeGreaterThanOrEqual(1.4);
  // Nothing of it waits in the program: the bytes are there already, and the repair finds them.
  expect(await repairRecording(copy)).toBe(1.9 * SAMPLE_RATE);
  expect(await samplesOf(copy)).toEqual(tone.slice(0, 1.9 * SAMPLE_RATE));
  await file.close();
});

test('a file cut off inside a sample loses that sample only', async () => {
  await (await record(1)).close();
  truncateSync(path, HEADER_BYTES + 2 * 1000 + 1);
  expect(await repairRecording(path)).toBe(1000);
  expect(await samplesOf(path)).toEqual(tone.slice(0, 1000));
});

test('a file that was made and not written to holds no sound', async () => {
  writeFileSync(path, '');
  expect(await repairRecording(path)).toBe(0);
});

test('a file of somebody else is left as it is', async () => {
  writeFileSync(path, 'RIFF and then a letter'.repeat(60));
  const before = statSync(path).size;
  expect(await repairRecording(path)).toBeUndefined();
  expect(statSync(path).size).toBe(before);
});

test('cut in two, both parts together are what was recorded', async () => {
  const first = await record(2);
  const next = await first.cutAt(25_000, join(folder, 'next.wav'), '2026-05-03T16:00:07+02:00');
  await next.append(tone.subarray(2 * SAMPLE_RATE));
  await first.close();
  await next.close();
  expect(await samplesOf(path)).toEqual(tone.slice(0, 25_000));
  expect(await samplesOf(join(folder, 'next.wav'))).toEqual(tone.slice(25_000));
});

/** A process number that no process has. */
const NOBODY = 2 ** 22 + 1;

test('recordings of a process that is gone are found, oldest first, whole; those without sound are deleted', async () => {
  mkdirSync(join(folder, 'recordings'));
  const inFolder = (name: string) => join(folder, 'recordings', name);
  await (await record(1)).close();
  copyFileSync(path, inFolder(`talk-2026-05-03-160005.${NOBODY}.wav`));
  copyFileSync(path, inFolder(`talk-2026-05-02-070000.${NOBODY}.wav`));
  copyFileSync(path, inFolder(`talk-2026-05-01-070000.${NOBODY}.wav`));
  truncateSync(inFolder(`talk-2026-05-01-070000.${NOBODY}.wav`), HEADER_BYTES);
  copyFileSync(path, inFolder(`talk-2026-05-03-180000.${NOBODY}.no-talk.wav`));
  copyFileSync(path, inFolder('my own.wav'));
  expect((await leftRecordings(folder)).map(({ name }) => name)).toEqual([
    'talk-2026-05-02-070000.wav',
    'talk-2026-05-03-160005.wav',
  ]);
  expect(readdirSync(join(folder, 'recordings')).length).toBe(4);
});

test('a recording that this process may still be writing is left alone', async () => {
  const { path: own, name } = newRecording(folder, STARTED);
  expect(name).toBe('talk-2026-05-03-160005.wav');
  await (await RecordingFile.create(own, STARTED)).close();
  expect(await leftRecordings(folder)).toEqual([]);
  expect(newRecording(folder, STARTED).name).toBe('talk-2026-05-03-160005-2.wav');
});

test('a project without recordings has none left', async () => {
  expect(await leftRecordings(folder)).toEqual([]);
});
