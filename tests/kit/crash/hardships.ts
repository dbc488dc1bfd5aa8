/** What befalls a call that is no kill: signals that ask, a full disk, no handles left, a clock set back, a busy database. */
import { spawn, spawnSync } from 'node:child_process';
import {
  closeSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { HEADER_BYTES } from '../../../src/speech/microphone/wave-header.ts';
import { Sqlite } from '../../../src/store/sqlite.ts';
import { microphoneSound, standInMicrophone } from '../stand-in-microphone.ts';
import {
  Broken,
  call,
  callWell,
  eventsIn,
  memosOf,
  mustBeWhole,
  mustHold,
  pause,
  type Scene,
  strike,
} from './struck-call.ts';

export interface Hardship {
  readonly name: string;
  /** Throws Broken where something is lost. Answers in a few words what came of it; `skipped: ...` where it cannot be tried. */
  readonly bear: (folder: string) => Promise<string>;
}

export interface Borne {
  readonly name: string;
  readonly came: string;
  readonly holds: boolean;
}

export async function runHardships(hardships: readonly Hardship[]): Promise<readonly Borne[]> {
  const borne: Borne[] = [];
  for (const { name, bear } of hardships) {
    const folder = mkdtempSync(join(tmpdir(), 'hearwright-hardship-'));
    try {
      borne.push({ name, came: await bear(folder), holds: true });
    } catch (error) {
      if (!(error instanceof Broken)) throw error;
      borne.push({ name, came: `**${error.message}**`, holds: false });
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  }
  return borne;
}

const TALK = resolve('tests/speech/fixtures/memo.flac');
const CLI = resolve('dist/cli.js');

function begin(folder: string, env: Record<string, string> = {}): Scene {
  const scene = { folder, env };
  callWell(scene, ['init', '--name', 'Barge', '--units', 'metric']);
  return scene;
}

const recordingsOf = ({ folder }: Scene) => join(folder, '.hearwright', 'recordings');
const namesIn = (folder: string) => (existsSync(folder) ? readdirSync(folder) : []);

async function withMicrophone(folder: string): Promise<Scene> {
  const sound = await microphoneSound(TALK, { behind: 20 });
  return begin(folder, { PATH: standInMicrophone(folder, { sound, pace: 4 }) });
}

const bytesOf = (scene: Scene) =>
  Math.max(0, ...namesIn(recordingsOf(scene)).map((name) => statSync(join(recordingsOf(scene), name)).size));

/** Waits until so many bytes are recorded. */
const untilRecorded = (scene: Scene, bytes: number) => async (isOver: () => boolean) => {
  while (!isOver() && bytesOf(scene) < bytes) await pause(20);
};

/** A signal that asks while recording: it stops as Control-C does, and the memo is in. */
const asked = (signal: 'SIGTERM' | 'SIGHUP'): Hardship => ({
  name: `${signal} while recording`,
  async bear(folder) {
    const scene = await withMicrophone(folder);
    let recorded = 0;
    const { err } = await strike(
      scene,
      ['listen'],
      async (isOver) => {
        await untilRecorded(scene, 150_000)(isOver);
        recorded = bytesOf(scene);
      },
      signal,
    );
    const memos = await memosOf(scene);
    mustHold(memos.length === 1 && memos[0]?.status === 'read', `no memo came of it: ${err}`);
    const original = join(folder, '.hearwright', 'originals', `${memos[0]?.source.sha256}.wav`);
    mustHold(statSync(original).size >= recorded, 'sound is missing');
    mustHold(namesIn(recordingsOf(scene)).length === 0, 'the recording was not taken in');
    await mustBeWhole(scene);
    return 'recording stopped in good order, the memo is in and read';
  },
});

const closedTerminal: Hardship = {
  name: 'the terminal is closed while recording',
  async bear(folder) {
    if (spawnSync('script', ['--version']).status !== 0) return 'skipped: script is not installed';
    const scene = await withMicrophone(folder);
    // When script dies its terminal is gone, and the system tells every process on it.
    const terminal = spawn('script', ['-qec', `${process.execPath} ${CLI} listen`, '/dev/null'], {
      cwd: folder,
      env: { HOME: folder, TZ: 'UTC', TERM: 'xterm', ...scene.env },
      stdio: ['pipe', 'ignore', 'ignore'],
      detached: true,
    });
    await untilRecorded(scene, 150_000)(() => terminal.exitCode !== null);
    const recorded = bytesOf(scene);
    terminal.kill('SIGKILL');
    for (let waited = 0; waited < 30_000 && namesIn(recordingsOf(scene)).length > 0; waited += 100)
      await pause(100);
    const byItself = namesIn(recordingsOf(scene)).length === 0;
    await pause(1500);
    call(scene, ['resume']);
    const memos = await memosOf(scene);
    mustHold(memos.length === 1 && memos[0]?.status === 'read', 'no memo came of it');
    const original = join(folder, '.hearwright', 'originals', `${memos[0]?.source.sha256}.wav`);
    mustHold(statSync(original).size >= recorded, 'sound is missing');
    await mustBeWhole(scene);
    return byItself
      ? 'the memo is in, without a terminal'
      : 'the sound was kept, and the next call took it in';
  },
};

/** A disk of so many megabytes in `folder`; nothing where this machine lets nobody make one. */
function smallDisk(folder: string, megabytes: number): string | undefined {
  const disk = join(folder, 'disk');
  mkdirSync(disk);
  return spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${megabytes}m`, 'tmpfs', disk]).status === 0
    ? disk
    : undefined;
}

/** Fills the disk but for so many bytes. */
function fill(disk: string, leave: number): () => void {
  const file = join(disk, 'ballast');
  const handle = openSync(file, 'w');
  const piece = Buffer.alloc(4096, 1);
  try {
    for (;;) writeSync(handle, piece);
  } catch {
    // Full.
  } finally {
    closeSync(handle);
  }
  const { size } = statSync(file);
  spawnSync('truncate', ['-s', String(Math.max(0, size - leave)), file]);
  return () => rmSync(file);
}

async function onFullDisk(
  folder: string,
  work: (scene: Scene, disk: string) => Promise<string>,
): Promise<string> {
  const disk = smallDisk(folder, 8);
  if (disk === undefined) return 'skipped: no right to make a small disk';
  try {
    return await work({ folder: disk, env: {} }, disk);
  } finally {
    spawnSync('umount', [disk]);
  }
}

const fullWhileTaking: Hardship = {
  name: 'the disk is full while a recording is taken',
  bear: (folder) =>
    onFullDisk(folder, async (scene, disk) => {
      begin(disk);
      writeFileSync(join(disk, 'a.txt'), 'The hatch is 610 wide.');
      callWell(scene, ['take', 'a.txt']);
      const events = eventsIn(scene);
      // Too full for the project to be opened at all; then with room for that and not for the recording.
      for (const [leave, expected] of [
        [20_000, 1],
        [120_000, 3],
      ] as const) {
        const empty = fill(disk, leave);
        const { err, code } = call(scene, ['take', TALK]);
        mustHold(code === expected && err.includes('the disk is full'), `it ended with ${code}: ${err}`);
        mustHold(eventsIn(scene) === events, 'something of it is in the log');
        empty();
      }
      callWell(scene, ['take', TALK]);
      mustHold((await memosOf(scene)).length === 2, 'it is not in afterwards');
      await mustBeWhole(scene);
      return 'exit 3 (1 where the project cannot even be opened), "the disk is full"; nothing of it in the project, and taken once there was room';
    }),
};

const fullWhileRecording: Hardship = {
  name: 'the disk is full while recording',
  bear: (folder) =>
    onFullDisk(folder, async (_scene, disk) => {
      // The microphone and its sound lie on another disk.
      const sound = await microphoneSound(TALK, { behind: 20 });
      const scene = begin(disk, { PATH: standInMicrophone(folder, { sound, pace: 4 }) });
      const empty = fill(disk, 200_000);
      const { err, code } = await strike(scene, ['listen'], async (isOver) => {
        while (!isOver()) await pause(50);
      });
      mustHold(code === 3 && err.includes('the disk is full'), `it ended with ${code}: ${err}`);
      empty();
      callWell(scene, ['resume']);
      const memos = await memosOf(scene);
      mustHold(memos.length === 1 && memos[0]?.status === 'read', 'what was recorded is no memo');
      const original = join(disk, '.hearwright', 'originals', `${memos[0]?.source.sha256}.wav`);
      const kept = new Int16Array(Uint8Array.from(readFileSync(original).subarray(HEADER_BYTES)).buffer);
      mustHold(kept.length > 16_000 && kept.every((sample, at) => sample === sound[at]), 'sound is missing');
      await mustBeWhole(scene);
      return `exit 3, "the disk is full"; the ${(kept.length / 16_000).toFixed(0)} s until then became a memo once there was room`;
    }),
};

const fullWhileWriting: Hardship = {
  name: 'the disk is full while setting a figure and writing a page',
  bear: (folder) =>
    onFullDisk(folder, async (scene, disk) => {
      begin(disk);
      writeFileSync(join(disk, 'a.txt'), 'The hatch is 610 wide.');
      callWell(scene, ['take', 'a.txt']);
      callWell(scene, ['journal', '--out', 'day.md']);
      const page = readFileSync(join(disk, 'day.md'), 'utf8');
      const events = eventsIn(scene);
      const empty = fill(disk, 0);
      const wrote = call(scene, ['journal', '--out', 'day.md']);
      mustHold(
        wrote.code === 1 && wrote.err.includes('the disk is full'),
        `journal: ${wrote.code} ${wrote.err}`,
      );
      mustHold(readFileSync(join(disk, 'day.md'), 'utf8') === page, 'the page is torn');
      let refused = 0;
      for (let at = 0; at < 60 && refused < 2; at++) {
        const { code, err } = call(scene, [
          'set',
          'hatch',
          'height',
          `${500 + at} mm`,
          '--reason',
          'x'.repeat(9000),
        ]);
        if (code !== 0) {
          mustHold(code === 1 && /full|cannot write/.test(err), `set: ${code} ${err}`);
          refused++;
        }
      }
      empty();
      mustHold(eventsIn(scene) >= events, 'events are gone');
      await mustBeWhole(scene);
      callWell(scene, ['set', 'hatch', 'height', '700 mm']);
      return `exit 1 for both; the page is what it was, the log is whole${refused === 0 ? ' (figures still fitted)' : ''}`;
    }),
};

const fewHandles: Hardship = {
  name: 'few file handles (ulimit -n from 40 to 110)',
  async bear(folder) {
    const scene = begin(folder);
    writeFileSync(join(folder, 'a.txt'), 'The hatch is 610 wide.');
    let done = 0;
    const limits = [40, 46, 50, 54, 58, 60, 62, 64, 66, 68, 72, 80, 90, 110];
    for (const limit of limits) {
      writeFileSync(join(folder, `b-${limit}.txt`), `The sill is ${limit} high.`);
      const { status } = spawnSync(
        'sh',
        ['-c', `ulimit -n ${limit}; exec "$0" "$@"`, process.execPath, CLI, 'take', `b-${limit}.txt`, TALK],
        {
          cwd: folder,
          env: { PATH: process.env.PATH ?? '', HOME: folder, TZ: 'UTC' },
          encoding: 'utf8',
          timeout: 90_000,
        },
      );
      if (status === 0) done++;
      await mustBeWhole(scene);
    }
    for (const limit of limits) callWell(scene, ['take', `b-${limit}.txt`]);
    callWell(scene, ['take', TALK]);
    mustHold((await memosOf(scene)).length === limits.length + 1, 'a memo is missing or twice');
    await mustBeWhole(scene);
    return `${done} of ${limits.length} calls did their work, the others were refused; nothing was lost, all is in afterwards`;
  },
};

/** A clock that is set back by an hour a second after the call began, and by a day for the next call. */
const clockBack: Hardship = {
  name: 'the clock jumps back, while recording and between calls',
  async bear(folder) {
    const shim = join(folder, 'clock.cjs');
    writeFileSync(
      shim,
      `const Real = Date; const began = Real.now(); const jump = Number(process.env.JUMP_MS); const after = Number(process.env.JUMP_AFTER_MS);
       const back = () => (Real.now() - began >= after ? jump : 0);
       globalThis.Date = class extends Real {
         constructor(...words) { if (words.length === 0) super(Real.now() - back()); else super(...words); }
         static now() { return Real.now() - back(); }
       };`,
    );
    const jumping = (ms: number, afterMs: number) => ({
      NODE_OPTIONS: `--require=${shim}`,
      JUMP_MS: String(ms),
      JUMP_AFTER_MS: String(afterMs),
    });
    const scene = await withMicrophone(folder);
    writeFileSync(join(folder, 'a.txt'), 'The hatch is 610 wide.');
    callWell(scene, ['take', 'a.txt']);
    const listening = { folder, env: { ...scene.env, ...jumping(3_600_000, 1500) } };
    callWell(listening, ['listen', '--for', '8']);
    const yesterday = { folder, env: jumping(86_400_000, 0) };
    writeFileSync(join(folder, 'b.txt'), 'I measured again, the hatch is 605 wide.');
    callWell(yesterday, ['take', 'b.txt']);
    callWell(yesterday, ['set', 'hatch', 'height', '700 mm']);
    callWell(yesterday, ['undo']);
    const memos = await memosOf(scene);
    mustHold(memos.length === 3 && memos.every(({ status }) => status === 'read'), 'a memo is missing');
    for (const words of [['next'], ['journal'], ['where'], ['findings']]) callWell(yesterday, words);
    await mustBeWhole(scene);
    return 'the log goes by its own numbers: all memos are in, in the order of taking';
  },
};

const busyDatabase: Hardship = {
  name: 'another process holds the database locked for longer than is waited',
  async bear(folder) {
    const scene = await withMicrophone(folder);
    writeFileSync(join(folder, 'a.txt'), 'The hatch is 610 wide.');
    const db = new Sqlite(join(folder, '.hearwright', 'project.db'));
    db.exec('BEGIN IMMEDIATE');
    const set = call(scene, ['set', 'hatch', 'height', '700 mm']);
    const took = call(scene, ['take', 'a.txt']);
    const heard = call(scene, ['listen', '--for', '8']);
    const looked = call(scene, ['figures']);
    db.exec('ROLLBACK');
    db.close();
    for (const [what, { code, err }] of Object.entries({ set, took, heard }))
      mustHold(code !== 0 && err.includes('another program is writing'), `${what}: ${code} ${err}`);
    mustHold(looked.code === 0, `looking was hindered: ${looked.err}`);
    callWell(scene, ['take', 'a.txt']);
    const memos = await memosOf(scene);
    mustHold(
      memos.length === 2 && memos.every(({ status }) => status === 'read'),
      'the recording or the text is not in',
    );
    await mustBeWhole(scene);
    return 'writing is refused after 5 s and says why, looking goes on; the recording is in with the next call';
  },
};

export const HARDSHIPS: readonly Hardship[] = [
  asked('SIGTERM'),
  asked('SIGHUP'),
  closedTerminal,
  fullWhileTaking,
  fullWhileRecording,
  fullWhileWriting,
  fewHandles,
  clockBack,
  busyDatabase,
];
