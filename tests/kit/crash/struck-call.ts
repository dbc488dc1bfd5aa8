/** A call of the built command in a folder of its own, struck down at a given moment; and what is there afterwards. */
import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { copyFileSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { ProjectApi } from '../../../src/project-api.ts';
import { Sqlite } from '../../../src/store/sqlite.ts';

const CLI = resolve('dist/cli.js');
/** A call that takes longer hangs. */
const LONGEST_MS = 120_000;

export interface Scene {
  readonly folder: string;
  readonly env: Readonly<Record<string, string>>;
}

export interface Ended {
  readonly out: string;
  readonly err: string;
  readonly code: number | null;
}

const surroundings = ({ folder, env }: Scene) => ({
  PATH: process.env.PATH ?? '',
  HOME: folder,
  TZ: 'UTC',
  ...env,
});

/** Runs one call to its end. */
export function call(scene: Scene, words: readonly string[], input?: string): Ended {
  const done = spawnSync(process.execPath, [CLI, ...words], {
    cwd: scene.folder,
    env: surroundings(scene),
    encoding: 'utf8',
    timeout: LONGEST_MS,
    maxBuffer: 1 << 28,
    ...(input === undefined ? {} : { input }),
  });
  return { out: done.stdout, err: done.stderr, code: done.status };
}

/** Runs one call that has to succeed. */
export function callWell(scene: Scene, words: readonly string[]): string {
  const { out, err, code } = call(scene, words);
  if (code !== 0) throw new Broken(`hearwright ${words.join(' ')} ended with ${code}: ${err.trim()}`);
  return out;
}

/** What must hold after a strike does not. */
export class Broken extends Error {}

export function mustHold(holds: boolean, what: string): void {
  if (!holds) throw new Broken(what);
}

export interface Struck extends Ended {
  /** The call had come to its own end before the signal was sent. */
  readonly wasOver: boolean;
}

export const pause = (ms: number) => new Promise<void>((done) => setTimeout(done, ms));

/**
 * Starts a call, waits for `when`, and sends the signal to the call's own process; answers when it is gone and nothing
 * that it started runs on.
 */
export async function strike(
  scene: Scene,
  words: readonly string[],
  when: (isOver: () => boolean) => Promise<void>,
  signal: NodeJS.Signals = 'SIGKILL',
): Promise<Struck> {
  const child = spawn(process.execPath, [CLI, ...words], {
    cwd: scene.folder,
    env: surroundings(scene),
    stdio: ['pipe', 'pipe', 'pipe'],
    // A group of its own, by which its children are found.
    detached: true,
  });
  let out = '';
  let err = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    out += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    err += text;
  });
  let code: number | null | undefined;
  const ended = new Promise<void>((done) => {
    child.on('exit', (exitCode) => {
      code = exitCode;
      done();
    });
  });
  await when(() => code !== undefined);
  const wasOver = code !== undefined;
  if (!wasOver) child.kill(signal);
  const timer = setTimeout(() => child.kill('SIGKILL'), LONGEST_MS);
  await ended;
  clearTimeout(timer);
  await untilGone(child.pid ?? 0);
  return { out, err, code: code ?? null, wasOver };
}

/** Its children end by themselves when it is gone: a recorder that nobody reads, a recogniser without a parent. */
async function untilGone(group: number): Promise<void> {
  for (let waited = 0; ; waited += 50) {
    if (livingIn(group).length === 0) return;
    if (waited > 15_000)
      throw new Broken(`processes run on after the call is gone: ${livingIn(group).join(', ')}`);
    await pause(50);
  }
}

function livingIn(group: number): readonly string[] {
  if (!existsSync('/proc/self/stat')) return [];
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .filter((pid) => {
      try {
        // State, parent and group stand behind the name, which may hold brackets and blanks.
        const [state, , processGroup] = readFileSync(`/proc/${pid}/stat`, 'utf8')
          .replace(/^.*\) /s, '')
          .split(' ');
        return Number(processGroup) === group && state !== 'Z';
      } catch {
        return false;
      }
    });
}

declare global {
  /** Stands for what the build puts in: see src/store/made-by.ts. */
  var HEARWRIGHT_MODEL_PRINT: string | undefined;
}

let loaded: typeof import('../../../src/project.ts') | undefined;

/**
 * Opens the project here, as a new call would, and runs `look`: some hundred calls of their own would take an hour longer.
 * This process takes itself for the built one, so that it does not work the model out anew.
 */
async function inProject<T>({ folder }: Scene, look: (project: ProjectApi) => T | Promise<T>): Promise<T> {
  if (!loaded) {
    const db = new Sqlite(join(folder, '.hearwright', 'project.db'), { readonly: true });
    globalThis.HEARWRIGHT_MODEL_PRINT = db.prepare('SELECT print FROM made_by').pluck().get() as string;
    db.close();
    loaded = await import('../../../src/project.ts');
  }
  const project = await loaded.openNearestProject(folder);
  try {
    return await look(project);
  } finally {
    project.close();
  }
}

/** `verify` finds the project whole; its own words otherwise. */
export async function mustBeWhole(scene: Scene): Promise<void> {
  const { faults } = await inProject(scene, (project) => project.verify());
  mustHold(faults.length === 0, `verify: ${faults.join('; ')}`);
}

/**
 * How many events the log holds, by looking into a copy of the file: what a killed call left half written has to be put
 * back before it can be read, and the call that comes next shall find it as it was left.
 */
export function eventsIn(scene: Scene): number {
  const copies = mkdtempSync(join(tmpdir(), 'hearwright-look-'));
  try {
    for (const end of ['', '-journal', '-wal']) {
      const file = join(scene.folder, '.hearwright', `project.db${end}`);
      if (existsSync(file)) copyFileSync(file, join(copies, `project.db${end}`));
    }
    const db = new Sqlite(join(copies, 'project.db'));
    try {
      return db.prepare('SELECT count(*) FROM log').pluck().get() as number;
    } finally {
      db.close();
    }
  } finally {
    rmSync(copies, { recursive: true, force: true });
  }
}

export interface MemoSeen {
  readonly id: string;
  readonly status: string;
  readonly source: { readonly name: string; readonly sha256: string };
}

export function memosOf(scene: Scene): Promise<readonly MemoSeen[]> {
  return inProject(scene, (project) => project.memos());
}

export const hashOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

/** Ordinary files below a folder with the hash of their bytes. */
export function filesBelow(folder: string): ReadonlyMap<string, string> {
  if (!existsSync(folder)) return new Map();
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort();
  return new Map(
    names.flatMap((name) => {
      const path = join(folder, name);
      return statSync(path).isFile() ? [[name, hashOf(readFileSync(path))] as const] : [];
    }),
  );
}

/** Names that are left of what was not finished. */
export const unfinishedIn = (folder: string) =>
  [...filesBelow(folder).keys()].filter((name) => name.endsWith('.part'));
