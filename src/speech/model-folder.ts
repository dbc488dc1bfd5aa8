/** The bundled recogniser's files: where they are, and whether they are whole. */
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { open, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { EXIT, Problem, type Result } from '../problem.ts';
import manifest from './model-files.json' with { type: 'json' };

export const ENGINE_NAME = manifest.engine;

/** Absolute paths of the files that the engine loads. */
export interface ModelFiles {
  readonly encoder: string;
  readonly decoder: string;
  readonly tokens: string;
  readonly voiceActivity: string;
}

/** The `models` folder beside the nearest package.json upward: the same from src/ and from dist/. */
export function modelFolder(from: string = dirname(fileURLToPath(import.meta.url))): string {
  for (let at = from; ; at = dirname(at)) {
    if (existsSync(join(at, 'package.json'))) return join(at, 'models');
    if (at === dirname(at)) return join(from, 'models');
  }
}

/**
 * Finds the files and checks size and SHA-256 of each. The check is no luxury: the native runtime ends the
 * process on a damaged file.
 */
export async function checkedModelFiles(folder: string = modelFolder()): Promise<Result<ModelFiles>> {
  const paths: Record<string, string> = {};
  for (const file of manifest.files) {
    const path = join(folder, file.name);
    const fault = await faultOf(path, file);
    if (fault) return { ok: false, problem: fault };
    paths[file.role] = path;
  }
  return { ok: true, value: paths as unknown as ModelFiles };
}

async function faultOf(path: string, expected: { name: string; bytes: number; sha256: string }) {
  const found = await stat(path).catch(() => undefined);
  if (!found) {
    return new Problem(`cannot hear recordings: models/${expected.name} is missing`, {
      code: 'models-missing',
      exitCode: EXIT.partly,
      next: 'in the package folder run: npm run prepare (it is left out by npm ci --ignore-scripts)',
    });
  }
  if (found.size === expected.bytes && (await sha256Of(path)) === expected.sha256) return undefined;
  return new Problem(`cannot hear recordings: models/${expected.name} is damaged`, {
    code: 'models-damaged',
    exitCode: EXIT.partly,
    next: 'delete that file, then in the package folder run: npm run prepare',
  });
}

/** Through one small buffer: whole models in memory would count against the recording's own share. */
async function sha256Of(path: string): Promise<string> {
  const hash = createHash('sha256');
  const buffer = Buffer.alloc(1 << 18);
  const file = await open(path, 'r');
  try {
    for (let read = await file.read(buffer); read.bytesRead > 0; read = await file.read(buffer)) {
      hash.update(buffer.subarray(0, read.bytesRead));
    }
  } finally {
    await file.close();
  }
  return hash.digest('hex');
}
