import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

const CLI = resolve('dist/cli.js');
const SAMPLE = resolve('samples/03-friday-morning.mp3');
/** The first quarter of a sample: an MP3 may be cut anywhere. */
const RECORDING = 'cut.mp3';
const canHear = existsSync('models') && existsSync(SAMPLE);

let place: Workplace;
beforeEach(() => {
  place = openWorkplace();
  place.call(['init', '--name', 'Boat']);
  const whole = canHear ? readFileSync(SAMPLE) : Buffer.alloc(0);
  place.file(RECORDING, whole.subarray(0, whole.length / 4));
});
afterEach(() => place.remove());

const statusOf = (): string | undefined => JSON.parse(place.call(['memos', '--json']).out)[0]?.status;

/** Starts taking the recording and waits until its original is kept. */
async function takeUntilKept(): Promise<{
  child: ChildProcess;
  ended: Promise<{ code: number | null; err: string }>;
}> {
  const child = spawn(process.execPath, [CLI, 'take', RECORDING], {
    cwd: place.folder,
    env: { PATH: process.env.PATH ?? '', HOME: place.folder, TZ: 'UTC' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let err = '';
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    err += text;
  });
  const ended = new Promise<{ code: number | null; err: string }>((done) => {
    child.on('close', (code) => done({ code, err }));
  });
  while (!existsSync(join(place.folder, '.hearwright', 'originals')) || statusOf() === undefined)
    await new Promise((wait) => setTimeout(wait, 50));
  return { child, ended };
}

test.skipIf(!canHear)(
  'control-C stops a long memo in good order: it is kept, and resume reads it',
  async () => {
    const { child, ended } = await takeUntilKept();
    child.kill('SIGINT');
    const { code, err } = await ended;
    expect(err).toBe(
      'hearwright: stopped while hearing cut.mp3\n  kept   cut.mp3 is kept as memo 1, not read yet\n  next   go on with: hearwright resume\n',
    );
    expect(code).toBe(3);
    expect(statusOf()).toBe('kept');
    const resumed = place.call(['resume']);
    expect(resumed).toMatchObject({ err: '', code: 0 });
    expect(resumed.out).toMatch(/^memo 1 {2}cut\.mp3 {2}\d+ s, \d+ words: /);
    expect(place.call(['verify']).out).toBe('Whole: 4 events, 1 original.\n');
  },
  40_000,
);

test.skipIf(!canHear)(
  'a killed process loses nothing: the next take reads the kept memo first',
  async () => {
    const { child, ended } = await takeUntilKept();
    child.kill('SIGKILL');
    await ended;
    expect(statusOf()).toBe('kept');
    place.file('a.txt', 'Hello hello.');
    const { out, code } = place.call(['take', 'a.txt', '--at', '2026-04-12T08:00Z']);
    expect(out.split('\n').map((line) => line.slice(0, 6))).toEqual(['memo 1', 'memo 2', '']);
    expect(code).toBe(0);
    expect(place.call(['verify']).code).toBe(0);
  },
  40_000,
);
