/** Writes a backup of a project: one file, whole or not at all, while the project is in use. */
import {
  closeSync,
  fsyncSync,
  linkSync,
  lstatSync,
  mkdirSync,
  openSync,
  realpathSync,
  rmSync,
  statSync,
} from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import type { Database } from 'better-sqlite3';
import { whyUnfit } from '../fit-names.ts';
import { isInside } from '../inside.ts';
import type { MemoRow } from '../model/rows.ts';
import { EXIT, Problem } from '../problem.ts';
import { replaceFile } from '../replacing.ts';
import type { StoreCopy } from '../store/copy.ts';
import { sweepBeside, unfinishedName } from '../unfinished.ts';
import { whyUnwritten } from '../unwritten.ts';
import { checkFile, type ListedFile, layOutContainer, listFiles, putFile, seal } from './container.ts';
import { DATABASE_PATH, keptPaths } from './kept-paths.ts';
import { isBackup } from './open-container.ts';

export interface BackedUp {
  readonly file: string;
  readonly events: number;
  readonly originals: number;
  /** Recordings that are not taken in yet. */
  readonly recordings: number;
  /** Length of the backup. */
  readonly bytes: number;
  /** What is wrong with the project itself, one line each. It is backed up as it is. */
  readonly faults: readonly string[];
}

export interface BackUpSource {
  /** The project's own folder. */
  readonly home: string;
  /** Copies the database into an empty file as it is at one instant. */
  readonly copyDatabase: (file: string) => Promise<StoreCopy>;
  /** ISO 8601 instant of now, and the program with its version. */
  readonly madeAt: string;
  readonly program: string;
}

/**
 * Writes the project into `file`. An existing file is written over only when it is a backup and `replace` is set.
 * Throws a Problem when it cannot be written; what stood there is as it was then.
 */
export async function backUp(
  source: BackUpSource,
  file: string,
  { replace = false }: { readonly replace?: boolean } = {},
): Promise<BackedUp> {
  const target = placeFor(source.home, file, replace);
  const hidden = join(dirname(target), `.${basename(target)}`);
  sweepBeside(hidden);
  const folder = unfinishedName(hidden);
  try {
    mkdirSync(folder, { mode: 0o700 });
    const made = join(folder, 'backup');
    const what = await fill(source, made, join(folder, DATABASE_PATH));
    const { size: bytes } = statSync(made);
    putInPlace(made, target, replace);
    return { file: target, bytes, ...what };
  } catch (error) {
    throw error instanceof Problem ? error : unwritten(file, error);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Where the backup goes; throws a Problem when something else is there. */
function placeFor(home: string, file: string, replace: boolean): string {
  const target = resolve(file);
  const there = lstatSync(target, { throwIfNoEntry: false });
  try {
    const place = join(realpathSync(dirname(target)), basename(target));
    if (isInside(realpathSync(home), place)) throw insideProject(file);
    const reason = whyUnfit(place);
    if (reason) throw unwritten(file, new Error(reason));
    if (there && !(there.isFile() && isBackup(target))) throw occupied(file, 'it is no backup', false);
    if (there && !replace) throw occupied(file, 'a backup is there already', true);
    return place;
  } catch (error) {
    throw error instanceof Problem ? error : unwritten(file, error);
  }
}

/** The counts of what went in, and what is wrong with it. */
async function fill(source: BackUpSource, made: string, copy: string) {
  const { home } = source;
  for (const empty of [made, copy]) closeSync(openSync(empty, 'wx', 0o600));
  const db = layOutContainer(made);
  try {
    // Recordings before the database and originals after it: what is taken in meanwhile is in one of them at least.
    const recordings = putAll(db, home, keptPaths(home, 'recordings'));
    const { events, memos, absent, faults } = await source.copyDatabase(copy);
    putFile(db, DATABASE_PATH, copy);
    const originals = putAll(db, home, keptPaths(home, 'originals'));
    seal(db, source);
    for (const listed of listFiles(db)) checkFile(db, listed);
    return {
      events,
      originals: originals.length,
      recordings: recordings.length,
      faults: [...faults, ...originalFaults(memos, originals, absent)],
    };
  } finally {
    db.close();
  }
}

function putAll(db: Database, home: string, paths: readonly string[]): readonly ListedFile[] {
  return paths.flatMap((path) => {
    try {
      return [putFile(db, path, join(home, path))];
    } catch (error) {
      // Taken in since the folder was looked through: it is an original now.
      if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
      throw error;
    }
  });
}

function originalFaults(
  memos: readonly MemoRow[],
  originals: readonly ListedFile[],
  absent: ReadonlySet<string>,
): readonly string[] {
  const hashes = new Map(originals.map(({ path, sha256 }) => [path, sha256]));
  return memos.flatMap(({ id, file, source }) => {
    const hash = hashes.get(file);
    if (hash === source.sha256 || (hash === undefined && absent.has(source.sha256))) return [];
    return [`original of ${id} (${source.name}): ${hash ? 'its bytes were changed' : 'it is missing'}`];
  });
}

/** Gives the whole file its name. Without `replace` a file that came there meanwhile is not written over. */
function putInPlace(made: string, target: string, replace: boolean): void {
  // Windows flushes only what may be written to.
  flush(made, 'r+');
  if (replace) replaceFile(made, target);
  else {
    try {
      linkSync(made, target);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code === 'EEXIST') throw occupied(target, 'a file came there meanwhile', false);
      // A disk without second names, such as a camera card.
      if (lstatSync(target, { throwIfNoEntry: false })) throw error;
      replaceFile(made, target);
    }
  }
  try {
    flush(dirname(target), 'r');
  } catch {
    // Some systems cannot flush a folder; the file is whole all the same.
  }
}

function flush(path: string, flags: 'r' | 'r+'): void {
  const handle = openSync(path, flags);
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

function insideProject(file: string): Problem {
  return new Problem(`cannot write ${file}: that folder is the project's own`, {
    code: 'page-inside-project',
    exitCode: EXIT.usage,
    next: 'name a file outside of it, best on another disk',
  });
}

function occupied(file: string, reason: string, isOurs: boolean): Problem {
  return new Problem(`cannot write ${file}: ${reason}`, {
    code: 'backup-exists',
    exitCode: EXIT.usage,
    kept: 'the file there was left as it was',
    next: isOurs ? 'name another file, or add --replace' : 'name another file',
  });
}

function unwritten(file: string, error: unknown): Problem {
  return new Problem(`cannot write the backup ${file}: ${whyUnwritten(error)}`, {
    code: 'backup-unwritten',
    exitCode: EXIT.unexpected,
    kept: 'the project, and any file of that name',
    next: 'name a file in a folder that may be written to and has room',
    cause: error,
  });
}
