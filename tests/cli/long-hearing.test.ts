/**
 * Long recordings and many of them, through the built command. A program in the place of whisper.cpp counts the pieces that
 * it is asked for, so that what is heard twice shows.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { chmodSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { decode } from '../../src/speech/decode.ts';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';
import { joined } from '../kit/sound.ts';
import { waveFile } from '../kit/wave-file.ts';
import { scriptedWhisper } from '../kit/whisper-file.ts';

const RATE = 16_000;
let place: Workplace;
let heard: string;

/** What the program was asked for, a line for each piece: which process, when it began and ended. */
const pieces = () =>
  existsSync(heard)
    ? readFileSync(heard, 'utf8')
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line) as { readonly begun: number; readonly ended: number })
    : [];

beforeEach(() => {
  place = openWorkplace();
  heard = join(place.folder, 'heard.jsonl');
  place.call(['init', '--name', 'Weir house']);
  place.file('words.bin', scriptedWhisper('one two three'));
  const program = join(place.folder, 'whisper-counting');
  writeFileSync(
    program,
    `#!${process.execPath}
if (process.argv[2] === '--help') { console.log('--output-json-full'); process.exit(0); }
const fs = require('node:fs');
const begun = Date.now();
setTimeout(() => {
  const to = process.argv[process.argv.indexOf('-of') + 1] + '.json';
  fs.writeFileSync(to, JSON.stringify({ transcription: [{ text: ' the weir board is 40 millimetres thick' }] }));
  fs.appendFileSync(${JSON.stringify(heard)}, JSON.stringify({ begun, ended: Date.now() }) + '\\n');
}, 700);
`,
  );
  chmodSync(program, 0o755);
  place.call(['engines', 'set-up', 'whisper', '--program', program]);
  place.call(['engines', 'add', 'words.bin']);
  place.call(['engines', 'use', 'words']);
}, 60_000);
afterEach(() => place.remove());

/** The fixture's talk so many times, with pauses that part the pieces. */
async function longTalk(name: string, times: number): Promise<void> {
  const talk: Float32Array[] = [];
  for await (const part of decode(resolve('tests/speech/fixtures/memo.flac'))) talk.push(part);
  const pause = new Float32Array(4 * RATE);
  const sound = joined(Array.from({ length: times }, () => [...talk, pause]).flat());
  place.file(name, waveFile(sound, { form: 's16', sampleRate: RATE, channels: 1 }));
}

function start(...words: readonly string[]): ChildProcess {
  return spawn(process.execPath, [resolve('dist/cli.js'), ...words], {
    cwd: place.folder,
    env: { PATH: process.env.PATH ?? '', HOME: place.folder, TZ: 'UTC' },
    stdio: 'ignore',
  });
}

test('after a kill in the middle of a recording no piece is heard twice but the one at hand', async () => {
  await longTalk('long.wav', 6);
  const child = start('take', 'long.wav');
  await expect.poll(() => pieces().length, { timeout: 60_000, interval: 50 }).toBeGreaterThanOrEqual(3);
  child.kill('SIGKILL');
  await new Promise((gone) => child.on('close', gone));
  // The recogniser's process sees that its parent is gone, and ends.
  const hearing = join(place.folder, '.hearwright/hearing');
  expect(readdirSync(hearing)).toHaveLength(1);
  const resumed = place.call(['resume']);
  expect(resumed).toMatchObject({ err: '', code: 0 });
  const [transcript] = JSON.parse(place.call(['transcripts', '1', '--json']).out);
  expect(transcript.utterances).toHaveLength(6);
  expect(pieces().length).toBeLessThanOrEqual(7);
  expect(readdirSync(hearing)).toEqual([]);
  // The same as without a break: every piece once, each in its place, 12 to 13 seconds apart.
  const starts = transcript.utterances.map(({ startSeconds }: { startSeconds: number }) => startSeconds);
  for (let place = 1; place < starts.length; place++)
    expect(starts[place] - starts[place - 1]).toBeCloseTo(12.7, 0);
}, 120_000);

test('several recordings are heard beside each other, and become memos in their order', async () => {
  // Long enough that the others begin before it ends, on a busy machine too.
  await longTalk('first.wav', 9);
  await longTalk('second.wav', 1);
  await longTalk('third.wav', 2);
  const taken = place.call(['take', 'first.wav', 'second.wav', 'nowhere.wav', 'third.wav', 'second.wav']);
  expect(taken.code).toBe(3);
  const firstWords = taken.out
    .split('\n')
    .flatMap((line) => /^(?:memo \d|\S+ was taken before)/.exec(line) ?? []);
  expect(firstWords.slice(0, 3)).toEqual(['memo 1', 'memo 2', 'memo 3']);
  expect(taken.err).toContain('nowhere.wav');
  const memos = JSON.parse(place.call(['memos', '--json']).out);
  expect(memos.map(({ source }: { source: { name: string } }) => source.name)).toEqual([
    'first.wav',
    'second.wav',
    'third.wav',
  ]);
  const all = pieces();
  expect(all).toHaveLength(12);
  const beside = all.filter((one) => all.some((other) => other.begun > one.begun && other.begun < one.ended));
  expect(beside.length).toBeGreaterThan(0);
  expect(place.call(['verify'])).toMatchObject({ code: 0 });
}, 120_000);
