import { type ChildProcess, spawn } from 'node:child_process';
import {
  appendFileSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

const CLI = resolve('dist/cli.js');
const TALK = resolve('tests/speech/fixtures/memo.m4a');
const canHear = existsSync('models');

let place: Workplace;
let running: ChildProcess | undefined;
beforeEach(() => {
  place = openWorkplace();
  place.call(['init', '--name', 'Boat']);
  mkdirSync(join(place.folder, 'phone'));
});
afterEach(() => {
  running?.kill('SIGKILL');
  place.remove();
});

const inPhone = (name: string) => join(place.folder, 'phone', name);

interface Watching {
  /** Waits until the output holds the text. */
  until(text: string): Promise<void>;
  readonly out: () => string;
  readonly err: () => string;
  stop(): Promise<number | null>;
}

function watch(words: readonly string[] = []): Watching {
  const child = spawn(process.execPath, [CLI, 'watch', 'phone', ...words], {
    cwd: place.folder,
    env: { PATH: process.env.PATH ?? '', HOME: place.folder, TZ: 'UTC' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  running = child;
  const said = { out: '', err: '' };
  child.stdout?.setEncoding('utf8').on('data', (text: string) => {
    said.out += text;
  });
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    said.err += text;
  });
  const ended = new Promise<number | null>((done) => child.on('close', done));
  return {
    out: () => said.out,
    err: () => said.err,
    async until(text) {
      while (!said.out.includes(text) && !said.err.includes(text)) await later(50);
    },
    stop() {
      child.kill('SIGINT');
      return ended;
    },
  };
}

const later = (ms: number) => new Promise((done) => setTimeout(done, ms));

test('what comes into the folder is taken in when it is whole, each content once', async () => {
  writeFileSync(inPhone('there-before.txt'), 'The bench top is 905 mm high.');
  mkdirSync(inPhone('folder.txt'));
  writeFileSync(inPhone('picture.jpg'), Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16]));
  const watching = watch();
  await watching.until('memo 1  there-before.txt');
  // A file that grows is not taken before its end has come.
  for (const word of ['The ', 'hatch ', 'is ', '710 ', 'mm ', 'wide.']) {
    appendFileSync(inPhone('grows.txt'), word);
    await later(600);
  }
  writeFileSync(inPhone('.sync.k3a'), 'The shelf is 200 mm deep.');
  renameSync(inPhone('.sync.k3a'), inPhone('renamed.txt'));
  copyFileSync(inPhone('there-before.txt'), inPhone('the-same-again.txt'));
  writeFileSync(inPhone('latin.txt'), Buffer.from([0x63, 0x61, 0x66, 0xe9]));
  await watching.until('renamed.txt');
  await watching.until('latin.txt: it is not UTF-8 text');
  writeFileSync(Buffer.from(inPhone('caf\u00e9.txt'), 'latin1'), 'The rail is 40 thick.');
  await watching.until('caf\ufffd.txt: its name holds bytes that are no UTF-8');
  expect(await watching.stop()).toBe(0);
  expect(watching.out()).toMatch(/^memo \d {2}grows\.txt {2}6 words: 1 figure$/m);
  expect(
    watching
      .out()
      .match(/^memo \d/gm)
      ?.sort(),
  ).toEqual(['memo 1', 'memo 2', 'memo 3']);
  expect(watching.err()).not.toContain('picture');
  expect(watching.err()).toMatch(/^Watching phone\. Control-C stops\.\n[\s\S]*Stopped watching\.\n$/);
  expect(place.call(['verify']).out).toContain('3 originals');
}, 40_000);

test('watched again, the folder brings nothing that was taken before', async () => {
  writeFileSync(inPhone('a.txt'), 'The bench top is 905 mm high.');
  place.call(['take', 'phone/a.txt']);
  const watching = watch();
  writeFileSync(inPhone('b.txt'), 'The hatch is 710 mm wide.');
  await watching.until('memo 2  b.txt');
  expect(await watching.stop()).toBe(0);
  expect(watching.out()).not.toContain('a.txt');
}, 20_000);

test.skipIf(!canHear)(
  'a recording is heard, and --json prints a line for each file',
  async () => {
    const watching = watch(['--json']);
    copyFileSync(TALK, inPhone('memo.m4a'));
    writeFileSync(inPhone('cut.mp4'), readFileSync(TALK).subarray(0, 2000));
    await watching.until('"taken"');
    await watching.until('"failed"');
    expect(await watching.stop()).toBe(0);
    const lines = watching
      .out()
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(lines).toContainEqual(
      expect.objectContaining({ kind: 'failed', problem: expect.objectContaining({ code: 'file-cut-off' }) }),
    );
    const taken = lines.find(({ kind }) => kind === 'taken');
    expect(taken.file).toMatch(/memo\.m4a$/);
    expect(taken.taken.memo.notes.figures).toContainEqual(
      expect.objectContaining({ item: 'window', value: 620, unit: 'mm' }),
    );
  },
  40_000,
);

test('a folder that goes away and comes back is watched on', async () => {
  const watching = watch();
  await watching.until('Watching');
  await later(300);
  rmSync(join(place.folder, 'phone'), { recursive: true });
  await watching.until('phone is gone.');
  mkdirSync(join(place.folder, 'phone'));
  await watching.until('phone is back.');
  writeFileSync(inPhone('a.txt'), 'The bench top is 905 mm high.');
  await watching.until('memo 1  a.txt');
  expect(await watching.stop()).toBe(0);
}, 30_000);

test('a folder that is not there is told at once', () => {
  expect(place.call(['watch', 'nowhere'])).toEqual({
    out: '',
    err: 'hearwright: cannot watch nowhere: there is no such folder, or it may not be read\n  next   name the folder that the phone syncs to\n',
    code: 2,
  });
});
