/** Recording and playing through a real sound server, which stands in for a sound card. */
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, statSync, symlinkSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { decode } from '../../src/speech/decode.ts';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';
import { correlation, joined, risingTone } from '../kit/sound.ts';
import { NO_SOUND_SERVER, type SoundServer, startSoundServer } from '../kit/sound-server.ts';

const CLI = resolve('dist/cli.js');
/** "... The window is six hundred and twenty millimeters wide, and it is three inches too high." */
const TALK = resolve('tests/speech/fixtures/memo.flac');
const RATE = 16_000;
const TONE = risingTone(3, RATE);

let place: Workplace;
let server: SoundServer;
beforeEach(async ({ skip }) => {
  if (NO_SOUND_SERVER) skip(NO_SOUND_SERVER);
  server = await startSoundServer();
  place = openWorkplace();
  place.call(['init', '--name', 'Boat', '--units', 'mixed']);
});
afterEach(() => {
  place?.remove();
  server?.close();
});

/** Runs the command beside the test, which plays meanwhile. */
async function call(words: readonly string[], path = process.env.PATH ?? ''): Promise<string> {
  const env = { HOME: place.folder, TZ: 'UTC', ...server.env, PATH: path };
  const child = spawn(process.execPath, [CLI, ...words], { cwd: place.folder, env });
  let told = '';
  for (const pipe of [child.stdout, child.stderr])
    pipe.setEncoding('utf8').on('data', (text: string) => {
      told += text;
    });
  await new Promise((done) => child.on('close', done));
  return told;
}

const samples = async (file: string) => {
  const parts: Float32Array[] = [];
  for await (const part of decode(file)) parts.push(part);
  return joined(parts);
};

/** Waits until so many seconds are on the disk. */
async function recorded(seconds: number): Promise<void> {
  const folder = join(place.folder, '.hearwright', 'recordings');
  const isThere = () =>
    existsSync(folder) &&
    readdirSync(folder).some((name) => statSync(join(folder, name)).size >= seconds * 2 * RATE);
  while (!isThere()) await new Promise((done) => setTimeout(done, 50));
}

/** How like the wanted sound that is which begins where it gets loud. A lost tenth of a second brings this below 0.5. */
function likeness(wanted: Float32Array, sound: Float32Array): number {
  const from = sound.findIndex((sample) => Math.abs(sample) > 0.02);
  const places = Array.from({ length: 400 }, (_, k) => from - 200 + k).filter((at) => at >= 0);
  return Math.max(-1, ...places.map((at) => correlation(wanted, sound.subarray(at, at + wanted.length))));
}

/** A path on which nothing is but one program, or nothing at all. */
function pathWith(program?: string): string {
  const bin = join(place.folder, 'bin');
  mkdirSync(bin);
  if (program) symlinkSync(join('/usr/bin', program), join(bin, program));
  return bin;
}

for (const [how, program] of [
  ['arecord', 'arecord'],
  ['parecord', 'parecord'],
  ['the bundled recorder', undefined],
] as const) {
  const isThere = program === undefined || existsSync(join('/usr/bin', program));
  test.skipIf(!isThere)(
    `${how} gives every sample of what is played, in order`,
    {
      timeout: 60_000,
      // The sound server itself leaves out sound while the machine has no time for it.
      retry: 2,
    },
    async () => {
      const listening = call(['listen', '--for', '7'], pathWith(program));
      await recorded(0.3);
      await server.play(TONE);
      expect(await listening).toMatch(/^memo 1 {2}talk-[-\d]+\.wav {2}7 s/m);
      const originals = join(place.folder, '.hearwright', 'originals');
      const [original = ''] = readdirSync(originals);
      expect(likeness(TONE, await samples(join(originals, original)))).toBeGreaterThan(0.97);
    },
  );
}

test.skipIf(!existsSync('models'))('a note is played as it was said', { timeout: 60_000 }, async () => {
  place.call(['take', TALK]);
  const heard = await server.heardInRoom(async () => {
    expect(await call(['play', 'm1.f1'])).toBe('');
  });
  const talk = await samples(TALK);
  const loud = heard.findIndex((sample) => Math.abs(sample) > 0.02);
  const last = heard.findLastIndex((sample) => Math.abs(sample) > 0.02);
  // The quarter of a second in its middle is somewhere in the talk, sample by sample.
  const middle = heard.subarray((loud + last) / 2 - RATE / 8, (loud + last) / 2 + RATE / 8);
  expect(bestPlace(middle, talk)).toBeGreaterThan(0.97);
});

/** The best likeness of a piece to any place of a longer sound; places are tried coarsely first. */
function bestPlace(piece: Float32Array, whole: Float32Array): number {
  const at = (place: number) => correlation(piece, whole.subarray(place, place + piece.length));
  let best = -1;
  for (let place = 0; place + piece.length <= whole.length; place += 2) best = Math.max(best, at(place));
  return best;
}

test.skipIf(!existsSync('models'))(
  'a figure is read aloud in the room, and the microphone that hears it takes nothing down twice',
  { timeout: 60_000 },
  async () => {
    server.openRoom();
    const talk = await samples(TALK);
    let told = '';
    const room = await server.heardInRoom(async () => {
      const listening = call(['listen', '--aloud', '--for', '20']);
      await recorded(1);
      await server.play(talk);
      told = await listening;
    });
    expect(told).toMatch(/window (width|offset)/);
    expect(room.some((sample) => Math.abs(sample) > 0.05)).toBe(true);
    const { memos } = JSON.parse(place.call(['export', '--json']).out);
    expect(memos[0].text.match(/\b(?:620|six hundred and twenty)\b/gi)).toHaveLength(1);
  },
);
