/** Which models a person pointed to: one small file for all projects, beside the settings of other programs. */
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';
import { array, type infer as Infer, literal, object, optional, string } from 'zod/mini';
import { EXIT, Problem } from '../../problem.ts';
import { whyUnwritten } from '../../unwritten.ts';

const SETTINGS = object({
  format: literal(1),
  /** The engine that hears when none is named; absent for the bundled one. */
  default: optional(string()),
  /** A whisper.cpp program of the person's own. */
  whisperProgram: optional(string()),
  engines: array(object({ name: string(), path: string() })),
});

export type EngineSettings = Infer<typeof SETTINGS>;

const NONE: EngineSettings = { format: 1, engines: [] };

/** `XDG_CONFIG_HOME` or what the system has for it. */
export function settingsFile(env: NodeJS.ProcessEnv = process.env): string {
  const folder = env.XDG_CONFIG_HOME || env.APPDATA || join(homedir(), '.config');
  return join(folder, 'hearwright', 'engines.json');
}

/** `XDG_CACHE_HOME` or what the system has for it: what lies there can be made again. */
export function cacheFolder(env: NodeJS.ProcessEnv = process.env): string {
  const own =
    process.platform === 'darwin' ? join(homedir(), 'Library', 'Caches') : join(homedir(), '.cache');
  return join(env.XDG_CACHE_HOME || env.LOCALAPPDATA || own, 'hearwright');
}

/** Throws a Problem when the file is there and cannot be understood. */
export async function readEngineSettings(file: string = settingsFile()): Promise<EngineSettings> {
  let text: string;
  try {
    text = await readFile(file, 'utf8');
  } catch (error) {
    if (/^(?:ENOENT|ENOTDIR)$/.test((error as NodeJS.ErrnoException).code ?? '')) return NONE;
    throw unread(file, error);
  }
  try {
    return SETTINGS.parse(JSON.parse(text));
  } catch (error) {
    throw unread(file, error);
  }
}

/** Writes the file whole or not at all. */
export async function writeEngineSettings(
  settings: EngineSettings,
  file: string = settingsFile(),
): Promise<void> {
  try {
    await mkdir(dirname(file), { recursive: true, mode: 0o700 });
    const beside = `${file}.${process.pid}.part`;
    await writeFile(beside, `${JSON.stringify(settings, undefined, 2)}\n`);
    await rename(beside, file);
  } catch (error) {
    throw new Problem(`cannot write ${file}: ${whyUnwritten(error)}`, {
      code: 'engines-unwritten',
      exitCode: EXIT.unexpected,
      kept: 'the engines are as they were',
      next: 'see the rights of that folder',
      cause: error,
    });
  }
}

function unread(file: string, cause: unknown): Problem {
  return new Problem(`cannot read the engines in ${file}: it is damaged or may not be read`, {
    code: 'engines-unread',
    exitCode: EXIT.usage,
    kept: 'the file was left as it was',
    next: 'put it right, or delete it and add the engines again',
    cause,
  });
}
