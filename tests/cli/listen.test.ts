import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';
import { risingTone } from '../kit/sound.ts';
import { microphoneSound, type StandIn, standInMicrophone } from '../kit/stand-in-microphone.ts';

const CLI = resolve('dist/cli.js');
/** "... The window is six hundred and twenty millimeters wide, and it is three inches too high." */
const TALK = resolve('tests/speech/fixtures/memo.flac');
const canHear = existsSync('models');
/** Seconds of `TALK`. */
const TALK_SECONDS = 8.71;

let place: Workplace;
beforeEach(() => {
  place = openWorkplace();
  place.call(['init', '--name', 'Boat', '--units', 'mixed']);
});
afterEach(() => place.remove());

const recordings = () => join(place.folder, '.hearwright', 'recordings');
const files = (folder: string) => (existsSync(folder) ? readdirSync(folder) : []);
const plugIn = (standIn: StandIn) => ({ PATH: standInMicrophone(place.folder, standIn) });
/** No device, on a machine that has one too. */
const UNPLUGGED = { PATH: '/nowhere', ALSA_CONFIG_PATH: '/dev/null' };

interface Running {
  readonly child: ChildProcess;
  readonly ended: Promise<{ readonly code: number | null; readonly out: string; readonly err: string }>;
}

function start(words: readonly string[], env: Readonly<Record<string, string>>): Running {
  const child = spawn(process.execPath, [CLI, ...words], {
    cwd: place.folder,
    env: { HOME: place.folder, TZ: 'UTC', ...env },
    stdio: ['pipe', 'pipe', 'pipe'],
  });
  let out = '';
  let err = '';
  child.stdout?.setEncoding('utf8').on('data', (text: string) => {
    out += text;
  });
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    err += text;
  });
  return {
    child,
    ended: new Promise((done) => child.on('close', (code) => done({ code, out, err }))),
  };
}

async function recorded(bytes: number): Promise<string> {
  for (;;) {
    const [file] = files(recordings());
    if (file && statSync(join(recordings(), file)).size >= bytes) return join(recordings(), file);
    await new Promise((wait) => setTimeout(wait, 30));
  }
}

