/** The copy of a project's database that is written before its format is changed. */
import { closeSync, existsSync, fsyncSync, openSync, renameSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { EXIT, Problem } from '../problem.ts';
import { sweepBeside, unfinishedName } from '../unfinished.ts';
import { whyUnwritten } from '../unwritten.ts';
import { Sqlite } from './sqlite.ts';

/**
 * Writes the database, as it was last committed, beside itself as `project.format-5.db`, whole and on the disk, and
 * gives the path back. A copy that is there already stays. The caller may hold the lock for writing: the copy is read
 * past it. Throws a Problem when it cannot be written.
 */
export function copyBefore(file: string, format: number): string {
  const target = freeName(join(dirname(file), `project.format-${format}`));
  sweepBeside(target);
  const part = unfinishedName(target);
  try {
    // Made here first, so that its rights are the owner's from the beginning.
    closeSync(openSync(part, 'w', 0o600));
    const reader = new Sqlite(file, { readonly: true, fileMustExist: true });
    try {
      reader.prepare('VACUUM INTO ?').run(part);
    } finally {
      reader.close();
    }
    flush(part);
    renameSync(part, target);
    flushFolder(dirname(target));
    return target;
  } catch (error) {
    removePart(part);
    throw notCopied(file, format, error);
  }
}

function removePart(part: string): void {
  try {
    rmSync(part, { force: true });
  } catch {
    // Whatever stands there is told as the reason.
  }
}

function freeName(stem: string): string {
  for (let number = 1; ; number++) {
    const candidate = number === 1 ? `${stem}.db` : `${stem}-${number}.db`;
    if (!existsSync(candidate)) return candidate;
  }
}

function flush(path: string): void {
  const handle = openSync(path, 'r+');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

function flushFolder(folder: string): void {
  try {
    const handle = openSync(folder, 'r');
    try {
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
  } catch {
    // Some systems cannot flush a folder; the file is whole all the same.
  }
}

function notCopied(file: string, format: number, error: unknown): Problem {
  return new Problem(
    `cannot bring ${file} up to date from format ${format}: the copy that is written first cannot be: ${whyUnwritten(error)}`,
    {
      code: 'older-not-copied',
      exitCode: EXIT.unexpected,
      kept: 'the project, in its older format',
      next: 'see that the disk has room and the folder may be written to, then try again',
      cause: error,
    },
  );
}
