/** Originals as they were taken: named by the hash of their bytes, never changed, readable by their owner only. */
import { createHash } from 'node:crypto';
import { createReadStream, mkdirSync, readdirSync } from 'node:fs';
import { open, rm } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { isOriginal } from './backup/kept-paths.ts';
import type { MemoRow } from './model/rows.ts';
import { EXIT, Problem } from './problem.ts';
import { replaceFile } from './replacing.ts';
import { sweepUnfinished, unfinishedName } from './unfinished.ts';
import { whyUnwritten } from './unwritten.ts';

export interface KeptOriginal {
  /** Path relative to the project folder's own folder. */
  readonly file: string;
  readonly sha256: string;
  readonly bytes: number;
}

const FOLDER = 'originals';

/**
 * Where a memo's original stands. Throws a Problem when its name is none that this program gives: a project that was
 * edited could otherwise have any file of this machine read.
 */
export function originalPath(projectHome: string, { id, file }: Pick<MemoRow, 'id' | 'file'>): string {
  if (isOriginal(file)) return join(projectHome, file);
  throw new Problem(`the project is damaged: memo ${id.slice(1)} names an original outside of it`, {
    code: 'project-damaged',
    exitCode: EXIT.damaged,
    kept: 'everything was left as it was',
    next: 'put the project folder back from a copy',
  });
}

/** A short, plain ending such as `.m4a`, so that a person can still play the kept file; else none. */
function plainEnding(name: string): string {
  const ending = extname(name).toLowerCase();
  return /^\.[a-z0-9]{1,5}$/.test(ending) ? ending : '';
}

/** The hash and the length of a file's bytes. */
export async function hashFile(file: string): Promise<Pick<KeptOriginal, 'sha256' | 'bytes'>> {
  const hash = createHash('sha256');
  let bytes = 0;
  for await (const chunk of createReadStream(file) as AsyncIterable<Buffer>) {
    hash.update(chunk);
    bytes += chunk.length;
  }
  return { sha256: hash.digest('hex'), bytes };
}

/**
 * Copies a file into the project: to a temporary name, flushed to the disk, then renamed to its hash. What is there
 * already is left alone. `projectHome` is the project's own folder, `name` the file's name as the person knows it.
 */
export async function keepOriginal(projectHome: string, file: string, name: string): Promise<KeptOriginal> {
  const folder = join(projectHome, FOLDER);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  sweepUnfinished(folder);
  const temporary = unfinishedName(join(folder, 'copy'));
  try {
    const { sha256, bytes } = await copyFlushed(file, temporary);
    const kept = `${sha256}${plainEnding(name)}`;
    replaceFile(temporary, join(folder, kept));
    await flushFolder(folder);
    return { file: `${FOLDER}/${kept}`, sha256, bytes };
  } catch (error) {
    await rm(temporary, { force: true });
    throw keepingProblem(error, name);
  }
}

async function copyFlushed(from: string, to: string): Promise<Pick<KeptOriginal, 'sha256' | 'bytes'>> {
  const hash = createHash('sha256');
  let bytes = 0;
  const target = await open(to, 'wx', 0o600);
  try {
    for await (const chunk of createReadStream(from, { highWaterMark: 1 << 20 }) as AsyncIterable<Buffer>) {
      hash.update(chunk);
      bytes += chunk.length;
      await target.writeFile(chunk);
    }
    await target.sync();
  } finally {
    await target.close();
  }
  return { sha256: hash.digest('hex'), bytes };
}

/** Makes the new name itself last. Some systems cannot flush a folder; the file is whole all the same. */
async function flushFolder(folder: string): Promise<void> {
  try {
    const handle = await open(folder, 'r');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  } catch {
    // Nothing to do: see above.
  }
}

function keepingProblem(error: unknown, name: string): Problem {
  return new Problem(`cannot keep ${name}: ${whyUnwritten(error, 'the project folder')}`, {
    code: 'original-not-kept',
    exitCode: EXIT.partly,
    kept: 'the file was left as it was; the project is unchanged',
    next: 'see the room on the disk and the rights of the folder, then take it again',
    cause: error,
  });
}

/** Names of the kept originals; unfinished copies are left out. */
export function originalFiles(projectHome: string): readonly string[] {
  try {
    return readdirSync(join(projectHome, FOLDER)).filter((name) => !name.endsWith('.part'));
  } catch {
    return [];
  }
}