test.skipIf(!canHear)(
  'each figure and each clash is told as it is said, then the memo as take tells it',
  async () => {
    place.file('before.txt', 'The window must be at most 600 mm wide. The window is 0.6 m wide.');
    place.call(['take', 'before.txt', '--at', '2026-02-02T17:30:00Z']);
    const env = plugIn({ sound: await microphoneSound(TALK), pace: 4 });
    const { out, err, code } = place.call(['listen', '--for', '11'], { env });
    const lines = out.split('\n');
    expect(lines[0]).toMatch(/^00:0\d {2}window width: 620 mm \(≈ 24 7\/16 in\) {3}"/);
    const told = lines.findIndex((line) => line.startsWith('memo 2'));
    const live = lines.slice(1, told).join('\n');
    expect(live).toContain('  window width 0.6 m → 620 mm: measured anew [just said]');
    expect(live).toContain('window width: breaks a stated limit   [just said]');
    expect(lines[told]).toMatch(/^memo 2 {2}talk-[-\d]+\.wav {2}11 s, \d+ words: \d figures?/);
    expect(lines.slice(told).join('\n')).toMatch(/^window width: breaks a stated limit {3}\[m2\.c\d\]$/m);
    expect(err).toBe(
      'Recording from the default microphone. Enter or Control-C stops.\nStopped. The last words are being heard.\n',
    );
    expect(code).toBe(0);
    expect(files(recordings())).toEqual([]);
    expect(place.call(['verify']).out).toBe('Whole: 7 events, 2 originals.\n');
  },
);

test.skipIf(!canHear)('what is heard at once is what take hears in the file afterwards', async () => {
  const env = plugIn({ sound: await microphoneSound(TALK), pace: 4 });
  place.call(['listen', '--for', '10'], { env });
  const [original = ''] = files(join(place.folder, '.hearwright', 'originals'));
  const kept = readFileSync(join(place.folder, '.hearwright', 'originals', original));
  const other = openWorkplace();
  try {
    other.call(['init', '--units', 'mixed']);
    other.file('kept.wav', kept);
    other.call(['take', 'kept.wav']);
    const { text, utterances } = JSON.parse(other.call(['memos', '1', '--json']).out);
    expect(JSON.parse(place.call(['memos', '1', '--json']).out)).toMatchObject({ text, utterances });
  } finally {
    other.remove();
  }
});

test.skipIf(!canHear)(
  'a long silence parts two memos, each with its own time, and the silence behind the last is no memo',
  async () => {
    const talk = await microphoneSound(TALK, { behind: 36 });
    const sound = Int16Array.from([...talk, ...talk]);
    const env = plugIn({ sound, pace: 8 });
    const { out, err, code } = place.call(['listen', '--for', '88'], { env });
    expect(code).toBe(0);
    const memos = JSON.parse(place.call(['memos', '--json']).out);
    expect(memos).toHaveLength(2);
    expect(memos.map(({ status }: { status: string }) => status)).toEqual(['read', 'read']);
    const apart = Date.parse(memos[1].recordedAt) - Date.parse(memos[0].recordedAt);
    expect(apart / 1000).toBeGreaterThan(TALK_SECONDS + 29);
    expect(apart / 1000).toBeLessThan(TALK_SECONDS + 36);
    expect(out.match(/^memo \d/gm)).toEqual(['memo 1', 'memo 2']);
    expect(err).toMatch(/The last \d s held no talk and are no memo: DIR/);
    const [silent] = files(recordings());
    expect(silent).toMatch(/\.no-talk\.wav$/);
    // It stays where it is.
    expect(place.call(['resume']).out).toBe('Nothing is left to read.\n');
    // Together they are all that was recorded: 88 s.
    const seconds = memos.map(
      ({ source }: { source: { durationSeconds: number } }) => source.durationSeconds,
    );
    const rest = (statSync(join(recordings(), silent ?? '')).size - 654) / 32_000;
    expect(seconds[0] + seconds[1] + rest).toBeCloseTo(88, 3);
  },
  60_000,
);

test.skipIf(!canHear).each([['Enter'], ['Control-C'], ['the end of the program that started it']])(
  '%s stops and keeps all',
  async (way) => {
    const env = plugIn({ sound: await microphoneSound(TALK), pace: 4 });
    const { child, ended } = start(['listen'], env);
    await recorded(10 * 32_000);
    if (way === 'Enter') child.stdin?.write('\n');
    else child.kill(way === 'Control-C' ? 'SIGINT' : 'SIGTERM');
    const { code, out, err } = await ended;
    expect(out).toMatch(/^memo 1 {2}talk-/m);
    expect(err).toContain('Stopped.');
    expect(code).toBe(0);
    const [memo] = JSON.parse(place.call(['memos', '--json']).out);
    expect(memo.source.durationSeconds).toBeGreaterThan(9);
    expect(files(recordings())).toEqual([]);
  },
);

test.skipIf(!canHear)(
  'killed while recording: everything written is there, whole, and the next call takes it in',
  async () => {
    const sound = await microphoneSound(TALK, { behind: 60 });
    const { child, ended } = start(['listen'], plugIn({ sound, pace: 2 }));
    await recorded(8 * 32_000);
    child.kill('SIGKILL');
    await ended;
    const [left = ''] = files(recordings());
    const bytes = readFileSync(join(recordings(), left)).subarray(654);
    expect(bytes.length).toBeGreaterThanOrEqual(7.9 * 32_000);
    expect(Buffer.compare(bytes, Buffer.from(sound.buffer, 0, bytes.length))).toBe(0);
    const { out, code } = place.call(['resume']);
    expect(code).toBe(0);
    expect(out).toMatch(/^memo 1 {2}talk-[-\d]+\.wav {2}\d+ s, \d+ words: /);
    const [memo] = JSON.parse(place.call(['memos', '--json']).out);
    expect(memo.source.durationSeconds).toBeCloseTo(bytes.length / 32_000, 3);
    expect(memo.recordedAtFrom).toBe('container');
    expect(files(recordings())).toEqual([]);
  },
);

test.skipIf(!canHear)(
  'a microphone that is unplugged: one message, and what was recorded is a memo',
  async () => {
    const env = plugIn({ sound: await microphoneSound(TALK), pace: 4, after: 'gone' });
    const { out, err, code } = place.call(['listen'], { env });
    expect(err).toContain(
      'hearwright: the microphone is gone: the default microphone stopped giving sound (arecord: pcm_read:2272: read error: No such device)\n' +
        '  kept   the 00:08 recorded until then\n  next   plug it in again, then go on: hearwright listen\n',
    );
    expect(out).toMatch(/^memo 1 {2}talk-/m);
    expect(code).toBe(3);
  },
);

test('no microphone at all: what was tried, and the way without one', () => {
  const { out, err, code } = place.call(['listen'], { env: UNPLUGGED });
  expect(out).toBe('');
  expect(err).toMatch(
    /^hearwright: cannot record: no microphone answers \(arecord: not installed; parecord: not installed; bundled recorder: .+\)\n {2}kept {3}nothing was recorded\n {2}next {3}plug one in/,
  );
  expect(code).toBe(3);
  expect(place.call(['listen', '--list'], { env: UNPLUGGED }).out).toBe(
    'No microphone is known here. Plug one in, or record with a phone and take the file.\n',
  );
});

test('the microphones are listed, for people and for scripts', async () => {
  const env = plugIn({ sound: new Int16Array(16) });
  expect(place.call(['listen', '--list'], { env: { ...UNPLUGGED, ...env } }).out).toBe(
    'bench  arecord  Bench microphone, Stand-in\n',
  );
  expect(
    JSON.parse(place.call(['listen', '--list', '--json'], { env: { ...UNPLUGGED, ...env } }).out),
  ).toEqual([{ name: 'bench', about: 'Bench microphone, Stand-in', source: 'arecord' }]);
});

test('a length that is no number of seconds is refused before anything is opened', () => {
  const { err, code } = place.call(['listen', '--for', 'ever']);
  expect(err).toBe('hearwright: --for: expected a number of seconds such as 90, got "ever"\n');
  expect(code).toBe(2);
});

test.skipIf(!canHear)('--json prints an object a line as things happen', async () => {
  const env = plugIn({ sound: await microphoneSound(TALK), pace: 4 });
  const { out } = place.call(['listen', '--for', '10', '--json'], { env });
  const events = out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
  const kinds = events.map(({ kind }) => kind);
  expect(kinds[0]).toBe('started');
  expect(kinds.filter((kind) => kind !== 'heard').slice(1)).toEqual(['stopped', 'taken', 'ended']);
  expect(events.filter(({ kind }) => kind === 'heard').flatMap(({ figures }) => figures)).toContainEqual(
    expect.objectContaining({ item: 'window', attribute: 'width', value: 620, unit: 'mm' }),
  );
  expect(events.at(-1)).toEqual({ kind: 'ended', seconds: 10, memos: ['m1'] });
  expect(events.at(-2).taken.memo.notes.figures[0]).toMatchObject({ item: 'window', value: 620 });
});

/** A device of ALSA that plays a file, and faster than real time; see Debian's alsa-utils. Gives the home that names it. */
function alsaDevice(sound: Int16Array): string {
  const raw = join(place.folder, 'sound.raw');
  writeFileSync(raw, new Uint8Array(sound.buffer, sound.byteOffset, sound.byteLength));
  const home = join(place.folder, 'home');
  mkdirSync(home);
  writeFileSync(
    join(home, '.asoundrc'),
    `pcm.!default { type plug  slave { pcm "standin" format S16_LE rate 16000 channels 1 } }
pcm.standin { type file  slave.pcm "null16"  file "/dev/null"  infile "${raw}"  format "raw" }
pcm.null16 { type null }
`,
  );
  return home;
}

const hasAlsa = existsSync('/usr/bin/arecord');
test.skipIf(!canHear || !hasAlsa)(
  'the real recording program of ALSA is driven as it wants to be',
  async () => {
    const env = { PATH: '/usr/bin', HOME: alsaDevice(await microphoneSound(TALK, { behind: 120 })) };
    const { out, code } = place.call(['listen', '--for', '10'], { env });
    expect(out).toMatch(/window width: 620 mm/);
    expect(code).toBe(0);
    expect(place.call(['listen', '--list'], { env }).out).toMatch(/^default +arecord/m);
  },
);

test.skipIf(!canHear || !hasAlsa)(
  'where there is no recording program the bundled recorder gives sound',
  () => {
    const tone = Int16Array.from(risingTone(20, 16_000), (sample) => Math.round(sample * 32_767));
    const env = { PATH: '/nowhere', HOME: alsaDevice(tone) };
    const { out, code } = place.call(['listen', '--for', '2'], { env });
    expect(out).toMatch(/^memo 1 {2}talk-[-\d]+\.wav {2}2 s/);
    expect(code).toBe(0);
    const [original = ''] = files(join(place.folder, '.hearwright', 'originals'));
    const bytes = readFileSync(join(place.folder, '.hearwright', 'originals', original)).subarray(654);
    expect(bytes.length).toBe(2 * 32_000);
    // No place of it is silent; that it is the very tone cannot be told on a device that runs ahead of the clock: see sound-server.test.ts.
    for (let at = 0; at + 3200 <= bytes.length; at += 3200) {
      expect(bytes.subarray(at, at + 3200).some((byte) => byte !== 0)).toBe(true);
    }
    expect(place.call(['listen', '--list'], { env }).out).toMatch(/ bundled recorder$/m);
  },
);
