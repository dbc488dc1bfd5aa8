/** Finds a whisper.cpp command-line program: the person's setting, the search path, or the one that we built. */
import { execFile } from 'node:child_process';
import { constants } from 'node:fs';
import { access } from 'node:fs/promises';
import { delimiter, join } from 'node:path';
import { cacheFolder, type EngineSettings } from './engine-settings.ts';

export interface WhisperProgram {
  readonly path: string;
  readonly from: 'setting' | 'path' | 'built';
}

const IS_WINDOWS = process.platform === 'win32';
const ENDING = IS_WINDOWS ? '.exe' : '';
/** Names that packages of the system give it. The older `main` could be anybody's program. */
const NAMES = ['whisper-cli', 'whisper-cpp'];

/** Where `engines set-up whisper` puts what it builds. */
export function builtProgram(env: NodeJS.ProcessEnv = process.env): string {
  return join(cacheFolder(env), 'whisper', `whisper-program${ENDING}`);
}

/** The first that is there and understands us. Nothing is run but `--help`. */
export async function findWhisperProgram(
  settings: Pick<EngineSettings, 'whisperProgram'>,
  env: NodeJS.ProcessEnv = process.env,
): Promise<WhisperProgram | undefined> {
  if (settings.whisperProgram !== undefined) {
    const path = settings.whisperProgram;
    return (await writesJson(path)) ? { path, from: 'setting' } : undefined;
  }
  for (const folder of (env.PATH ?? '').split(delimiter).filter((one) => one !== '')) {
    for (const name of NAMES) {
      const path = join(folder, name + ENDING);
      if (await writesJson(path)) return { path, from: 'path' };
    }
  }
  const path = builtProgram(env);
  return (await writesJson(path)) ? { path, from: 'built' } : undefined;
}

/** Whether this is a whisper.cpp program that gives words with their times: its help tells. */
export async function writesJson(path: string): Promise<boolean> {
  try {
    await access(path, constants.X_OK);
  } catch {
    return false;
  }
  return new Promise((resolve) => {
    execFile(path, ['--help'], { timeout: 10_000, windowsHide: true }, (_error, stdout, stderr) =>
      resolve(`${stdout}${stderr}`.includes('--output-json-full')),
    );
  });
}
