/** Puts a backup back into an empty folder: everything that is in it, or nothing. */
import { closeSync, fsyncSync, mkdirSync, openSync, rmdirSync, rmSync, utimesSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import type { Database } from 'better-sqlite3';
import { makeEmptyFolder } from '../empty-folder.ts';
import { HOME } from '../find-project.ts';
import { EXIT, Problem } from '../problem.ts';
import type { ProjectCheck } from '../project-api.ts';
import { checkOriginals } from '../project-check.ts';
import { replaceFile } from '../replacing.ts';
import { Sqlite } from '../store/sqlite.ts';
import { openStore, type ProjectStore } from '../store/store.ts';
import { unfinishedName } from '../unfinished.ts';
import { whyUnwritten } from '../unwritten.ts';
import { ContainerFault, type ListedFile, listFiles, takeOut } from './container.ts';
import { DATABASE_PATH, isOriginal } from './kept-paths.ts';
import { damagedBackup, openContainer, tooNew } from './open-container.ts';

const OCCUPIED = { doing: 'restore', code: 'restore-occupied' };

/**
 * Puts the project of a backup into `into`, which is made where it is missing and must be empty. Gives back what
 * `verify` says of it. Throws a Problem when the backup is damaged or newer than this program, or the folder cannot
 * take it; the folder is as it was then.
 */
export async function restore(file: string, into: string): Promise<ProjectCheck> {
  const container = openContainer(file);
  const folder = resolve(into);
  let isMade = false;
  try {
    const files = inBackup(file, () => listFiles(container));
    isMade = makeEmptyFolder(folder, into, OCCUPIED);
    const home = unfinishedName(join(folder, HOME));
    try {
      writeFiles(container, files, home, file);
      const check = await checkProject(home, file);
      replaceFile(home, join(folder, HOME));
      // All that came back, those that are no memo yet too.
      return { ...check, originals: files.filter(({ path }) => isOriginal(path)).length };
    } finally {
      rmSync(home, { recursive: true, force: true });
    }
  } catch (error) {
    if (isMade) rmdirSync(folder);
    throw error instanceof Problem ? error : unrestored(into, error);
  } finally {
    container.close();
  }
}

/** Paths are those of `isKeptPath`, and the folder is new: nothing is written beside it. */
function writeFiles(container: Database, files: readonly ListedFile[], home: string, file: string): void {
  mkdirSync(home, { mode: 0o700 });
  for (const listed of files) {
    const path = join(home, listed.path);
    mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
    const target = openSync(path, 'wx', 0o600);
    try {
      inBackup(file, () => takeOut(container, listed, target));
      fsyncSync(target);
    } finally {
      closeSync(target);
    }
    const modified = listed.modified / 1000;
    utimesSync(path, modified, modified);
  }
}

/** Opens the project as any other, brings it up to date if it is older, and checks it. */
async function checkProject(home: string, file: string): Promise<ProjectCheck> {
  const store = openTakenOut(join(home, DATABASE_PATH), file);
  try {
    const { faults, events } = inBackup(file, () => {
      refuseStrayOriginals(store);
      return store.verify();
    });
    const originals = await checkOriginals(home, store.rows.all('memos'), store.absentOriginals());
    const { absent, count } = originals;
    return { faults: [...faults, ...originals.faults], events, originals: count, absent };
  } finally {
    store.close();
  }
}

function openTakenOut(database: string, file: string): ProjectStore {
  try {
    // The backup itself is the copy of what was before.
    return openStore(database, { withCopy: false });
  } catch (error) {
    if (!(error instanceof Problem))
      throw damagedBackup(file, new ContainerFault('its project cannot be read'));
    // The disk that is restored onto fails, not the backup.
    if (error.exitCode === EXIT.unexpected) throw error;
    if (error.code === 'format-too-new') throw tooNew(file, 'holds a project of a newer format');
    throw damagedBackup(file, new ContainerFault('it holds no whole project'));
  }
}

/** A memo whose original stands elsewhere would have this program read files that are not the project's. */
function refuseStrayOriginals(store: ProjectStore): void {
  const logged = store.log().flatMap((event) => (event.kind === 'recording-kept' ? [event.file] : []));
  const stands = store.rows.all('memos').map((memo) => memo.file);
  if (![...logged, ...stands].every(isOriginal))
    throw new ContainerFault('a memo in it names an original outside of the project');
}

/** Runs what reads the backup: whatever is wrong with it becomes one kind of Problem. */
function inBackup<T>(file: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    const isFault = error instanceof ContainerFault || error instanceof Sqlite.SqliteError;
    // A failure of the disk that is written to is none of the backup.
    if (!isFault && (error as NodeJS.ErrnoException).syscall !== undefined) throw error;
    throw damagedBackup(file, isFault ? error : new ContainerFault('it cannot be read'));
  }
}

function unrestored(into: string, error: unknown): Problem {
  return new Problem(`cannot restore into ${into}: ${whyUnwritten(error)}`, {
    code: 'restore-unwritten',
    exitCode: EXIT.unexpected,
    kept: 'the backup; nothing was written',
    next: 'name a folder that may be written to and has room',
    cause: error,
  });
}
