/** Recordings that are broken, odd or made to do harm: each is heard or refused with its reason, in bounded room and time. */
import { spawnSync } from 'node:child_process';
import {
  closeSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  truncateSync,
  writeSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { mendedPackages } from '../../scripts/mended-packages.mjs';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';
import type { FuzzedMedia } from '../kit/hostile/fuzz-media.ts';
import { risingTone } from '../kit/sound.ts';
import { waveFile } from '../kit/wave-file.ts';

const FIXTURES = resolve('tests/speech/fixtures');
/** Every code that a recording may be refused with. */
const REFUSALS = [
  'codec-unknown',
  'file-cut-off',
  'file-empty',
  'file-text',
  'no-audio',
  'not-media',
  'sound-damaged',
  'sound-empty',
];

let place: Workplace;
let bundle: string;
beforeAll(async () => {
  place = openWorkplace();
  place.call(['init', '--name', 'Barge']);
  // Bundled as the command is; native parts are found from under node_modules.
  const folder = resolve('node_modules/.cache/hearwright-fuzz');
  mkdirSync(folder, { recursive: true });
  bundle = join(mkdtempSync(join(folder, 'run-')), 'fuzz-media.mjs');
  await build({
    entryPoints: [resolve('tests/kit/hostile/fuzz-media.ts')],
    outfile: bundle,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    external: ['better-sqlite3', 'better-sqlite3-node-api', 'sherpa-onnx-node', 'node-web-audio-api'],
    plugins: [mendedPackages],
    logLevel: 'error',
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
  });
}, 60_000);
afterAll(() => {
  place.remove();
  rmSync(join(bundle, '..'), { recursive: true, force: true });
});

/** Without ffmpeg, which is asked for what is unknown here. */
function fuzz(seed: number, count: number): FuzzedMedia {
  const run = spawnSync(process.execPath, [bundle, String(seed), String(count), FIXTURES], {
    encoding: 'utf8',
    env: { PATH: '/nowhere' },
    timeout: 240_000,
  });
  const last = run.stderr.trim().split('\n').at(-1);
  expect(run.status, `it ended with ${run.signal ?? run.status} at ${last}`).toBe(0);
  return JSON.parse(run.stdout) as FuzzedMedia;
}

test('recordings spoilt at random are heard or refused, never hang, and take no more room', {
  timeout: 250_000,
}, () => {
  const { codes, thrown, mostSeconds, peakMegabytes } = fuzz(Date.now() % 100_000, 40);
  expect(thrown).toEqual([]);
  for (const code of Object.keys(codes)) expect(['ok', ...REFUSALS]).toContain(code);
  expect(Object.values(codes).reduce((sum, count) => sum + count, 0)).toBe(40);
  // The whole ones have nine seconds; a spoilt time may say that there was a pause, but not one of days.
  expect(mostSeconds).toBeLessThan(3600);
  expect(peakMegabytes).toBeLessThan(500);
});

test('a Matroska file that is noise behind its first elements is refused: a search in it once went on for ever', () => {
  const bytes = Buffer.from(readFileSync(join(FIXTURES, 'memo.mkv')));
  const segment = bytes.indexOf(Buffer.from('18538067', 'hex'));
  bytes.fill(0xaa, segment + 12);
  place.file('noise.mkv', bytes);
  expect(place.call(['take', 'noise.mkv'])).toEqual({
    out: '',
    err: 'hearwright: cannot take noise.mkv: the video has no sound track\n  kept   the file was left as it was\n  next   take the recording that holds the talk\n',
    code: 3,
  });
});

test.each(['ctts', 'stts'])(
  'a film whose table %s tells of four thousand million samples is read at once',
  (table) => {
    const bytes = Buffer.from(readFileSync(join(FIXTURES, 'memo.mov')));
    // Behind the name: version and flags, the number of entries, then the samples of the first one.
    bytes.writeUInt32BE(0xffffffff, bytes.indexOf(table) + 12);
    place.file(`${table}.mov`, bytes);
    const began = performance.now();
    const { code } = place.call(['take', `${table}.mov`]);
    expect([0, 3]).toContain(code);
    expect(performance.now() - began).toBeLessThan(20_000);
  },
);

/** A file that says it is so long and takes no room on the disk. */
function sparse(name: string, head: Uint8Array, bytes: number): string {
  const file = join(place.folder, name);
  const handle = openSync(file, 'w');
  writeSync(handle, head);
  closeSync(handle);
  truncateSync(file, bytes);
  return name;
}

const THREE_GIGABYTES = 3 * 2 ** 30;
const M4A_HEAD = Buffer.from('00000018667479704d3441200000000069736f6d6d703432', 'hex');

test.each([
  ['noughts.m4a', new Uint8Array(), 'not-media'],
  ['noughts.mp3', new Uint8Array(), 'not-media'],
  ['noughts.wav', new Uint8Array(), 'not-media'],
  ['noughts.txt', new Uint8Array(), 'text-too-long'],
  ['head.m4a', M4A_HEAD, 'file-cut-off'],
] as const)('3 GB of nothing called %s are refused without being read whole', (name, head, code) => {
  sparse(name, head, THREE_GIGABYTES);
  const { err, code: exit } = place.call(['take', name], {
    env: { NODE_OPTIONS: '--max-old-space-size=120' },
  });
  expect([exit, err]).toEqual([3, expect.stringContaining(`cannot take ${name}: `)]);
  expect(err).toContain(
    {
      'not-media': 'no sound or video file',
      'text-too-long': 'too many for a memo',
      'file-cut-off': 'ends before its index',
    }[code],
  );
  rmSync(join(place.folder, name));
});

test('a folder, a pipe and a device are no recordings', () => {
  mkdirSync(join(place.folder, 'folder.wav'));
  expect(place.call(['take', 'folder.wav'])).toMatchObject({
    code: 3,
    err: expect.stringContaining('it is a folder'),
  });
  if (process.platform === 'win32') return;
  spawnSync('mkfifo', [join(place.folder, 'pipe.wav')]);
  expect(place.call(['take', 'pipe.wav', '/dev/zero'])).toMatchObject({ out: '', code: 3 });
});

test('what is heard of odd but whole recordings: every rate, depth and number of channels', {
  timeout: 120_000,
}, () => {
  const shapes = [
    { form: 's16', sampleRate: 8000, channels: 1 },
    { form: 'extensible', sampleRate: 96_000, channels: 2 },
    { form: 'extensible', sampleRate: 48_000, channels: 6 },
  ] as const;
  const files = shapes.map((shape) =>
    place.file(`${shape.sampleRate}-${shape.channels}.wav`, waveFile(risingTone(1, shape.sampleRate), shape)),
  );
  const { out, err, code } = place.call(['take', '--at', '2026-03-02T10:00:00Z', ...files]);
  expect([err, code]).toEqual(['', 0]);
  expect(out.split('\n').filter((line) => /^memo \d {2}\d+-\d\.wav {2}1 s, /.test(line))).toHaveLength(3);
});

test('ten minutes of silence at 8 kHz are a memo without words, in bounded room', {
  timeout: 240_000,
}, () => {
  const seconds = 600;
  const head = waveFile(new Float32Array(0), { form: 's16', sampleRate: 8000, channels: 1 });
  head.writeUInt32LE(seconds * 16_000, 40);
  head.writeUInt32LE(36 + seconds * 16_000, 4);
  sparse('silence.wav', head, 44 + seconds * 16_000);
  const { out, code } = place.call(['take', 'silence.wav', '--at', '2026-03-02T10:00:00Z'], {
    env: { NODE_OPTIONS: '--max-old-space-size=120' },
  });
  expect(code).toBe(0);
  expect(out).toMatch(/silence\.wav {2}10 min/);
});
